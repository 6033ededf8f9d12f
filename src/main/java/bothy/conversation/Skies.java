package bothy.conversation;

import bothy.diary.Page;
import bothy.garden.Grower;
import bothy.garden.WeatherDay;
import bothy.weather.WeatherSource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;

/** The weather at a grower's place: past days as kept with the diary, the days ahead as the source tells them. */
final class Skies {
    /** A season and what stood before it. */
    private static final int DAYS_KEPT = 400;

    private Skies() {}

    /** Days in order, each once. What the source tells of days past is kept, so that it outlives a restart and an outage. */
    static List<WeatherDay> over(Page page, WeatherSource source, Grower grower, LocalDate today) {
        TreeMap<LocalDate, WeatherDay> days = new TreeMap<>();
        String place = place(grower);
        page.weather(place, today.minusDays(DAYS_KEPT)).forEach(day -> days.put(day.date(), day));
        List<WeatherDay> fresh = new ArrayList<>();
        for (WeatherDay day : source.around(grower, today)) {
            boolean past = day.date().isBefore(today);
            WeatherDay known = past ? observed(day) : day;
            if (!known.equals(days.put(day.date(), known)) && past) {
                fresh.add(known);
            }
        }
        if (!fresh.isEmpty()) {
            page.keepWeather(place, fresh);
        }
        return List.copyOf(days.values());
    }

    private static WeatherDay observed(WeatherDay day) {
        return new WeatherDay(day.date(), day.tmin(), day.tmax(), day.rain(), true, day.humidHours(), day.windMs());
    }

    /** The place by a hundredth of a degree, empty when not told: days of another place do not count. */
    static String place(Grower grower) {
        return grower.latitude() == null || grower.longitude() == null
                ? ""
                : String.format(Locale.ROOT, "%.2f %.2f", grower.latitude(), grower.longitude());
    }
}
