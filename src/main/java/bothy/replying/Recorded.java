package bothy.replying;

import bothy.almanac.Wording;
import bothy.almanac.troubles.TroubleWording;
import bothy.almanac.troubles.Troubles;
import bothy.garden.Event;
import bothy.garden.Inquiry;
import bothy.garden.Period;
import bothy.garden.Picked;
import bothy.garden.SignSeen;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the diary itself answers: when something was sown, what was picked, what was done lately. */
final class Recorded {
    private static final String LATELY = "diary-lately";

    private static final int MOST_LINES = 12;
    /** Whoever names the days wants all that was done on them. */
    private static final int MOST_LINES_OF_A_PERIOD = 40;

    private static final int LATELY_DAYS = 14;
    private static final String YEAR_REVIEW = "year-review";

    /** What each matter of the words files asks for. */
    private static final Map<String, Set<What>> MATTERS = Map.of(
            "diary-begun",
            EnumSet.of(What.SOWN, What.PRICKED_OUT, What.POTTED_ON, What.PLANTED_OUT),
            "diary-picked",
            EnumSet.of(What.HARVESTED),
            "diary-care",
            EnumSet.of(What.WATERED, What.FED, What.RAIN),
            LATELY,
            EnumSet.allOf(What.class));

    private final Wording wording;
    private final Vocabulary vocabulary;
    private final Receipts receipts;
    private final TroubleWording troubles;
    private final Turn turn;

    /** @param troubles what signs are called and how causes are prevented */
    Recorded(Wording wording, Vocabulary vocabulary, Receipts receipts, TroubleWording troubles, Turn turn) {
        this.troubles = troubles;
        this.wording = wording;
        this.vocabulary = vocabulary;
        this.receipts = receipts;
        this.turn = turn;
    }

    static boolean answers(Inquiry inquiry) {
        return inquiry.topic() != null
                && (MATTERS.containsKey(inquiry.topic())
                        || WherePlanted.MATTERS.contains(inquiry.topic())
                        || inquiry.topic().equals(YEAR_REVIEW));
    }

    /** The newest lines that tell of it, oldest first, and what they add up to. */
    String list(Inquiry inquiry) {
        if (WherePlanted.MATTERS.contains(inquiry.topic())) {
            return new WherePlanted(wording, vocabulary, turn).list(inquiry);
        }
        LocalDate since = inquiry.topic().equals(LATELY)
                ? turn.today().minusDays(LATELY_DAYS)
                : turn.today().minusYears(1);
        if (inquiry.topic().equals(YEAR_REVIEW)) {
            return new YearReview(wording, vocabulary, troubles, turn).text();
        }
        if (inquiry.topic().equals("diary-picked")
                && inquiry.crop() == null
                && inquiry.plantings().isEmpty()) {
            return new YearReview(wording, vocabulary, troubles, turn).harvest();
        }
        Period asked = inquiry.during() == null ? new Period(since, turn.today()) : inquiry.during();
        List<Event> events = turn.garden().events().stream()
                .filter(event -> event.on() != null && asked.holds(event.on()))
                .filter(event -> MATTERS.get(inquiry.topic()).contains(event.what()) && about(inquiry, event))
                .sorted(Comparator.comparing(Event::on))
                .toList();
        List<String> troubles = inquiry.topic().equals(LATELY) ? troubles(inquiry, asked) : List.of();
        if (events.isEmpty() && troubles.isEmpty()) {
            return wording.talk().get(inquiry.during() == null ? "diary-silent" : "diary-silent-then");
        }
        List<String> lines = new ArrayList<>();
        lines.add(wording.talk().get("diary-says"));
        int most = inquiry.during() == null ? MOST_LINES : MOST_LINES_OF_A_PERIOD;
        events.subList(Math.max(0, events.size() - most), events.size()).stream()
                .flatMap(event -> receipts.words(List.of(event)).stream())
                .map(line -> "• " + Phrasing.upper(line))
                .forEach(lines::add);
        lines.addAll(troubles);
        total(events).ifPresent(lines::add);
        return String.join("\n", lines);
    }

    /** Troubles told, each once a day. */
    private List<String> troubles(Inquiry inquiry, Period asked) {
        return turn.garden().signs().stream()
                .filter(sign -> sign.on() != null
                        && asked.holds(sign.on())
                        && !sign.sign().equals(Troubles.UNNAMED))
                .filter(sign -> inquiry.crop() == null || inquiry.crop().equals(sign.crop()))
                .sorted(Comparator.comparing(SignSeen::on))
                .map(sign -> "• " + Phrasing.upper(receipts.trouble(sign)))
                .distinct()
                .toList();
    }

    private static boolean about(Inquiry inquiry, Event event) {
        boolean ofThePlot = event.planting() == null && event.crop() == null;
        return inquiry.plantings().isEmpty() && inquiry.crop() == null
                || ofThePlot
                || inquiry.plantings().contains(event.planting())
                || inquiry.crop() != null && inquiry.crop().equals(event.crop());
    }

    /** The weight and the number picked in all, where more than one picking adds to them. */
    private Optional<String> total(List<Event> events) {
        Picked all = Picked.in(events);
        List<String> amounts = new ArrayList<>();
        if (all.weighed() > 0) {
            amounts.add(vocabulary.quantities().write("Kg", all.kg()));
        }
        if (all.counted() > 0) {
            amounts.add(
                    all.weighed() == 0
                            ? String.valueOf(all.pieces())
                            : all.pieces() + " " + wording.talk().get("year-pieces"));
        }
        String total = String.join(" " + wording.talk().get("year-and") + " ", amounts);
        return Math.max(all.weighed(), all.counted()) < 2
                ? Optional.empty()
                : new Sentence(wording.talk().get("diary-total")).fill(name -> Optional.of(total));
    }
}
