package bothy.agronomy.climate;

import static bothy.agronomy.Stated.within;

import java.util.List;

/** Weather in which late blight of potato and tomato spreads, by published criteria. */
public final class BlightWeather {
    private BlightWeather() {}

    /**
     * A day as the criteria look at it.
     *
     * @param tminC lowest temperature, −60 to 60 °C
     * @param humidHours hours with a relative humidity of 90 % or more, 0 to 24
     */
    public record HumidDay(double tminC, double humidHours) {
        public HumidDay {
            within("tminC", tminC, -60, 60, "°C");
            within("humidHours", humidHours, 0, 24, "h");
        }

        private boolean meets(double leastHours) {
            return tminC >= 10 && humidHours >= leastHours;
        }
    }

    /**
     * A day of which only temperatures and rain are known.
     *
     * @param tminC −60 to 60 °C
     * @param tmaxC not below {@code tminC}, to 60 °C
     * @param rainMm 0 to 2000 mm
     */
    public record RainDay(double tminC, double tmaxC, double rainMm) {
        public RainDay {
            within("tminC", tminC, -60, 60, "°C");
            within("tmaxC", tmaxC, tminC, 60, "°C");
            within("rainMm", rainMm, 0, 2000, "mm");
        }
    }

    /**
     * Hutton criteria (AHDB, James Hutton Institute): on two days running at least 10 °C as the lowest temperature and at least 6 hours
     * with 90 % humidity.
     *
     * @param yesterday the first of the two days
     * @param today the second
     */
    public static boolean hutton(HumidDay yesterday, HumidDay today) {
        return yesterday.meets(6) && today.meets(6);
    }

    /**
     * Smith period (Smith 1956), the older criterion: 10 °C on both days, 10 humid hours on the first and 11 on the second. Sources
     * differ; the classic wording is 11 hours on each day.
     */
    public static boolean smith(HumidDay yesterday, HumidDay today) {
        return yesterday.meets(10) && today.meets(11);
    }

    /**
     * A blight-favourable day where humidity is not known (Hyre 1954): the mean of the last five days below 25.5 °C, at least 30 mm of rain
     * in the last ten, and no less than 7.2 °C today.
     *
     * @param lastTen ten days in order, today last
     */
    public static boolean hyre(List<RainDay> lastTen) {
        within("days", lastTen.size(), 10, 10, "days");
        double mean = lastTen.subList(5, 10).stream()
                .mapToDouble(day -> (day.tminC() + day.tmaxC()) / 2)
                .average()
                .orElseThrow();
        double rain = lastTen.stream().mapToDouble(RainDay::rainMm).sum();
        return mean < 25.5 && rain >= 30 && lastTen.get(9).tminC() >= 7.2;
    }
}
