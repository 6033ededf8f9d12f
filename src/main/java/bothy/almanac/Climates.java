package bothy.almanac;

import bothy.garden.Climate;
import bothy.garden.Earth;
import bothy.garden.Grower;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What climate a grower likely has: told, by the nearest place of {@code climates.yaml}, by the time zone, or by the latitude. */
public final class Climates {
    private static final String FILE = "climates.yaml";
    private static final String DRY = "dry";
    private static final String DATE = "\\d\\d-\\d\\d";
    /** Between the tropics, and so near to them that frost is not usual; degrees. */
    private static final double TROPIC = 23.44;

    private static final double FROST_SELDOM = 30;
    /** Further from the equator no summer is too hot for the crops of spring; degrees. */
    private static final double NO_HOT_SUMMER = 45;

    private final List<Place> places = new ArrayList<>();
    private final Map<String, Place> zones = new HashMap<>();
    private final Map<Climate, MonthDay[]> seasons = new HashMap<>();
    private double nearKm;

    private record Place(String name, double latitude, double longitude, Usual usual) {}

    /**
     * What is usual at a place.
     *
     * @param climate what winters and summers are like
     * @param lastSpring usual last frost, {@code null} where there hardly ever is one or it is not known
     * @param firstAutumn usual first frost, {@code null} likewise
     * @param latitude degrees, {@code null} when not known
     * @param dry whether summers bring little rain
     */
    public record Usual(Climate climate, MonthDay lastSpring, MonthDay firstAutumn, Double latitude, boolean dry) {

        /** Whether frost hardly ever comes. */
        public boolean frostFree() {
            return climate != Climate.FROSTY && lastSpring == null;
        }
    }

    private Climates() {}

    /** Climates of no place: everything goes by what was told and by the latitude. */
    public static Climates ofNoPlace() {
        Climates none = new Climates();
        none.seasons.put(Climate.MILD, new MonthDay[] {MonthDay.of(3, 20), MonthDay.of(12, 1)});
        return none;
    }

    /**
     * Reads the file.
     *
     * @throws RulesBroken with file and line
     */
    public static Climates in(RulesFolder folder) {
        YamlFile file = YamlFile.in(folder, FILE);
        Climates read = new Climates();
        read.nearKm = file.tree().path("nearKm").asDouble();
        List<Problem> problems = new ArrayList<>();
        file.tree().path("seasons").fields().forEachRemaining(entry -> {
            try {
                String[] days = entry.getValue().asText().split(" ");
                read.seasons.put(Climate.of(entry.getKey()), new MonthDay[] {day(days[0]), day(days[1])});
            } catch (DateTimeException | IllegalArgumentException | ArrayIndexOutOfBoundsException wrong) {
                problems.add(file.problem("/seasons/" + entry.getKey(), "write climate: month-day month-day."));
            }
        });
        file.tree().path("places").fields().forEachRemaining(entry -> read.places(file, entry, problems));
        file.tree().path("zones").fields().forEachRemaining(entry -> read.places.stream()
                .filter(place -> place.name().equals(entry.getValue().asText()))
                .findFirst()
                .ifPresentOrElse(
                        place -> read.zones.put(entry.getKey(), place),
                        () -> problems.add(
                                file.problem("/zones", "no place " + entry.getValue() + " stands under places:."))));
        if (!problems.isEmpty()) {
            throw new RulesBroken(problems);
        }
        return read;
    }

    private void places(YamlFile file, Map.Entry<String, JsonNode> ofClimate, List<Problem> problems) {
        ofClimate.getValue().fields().forEachRemaining(entry -> {
            try {
                places.add(place(
                        Climate.of(ofClimate.getKey()),
                        entry.getKey(),
                        entry.getValue().asText().split(" ")));
            } catch (DateTimeException | IllegalArgumentException | ArrayIndexOutOfBoundsException wrong) {
                problems.add(
                        file.problem(
                                "/places/" + ofClimate.getKey() + "/" + entry.getKey(),
                                "write latitude longitude, then last and first frost as month-day or nothing, then dry or nothing."));
            }
        });
    }

