package bothy.reading;

import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.Set;

/** A message that only goes on from the entry before: "and the beetroot", "the beans too". */
final class GoingOn {
    private static final int LONGEST = 12;
    private static final Set<String> BEGINS = Set.of("and", "also", "plus", "oh", "then");
    private static final Set<String> ENDS = Set.of("too", "also", "well");
    private static final Set<String> BESIDE = Set.of(
            "the", "my", "our", "some", "a", "as", "few", "of", ",", "more", "another", "row", "rows", "please", "yes",
            "oh", "those", "all", "plants", "seeds", "line", "couple", "them", "with", "!", ".", "on", "same", "day");

    private GoingOn() {}

    static boolean only(Passage passage) {
        boolean crops = passage.crops().stream().anyMatch(crop -> !crop.thing());
        boolean leads = BEGINS.contains(passage.word(0)) || ENDS.contains(passage.word(last(passage)));
        return crops
                && leads
                && passage.size() <= LONGEST
                && passage.actions().isEmpty()
                && passage.quantities().isEmpty()
                && !passage.situation().lately().isEmpty()
                && nothingElse(passage);
    }

    /** The number right before a crop, {@code null} when none stands there. */
    static Integer count(Passage passage, CropSaid crop) {
        return passage.counts(0, passage.size()).stream()
                .filter(number -> number.end() == crop.start() && number.value() > 0 && number.value() < 20_000)
                .map(number -> Integer.valueOf((int) number.value()))
                .findFirst()
                .orElse(null);
    }

    private static int last(Passage passage) {
        int last = passage.size() - 1;
        while (last > 0 && passage.tokens().get(last).mark()) {
            last--;
        }
        return last;
    }

    private static boolean nothingElse(Passage passage) {
        for (int at = 0; at < passage.size(); at++) {
            int token = at;
            boolean told = passage.crops().stream().anyMatch(crop -> crop.covers(token))
                    || passage.numbers().stream().anyMatch(number -> number.covers(token));
            String word = passage.word(at);
            if (!told && !BESIDE.contains(word) && !BEGINS.contains(word) && !ENDS.contains(word)) {
                return false;
            }
        }
        return true;
    }
}
