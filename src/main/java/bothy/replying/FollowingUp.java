package bothy.replying;

import bothy.almanac.Wording;
import bothy.garden.Doubt;
import bothy.garden.Doubt.Choice;
import bothy.garden.Event;
import bothy.garden.Given;
import bothy.garden.Heard;
import bothy.garden.Kind;
import bothy.garden.Statement;
import bothy.garden.What;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Questions that come back to something: whether a task is done, how a trouble is now. */
final class FollowingUp {
    private static final Heard NOTHING = Heard.nothing(Kind.CHAT);
    private final Wording wording;
    private final Phrasing phrasing;
    private final Turn turn;

    FollowingUp(Wording wording, Phrasing phrasing, Turn turn) {
        this.wording = wording;
        this.phrasing = phrasing;
        this.turn = turn;
    }

    Optional<Doubt> whetherDone(Given given) {
        return phrasing.week()
                .line(given)
                .map(task -> new Doubt(
                        Doubt.About.ADVICE,
                        Map.of(
                                "question",
                                talk("whether-done", Map.of("task", task)),
                                "advice",
                                given.id(),
                                "about",
                                Turn.key(given),
                                Doubt.TASK,
                                "yes"),
                        List.of(
                                new Choice(talk("button-done", Map.of()), "yes", done(given)),
                                new Choice(talk("button-not-yet", Map.of()), "no", NOTHING),
                                new Choice(talk("button-skip", Map.of()), "skip", NOTHING)),
                        null));
    }

    /** The entry that the advice is about, where the wording names one. */
    private Heard done(Given given) {
        Wording.Says says = wording.says(given.id()).in(given.crop());
        if (says.done() == null || given.planting() == null) {
            return NOTHING;
        }
        Event event = Event.of(What.of(says.done()).orElseThrow(), null, given.crop(), turn.today());
        return Heard.of(List.of(Statement.sure(event, List.of(given.planting()))));
    }

    private String talk(String id, Map<String, String> words) {
        return phrasing.talk(id, words);
    }
}
