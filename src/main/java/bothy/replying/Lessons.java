package bothy.replying;

import bothy.almanac.troubles.TroubleWording;
import bothy.garden.Diagnosis;
import bothy.garden.Diagnosis.HowSure;
import java.util.Optional;

/** Words what a trouble teaches for the next time. */
final class Lessons {
    private final TroubleWording words;

    Lessons(TroubleWording words) {
        this.words = words;
    }

    /** The likeliest cause, what became of it and how to prevent it; empty when nothing is known to prevent it. */
    Optional<String> of(Diagnosis diagnosis, String outcome) {
        String cause = diagnosis.causes().get(0).cause();
        TroubleWording.Cause worded = words.causes().get(cause);
        TroubleWording.Cause known = worded == null ? null : worded.at(diagnosis.crop());
        String sentence = words.talk().get("lesson-" + outcome);
        if (known == null || known.prevent() == null || sentence == null) {
            return Optional.empty();
        }
        HowSure sure = HowSure.of(diagnosis.causes().get(0).chance());
        String named = sure.atLeast(HowSure.MOST_LIKELY)
                ? cause
                : words.talk().get("lesson-perhaps").replace("{cause}", cause);
        return Optional.of(sentence.replace("{cause}", named).replace("{prevent}", known.prevent()));
    }
}
