package bothy.conversation;

import bothy.diary.Page;
import bothy.garden.Grower;
import bothy.garden.Normals;
import bothy.garden.SettingChange;
import bothy.garden.WeatherDay;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A weather station's record that a grower takes as that of the own place: its days, its normals, its even-odds frost dates. */
public final class StationTaken {
    private StationTaken() {}

    /** Keeps the days and the normals at the grower's place; where none was told they count wherever the plot is. */
    public static void keep(Page page, Grower grower, List<WeatherDay> days, Normals normals) {
        String place = Skies.place(grower);
        page.keepWeather(place, days);
        page.keepNormals(place, normals);
    }

    /** The frost dates of the normals as settings of the grower; none where the record has none. */
    public static List<SettingChange> frostDates(Normals normals) {
        List<SettingChange> settings = new ArrayList<>();
        add(settings, "lastSpringFrost", normals.lastSpring());
        add(settings, "firstAutumnFrost", normals.firstAutumn());
        return settings;
    }

    private static void add(List<SettingChange> settings, String name, Normals.Frost frost) {
        if (frost != null) {
            MonthDay even = frost.evenOdds();
            settings.add(new SettingChange(
                    name, String.format(Locale.ROOT, "%02d-%02d", even.getMonthValue(), even.getDayOfMonth())));
        }
    }
}
