package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Earth;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Time zones that a place may lie in: those of the nearest cities of the words file. A guess to be confirmed, not a map. */
final class ZonesNear {
    private static final String FILE = "settings";
    private static final double FAR_KM = 1500;

    private final Words words;
    private volatile List<City> cities;

    private record City(String zone, double latitude, double longitude) {}

    ZonesNear(Words words) {
        this.words = words;
    }

    /** Read when a place is first told. */
    private List<City> cities() {
        List<City> read = cities;
        if (read == null) {
            read = read();
            cities = read;
        }
        return read;
    }

    private List<City> read() {
        List<City> read = new ArrayList<>();
        Set<String> known = ZoneId.getAvailableZoneIds();
        for (String name : words.names(FILE, "/cities")) {
            String[] parts = words.text(FILE, "/cities/" + name, "").split(" ");
            if (parts.length == 3 && known.contains(parts[0])) {
                read.add(new City(parts[0], Double.parseDouble(parts[1]), Double.parseDouble(parts[2])));
            }
        }
        return List.copyOf(read);
    }

    List<String> of(double latitude, double longitude, int atMost) {
        Set<String> zones = new LinkedHashSet<>();
        cities().stream()
                .filter(city -> kilometres(city, latitude, longitude) < FAR_KM)
                .sorted(Comparator.comparingDouble(city -> kilometres(city, latitude, longitude)))
                .forEach(city -> zones.add(city.zone()));
        return zones.stream().limit(atMost).toList();
    }

    private static double kilometres(City city, double latitude, double longitude) {
        return Earth.kilometres(latitude, longitude, city.latitude(), city.longitude());
    }
}
