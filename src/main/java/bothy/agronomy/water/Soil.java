package bothy.agronomy.water;

import static bothy.agronomy.Stated.within;

import java.util.Locale;
import java.util.Optional;

/**
 * Soils by texture, FAO-56 Table 19: the middle of the printed spans. Water that a metre of soil holds for plants is the middle of
 * the printed span of field capacity less wilting point, which the table gives apart from the two.
 */
public enum Soil {
    SAND(0.05, 0.11, 0.02, 0.07, 0.05),
    LOAMY_SAND(0.06, 0.12, 0.03, 0.10, 0.05),
    SANDY_LOAM(0.11, 0.15, 0.06, 0.16, 0),
    LOAM(0.13, 0.18, 0.07, 0.17, 0),
    SILT_LOAM(0.13, 0.19, 0.09, 0.21, 0),
    SILT(0.16, 0.20, 0.12, 0.22, 0),
    SILTY_CLAY_LOAM(0.13, 0.18, 0.17, 0.24, -0.05),
    SILTY_CLAY(0.13, 0.19, 0.17, 0.29, -0.05),
    CLAY(0.12, 0.20, 0.20, 0.24, -0.05);

    private final double availableLow;
    private final double availableHigh;
    private final double wiltingPoint;
    private final double fineOrCoarse;

    Soil(double availableLow, double availableHigh, double wiltingLow, double wiltingHigh, double fineOrCoarse) {
        this.availableLow = availableLow;
        this.availableHigh = availableHigh;
        this.wiltingPoint = (wiltingLow + wiltingHigh) / 2;
        this.fineOrCoarse = fineOrCoarse;
    }

    /** The soil of a name as told ("loam", "sandy loam"), empty for a name that is no texture. */
    public static Optional<Soil> named(String texture) {
        String name = texture.strip().toUpperCase(Locale.ROOT).replace(' ', '_').replace('-', '_');
        for (Soil soil : values()) {
            if (soil.name().equals(name)) {
                return Optional.of(soil);
            }
        }
        return Optional.empty();
    }

    /** Water for plants that a metre depth holds between field capacity and wilting point, mm. */
    public double availableMmPerM() {
        return 1000 * (availableLow + availableHigh) / 2;
    }

    /** Lowest and highest printed, mm a metre. */
    public double[] availableSpanMmPerM() {
        return new double[] {1000 * availableLow, 1000 * availableHigh};
    }

    /** Wilting point, m³ a m³. */
    public double wiltingPoint() {
        return wiltingPoint;
    }

    /** Field capacity, m³ a m³: wilting point and what is available above it. */
    public double fieldCapacity() {
        return wiltingPoint + availableMmPerM() / 1000;
    }

    /**
     * Total available water in the rooted soil, mm (FAO-56 Eq. 82).
     *
     * @param rootDepthM 0.01 to 3 m
     */
    public double totalAvailableMm(double rootDepthM) {
        return totalAvailableMm(fieldCapacity(), wiltingPoint, rootDepthM);
    }

    /** The same for measured field capacity and wilting point, m³ a m³ (FAO-56 Eq. 82). */
    public static double totalAvailableMm(double fieldCapacity, double wiltingPoint, double rootDepthM) {
        within("fieldCapacity", fieldCapacity, 0.01, 0.6, "m³/m³");
        within("wiltingPoint", wiltingPoint, 0, fieldCapacity, "m³/m³");
        return 1000 * (fieldCapacity - wiltingPoint) * within("rootDepthM", rootDepthM, 0.01, 3, "m");
    }

    /**
     * The share of the available water that a crop takes up freely, adjusted for the day's demand (FAO-56 p. 162: p + 0.04 (5 − ETc),
     * held to 0.1 to 0.8) and for the texture: a twentieth less in fine, a twentieth more in coarse soil (5 to 10 % in the text).
     *
     * @param tabulated p of FAO-56 Table 22, 0.1 to 0.8
     * @param cropUseMm ETc of the day, 0 to 25 mm
     */
    public double freeShare(double tabulated, double cropUseMm) {
        return Math.max(0.1, Math.min(0.8, freeShareByDemand(tabulated, cropUseMm) * (1 + fineOrCoarse)));
    }

    /** The share adjusted for demand alone. */
    public static double freeShareByDemand(double tabulated, double cropUseMm) {
        within("tabulated", tabulated, 0.1, 0.8, "");
        within("cropUseMm", cropUseMm, 0, 25, "mm");
        return Math.max(0.1, Math.min(0.8, tabulated + 0.04 * (5 - cropUseMm)));
    }
}
