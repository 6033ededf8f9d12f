package bothy.agronomy.climate;

import static bothy.agronomy.Stated.within;

import java.util.EnumSet;
import java.util.Set;

/**
 * Temperatures between which flowers set fruit; a limit that is {@code null} hinders nothing.
 *
 * @param coldNightC nights below this hinder, 0 to 25 °C
 * @param warmNightC nights above this hinder, up to 40 °C, not below {@code coldNightC}
 * @param hotDayC days above this hinder, up to 50 °C, not below {@code coldNightC}
 */
public record FruitSet(Double coldNightC, Double warmNightC, Double hotDayC) {
    public FruitSet {
        double least = coldNightC == null ? 0 : coldNightC;
        within("coldNightC", least, 0, 25, "°C");
        within("warmNightC", warmNightC == null ? 40 : warmNightC, least, 40, "°C");
        within("hotDayC", hotDayC == null ? 50 : hotDayC, least, 50, "°C");
    }

    /** What hinders the setting of fruit. */
    public enum Hindrance {
        COLD_NIGHT,
        WARM_NIGHT,
        HOT_DAY
    }

    /**
     * What hinders on a day; empty when nothing does.
     *
     * @param nightMinC lowest temperature of the night, −60 to 60 °C
     * @param dayMaxC highest of the day, −60 to 60 °C
     */
    public Set<Hindrance> hindrances(double nightMinC, double dayMaxC) {
        within("nightMinC", nightMinC, -60, 60, "°C");
        within("dayMaxC", dayMaxC, -60, 60, "°C");
        Set<Hindrance> found = EnumSet.noneOf(Hindrance.class);
        if (coldNightC != null && nightMinC < coldNightC) {
            found.add(Hindrance.COLD_NIGHT);
        }
        if (warmNightC != null && nightMinC > warmNightC) {
            found.add(Hindrance.WARM_NIGHT);
        }
        if (hotDayC != null && dayMaxC > hotDayC) {
            found.add(Hindrance.HOT_DAY);
        }
        return found;
    }
}
