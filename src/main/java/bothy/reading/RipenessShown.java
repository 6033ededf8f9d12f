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
import java.util.Set;
import java.util.stream.IntStream;

/** Cues of ripeness that are told and not asked about: "the onion tops have flopped over". */
final class RipenessShown {
    /** How it is said that the growth above ground has done its work, and where. */
    private static final Set<String> DYING_BACK = Set.of(
            "down",
            "back",
            "off",
            "away",
            "tops",
            "top",
            "leaves",
            "foliage",
            "haulm",
            "haulms",
            "vine",
            "vines",
            "stems",
            "stalks",
            "growth",
            "greenery",
            "plants");

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
        Inquiry ready = ready(passage, sentence, sentence[0]);
        return !ready.plantings().isEmpty() && cues.ripeness(passage, ready, sentence[0], sentence[1])
                ? Optional.of(cues.in(ready, passage))
                : Optional.empty();
    }

    /** "The potato tops have died down": the crop is ready, nothing has died. */
    boolean only(Passage passage, int[] sentence, ActionSaid action) {
        int own = Passage.within(passage.crops(), sentence[0], action.end()).stream()
                .mapToInt(CropSaid::start)
                .max() // "Peas sown and the onion tops have died down".
                .orElse(sentence[0]);
        return action.action().equals(What.DIED.word())
                && passage.counts(action.start(), action.end()).isEmpty() // "3 leeks died".
                && IntStream.range(own, Math.min(passage.size(), action.end() + 2))
                        .anyMatch(at -> DYING_BACK.contains(passage.word(at))) // "My onions died".
                && cues.ripeness(passage, ready(passage, sentence, own), action.start(), action.end());
    }

    private static Inquiry ready(Passage passage, int[] sentence, int begins) {
        CropSaid said = Inquiries.crop(passage, sentence, begins);
        List<Planting> meant = said == null
                ? PlantingsMeant.mentioned(passage.situation())
                : Inquiries.plantings(passage, sentence, said, Question.READY);
        List<Planting> grown =
                meant.stream().filter(planting -> !planting.over()).toList();
        return Inquiry.of(Question.READY, Inquiries.name(said, grown), PlantingsMeant.ids(grown));
    }
}
