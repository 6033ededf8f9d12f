package bothy.reading;

import bothy.garden.Amendment;
import bothy.garden.Event;
import bothy.garden.Heard;
import bothy.garden.Kind;
import bothy.garden.Logged;
import bothy.garden.Situation;
import bothy.garden.What;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** "25ish", "about 40 of them": a message that only counts what the one before told without a count. */
final class CountToldAfter {
    private static final Set<String> BESIDE = Set.of(
            "about",
            "around",
            "roughly",
            "maybe",
            "perhaps",
            "probably",
            "some",
            "say",
            "nearly",
            "almost",
            "over",
            "just",
            "only",
            "of",
            "them",
            "or",
            "so",
            "ish",
            "odd",
            "a",
            "the",
            "in",
            "all",
            "total",
            "altogether",
            "plants",
            "seeds",
            "i",
            "think",
            "reckon",
            "guess",
            "well",
            "oh",
            "and",
            "approx",
            "it",
            "was",
            "there",
            "were",
            "that",
            "sets",
            "tubers",
            "cloves",
            "up",
            "to",
            "more",
            "less");
    /** Of such a part nobody knows how many it is: it is heard and not written. */
    private static final Set<String> PARTS =
            Set.of("half", "third", "quarter", "fifth", "most", "few", "couple", "handful");

    private static final Set<What> COUNTED = EnumSet.of(
            What.SOWN,
            What.EMERGED,
            What.PRICKED_OUT,
            What.POTTED_ON,
            What.PLANTED_OUT,
            What.MOVED,
            What.HARVESTED,
            What.THINNED);
    /** So long behind the other such a message is of it. */
    private static final int DAYS = 1;

    private static final int MOST = 5000;

    private CountToldAfter() {}

    /** What the message comes to, empty when it is not of that kind. */
    static Optional<Heard> of(Passage passage) {
        List<Logged> last = passage.situation().lately().stream()
                .filter(line -> recent(line, passage.situation()))
                .toList();
        List<NumberSaid> numbers = passage.counts(0, passage.size());
        String part =
                passage.words().stream().filter(PARTS::contains).findFirst().orElse(null);
        boolean only = passage.size() > 0
                && passage.crops().isEmpty()
                && passage.days().isEmpty()
                && passage.quantities().isEmpty()
                && IntStream.range(0, passage.size())
                        .allMatch(at -> passage.tokens().get(at).mark()
                                || BESIDE.contains(passage.word(at))
                                || PARTS.contains(passage.word(at))
                                || numbers.stream().anyMatch(number -> number.covers(at)));
        if (last.isEmpty() || !only || passage.message().contains("?")) {
            return Optional.empty();
        }
        if (numbers.size() == 1 && part == null) {
            return counted(last, (int) numbers.get(0).value());
        }
        return part != null && numbers.isEmpty() ? Optional.of(Heard.nothing(Kind.CHAT)) : Optional.empty();
    }

    private static boolean recent(Logged line, Situation situation) {
        return !line.at()
                .atZone(situation.grower().zone())
                .toLocalDate()
                .isBefore(situation.today().minusDays(DAYS));
    }

    private static Optional<Heard> counted(List<Logged> last, int count) {
        List<Logged> open = last.stream()
                .filter(line -> line.entry() instanceof Event event
                        && COUNTED.contains(event.what())
                        && event.count() == null
                        && event.amount() == null)
                .toList();
        return open.size() != 1 || count < 1 || count > MOST
                ? Optional.empty()
                : Optional.of(Heard.correcting(List.of(
                        new Amendment(open.get(0).number(), ((Event) open.get(0).entry()).withCount(count)))));
    }
}
