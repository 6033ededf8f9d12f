package bothy.garden;

/** Where on earth a place can be. */
public final class Earth {
    private static final double MOST_LATITUDE = 90;
    private static final double MOST_LONGITUDE = 180;

    private Earth() {}

    /** Whether a latitude is one, degrees, south negative. */
    public static boolean hasLatitude(double degrees) {
        return Math.abs(degrees) <= MOST_LATITUDE;
    }

    /** Whether a longitude is one, degrees, west negative. */
    public static boolean hasLongitude(double degrees) {
        return Math.abs(degrees) <= MOST_LONGITUDE;
    }
}
