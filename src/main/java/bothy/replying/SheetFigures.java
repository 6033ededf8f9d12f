package bothy.replying;

import bothy.almanac.Sheet;
import bothy.almanac.Source;
import bothy.garden.Given;
import bothy.garden.Given.Because;
import bothy.garden.Given.Known;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The figures of a crop sheet on which an advice rests, and where they come from. */
final class SheetFigures {
    /** The figure behind an outlook, by what is expected and how it was worked out. */
    private static final Map<String, String> OUTLOOKS = Map.ofEntries(
            Map.entry("sown indoors", "sowing.weeksBeforeLastFrostIndoors"),
            Map.entry("sown outdoors", "sowing.weeksFromLastFrostOutdoors"),
            Map.entry("sown autumn", "sowing.weeksFromFirstFrostAutumn"),
            Map.entry("sown latest", "harvest.daysFromSowing"),
            Map.entry("emerged temperature", "germination.emergenceDays"),
            Map.entry("emerged usual", "germination.usualDays"),
            Map.entry("planted-out frost", "plantingOut.weeksFromLastFrost"),
            Map.entry("planted-out age", "sowing.weeksToPlantingOut"),
            Map.entry("planted-out hardened", "plantingOut.hardeningDays"),
            Map.entry("hardening-started before", "plantingOut.hardeningDays"),
            Map.entry("flowering usual", "flowering.daysFromSowing"),
            Map.entry("fed again", "feeding.everyDays"),
            Map.entry("harvested flower", "flowering.daysToRipe"),
            Map.entry("harvested sowing", "harvest.daysFromSowing"),
            Map.entry("harvested other-season", "harvest.daysFromOtherSeason"),
            Map.entry("harvested planting-out", "harvest.daysFromPlantingOut"),
            Map.entry("harvested again", "harvest.pickEveryDays"),
            Map.entry("watered stop", "watering.stopDaysBeforeHarvest"),
            Map.entry("cured usual", "curing.days"),
            Map.entry("stored life", "storing.lifeDays"),
            Map.entry("stored check", "storing.checkEveryDays"));

    private final Sheet sheet;
    private final Map<String, Figure> worked = new LinkedHashMap<>();

    /**
     * A figure that was used.
     *
     * @param path its path in the sheet ("curing.tempC")
     * @param value what the sheet says; {@code null} when the advice shows another, worked out from it
     */
    record Figure(String path, Object value, Source source) {

        String group() {
            return path.substring(0, Math.max(path.indexOf('.'), 0));
        }

        /** The end of its path, which tells the unit. */
        String leaf() {
            return path.substring(path.indexOf('.') + 1);
        }
    }

    private SheetFigures(Sheet sheet) {
        this.sheet = sheet;
    }

    /** Those that the rule bound first, then those behind what was worked out. */
    static List<Figure> of(Given given, Sheet sheet) {
        SheetFigures figures = new SheetFigures(sheet);
        List<List<Figure>> bound = given.figures().entrySet().stream()
                .map(one -> figures.bound(one.getKey(), one.getValue()))
                .toList();
        figures.outlooks(given.because());
        Set<String> groups = new HashSet<>();
        bound.stream()
                .filter(one -> one.size() == 1)
                .forEach(one -> groups.add(one.get(0).group()));
        figures.worked.values().forEach(one -> groups.add(one.group()));
        Map<String, Figure> found = new LinkedHashMap<>();
        bound.forEach(one -> likeliest(one, groups).forEach(figure -> found.put(figure.path(), figure)));
        found.putAll(figures.worked);
        return List.copyOf(found.values());
    }

    /** A leaf that stands in several groups is most likely of the group that the advice's other figures are of. */
    private static List<Figure> likeliest(List<Figure> bound, Set<String> groups) {
        List<Figure> near =
                bound.stream().filter(one -> groups.contains(one.group())).toList();
        return near.isEmpty() ? bound : near;
    }

    /** A figure bound by a rule carries the name of its leaf, led by its group where that is needed: "cureTempC", "feedFrom". */
    private List<Figure> bound(String name, Object shown) {
        List<Figure> bound = new ArrayList<>();
        for (Map.Entry<String, Source> entry : sheet.sources().entrySet()) {
            int dot = entry.getKey().indexOf('.');
            String group = entry.getKey().substring(0, Math.max(dot, 0));
            String leaf = entry.getKey().substring(dot + 1);
            boolean led = name.length() > leaf.length()
                    && name.toLowerCase(Locale.ROOT).endsWith(leaf.toLowerCase(Locale.ROOT))
                    && group.length() > 2
                    && name.startsWith(group.substring(0, 3));
            if (name.equals(leaf) || led) {
                Object value = value(entry.getKey());
                boolean same = shown.equals(value);
                bound.add(new Figure(entry.getKey(), same ? value : null, entry.getValue()));
            }
        }
        List<Figure> same = bound.stream().filter(one -> one.value() != null).toList();
        return same.isEmpty() ? bound : same;
    }

    private void outlooks(Because because) {
        for (Known known : because.known()) {
            Object what = known.values().get("what");
            if (known.kind().equals("Outlook") && what != null) {
                String word = what.toString().toLowerCase(Locale.ROOT).replace('_', '-');
                String path = OUTLOOKS.get(word + " " + known.values().get("how"));
                Source source = sheet.sources().get(path);
                if (source != null) {
                    worked.put(path, new Figure(path, value(path), source));
                }
            }
        }
        because.from().forEach(this::outlooks);
    }

    private Object value(String path) {
        Object value = sheet;
        for (String step : path.split("\\.")) {
            value = value instanceof Record record ? part(record, step) : null;
        }
        return value;
    }

    private static Object part(Record record, String name) {
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            if (component.getName().equals(name)) {
                try {
                    return component.getAccessor().invoke(record);
                } catch (IllegalAccessException | InvocationTargetException unreadable) {
                    throw new IllegalStateException(unreadable);
                }
            }
        }
        return null;
    }
}
