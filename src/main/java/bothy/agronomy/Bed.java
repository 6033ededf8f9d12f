package bothy.agronomy;

/** The shape of a bed. A plant stands at least half its spacing from the edge, so that each has the room that the spacing gives. */
public sealed interface Bed {
    /** Length of the box around the bed, m. */
    double lengthM();

    /** Width of the box around the bed, m. */
    double widthM();

    /** Area, m². */
    double areaM2();

    /** Whether a plant at x, y (m from a corner of the box) is at least so far within the edge. */
    boolean holds(double xM, double yM, double marginAlongM, double marginAcrossM);

    /**
     * @param lengthM 0.05 to 1000 m
     * @param widthM 0.05 to 1000 m
     */
    record Rectangle(double lengthM, double widthM) implements Bed {
        public Rectangle {
            Stated.within("lengthM", lengthM, 0.05, 1000, "m");
            Stated.within("widthM", widthM, 0.05, 1000, "m");
        }

        @Override
        public double areaM2() {
            return lengthM * widthM;
        }

        @Override
        public boolean holds(double xM, double yM, double marginAlongM, double marginAcrossM) {
            return Math.min(xM, lengthM - xM) >= marginAlongM - Spacing.HAIR_M
                    && Math.min(yM, widthM - yM) >= marginAcrossM - Spacing.HAIR_M;
        }
    }

    /** @param diameterM 0.05 to 1000 m */
    record Round(double diameterM) implements Bed {
        public Round {
            Stated.within("diameterM", diameterM, 0.05, 1000, "m");
        }

        @Override
        public double lengthM() {
            return diameterM;
        }

        @Override
        public double widthM() {
            return diameterM;
        }

        @Override
        public double areaM2() {
            return Math.PI * diameterM * diameterM / 4;
        }

        @Override
        public boolean holds(double xM, double yM, double marginAlongM, double marginAcrossM) {
            double radius = diameterM / 2;
            return Math.hypot(xM - radius, yM - radius)
                    <= radius - Math.min(marginAlongM, marginAcrossM) + Spacing.HAIR_M;
        }
    }

    /**
     * The corner of a bed cut off at a right angle.
     *
     * @param lengthM one side at the right angle, 0.05 to 1000 m
     * @param widthM the other, 0.05 to 1000 m
     */
    record Corner(double lengthM, double widthM) implements Bed {
        public Corner {
            Stated.within("lengthM", lengthM, 0.05, 1000, "m");
            Stated.within("widthM", widthM, 0.05, 1000, "m");
        }

        @Override
        public double areaM2() {
            return lengthM * widthM / 2;
        }

        @Override
        public boolean holds(double xM, double yM, double marginAlongM, double marginAcrossM) {
            double fromSlope = (1 - xM / lengthM - yM / widthM) / Math.hypot(1 / lengthM, 1 / widthM);
            return xM >= marginAlongM - Spacing.HAIR_M
                    && yM >= marginAcrossM - Spacing.HAIR_M
                    && fromSlope >= Math.min(marginAlongM, marginAcrossM) - Spacing.HAIR_M;
        }
    }
}
