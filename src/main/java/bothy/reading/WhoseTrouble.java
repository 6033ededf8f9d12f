package bothy.reading;

import bothy.garden.Amendment;
import bothy.garden.Doubt;
import bothy.garden.Entry;
import bothy.garden.Finding;
import bothy.garden.Heard;
import bothy.garden.Logged;
import bothy.garden.Planting;
import bothy.garden.SignSeen;
import bothy.garden.Situation;
import bothy.reading.said.CropSaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.told.PlantingsMeant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Whose trouble it was that was told just before: "the earlies", "tomatoes sorry", "brinjal. 2 plants", "only one of them". The first
 * clause holds a crop or a count and hardly anything else, and the message tells and asks nothing of its own.
 */
final class WhoseTrouble {
    /** Whoever names a crop for a trouble told before takes so many words at most. */
    private static final int LONGEST = 12;

    /** Words that may stand beside the crop. */
    private static final Set<String> BESIDE = Set.of(
            "the", "my", "our", "a", "it", "its", "is", "are", "was", "were", "be", "on", "of", "sorry", "oops", "i",
            "meant", "mean", "should", "have", "said", "this", "that", "these", "those", "all", "just", "only", "both",
            "ones", "one", "plant", "plants", "them", "in", "for", "btw", "s");

    private static final Set<String> ONLY = Set.of("only", "just");
    private static final Set<String> OF_THEM = Set.of("of", "plant", "plants");

    private WhoseTrouble() {}

    /** The trouble put right; empty when the message says nothing of the kind or none was told just before. */
    static Optional<Heard> in(Passage passage) {
        Situation situation = passage.situation();
        boolean ofACase = situation.pending() == null || situation.pending().about() == Doubt.About.ADVICE;
        List<Logged> told = situation.lately().stream()
                .filter(line -> line.entry() instanceof SignSeen || line.entry() instanceof Finding)
                .toList();
        boolean justTold = told.stream()
                .anyMatch(line -> line.entry() instanceof SignSeen sign
                        && !sign.on().isBefore(situation.today().minusDays(1)));
        if (!ofACase
                || !justTold
                || passage.size() > LONGEST
                || passage.message().contains("?")) {
            return Optional.empty();
        }
        int end = firstClause(passage);
        List<CropSaid> crops = Passage.within(passage.crops(), 0, end).stream()
                .filter(crop -> !crop.thing())
                .toList();
        Integer count = count(passage, crops.isEmpty() ? end : passage.size(), narrows(passage, end));
        boolean onlyThat = IntStream.range(0, end)
                .allMatch(at -> passage.tokens().get(at).mark()
                        || BESIDE.contains(passage.word(at))
                        || crops.stream().anyMatch(crop -> crop.covers(at))
                        || count != null && counted(passage, at));
        if (!onlyThat || crops.size() > 1 || crops.isEmpty() && (count == null || !narrows(passage, end))) {
            return Optional.empty();
        }
        List<Amendment> amended = amended(told, crops.isEmpty() ? null : crops.get(0), count, passage, end);
        return amended.isEmpty() ? Optional.empty() : Optional.of(Heard.correcting(amended));
    }

    private static List<Amendment> amended(List<Logged> told, CropSaid crop, Integer count, Passage passage, int end) {
        List<Planting> plantings = crop == null ? List.of() : PlantingsMeant.of(crop, passage, 0, end, true);
        String planting = plantings.size() == 1 ? plantings.get(0).id() : null;
        String name = crop == null
                ? null
                : plantings.isEmpty() ? crop.crop() : plantings.get(0).crop();
        List<Amendment> amendments = new ArrayList<>();
        for (Logged line : told) {
            Entry instead = instead(line.entry(), planting, name, count);
            if (!instead.equals(line.entry())) {
                amendments.add(new Amendment(line.number(), instead));
            }
        }
        return amendments;
    }

    private static Entry instead(Entry entry, String planting, String crop, Integer count) {
        if (entry instanceof SignSeen sign) {
            SignSeen meant = crop == null || planting == null && Objects.equals(crop, sign.crop())
                    ? sign
                    : sign.of(planting, crop);
            return count == null
                    ? meant
                    : new SignSeen(
                            meant.sign(),
                            meant.planting(),
                            meant.crop(),
                            meant.on(),
                            meant.where(),
                            count,
                            meant.seedAge());
        }
        Finding finding = (Finding) entry;
        return crop == null || planting == null && Objects.equals(crop, finding.crop())
                ? finding
                : finding.of(planting, crop);
    }

    private static int firstClause(Passage passage) {
        int at = 0;
        while (at < passage.size() && (at == 0 || !passage.tokens().get(at).mark())) {
            at++;
        }
        return Math.min(at, passage.sentences().get(0)[1]);
    }

    /** "2 plants", "one of them", "just the one courgette": how many have it. */
    private static Integer count(Passage passage, int end, boolean narrows) {
        return passage.counts(0, end).stream()
                .filter(number -> OF_THEM.contains(passage.word(number.end()))
                        || narrows && passage.cropAt(number.end()).isPresent())
                .map(NumberSaid::value)
                .map(Double::intValue)
                .filter(number -> number >= 1)
                .findFirst()
                .orElse(null);
    }

    private static boolean counted(Passage passage, int at) {
        return passage.numbers().stream().anyMatch(number -> number.start() <= at && at < number.end());
    }

    /** "Only one of them". */
    private static boolean narrows(Passage passage, int end) {
        return IntStream.range(0, end).anyMatch(at -> ONLY.contains(passage.word(at)));
    }
}
