package bothy.almanac.troubles;

import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where in the world causes live.
 *
 * @param zones beginnings of time zones by region
 * @param lives the regions of each cause that does not live everywhere
 */
public record Regions(Map<String, List<String>> zones, Map<String, List<String>> lives) {
    /** Nothing is known of where causes live. */
    public static final Regions UNKNOWN = new Regions(Map.of(), Map.of());

    /** Whether a cause is not met where a clock shows the time of this zone; a zone of no region may have all. */
    public boolean lacks(ZoneId zone, String cause) {
        List<String> home = lives.get(cause);
        return home != null
                && zone != null
                && region(zone).filter(here -> !home.contains(here)).isPresent();
    }

    private Optional<String> region(ZoneId zone) {
        record Fitting(String region, int length) {}
        return zones.entrySet().stream()
                .flatMap(entry -> entry.getValue().stream()
                        .filter(zone.getId()::startsWith)
                        .map(beginning -> new Fitting(entry.getKey(), beginning.length())))
                .max(Comparator.comparingInt(Fitting::length))
                .map(Fitting::region);
    }
}
