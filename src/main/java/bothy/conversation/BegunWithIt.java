package bothy.conversation;

import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Finding;
import bothy.garden.SignSeen;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** "Sowed beetroot on the 1st, nothing": what a message tells of a crop is of the planting that the same message begins or shows a sign of. */
final class BegunWithIt {
    private final Map<String, String> plantings = new HashMap<>();

    /** @param today what begins today shows no trouble yet */
    BegunWithIt(List<Entry> entries, LocalDate today) {
        Set<String> several = new HashSet<>();
        for (Entry entry : entries) {
            Event begun = entry instanceof Event event && begins(event, today) ? event : null;
            SignSeen seen = entry instanceof SignSeen sign && sign.planting() != null ? sign : null;
            String planting = begun != null ? begun.planting() : seen == null ? null : seen.planting();
            String crop = begun != null ? begun.crop() : seen == null ? null : seen.crop();
            if (planting != null && crop != null) {
                String other = plantings.put(crop, planting);
                if (other != null && !other.equals(planting)) {
                    several.add(crop);
                }
            }
        }
        plantings.keySet().removeAll(several);
    }

    private static boolean begins(Event event, LocalDate today) {
        return (event.what() == What.SOWN || event.what() == What.PLANTED_OUT)
                && event.on() != null
                && event.on().isBefore(today);
    }

    /** The same entry, of the planting that begins with it where it named a crop only. */
    Entry of(Entry entry) {
        if (entry instanceof SignSeen sign && sign.planting() == null && plantings.containsKey(sign.crop())) {
            return new SignSeen(
                    sign.sign(),
                    plantings.get(sign.crop()),
                    sign.crop(),
                    sign.on(),
                    sign.where(),
                    sign.count(),
                    sign.seedAge());
        }
        if (entry instanceof Finding finding && finding.planting() == null && plantings.containsKey(finding.crop())) {
            return finding.of(plantings.get(finding.crop()), finding.crop());
        }
        return entry;
    }
}
