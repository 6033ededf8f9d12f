package bothy.garden;

import java.time.ZoneId;
import java.util.Set;

/** The units that a grower reads and writes by default. */
public enum Units {
    METRIC,
    US;

    /** Of the time zones the cities that lie in the United States, by the IANA time zone database. */
    private static final Set<String> US_ZONES = Set.of(
            "America/New_York",
            "America/Detroit",
            "America/Chicago",
            "America/Menominee",
            "America/Denver",
            "America/Boise",
            "America/Phoenix",
            "America/Los_Angeles",
            "America/Anchorage",
            "America/Juneau",
            "Pacific/Honolulu");

    private static final Set<String> US_STATES_WITH_ZONES =
            Set.of("America/Indiana/", "America/Kentucky/", "America/North_Dakota/", "US/");

    /** What is used where a clock shows the time of a zone. */
    public static Units usualIn(ZoneId zone) {
        boolean us =
                US_ZONES.contains(zone.getId()) || US_STATES_WITH_ZONES.stream().anyMatch(zone.getId()::startsWith);
        return us ? US : METRIC;
    }
}
