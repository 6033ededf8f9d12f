package bothy.advice.reckoned;

import java.time.LocalDate;

/**
 * The chance of a frost on or beyond a day asked about: after it in spring, up to it in autumn.
 *
 * @param on the day asked about
 * @param which "last" of spring or "first" of autumn, whichever is nearer to the day
 * @param chancePercent years in a hundred, %
 * @param basis what it rests on, as in {@link FrostOdds}
 * @param told whether it rests on a record or on what the grower told
 */
public record FrostChance(LocalDate on, String which, double chancePercent, String basis, boolean told) {}
