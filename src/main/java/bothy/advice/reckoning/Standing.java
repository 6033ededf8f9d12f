package bothy.advice.reckoning;

import bothy.agronomy.Filling;
import bothy.agronomy.water.Container;
import bothy.agronomy.water.Ground;
import bothy.agronomy.water.OpenGround;
import bothy.agronomy.water.Soil;
import bothy.almanac.PlaceKind;
import bothy.almanac.Sheet;
import bothy.garden.Units;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The ground of one planting: its share of a bed, or its pots.
 *
 * @param ground bed or all pots together
 * @param plants how many plants share it
 * @param counted whether that was told (false: one stands for all)
 * @param told whether soil and number of plants were told
 */
record Standing(Ground ground, int plants, boolean counted, boolean told) {
    private static final double CM_PER_M = 100;
    /**
     * The ground that one plant is watered on. Own choice: the closest spacing of its sheet, which is what its roots fill, and no wider
     * than a square metre.
     */
    private static final double MOST_AREA_M2 = 1;
    /** Ground that the leaves of a plant in a pot shade at most. Own choice. */
    private static final double MOST_LEAVES_M2 = 0.5;
    /** A pot is about as high as wide, so that its opening follows from its volume. */
    private static final double OPENING_OF_CUBE = 0.95;

    private static final Pattern LITRES =
            Pattern.compile("(\\d+(?:\\.\\d+)?)[ -]*(?:l|litre|liter|ltr)s?\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern GALLONS = Pattern.compile("(\\d+(?:\\.\\d+)?)[ -]*gal", Pattern.CASE_INSENSITIVE);
    private static final Pattern RIM_CM = Pattern.compile("(\\d+(?:\\.\\d+)?)[ -]*cm", Pattern.CASE_INSENSITIVE);
    private static final Pattern RIM_INCH =
            Pattern.compile("(\\d+(?:\\.\\d+)?)[ -]*(?:in\\b|inch)", Pattern.CASE_INSENSITIVE);
    /** Compost for one plant in the usual containers, L: common practice (a growbag of 35 to 40 L takes three). */
    private static final Map<String, Double> USUAL_LITRES =
            Map.of("growbag", 12.0, "grow bag", 12.0, "bucket", 12.0, "basket", 6.0, "trough", 8.0, "tub", 25.0);
    /** Names of soils that the table does not have, by the nearest that it has. */
    private static final Map<String, Soil> NEAREST =
            Map.of("clay loam", Soil.SILTY_CLAY_LOAM, "chalk", Soil.SANDY_LOAM, "peat", Soil.SILT_LOAM);

    static Optional<Standing> of(Subject subject) {
        Sheet.PlantingOut out = subject.sheet().plantingOut();
        if (out == null || out.spacingCm() == null || out.rowSpacingCm() == null) {
            return Optional.empty();
        }
        double area = Math.min(
                MOST_AREA_M2,
                out.spacingCm().low() / CM_PER_M * out.rowSpacingCm().low() / CM_PER_M);
        Integer count = subject.planting().count() == null || subject.planting().count() < 1
                ? subject.planting().sown()
                : subject.planting().count();
        int plants = count == null || count < 1 ? 1 : Math.min(1000, count);
        String container = subject.planting().container();
        return container == null
                ? Optional.of(bed(subject, area, plants, count != null))
                : pots(subject, container, area, plants, count != null);
    }

    private static Standing bed(Subject subject, double area, int plants, boolean counted) {
        String told = subject.grower().soil();
        Optional<Soil> soil = told == null
                ? Optional.empty()
                : Soil.named(told).or(() -> Optional.ofNullable(NEAREST.get(told.toLowerCase(Locale.ROOT))));
        return new Standing(
                new OpenGround(soil.orElse(Soil.LOAM), Math.max(0.01, plants * area)),
                plants,
                counted,
                counted && soil.isPresent());
    }

    private static Optional<Standing> pots(
            Subject subject, String container, double area, int plants, boolean counted) {
        boolean roof = subject.stands().where() != PlaceKind.OUTDOORS;
        return litres(container)
                .filter(litres -> litres >= 1 && litres * plants <= 1000)
                .map(litres -> {
                    double cube = Math.cbrt(litres / 1000);
                    double opening = roof ? 0 : OPENING_OF_CUBE * cube * cube * plants;
                    double leaves = Math.min(area, MOST_LEAVES_M2) * plants;
                    return new Standing(
                            new Container(litres * plants, Math.min(10, opening), Math.min(20, leaves)),
                            plants,
                            counted,
                            counted);
                });
    }

    /** Compost for one plant, L; empty when the container's name does not tell. */
    static Optional<Double> litres(String container) {
        Optional<Double> told = number(LITRES, container)
                .or(() -> number(GALLONS, container).map(gallons -> gallons * Units.US.gallonLitres()))
                .or(() -> number(RIM_CM, container).map(Standing::potLitres))
                .or(() -> number(RIM_INCH, container).map(inches -> potLitres(inches * 2.54)));
        return told.or(() -> USUAL_LITRES.entrySet().stream()
                .filter(usual -> container.toLowerCase(Locale.ROOT).contains(usual.getKey()))
                .map(Map.Entry::getValue)
                .findFirst());
    }

    private static double potLitres(double rimCm) {
        double rim = Math.max(2, Math.min(200, rimCm));
        return Filling.potLitres(rim, 0.7 * rim, 0.9 * rim);
    }

    private static Optional<Double> number(Pattern pattern, String container) {
        Matcher found = pattern.matcher(container);
        return found.find() ? Optional.of(Double.valueOf(found.group(1))) : Optional.empty();
    }
}
