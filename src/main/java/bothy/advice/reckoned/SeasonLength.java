package bothy.advice.reckoned;

/**
 * The season without frost at the grower's place.
 *
 * @param frostFreeDays days between the last and the first frost of a usual year
 * @param basis as for {@link FrostOdds}
 * @param told as for {@link FrostOdds}
 */
public record SeasonLength(long frostFreeDays, String basis, boolean told) {}
