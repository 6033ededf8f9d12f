package bothy.diary;

import bothy.garden.Climate;
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
import java.util.Set;
import java.util.function.DoublePredicate;
import java.util.function.Function;

/** The settings told so far, later ones over earlier ones. A value that cannot be read leaves the earlier one. */
final class Settings {
    private static final String FROSTS = "frosts";
    private static final Set<String> FROST_DATES = Set.of("lastSpringFrost", "firstAutumnFrost");

    private static final double SAME_PLACE_DEGREES = 1;

    private final ZoneId channelZone;
    private final Map<String, String> values = new HashMap<>();

    Settings(ZoneId channelZone) {
        this.channelZone = channelZone;
    }

    void take(SettingChange change) {
        // Whoever tells a frost date has frost, and whoever has none has no date.
        if (FROST_DATES.contains(change.setting())) {
            values.remove(FROSTS);
        } else if (change.setting().equals(FROSTS)) {
            values.keySet().removeAll(FROST_DATES);
        } else if (change.setting().equals("latitude") && movedAway(change)) {
            values.keySet().removeAll(Set.of(FROSTS, "climate"));
        }
        values.put(change.setting(), change.value());
    }

    /** Whether a place told is another than before, whose frosts say nothing of it. */
    private boolean movedAway(SettingChange change) {
        Double before = read("latitude", value -> within(value, Earth::hasLatitude), null);
        try {
            return before != null && Math.abs(Double.parseDouble(change.value()) - before) > SAME_PLACE_DEGREES;
        } catch (NumberFormatException unreadable) {
            return false;
        }
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
                read("dates", "month-first"::equals, units == Units.US),
                "frost-free".equals(values.get(FROSTS)),
                read("climate", Climate::of, null));
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
