package bothy.diary;

import bothy.garden.Earth;
import bothy.garden.Grower;
import bothy.garden.SettingChange;
import bothy.garden.Units;
import java.time.DateTimeException;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoublePredicate;
import java.util.function.Function;

/** The settings told so far, later ones over earlier ones. A value that cannot be read leaves the earlier one. */
final class Settings {
    private final ZoneId channelZone;
    private final Map<String, String> values = new HashMap<>();

    Settings(ZoneId channelZone) {
        this.channelZone = channelZone;
    }

    void take(SettingChange change) {
        values.put(change.setting(), change.value());
    }

    Grower grower() {
        ZoneId zone = read("zone", ZoneId::of, channelZone);
        // The channel's zone is only taken for granted, so it says nothing of the grower's habits.
        Units usual = values.containsKey("zone") ? Units.usualIn(zone) : Units.METRIC;
        Units units = read("units", value -> Units.valueOf(value.toUpperCase(Locale.ROOT)), usual);
        return new Grower(
                zone,
                read("latitude", value -> within(value, Earth::hasLatitude), null),
                read("longitude", value -> within(value, Earth::hasLongitude), null),
                read("lastSpringFrost", value -> MonthDay.parse("--" + value), null),
                read("firstAutumnFrost", value -> MonthDay.parse("--" + value), null),
                units,
                values.get("soil"),
                read("dates", "month-first"::equals, units == Units.US));
    }

    private static Double within(String value, DoublePredicate onEarth) {
        double degrees = Double.parseDouble(value);
        if (!onEarth.test(degrees)) {
            throw new IllegalArgumentException("no place on earth");
        }
        return degrees;
    }

    private <T> T read(String name, Function<String, T> reading, T otherwise) {
        String value = values.get(name);
        if (value == null) {
            return otherwise;
        }
        try {
            return reading.apply(value);
        } catch (DateTimeException | IllegalArgumentException unreadable) {
            return otherwise;
        }
    }
}
