package bothy.agronomy;

/** Cells, trays, pots and the compost that fills them: plain arithmetic, but for the settling of compost. */
public final class Filling {
    /** Loose compost out of the bag for one litre of filled pot: common practice, a tenth is lost to firming and spilling. */
    public static final double SETTLING = 1.1;

    /** A tray of 38 by 24 cm filled 4.5 cm deep: common practice. */
    private static final double SEED_TRAY_LITRES = 4;
    /** The same of cells, which taper: 24 of 80 ml, 40 of 50 ml. Common practice. */
    private static final double CELL_TRAY_LITRES = 2;
    /** Area of a flat of 10 by 20 inches to that of a tray. */
    private static final double FLAT_TO_TRAY = 1.4;
    /** Sets to plant beyond the number wanted, for those that rot or are eaten: common practice. */
    private static final double SPARE = 0.1;

    private Filling() {}

    /**
     * What one tray holds, L.
     *
     * @param cells whether it is divided into cells
     * @param flat whether it is an American flat of 10 by 20 inches
     */
    public static double trayLitres(boolean cells, boolean flat) {
        return (cells ? CELL_TRAY_LITRES : SEED_TRAY_LITRES) * (flat ? FLAT_TO_TRAY : 1);
    }

    /**
     * Sets, cloves or tubers to plant beyond the plants wanted.
     *
     * @param plants 1 to 1 000 000
     */
    public static int spare(int plants) {
        return (int) Math.ceil(SPARE * Stated.within("plants", plants, 1, 1_000_000, "plants"));
    }

    /**
     * Cells for so many seeds.
     *
     * @param seeds 1 to 1 000 000
     * @param seedsPerCell 1 to 50
     */
    public static int cells(int seeds, int seedsPerCell) {
        return roundUp(
                Stated.within("seeds", seeds, 1, 1_000_000, "seeds"),
                Stated.within("seedsPerCell", seedsPerCell, 1, 50, "seeds"));
    }

    /**
     * Trays for so many cells.
     *
     * @param cells 1 to 1 000 000
     * @param cellsPerTray 1 to 1000
     */
    public static int trays(int cells, int cellsPerTray) {
        return roundUp(
                Stated.within("cells", cells, 1, 1_000_000, "cells"),
                Stated.within("cellsPerTray", cellsPerTray, 1, 1000, "cells"));
    }

    /**
     * Volume of a round pot, L: a cone cut off.
     *
     * @param topDiameterCm 2 to 200 cm
     * @param bottomDiameterCm 1 to 200 cm
     * @param heightCm height that is filled, 1 to 200 cm
     */
    public static double potLitres(double topDiameterCm, double bottomDiameterCm, double heightCm) {
        double top = Stated.within("topDiameterCm", topDiameterCm, 2, 200, "cm") / 2;
        double bottom = Stated.within("bottomDiameterCm", bottomDiameterCm, 1, 200, "cm") / 2;
        Stated.within("heightCm", heightCm, 1, 200, "cm");
        return Math.PI * heightCm / 3 * (top * top + top * bottom + bottom * bottom) / 1000;
    }

    /**
     * Loose compost to buy, L.
     *
     * @param containers pots or cells to fill, 1 to 1 000 000
     * @param litresEach volume of one, 0.001 to 1000 L
     */
    public static double compostLitres(int containers, double litresEach) {
        Stated.within("containers", containers, 1, 1_000_000, "");
        return containers * Stated.within("litresEach", litresEach, 0.001, 1000, "L") * SETTLING;
    }

    /**
     * Loose soil or compost for a bed, L.
     *
     * @param bedLitres 1 to 100 000 L
     */
    public static double bedLitres(double bedLitres) {
        return Stated.within("bedLitres", bedLitres, 1, 100_000, "L") * SETTLING;
    }

    private static int roundUp(int amount, int each) {
        return (amount + each - 1) / each;
    }
}
