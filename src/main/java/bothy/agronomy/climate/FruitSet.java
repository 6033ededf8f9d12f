package bothy.agronomy.climate;

import static bothy.agronomy.Stated.within;

import java.util.EnumSet;
import java.util.Set;

/**
 * Temperatures between which flowers set fruit. Limits differ between sources by a degree or two; see the rows named at each.
 *
 * @param coldNightC nights below this hinder, °C
 * @param warmNightC nights above this hinder, °C
 * @param hotDayC days above this hinder, °C
 */
public record FruitSet(double coldNightC, double warmNightC, double hotDayC) {
    /** Nights 12.8 °C (Purdue; UF/IFAS after Mills 1988) to 23.9 °C (Brust, University of Maryland), days to 29.4 °C (UF/IFAS). */
    public static final FruitSet TOMATO = new FruitSet(12.8, 23.9, 29.4);

    /** Nights 15.6 to 24 °C, days to 32 °C (University of Minnesota Extension H210P). */
    public static final FruitSet PEPPER = new FruitSet(15.6, 24, 32);

    public FruitSet {
        within("coldNightC", coldNightC, 0, 25, "°C");
        within("warmNightC", warmNightC, coldNightC, 40, "°C");
        within("hotDayC", hotDayC, coldNightC, 50, "°C");
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
        if (nightMinC < coldNightC) {
            found.add(Hindrance.COLD_NIGHT);
        }
        if (nightMinC > warmNightC) {
            found.add(Hindrance.WARM_NIGHT);
        }
        if (dayMaxC > hotDayC) {
            found.add(Hindrance.HOT_DAY);
        }
        return found;
    }
}
