package bothy.advice.reckoned;

import java.time.LocalDate;
import java.util.List;

/**
 * When to sow again for a crop that goes on.
 *
 * @param next the next sowings, the first of them today or later
 * @param last the last day on which a sowing still ripens
 * @param told whether it rests on told frost dates
 */
public record SowAgain(String planting, List<LocalDate> next, LocalDate last, boolean told) {}
