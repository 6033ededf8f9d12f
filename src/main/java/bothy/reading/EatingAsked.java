package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Eaten;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseBook.Found;
import bothy.reading.text.PhraseFile;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Whether something can be eaten: by whom, which part of the plant, and what is wrong with it. */
final class EatingAsked {
    private static final String SOMETHING = "have";
    private static final String FILE = "eating";

    /** What animals did to it: "lettuce that the cat pooped on" is not for the cat. */
    private static final Set<String> BY_ANIMALS = Set.of("fouled", "gnawed");

    private final PhraseBook<String> asks;
    private final PhraseBook<String> whether;
    private final PhraseBook<String> unless;
    private final PhraseBook<String> harm;
    private final PhraseBook<Named> by = new PhraseBook<>();
    private final PhraseBook<Named> parts = new PhraseBook<>();
    private final PhraseBook<Named> faults = new PhraseBook<>();
    private final Set<String> eating;

    /** @param rank of two found with as many words the one listed first counts */
    private record Named(String name, int rank) {}

    EatingAsked(Words words) {
        PhraseFile file = new PhraseFile(words, FILE, words.lists(FILE, "/groups"));
        asks = file.book("/asks", "asks");
        whether = file.book("/whether", "whether");
        unless = file.book("/unless", "unless");
        harm = file.book("/harm", "harm");
        eating = Set.copyOf(words.list(FILE, "/eating"));
        named(words, file, "/by", by);
        named(words, file, "/parts", parts);
        named(words, file, "/faults", faults);
    }

    private static void named(Words words, PhraseFile file, String pointer, PhraseBook<Named> book) {
        int rank = 0;
        for (String name : words.names(FILE, pointer)) {
            file.into(book, pointer + "/" + name, new Named(name, rank++));
        }
    }

    Set<String> vocabulary() {
        Set<String> all = new HashSet<>(asks.vocabulary());
        all.addAll(whether.vocabulary());
        all.addAll(unless.vocabulary());
        all.addAll(harm.vocabulary());
        all.addAll(by.vocabulary());
        all.addAll(parts.vocabulary());
        all.addAll(faults.vocabulary());
        return all;
    }

    /** What is asked to be eaten, {@code null} when the sentence asks nothing of the kind. */
    Eaten in(Passage passage, int[] sentence, int begins) {
        if (stands(asks, passage, begins, sentence[1]) && !stands(unless, passage, sentence[0], sentence[1])) {
            // "Found grubs in the corn. Can I eat it?" tells the fault before it asks.
            String fault = name(faults, passage, 0, sentence[1]);
            return new Eaten(
                    BY_ANIMALS.contains(String.valueOf(fault)) ? null : name(by, passage, begins, sentence[1]),
                    name(parts, passage, sentence[0], sentence[1]),
                    fault,
                    !passage.crops().isEmpty(),
                    stands(harm, passage, sentence[0], sentence[1]));
        }
        return null;
    }

    /** Whether it asks if something can be eaten at all, rather than whether it is time: "can I eat the peas" may mean either. */
    boolean asksWhether(Eaten eaten, Passage passage, int[] sentence) {
        return eaten.by() != null
                || eaten.part() != null
                || eaten.fault() != null
                || stands(whether, passage, sentence[0], sentence[1]);
    }

    /** "Can I still eat them" tells of nothing that was eaten: the words of eating that are only asked about stand for themselves. */
    Passage withoutWhatIsAsked(Passage passage) {
        if (passage.words().stream().noneMatch(eating::contains)) {
            return passage;
        }
        BitSet asked = new BitSet();
        for (int[] sentence : passage.sentences()) {
            if (in(passage, sentence, sentence[0]) != null) {
                asks.all(passage.tokens(), sentence[0], sentence[1], passage)
                        .forEach(found -> asked.or(found.place().words()));
            }
        }
        if (asked.isEmpty()) {
            return passage;
        }
        List<Token> tokens = new ArrayList<>(passage.tokens());
        asked.stream()
                .filter(at -> eating.contains(tokens.get(at).word()))
                .forEach(at -> tokens.set(at, tokens.get(at).as(SOMETHING)));
        return passage.withTokens(tokens);
    }

    private static boolean stands(PhraseBook<String> book, Passage passage, int from, int to) {
        return !book.all(passage.tokens(), from, to, passage).isEmpty();
    }

    private static String name(PhraseBook<Named> book, Passage passage, int from, int to) {
        return book.all(passage.tokens(), from, to, passage).stream()
                .filter(found -> !withinACrop(passage, found))
                .min(Comparator.<Found<Named>>comparingInt(
                                found -> -found.place().words().cardinality())
                        .thenComparingInt(found -> found.meaning().rank()))
                .map(found -> found.meaning().name())
                .orElse(null);
    }

    /** "Sprouts" may be the crop, and "pods" those of "snow pea pods". */
    private static boolean withinACrop(Passage passage, Found<Named> found) {
        return passage.crops().stream()
                .anyMatch(crop -> found.place().words().stream().allMatch(crop::covers)
                        && crop.end() - crop.start() == found.place().length());
    }
}
