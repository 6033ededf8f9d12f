package bothy.weather;

/** What the forecast service sent is not what its published format says. */
final class ForecastUnreadable extends Exception {
    private static final long serialVersionUID = 1;

    ForecastUnreadable(String what) {
        super(what);
    }
}
