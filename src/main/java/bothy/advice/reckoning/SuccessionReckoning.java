package bothy.advice.reckoning;

import bothy.advice.facts.Latest;
import bothy.advice.facts.Outlook;
import bothy.advice.reckoned.SowAgain;
import bothy.agronomy.Season;
import bothy.almanac.Range;
import bothy.garden.What;
import java.time.LocalDate;
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

    /** An interval after the last sowing, or the beginning of the time to sow. */
    private static Optional<LocalDate> first(Subject subject, Range every) {
        Optional<LocalDate> afterLast =
                subject.last(What.SOWN).map(Latest::on).map(day -> day.plusDays(Math.round(every.middle())));
        return afterLast
                .or(() -> subject.outlook(What.SOWN, "outdoors").map(Outlook::from))
                .map(day -> day.isBefore(subject.today()) ? subject.today() : day);
    }
}
