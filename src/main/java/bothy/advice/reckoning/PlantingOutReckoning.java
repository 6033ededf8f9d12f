package bothy.advice.reckoning;

import bothy.advice.facts.Outlook;
import bothy.advice.reckoned.LastPlantingOut;
import bothy.almanac.Sheet;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Until when young plants may still go out: the last day of sowing later by the age at which they go out, for a plant set out is so
 * much ahead of a sowing.
 */
final class PlantingOutReckoning {
    private static final int DAYS_A_WEEK = 7;

    private PlantingOutReckoning() {}

    static Optional<LastPlantingOut> of(Subject subject) {
        Sheet.Sowing sowing = subject.sheet().sowing();
        Sheet.PlantingOut out = subject.sheet().plantingOut();
        Optional<Outlook> latest = subject.outlook(What.SOWN, "latest");
        boolean raised = sowing != null
                && sowing.weeksToPlantingOut() != null
                && !subject.sheet().perennial();
        if (!raised
                || out == null
                || out.weeksFromLastFrost() == null
                || latest.isEmpty()
                || subject.frosts().none()) {
            return Optional.empty();
        }
        LocalDate from = weeksAfter(
                subject.frosts().lastSpring(), out.weeksFromLastFrost().low());
        LocalDate to = weeksAfter(latest.get().to(), sowing.weeksToPlantingOut().middle());
        return from.isAfter(to)
                ? Optional.empty()
                : Optional.of(new LastPlantingOut(
                        subject.id(),
                        from,
                        to,
                        from.plusYears(1),
                        subject.frosts().told()));
    }

    private static LocalDate weeksAfter(LocalDate day, double weeks) {
        return day.plusDays(Math.round(DAYS_A_WEEK * weeks));
    }
}
