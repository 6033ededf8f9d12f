package bothy.advice.reckoned;

/**
 * How many seedlings may be expected to be up today.
 *
 * @param sown seeds sown, or ten when not told
 * @param likely seedlings to expect
 * @param low as few or fewer in one case of twenty
 * @param high more in one case of twenty
 * @param soilTempC °C where they stand, {@code null} when it is not known
 */
public record UpByNow(String planting, int sown, int likely, int low, int high, Double soilTempC) {}
