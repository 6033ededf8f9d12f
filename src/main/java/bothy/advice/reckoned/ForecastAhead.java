package bothy.advice.reckoned;

import java.time.LocalDate;

/**
 * What the days ahead bring, in one look, when that is asked. A figure of which nothing is known is {@code null}.
 *
 * @param until last day of the forecast
 * @param coldestC lowest temperature, °C
 * @param coldestOn the day before whose morning that is
 * @param hottestC highest temperature, °C
 * @param hottestOn its day
 * @param allRainMm rain of all these days together, mm
 * @param wettestMm most rain of a day, mm
 * @param wettestOn its day
 * @param strongestKmh strongest wind, km/h
 * @param strongestOn its day
 */
public record ForecastAhead(
        LocalDate until,
        Double coldestC,
        LocalDate coldestOn,
        Double hottestC,
        LocalDate hottestOn,
        Double allRainMm,
        Double wettestMm,
        LocalDate wettestOn,
        Double strongestKmh,
        LocalDate strongestOn) {}
