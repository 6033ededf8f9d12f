package bothy.agronomy.water;

import static bothy.agronomy.Stated.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * Lengths of a crop's four stages as FAO-56 has them: small plants, growing to full cover, full cover, ripening off. A table's
 * lengths (FAO-56 Table 11) are a first guess; what the diary tells replaces them, and the later stages move along.
 *
 * @param initialDays 0 to 400
 * @param developmentDays 0 to 400
 * @param middleDays 0 to 400
 * @param lateDays 0 to 400
 */
public record Stages(double initialDays, double developmentDays, double middleDays, double lateDays) {
    public Stages {
        within("initialDays", initialDays, 0, 400, "days");
        within("developmentDays", developmentDays, 0, 400, "days");
        within("middleDays", middleDays, 0, 400, "days");
        within("lateDays", lateDays, 0, 400, "days");
    }

    public double totalDays() {
        return initialDays + developmentDays + middleDays + lateDays;
    }

    /**
     * The stages after it was seen that the plants have begun to spread (a tenth of the ground covered, FAO-56 p. 95).
     *
     * @param start sown or planted out
     * @param seen not before the start
     */
    public Stages withDevelopmentFrom(LocalDate start, LocalDate seen) {
        return new Stages(days(start, seen), developmentDays, middleDays, lateDays);
    }

    /**
     * The stages after it was seen that the ground is covered, which for many crops is when flowering begins (FAO-56 p. 95); stages
     * before it are shortened or drawn out in proportion.
     */
    public Stages withMiddleFrom(LocalDate start, LocalDate seen) {
        double before = initialDays + developmentDays;
        double part = before == 0 ? 0 : initialDays / before;
        double days = days(start, seen);
        return new Stages(part * days, (1 - part) * days, middleDays, lateDays);
    }

    /** The stages after it was seen that the plants ripen off (leaves yellow, tops fall); not before full cover. */
    public Stages withLateFrom(LocalDate start, LocalDate seen) {
        double days = days(start, seen);
        double before = initialDays + developmentDays;
        if (days >= before) {
            return new Stages(initialDays, developmentDays, days - before, lateDays);
        }
        return new Stages(initialDays * days / before, developmentDays * days / before, 0, lateDays);
    }

    private static double days(LocalDate start, LocalDate seen) {
        return within("days from start to the stage seen", ChronoUnit.DAYS.between(start, seen), 0, 400, "days");
    }
}
