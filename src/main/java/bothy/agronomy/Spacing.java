package bothy.agronomy;

/**
 * How plants are set out: on a square, in rows, or offset (each in the gap of the row before, rows closer by √3/2, so that all
 * neighbours are equally far). Plane geometry; no source needed.
 *
 * @param alongM between plants in the row, 0.01 to 10 m
 * @param acrossM between rows, 0.01 to 10 m
 * @param offset whether every second row is moved by half a spacing
 */
public record Spacing(double alongM, double acrossM, boolean offset) {
    /** Lengths that differ by less than this, a hundredth of a millimetre, count as equal. */
    static final double HAIR_M = 1e-5;

    private static final double MOST_PLANTS = 4_000_000;

    public Spacing {
        Stated.within("alongM", alongM, 0.01, 10, "m");
        Stated.within("acrossM", acrossM, 0.005, 10, "m");
    }

    /** The same distance both ways. */
    public static Spacing square(double spacingM) {
        return new Spacing(spacingM, spacingM, false);
    }

    /** In rows. */
    public static Spacing rows(double alongM, double acrossM) {
        return new Spacing(alongM, acrossM, false);
    }

    /** The same distance to all six neighbours; 15 % more plants than on a square in a large bed. */
    public static Spacing offset(double spacingM) {
        return new Spacing(spacingM, spacingM * Math.sqrt(3) / 2, true);
    }

    /** Room that one plant has in a large bed, m². */
    public double areaPerPlantM2() {
        return alongM * acrossM;
    }

    /**
     * Plants that fit into a bed, rows laid the better way round. A bed narrower than the distance between rows still takes one row.
     *
     * @param bed of a size and spacing that give no more than 4 million plants
     */
    public int plantsIn(Bed bed) {
        Stated.within("plants that could fit", bed.areaM2() / areaPerPlantM2(), 0, MOST_PLANTS, "plants");
        double across = Math.min(acrossM, Math.min(bed.lengthM(), bed.widthM()));
        return Math.max(most(bed, across, false), most(bed, across, true));
    }

    /** Plants that fit when a corner of the pattern, or its middle, is laid on the bed's first place or on its middle. */
    private int most(Bed bed, double across, boolean turned) {
        double length = turned ? bed.widthM() : bed.lengthM();
        double width = turned ? bed.lengthM() : bed.widthM();
        double marginAcross = offset ? alongM / 2 : across / 2;
        int best = 0;
        for (double x0 : new double[] {alongM / 2, length / 2 % alongM, (length + alongM) / 2 % alongM}) {
            for (double y0 : new double[] {marginAcross, width / 2 % across, (width + across) / 2 % across}) {
                best = Math.max(best, count(bed, turned, x0, y0, across, marginAcross));
            }
        }
        return best;
    }

    private int count(Bed bed, boolean turned, double x0, double y0, double across, double marginAcross) {
        double length = turned ? bed.widthM() : bed.lengthM();
        double width = turned ? bed.lengthM() : bed.widthM();
        int plants = 0;
        for (int row = 0; y0 + row * across <= width; row++) {
            double y = y0 + row * across;
            double shift = offset && row % 2 != 0 ? alongM / 2 : 0;
            for (double x = x0 - alongM + shift; x <= length; x += alongM) {
                boolean within =
                        turned ? bed.holds(y, x, marginAcross, alongM / 2) : bed.holds(x, y, alongM / 2, marginAcross);
                plants += within ? 1 : 0;
            }
        }
        return plants;
    }
}
