package bothy.agronomy.climate;

import static bothy.agronomy.Stated.within;

/**
 * Degree days that a crop needs of which only days to harvest are published. Own model: the published days count as spent at the middle of
 * the temperatures at which crops of its class grow best (Knott's Handbook for Vegetable Growers, temperature classes, from memory: 60 to
 * 65 °F for cool-season crops, 65 to 75 °F for those of the warm season). Where degree days are published too, middling sweet corn (855
 * above 10 °C) and the earliest peas (694 above 4.4 °C), it meets them within a tenth.
 */
public final class RipeningWarmth {
    /** Middle of 60 to 65 °F. */
    public static final double COOL_SEASON_C = 17;

    /** Middle of 65 to 75 °F. */
    public static final double WARM_SEASON_C = 21;

    /** Warmth above this mean brings nothing more on: the upper limit usual in degree days, 86 °F. */
    public static final double UPPER_C = 30;

    private RipeningWarmth() {}

    /**
     * °C·d.
     *
     * @param days published days to harvest, 5 to 400
     * @param baseC −5 to 16 °C
     * @param warmSeason whether it is a crop of the warm season
     */
    public static double needed(double days, double baseC, boolean warmSeason) {
        within("days", days, 5, 400, "days");
        within("baseC", baseC, -5, 16, "°C");
        return days * ((warmSeason ? WARM_SEASON_C : COOL_SEASON_C) - baseC);
    }
}
