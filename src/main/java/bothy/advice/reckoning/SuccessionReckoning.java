package bothy.advice.reckoning;

import bothy.advice.facts.Latest;
import bothy.advice.facts.Outlook;
import bothy.advice.reckoned.SowAgain;
import bothy.agronomy.Season;
import bothy.almanac.Range;
import bothy.garden.Event;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The next sowings of a crop that is sown again and again. */
final class SuccessionReckoning {
    private static final int MOST_TOLD = 3;

    private SuccessionReckoning() {}

    static Optional<SowAgain> of(Subject subject) {
        Range every = subject.sheet().sowing() == null
                ? null
                : subject.sheet().sowing().againEveryDays();
        Optional<Outlook> latest = subject.outlook(What.SOWN, "latest");
        if (every == null || latest.isEmpty()) {
            return Optional.empty();
        }
        LocalDate last = latest.get().to();
        Optional<LocalDate> first = first(subject, every);
        if (first.isEmpty()) {
            return Optional.empty();
        }
        List<LocalDate> dates = Season.succession(first.get(), (int) Math.round(every.middle()), last).stream()
                .limit(MOST_TOLD)
                .toList();
        return dates.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new SowAgain(subject.id(), dates, last, subject.frosts().told()));
    }

    /** The last sowing of the planting; of a crop asked about, that of any of its plantings. */
    private static Optional<LocalDate> lastSown(Subject subject) {
        return subject.last(What.SOWN).map(Latest::on).or(() -> subject.plotEvents().stream()
                .filter(event -> event.what() == What.SOWN
                        && event.on() != null
                        && subject.planting().crop().equals(event.crop()))
                .map(Event::on)
                .max(Comparator.naturalOrder()));
    }

    /** An interval after the last sowing, or the beginning of the time to sow; one long past was of another season. */
    private static Optional<LocalDate> first(Subject subject, Range every) {
        Optional<LocalDate> afterLast = lastSown(subject)
                .map(day -> day.plusDays(Math.round(every.middle())))
                .filter(day -> !day.isBefore(subject.today().minusDays(Math.round(every.high()))));
        return afterLast
                .or(() -> subject.outlook(What.SOWN, "outdoors").map(Outlook::from))
                .map(day -> day.isBefore(subject.today()) ? subject.today() : day);
    }
}
