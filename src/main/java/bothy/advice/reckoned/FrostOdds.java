package bothy.advice.reckoned;

import java.time.LocalDate;

/**
 * The chances of a frost of the season at hand at the grower's place.
 *
 * @param which "last" of spring or "first" of autumn
 * @param earlyFrost it comes later than this in nine years of ten
 * @param evenFrost as often later as earlier
 * @param lateFrost it comes later than this in one year of ten
 * @param basis what it rests on: "frost-by-record", "frost-as-told" or "frost-by-latitude"
 * @param told whether it rests on a record or on what the grower told
 */
public record FrostOdds(
        String which, LocalDate earlyFrost, LocalDate evenFrost, LocalDate lateFrost, String basis, boolean told) {}
