package bothy.garden;

/** Where on earth a place can be. */
public final class Earth {
    private static final double RADIUS_KM = 6371;
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

    /** The great circle distance between two places by the haversine formula, km. */
    public static double kilometres(double latitude, double longitude, double otherLatitude, double otherLongitude) {
        double north = Math.toRadians(otherLatitude - latitude) / 2;
        double east = Math.toRadians(otherLongitude - longitude) / 2;
        double half = Math.pow(Math.sin(north), 2)
                + Math.cos(Math.toRadians(latitude))
                        * Math.cos(Math.toRadians(otherLatitude))
                        * Math.pow(Math.sin(east), 2);
        return 2 * RADIUS_KM * Math.asin(Math.min(1, Math.sqrt(half)));
    }
}