    private static Place place(Climate climate, String name, String[] parts) {
        double latitude = Double.parseDouble(parts[0]);
        double longitude = Double.parseDouble(parts[1]);
        boolean dry = parts[parts.length - 1].equals(DRY);
        boolean frosts = parts.length > 3 && parts[2].matches(DATE);
        if (!Earth.hasLatitude(latitude)
                || !Earth.hasLongitude(longitude)
                || parts.length > (frosts ? 4 : 2) + (dry ? 1 : 0)) {
            throw new IllegalArgumentException(name);
        }
        return new Place(
                name,
                latitude,
                longitude,
                new Usual(climate, frosts ? day(parts[2]) : null, frosts ? day(parts[3]) : null, latitude, dry));
    }

    private static MonthDay day(String written) {
        return MonthDay.parse("--" + written);
    }

    /**
     * What is usual where a grower gardens, beside the frost dates that were told: a climate told, or one of a grower who told that there
     * is no frost, is kept with what else is known of the place.
     */
    public Usual at(Grower grower) {
        Optional<Usual> known = near(grower)
                .or(() -> grower.latitude() == null
                        ? Optional.ofNullable(zones.get(grower.zone().getId())).map(Place::usual)
                        : Optional.empty());
        Usual usual = known.orElseGet(() -> byLatitude(grower.latitude()));
        Climate told = grower.climate();
        if (told == Climate.MILD && !warmWinters(usual, grower)) {
            // "Mild winters" in the north of Europe still freeze.
            told = null;
        }
        if (told != null && told != usual.climate()) {
            boolean frosts = told == Climate.FROSTY;
            return new Usual(
                    told,
                    frosts ? usual.lastSpring() : null,
                    frosts ? usual.firstAutumn() : null,
                    usual.latitude(),
                    usual.dry());
        }
        if (grower.frostFree()) {
            Climate mild = usual.climate() == Climate.FROSTY ? mild(usual.latitude()) : usual.climate();
            return new Usual(mild, null, null, usual.latitude(), usual.dry());
        }
        return usual;
    }

    private Optional<Usual> near(Grower grower) {
        if (grower.latitude() == null || grower.longitude() == null) {
            return Optional.empty();
        }
        record Away(Place place, double km) {}
        return places.stream()
                .map(place -> new Away(
                        place,
                        Earth.kilometres(grower.latitude(), grower.longitude(), place.latitude(), place.longitude())))
                .filter(away -> away.km() <= nearKm)
                .min(Comparator.comparingDouble(Away::km))
                .map(away -> away.place().usual());
    }

    private static Usual byLatitude(Double latitude) {
        if (latitude == null || Math.abs(latitude) >= FROST_SELDOM) {
            return new Usual(Climate.FROSTY, null, null, latitude, false);
        }
        return new Usual(mild(latitude), null, null, latitude, false);
    }

    private static boolean warmWinters(Usual usual, Grower grower) {
        return usual.latitude() == null
                ? !grower.zone().getId().startsWith("Europe/")
                : Math.abs(usual.latitude()) < NO_HOT_SUMMER;
    }

    /** Of places without frost. */
    private static Climate mild(Double latitude) {
        double away = latitude == null ? NO_HOT_SUMMER - 1 : Math.abs(latitude);
        if (away < TROPIC) {
            return Climate.TROPICAL;
        }
        return away < FROST_SELDOM
                ? Climate.SUBTROPICAL
                : away < NO_HOT_SUMMER ? Climate.MILD : Climate.MILD_COOL_SUMMER;
    }

    /** When the warm season of a climate without frost begins and ends, in the northern half. */
    public MonthDay[] season(Climate climate) {
        return seasons.getOrDefault(climate, seasons.get(Climate.MILD)).clone();
    }
}
