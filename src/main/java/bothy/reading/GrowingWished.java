package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseFile;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** "I want to grow chillies and beans this year" tells nothing yet and asks without asking: when to begin with each. */
final class GrowingWished {
    private final PhraseBook<String> wishes;
    private final PhraseBook<String> someDay;

    GrowingWished(Words words) {
        PhraseFile file = new PhraseFile(words, "language", Map.of());
        wishes = file.book("/wishes", "wish");
        someDay = file.book("/some-day", "some day");
    }

    Set<String> vocabulary() {
        Set<String> all = new HashSet<>(wishes.vocabulary());
        all.addAll(someDay.vocabulary());
        return all;
    }

    /** One question for each crop wished for that is not grown yet; none where no such wish is told. */
    List<Inquiry> in(Passage passage) {
        if (wishes.all(passage.tokens(), 0, passage.size(), passage).isEmpty()
                || !someDay.all(passage.tokens(), 0, passage.size(), passage).isEmpty()) {
            return List.of();
        }
        return passage.crops().stream()
                .filter(said -> !said.thing() && (said.single() || said.certain()))
                .map(CropSaid::crop)
                .distinct()
                .filter(crop -> passage.situation().plantings().stream()
                        .noneMatch(
                                planting -> !planting.over() && planting.crop().equals(crop)))
                .map(crop -> Inquiry.of(Question.WHEN_SOW, crop, List.of()))
                .toList();
    }
}
