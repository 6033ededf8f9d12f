package bothy.advice.reckoning;

import bothy.agronomy.water.TypicalEvapotranspiration.Climate;
import bothy.garden.Grower;
import bothy.garden.Normals;
import java.time.LocalDate;
import java.util.Optional;

/** Warmth and climate of a season where no weather is known: by a station's record, else by the latitude. */
final class UsualWarmth {
    private static final double USUAL_LATITUDE = 50;
    private static final double TROPIC = 23.44;
    /** A place with less rain in the year counts as dry. Own choice; semi-arid places have about 200 to 500 mm. */
    private static final double DRY_YEAR_MM = 500;

    private static final int WARMEST_DAY = 205;

    private UsualWarmth() {}

    /** °C, held to −10 to 32. */
    static double meanC(Subject subject) {
        return meanC(subject, subject.today());
    }

    /** As above, on another day. */
    static double meanC(Subject subject, LocalDate day) {
        Optional<Double> recorded = Optional.ofNullable(subject.normals())
                .flatMap(normals -> normals.of(day.getMonth()))
                .map(month -> (month.tminC() + month.tmaxC()) / 2);
        double mean = recorded.orElseGet(() -> byLatitude(subject, day));
        return Math.max(-10, Math.min(32, mean));
    }

    /**
     * Own estimate, right to a few degrees in lowland places of the temperate zones: 29 °C less 0.35 for each degree of latitude in the
     * year's mean, swinging by 0.15 °C for each degree around late July (late January in the south).
     */
    private static double byLatitude(Subject subject, LocalDate day) {
        Double told = subject.grower().latitude();
        double latitude = told == null ? USUAL_LATITUDE : Math.min(65, Math.abs(told));
        double phase = 2 * Math.PI * (day.getDayOfYear() - WARMEST_DAY) / 365;
        double swing = 0.15 * latitude * Math.cos(phase);
        return 29 - 0.35 * latitude + (subject.grower().southern() ? -swing : swing);
    }

    /**
     * The row of FAO-56 Table 2: tropical between the tropics, dry where the record has little rain, humid where nothing is known.
     *
     * @param normals {@code null} when no station's record was taken in
     */
    static Climate climate(Grower grower, Normals normals) {
        boolean tropical = grower.latitude() != null && Math.abs(grower.latitude()) < TROPIC;
        boolean dry = normals != null
                && normals.wholeYear()
                && normals.months().stream()
                                .mapToDouble(Normals.OfMonth::rainMm)
                                .sum()
                        < DRY_YEAR_MM;
        if (tropical) {
            return dry ? Climate.TROPICAL_DRY : Climate.TROPICAL_HUMID;
        }
        return dry ? Climate.TEMPERATE_DRY : Climate.TEMPERATE_HUMID;
    }
}
