package bothy.advice.reckoned;

import java.time.LocalDate;
import java.util.List;

/**
 * How long a stored crop keeps.
 *
 * @param from earliest day on which it may come to its end
 * @param to latest
 * @param storeTempC temperature of the store as told, °C, {@code null} when not told
 * @param checks next days to look it over
 * @param told whether the store's temperature was told
 */
public record Keeps(
        String planting, LocalDate from, LocalDate to, Double storeTempC, List<LocalDate> checks, boolean told) {}
