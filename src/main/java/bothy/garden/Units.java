package bothy.garden;

import java.time.ZoneId;
import java.util.Set;

/**
 * The units that a grower reads and writes by default, and how much the measures hold whose names both share. Sources: the gallon by the
 * Weights and Measures Act 1985 (United Kingdom) and of 231 cubic inches (United States), ounces and US spoons as parts of it, level
 * metric spoons of 5 ml; watering cans of 10 litres and of 2 US gallons are common practice.
 */
public enum Units {
    METRIC(5, 28.4130625, 4.54609, 10),
    US(4.92892159375, 29.5735295625, 3.785411784, 7.570823568);

    private static final int TEASPOONS_A_TABLESPOON = 3;

    /** Of the time zones the cities that lie in the United States, by the IANA time zone database. */
    private static final Set<String> US_ZONES = Set.of(
            "America/New_York",
            "America/Detroit",
            "America/Chicago",
            "America/Menominee",
            "America/Denver",
            "America/Boise",
            "America/Phoenix",
            "America/Los_Angeles",
            "America/Anchorage",
            "America/Juneau",
            "America/Sitka",
            "America/Metlakatla",
            "America/Yakutat",
            "America/Nome",
            "America/Adak",
            "Pacific/Honolulu");

    private static final Set<String> US_STATES_WITH_ZONES =
            Set.of("America/Indiana/", "America/Kentucky/", "America/North_Dakota/", "US/");

    private final double teaspoonMl;
    private final double fluidOunceMl;
    private final double gallonLitres;
    private final double canLitres;

    Units(double teaspoonMl, double fluidOunceMl, double gallonLitres, double canLitres) {
        this.teaspoonMl = teaspoonMl;
        this.fluidOunceMl = fluidOunceMl;
        this.gallonLitres = gallonLitres;
        this.canLitres = canLitres;
    }

    /** A level teaspoon, ml. */
    public double teaspoonMl() {
        return teaspoonMl;
    }

    /** A level tablespoon, ml. */
    public double tablespoonMl() {
        return TEASPOONS_A_TABLESPOON * teaspoonMl;
    }

    /** A fluid ounce, ml. */
    public double fluidOunceMl() {
        return fluidOunceMl;
    }

    /** A gallon, L. */
    public double gallonLitres() {
        return gallonLitres;
    }

    /** The usual watering can, L. */
    public double canLitres() {
        return canLitres;
    }

    /** What is used where a clock shows the time of a zone. */
    public static Units usualIn(ZoneId zone) {
        boolean us =
                US_ZONES.contains(zone.getId()) || US_STATES_WITH_ZONES.stream().anyMatch(zone.getId()::startsWith);
        return us ? US : METRIC;
    }
}
