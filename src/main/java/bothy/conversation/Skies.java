package bothy.conversation;

import bothy.diary.Page;
import bothy.garden.Grower;
import bothy.garden.Normals;
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

    /** The place of a record taken in before the grower told where the plot is. */
    private static final String ANYWHERE = "";

    private Skies() {}

    /**
     * Days in order, each once. What the source tells is kept, so that it outlives a restart and an outage: a day was forecast whole before
     * it came, and of the day at hand a new forecast tells only what is left of it.
     */
    static List<WeatherDay> over(Page page, WeatherSource source, Grower grower, LocalDate today) {
        TreeMap<LocalDate, WeatherDay> days = new TreeMap<>();
        String place = place(grower);
        LocalDate from = today.minusDays(DAYS_KEPT);
        page.weather(ANYWHERE, from).forEach(day -> days.put(day.date(), seenOn(day, today)));
        if (!place.equals(ANYWHERE)) {
            page.weather(place, from).forEach(day -> days.put(day.date(), seenOn(day, today)));
        }
        List<WeatherDay> fresh = new ArrayList<>();
        for (WeatherDay told : source.around(grower, today)) {
            WeatherDay known = days.get(told.date());
            WeatherDay day = known == null ? told : together(known, told);
            WeatherDay settled = seenOn(day, today);
            if (!settled.equals(days.put(day.date(), settled))) {
                fresh.add(settled);
            }
        }
        if (!fresh.isEmpty()) {
            page.keepWeather(place, fresh);
        }
        return List.copyOf(days.values());
    }

    /** What a station's record makes normal there, {@code null} when none was taken in. */
    static Normals normals(Page page, Grower grower) {
        return page.normals(place(grower)).or(() -> page.normals(ANYWHERE)).orElse(null);
    }

    private static WeatherDay seenOn(WeatherDay day, LocalDate today) {
        boolean past = day.date().isBefore(today);
        return new WeatherDay(day.date(), day.tmin(), day.tmax(), day.rain(), past, day.humidHours(), day.windMs());
    }

    /** The newer figures, and the older where the newer tell nothing. */
    private static WeatherDay together(WeatherDay older, WeatherDay newer) {
        return new WeatherDay(
                newer.date(),
                newer.tmin() == null ? older.tmin() : newer.tmin(),
                newer.tmax() == null ? older.tmax() : newer.tmax(),
                newer.rain() == null ? older.rain() : newer.rain(),
                newer.observed(),
                newer.humidHours() == null ? older.humidHours() : newer.humidHours(),
                newer.windMs() == null ? older.windMs() : newer.windMs());
    }

    /** The place by a hundredth of a degree, empty when not told: days of another place do not count. */
    static String place(Grower grower) {
        return grower.latitude() == null || grower.longitude() == null
                ? ANYWHERE
                : String.format(Locale.ROOT, "%.2f %.2f", grower.latitude(), grower.longitude());
    }
}
