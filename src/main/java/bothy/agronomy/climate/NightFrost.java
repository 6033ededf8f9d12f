package bothy.agronomy.climate;

import static bothy.agronomy.Stated.within;

import bothy.agronomy.Normal;

/**
 * The chance that a night harms plants. Own model, no source: a forecast of the lowest temperature is off by 2 °C (standard deviation)
 * for the coming night and by half a degree more for each night after it, and leaves near the ground are 2 °C colder than the
 * screen in which air is measured, as they are on a clear still night (common practice: 2 to 4 °C).
 */
public final class NightFrost {
    private static final double COLDER_AT_LEAVES_C = 2;

    private NightFrost() {}

    /**
     * @param forecastMinC lowest air temperature forecast, −60 to 60 °C
     * @param harmedBelowC leaf temperature below which the crop is harmed, −30 to 20 °C
     * @param nightsAhead 0 for the coming night, to 15
     * @return 0 to 1
     */
    public static double chanceOfHarm(double forecastMinC, double harmedBelowC, int nightsAhead) {
        within("forecastMinC", forecastMinC, -60, 60, "°C");
        within("harmedBelowC", harmedBelowC, -30, 20, "°C");
        within("nightsAhead", nightsAhead, 0, 15, "nights");
        double errorC = 2 + 0.5 * nightsAhead;
        return Normal.cumulative((harmedBelowC - (forecastMinC - COLDER_AT_LEAVES_C)) / errorC);
    }
}
