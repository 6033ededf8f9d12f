package bothy.garden;

import java.time.MonthDay;
import java.time.ZoneId;

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
 */
public record Grower(
        ZoneId zone,
        Double latitude,
        Double longitude,
        MonthDay lastSpringFrost,
        MonthDay firstAutumnFrost,
        Units units,
        String soil,
        boolean monthFirst) {

    public static Grower in(ZoneId zone) {
        return new Grower(zone, null, null, null, null, Units.METRIC, null, false);
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
