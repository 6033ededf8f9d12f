package bothy.replying;

import bothy.almanac.Sheet;
import bothy.almanac.Source;
import bothy.garden.Given;
import bothy.garden.Given.Because;
import bothy.garden.Given.Known;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Where the figures of a crop sheet come from on which an advice rests. */
final class SheetSources {
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
    private final Set<String> sources = new LinkedHashSet<>();

    private SheetSources(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The sources, those of bound figures first; empty when no figure of the sheet was used. */
    static Set<String> of(Given given, Sheet sheet) {
        SheetSources found = new SheetSources(sheet);
        given.figures().keySet().forEach(found::figure);
        found.outlooks(given.because());
        return found.sources;
    }

    /** A figure bound by a rule carries the name of its leaf, led by its group where that is needed: "cureTempC", "feedFrom". */
    private void figure(String name) {
        for (Map.Entry<String, Source> entry : sheet.sources().entrySet()) {
            int dot = entry.getKey().indexOf('.');
            String group = entry.getKey().substring(0, Math.max(dot, 0));
            String leaf = entry.getKey().substring(dot + 1);
            boolean led = name.length() > leaf.length()
                    && name.toLowerCase(Locale.ROOT).endsWith(leaf.toLowerCase(Locale.ROOT))
                    && group.length() > 2
                    && name.startsWith(group.substring(0, 3));
            if (name.equals(leaf) || led) {
                sources.add(entry.getValue().source());
            }
        }
    }

    private void outlooks(Because because) {
        for (Known known : because.known()) {
            Object what = known.values().get("what");
            if (known.kind().equals("Outlook") && what != null) {
                String word = what.toString().toLowerCase(Locale.ROOT).replace('_', '-');
                Source source = sheet.sources()
                        .get(OUTLOOKS.get(word + " " + known.values().get("how")));
                if (source != null) {
                    sources.add(source.source());
                }
            }
        }
        because.from().forEach(this::outlooks);
    }
}
