package bothy.advice.reckoning;

import bothy.agronomy.water.TypicalEvapotranspiration.Climate;
import bothy.garden.Event;
import bothy.garden.Inquiry;
import bothy.garden.Normals;
import bothy.garden.What;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/** Warmth and climate of a season where no weather is known: by a station's record, else by the latitude. */
final class UsualWarmth {
    private static final double USUAL_LATITUDE = 50;
    private static final double TROPIC = 23.44;
    /** A place with less rain in the year counts as dry. Own choice; semi-arid places have about 200 to 500 mm. */
    private static final double DRY_YEAR_MM = 500;

    /** A told temperature of so much is that of a hot day; the mean of such a day is so much less. Own choice. */
    private static final double HOT_C = 30;

    private static final double HOTTEST_C = 52;
    private static final double HALF_A_HOT_DAY_C = 8;
    /** A hot spell told so long ago still counts. */
    private static final int SPELL_DAYS = 3;

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
        double usual = recorded.orElseGet(() -> byLatitude(subject, day));
        double mean = Math.max(
                usual,
                toldHeatC(subject).map(hottest -> hottest - HALF_A_HOT_DAY_C).orElse(usual));
        return Math.max(-10, Math.min(32, mean));
    }

    /** The greatest heat told in the question or for these days, °C. */
    private static Optional<Double> toldHeatC(Subject subject) {
        Stream<Double> asked = subject.inquiries().stream()
                .filter(inquiry -> "°C".equals(inquiry.unit()) && inquiry.amount() != null)
                .map(Inquiry::amount);
        Stream<Double> told = Stream.concat(subject.events().stream(), subject.plotEvents().stream())
                .filter(event -> event.what() == What.TEMPERATURE && event.amount() != null && event.on() != null)
                .filter(event -> Math.abs(ChronoUnit.DAYS.between(event.on(), subject.today())) <= SPELL_DAYS)
                .map(Event::amount);
        return Stream.concat(asked, told)
                .filter(heat -> heat >= HOT_C && heat <= HOTTEST_C)
                .max(Comparator.naturalOrder());
    }

    /**
     * Own estimate, right to a few degrees in lowland places of the temperate zones: 29 °C less 0.35 for each degree of latitude in the
     * year's mean, swinging by 0.15 °C for each degree around late July (late January in the south).
     */
    private static double byLatitude(Subject subject, LocalDate day) {
        Double told = subject.place().latitude();
        double latitude = told == null ? USUAL_LATITUDE : Math.min(65, Math.abs(told));
        double phase = 2 * Math.PI * (day.getDayOfYear() - WARMEST_DAY) / 365;
        double swing = 0.15 * latitude * Math.cos(phase);
        return 29 - 0.35 * latitude + (subject.grower().southern() ? -swing : swing);
    }

    /**
     * The row of FAO-56 Table 2: tropical between the tropics, dry where the record has little rain, or where the summers of the place are
     * known for little, humid where nothing is known.
     */
    static Climate climate(Subject subject) {
        Normals normals = subject.normals();
        Double latitude = subject.place().latitude();
        boolean tropical = latitude != null && Math.abs(latitude) < TROPIC;
        boolean recorded = normals != null && normals.wholeYear();
        boolean dry = recorded
                ? normals.months().stream().mapToDouble(Normals.OfMonth::rainMm).sum() < DRY_YEAR_MM
                : subject.place().dry();
        if (tropical) {
            return dry ? Climate.TROPICAL_DRY : Climate.TROPICAL_HUMID;
        }
        return dry ? Climate.TEMPERATE_DRY : Climate.TEMPERATE_HUMID;
    }
}
