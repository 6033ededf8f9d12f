package bothy.advice.reckoning;

/**
 * The mean temperature of a season where no weather is known. Own estimate, right to a few degrees in lowland places of the temperate
 * zones: 29 °C less 0.35 for each degree of latitude in the year's mean, swinging by 0.15 °C for each degree around late July (late
 * January in the south).
 */
final class UsualWarmth {
    private static final double USUAL_LATITUDE = 50;
    private static final int WARMEST_DAY = 205;

    private UsualWarmth() {}

    /** °C, held to −10 to 32. */
    static double meanC(Subject subject) {
        Double told = subject.grower().latitude();
        double latitude = told == null ? USUAL_LATITUDE : Math.min(65, Math.abs(told));
        double phase = 2 * Math.PI * (subject.today().getDayOfYear() - WARMEST_DAY) / 365;
        double swing = 0.15 * latitude * Math.cos(phase);
        double mean = 29 - 0.35 * latitude + (subject.grower().southern() ? -swing : swing);
        return Math.max(-10, Math.min(32, mean));
    }
}
