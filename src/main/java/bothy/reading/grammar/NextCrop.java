package bothy.reading.grammar;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Whether the crop behind a comma still belongs to the doing before it. */
final class NextCrop {
    private static final Set<String> TOGETHER = Set.of(
            "bags", "bag", "buckets", "bucket", "pots", "pot", "tubs", "tub", "trays", "tray", "rows", "row", "hills",
            "hill", "holes", "hole", "poles", "pole", "canes", "cane", "cells", "cell", "modules", "seeds", "seed",
            "plants", "cloves", "pcs", "pieces", "nos", "each", "per", "to", "a", "in", "of", ",");

    private NextCrop() {}

    /** "Celeriac pricked out, the courgettes stay in": the crop right before the verb is meant, not the one behind a comma. */
    static boolean parts(Passage passage, ActionSaid action, List<CropSaid> before, List<CropSaid> after) {
        if (before.isEmpty()
                || after.isEmpty()
                || action.state()
                || before.get(before.size() - 1).end() != action.words().nextSetBit(0)) {
            return false;
        }
        CropSaid next = after.get(0);
        boolean comma = IntStream.range(action.words().nextSetBit(0) + 1, next.start())
                .anyMatch(at -> passage.tokens().get(at).mark());
        boolean joins = IntStream.range(next.end(), next.end() + 2)
                .anyMatch(at -> Set.of("too", "also", "likewise", "same").contains(passage.word(at)));
        return comma && !joins && !goesOn(passage, next);
    }

    /** "Tomatoes fed on Monday, courgettes on Wednesday": nothing is told of the next crop but its day, count or place. */
    private static boolean goesOn(Passage passage, CropSaid next) {
        int at = next.end();
        boolean prefixed = passage.end("n", next.start() - 1) > 0;
        while (Set.of("on", "the", "only", "just", "in", "into", "my", "about", "-")
                        .contains(passage.word(at))
                || passage.word(at).equals(",") && passage.end("n", at + 1) > 0) {
            at++;
        }
        boolean besideThem = prefixed
                && Set.of("beside", "behind", "alongside", "between", "near", "round", "under")
                        .contains(passage.word(at))
                && Set.of("them", "it", "those", "these").contains(passage.word(at + 1));
        at += besideThem ? 2 : 0;
        int detail = IntStream.of(
                        passage.end("date", at),
                        passage.end("amount", at),
                        passage.end("n", at),
                        passage.end("place", at))
                .max()
                .getAsInt();
        int end = inVessels(passage, detail > 0 ? detail : prefixed ? at : -1);
        end += end > 0 && Counting.THINGS.contains(passage.word(end)) ? 1 : 0; // "And onions, 50 sets".
        while (end > 0 && (passage.end("date", end) > 0 || passage.word(end).equals("only"))) {
            end = Math.max(end + 1, passage.end("date", end));
        }
        return end > 0
                && (end >= passage.size()
                        || passage.tokens().get(end).mark()
                        || Set.of("and", "but", "so", "then", "too").contains(passage.word(end)));
    }

    /** "Karela 2 buckets 3 seeds each": behind the number how many stand together; where that ends. */
    private static int inVessels(Passage passage, int end) {
        int at = end;
        boolean each = false;
        while (at > 0 && at < passage.size() && (TOGETHER.contains(passage.word(at)) || passage.end("n", at) > 0)) {
            each |= Set.of("each", "per", "a").contains(passage.word(at));
            at++;
        }
        return each ? at : end;
    }
}
