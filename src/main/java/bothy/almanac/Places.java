package bothy.almanac;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What kind of place "the porch" or "bed 2" is, and how warm it usually is there. From {@code places.yaml}. */
public final class Places {
    private final List<Place> places;

    private record Place(String word, PlaceKind kind, Double tempC) {}

    private Places(List<Place> places) {
        this.places = places;
    }

    /**
     * Reads the file.
     *
     * @throws RulesBroken with file and line
     */
    public static Places in(RulesFolder folder) {
        YamlFile file = YamlFile.in(folder, "places.yaml");
        List<Place> places = new ArrayList<>();
        JsonNode kinds = file.tree();
        for (PlaceKind kind : PlaceKind.values()) {
            String key = kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
            JsonNode named = kinds.path(key);
            if (!named.isObject()) {
                throw new RulesBroken(List.of(file.problem(
                        "/" + key,
                        "the places of kind \"" + key
                                + "\" are missing: list them as word: {tempC: usual temperature or ~}.")));
            }
            named.fields()
                    .forEachRemaining(entry -> places.add(new Place(
                            entry.getKey(),
                            kind,
                            entry.getValue().path("tempC").isNumber()
                                    ? entry.getValue().path("tempC").asDouble()
                                    : null)));
        }
        places.sort(Comparator.comparing((Place place) -> place.word().length()).reversed());
        return new Places(places);
    }

    /** The kind of a place by the longest known word in its name; empty when the name is {@code null} or has no known word. */
    public Optional<PlaceKind> kind(String place) {
        return find(place).map(Place::kind);
    }

    /** The temperature usual in a place, °C. */
    public Optional<Double> usualTempC(String place) {
        return find(place).map(Place::tempC);
    }

    /** The temperature usual in a kind of place, °C, under the word that the file gives for "any". */
    public Optional<Double> usualTempC(PlaceKind kind) {
        return places.stream()
                .filter(place -> place.kind() == kind && place.word().equals("any"))
                .map(Place::tempC)
                .filter(java.util.Objects::nonNull)
                .findFirst();
    }

    private Optional<Place> find(String name) {
        if (name == null) {
            return Optional.empty();
        }
        String lower = " " + name.toLowerCase(Locale.ROOT) + " ";
        return places.stream()
                .filter(place -> lower.contains(" " + place.word()))
                .findFirst();
    }
}
