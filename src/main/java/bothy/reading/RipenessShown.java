package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Planting;
import bothy.garden.Question;
import bothy.garden.What;
import bothy.reading.said.ActionSaid;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.told.PlantingsMeant;
import java.util.List;
import java.util.Optional;

/** Cues of ripeness that are told and not asked about: "the onion tops have flopped over". */
final class RipenessShown {
    private final CuesTold cues;

    RipenessShown(CuesTold cues) {
        this.cues = cues;
    }

    /** Told so, they are no trouble and ask, unsaid, whether the crop is ready. */
    List<Inquiry> asked(Passage passage) {
        return passage.sentences().stream()
                .flatMap(sentence -> asked(passage, sentence).stream())
                .toList();
    }

    private Optional<Inquiry> asked(Passage passage, int[] sentence) {
        Inquiry ready = ready(passage, sentence);
        return !ready.plantings().isEmpty() && cues.ripeness(passage, ready, sentence[0], sentence[1])
                ? Optional.of(cues.in(ready, passage))
                : Optional.empty();
    }

    /** "The potato tops have died down": the crop is ready, nothing has died. */
    boolean only(Passage passage, int[] sentence, ActionSaid action) {
        return action.action().equals(What.DIED.word())
                && cues.ripeness(passage, ready(passage, sentence), action.start(), action.end());
    }

    private static Inquiry ready(Passage passage, int[] sentence) {
        CropSaid said = Inquiries.crop(passage, sentence, sentence[0]);
        List<Planting> meant = said == null
                ? PlantingsMeant.mentioned(passage.situation())
                : Inquiries.plantings(passage, sentence, said, Question.READY);
        List<Planting> grown =
                meant.stream().filter(planting -> !planting.over()).toList();
        return Inquiry.of(Question.READY, Inquiries.name(said, grown), PlantingsMeant.ids(grown));
    }
}
