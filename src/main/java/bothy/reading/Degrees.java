package bothy.reading;

import bothy.garden.Earth;
import bothy.garden.SettingChange;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A place told by its degrees: "53.4, -2.2", "51.5N 0.1W", "latitude 53". */
final class Degrees {
    private static final Pattern BOTH = Pattern.compile(
            "(-?\\d{1,2}(?:\\.\\d+)?)\\s*°?\\s*([NS])?\\s*[,; ]\\s*(-?\\d{1,3}(?:\\.\\d+)?)\\s*°?\\s*([EW])?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern NAMED = Pattern.compile(
            "\\b(lat|long|lon|latt?itude|longitude)\\b\\s*(?:is|of|=|:|about|around|at|\\s)*(-?\\d{1,3}(?:\\.\\d+)?)(?![\\d.])"
                    + "\\s*(?:°|deg(?:rees?)?)?\\s*(?:(north|south|east|west|[nsew])\\b)?",
            Pattern.CASE_INSENSITIVE);
    /** Who says so tells them without decimals too. */
    private static final Pattern COORDINATES = Pattern.compile("\\bco-?ordinates?\\b", Pattern.CASE_INSENSITIVE);

    private static final Pattern LATITUDE = Pattern.compile("\\blat(?:t?itude)?\\b", Pattern.CASE_INSENSITIVE);

    private Degrees() {}

    /**
     * The place told.
     *
     * @param words a sentence
     * @param lead whether it says that it tells a place
     * @return empty when it tells none on earth
     */
    static List<SettingChange> in(String words, boolean lead) {
        Map<String, Double> named = named(words);
        if (!named.isEmpty()) {
            return onEarth(named);
        }
        Matcher both = BOTH.matcher(words);
        boolean bare = words.strip().matches("(?i)-?\\d.*[\\d°NSEW]");
        boolean told = both.find()
                && (bare || lead || LATITUDE.matcher(words).find() || coordinates(words))
                && (words.contains(".") || both.group(2) != null && both.group(4) != null || coordinates(words));
        return told ? onEarth(both(both)) : List.of();
    }

    /** Degrees told that are no place on earth, as told. */
    static Optional<String> nowhere(String words, boolean lead) {
        Map<String, Double> named = named(words);
        if (!named.isEmpty()) {
            Matcher first = NAMED.matcher(words);
            return onEarth(named).isEmpty() && first.find()
                    ? Optional.of(first.group().strip())
                    : Optional.empty();
        }
        Matcher found = BOTH.matcher(words);
        return (lead || coordinates(words))
                        && found.find()
                        && (words.contains(".") || coordinates(words))
                        && onEarth(both(found)).isEmpty()
                ? Optional.of(found.group().strip())
                : Optional.empty();
    }

    private static boolean coordinates(String words) {
        return COORDINATES.matcher(words).find();
    }

    private static Map<String, Double> named(String words) {
        Map<String, Double> named = new TreeMap<>();
        Matcher found = NAMED.matcher(words);
        while (found.find()) {
            String name = found.group(1).toLowerCase(Locale.ROOT);
            boolean latitude = name.startsWith("lat");
            if (!latitude && !name.equals("longitude") && named.isEmpty()) {
                // A bed "2 m long".
                continue;
            }
            named.putIfAbsent(latitude ? "latitude" : "longitude", signed(found.group(2), found.group(3)));
        }
        return named;
    }

    private static Map<String, Double> both(Matcher found) {
        return new TreeMap<>(Map.of(
                "latitude", signed(found.group(1), found.group(2)),
                "longitude", signed(found.group(3), found.group(4))));
    }

    private static List<SettingChange> onEarth(Map<String, Double> told) {
        if (!Earth.hasLatitude(told.getOrDefault("latitude", 0.0))
                || !Earth.hasLongitude(told.getOrDefault("longitude", 0.0))) {
            return List.of();
        }
        List<SettingChange> changes = new ArrayList<>();
        told.forEach((setting, degrees) -> changes.add(new SettingChange(setting, String.valueOf(degrees))));
        return changes;
    }

    /** South and west lie below 0. */
    private static double signed(String figures, String side) {
        double value = Double.parseDouble(figures);
        boolean below = side != null && "sw".indexOf(Character.toLowerCase(side.charAt(0))) >= 0;
        return below ? -Math.abs(value) : value;
    }
}
