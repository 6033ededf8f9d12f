package bothy.agronomy.climate;

import static bothy.agronomy.Stated.within;

import java.util.ArrayList;
import java.util.List;

/**
 * Soil temperature at sowing depth out of doors where nobody measured it. Own model, no source: soil follows the air's mean and lags,
 * so the mean of a day and the six before it is taken; bare moist soil in sun is a degree or two warmer, under snow all is
 * different. A thermometer in the bed at nine in the morning is better.
 */
public final class SoilWarmth {
    private static final int DAYS = 7;

    private SoilWarmth() {}

    /**
     * Soil temperature of each day, °C; the first six days take the mean of what is there.
     *
     * @param dailyMeanAirC mean air temperature of each day in order, −60 to 60 °C
     */
    public static List<Double> fromAirC(List<Double> dailyMeanAirC) {
        List<Double> soil = new ArrayList<>();
        for (int day = 0; day < dailyMeanAirC.size(); day++) {
            within("dailyMeanAirC", dailyMeanAirC.get(day), -60, 60, "°C");
            int first = Math.max(0, day - DAYS + 1);
            double sum = 0;
            for (int back = first; back <= day; back++) {
                sum += dailyMeanAirC.get(back);
            }
            soil.add(sum / (day - first + 1));
        }
        return soil;
    }
}
