package bothy.garden;

import java.time.MonthDay;
import java.time.ZoneId;
import java.util.Set;

/**
 * What is settled about one grower.
 *
 * @param zone time zone
 * @param latitude degrees, −90 to 90, south negative; {@code null} when not told
 * @param longitude degrees, −180 to 180, west negative; {@code null} when not told
 * @param lastSpringFrost usual last frost of spring, {@code null} when not told
 * @param firstAutumnFrost usual first frost of autumn, {@code null} when not told
 * @param units units to answer in
 * @param soil texture of the open ground ("sand", "loam", "clay" …), {@code null} when not told
 * @param monthFirst whether 5/6 means 6 May (true) or 5 June (false)
 * @param frostFree whether frost was told never to come, or hardly ever
 * @param climate what the grower called the climate, {@code null} when not told
 */
public record Grower(
        ZoneId zone,
        Double latitude,
        Double longitude,
        MonthDay lastSpringFrost,
        MonthDay firstAutumnFrost,
        Units units,
        String soil,
        boolean monthFirst,
        boolean frostFree,
        Climate climate) {

    /** A grower who told nothing of the climate beside frost dates. */
    public Grower(
            ZoneId zone,
            Double latitude,
            Double longitude,
            MonthDay lastSpringFrost,
            MonthDay firstAutumnFrost,
            Units units,
            String soil,
            boolean monthFirst) {
        this(zone, latitude, longitude, lastSpringFrost, firstAutumnFrost, units, soil, monthFirst, false, null);
    }

    private static final Set<String> COOL_SUMMERS = Set.of(
            "Europe/Dublin",
            "Eire",
            "Europe/London",
            "Europe/Belfast",
            "Europe/Isle_of_Man",
            "Europe/Jersey",
            "Europe/Guernsey",
            "GB",
            "Europe/Oslo",
            "Europe/Stockholm",
            "Europe/Copenhagen",
            "Europe/Helsinki",
            "Europe/Amsterdam",
            "Atlantic/Reykjavik",
            "Atlantic/Faroe",
            "Australia/Hobart");

    public static Grower in(ZoneId zone) {
        return new Grower(zone, null, null, null, null, Units.METRIC, null, false);
    }

    /** Where summers are cool and damp by the sea and nothing ripens as fast as the books of warmer countries say. By judgement. */
    public boolean coolSummers() {
        return COOL_SUMMERS.contains(zone.getId());
    }

    /** South of the equator, where spring begins in September. Unknown latitude counts as north unless the zone says otherwise. */
    public boolean southern() {
        if (latitude != null) {
            return latitude < 0;
        }
        String id = zone.getId();
        return id.startsWith("Australia/")
                || id.startsWith("Antarctica/")
                || id.equals("Pacific/Auckland")
                || id.equals("Africa/Johannesburg")
                || id.startsWith("America/Argentina/")
                || id.equals("America/Santiago")
                || id.equals("America/Montevideo")
                || id.equals("America/Sao_Paulo");
    }
}
