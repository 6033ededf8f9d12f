package bothy.conversation;

import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Finding;
import bothy.garden.SignSeen;
import bothy.garden.What;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** "Sowed beetroot on the 1st, nothing": what a message tells of a crop is of the planting that the same message begins. */
final class BegunWithIt {
    private final Map<String, String> plantings = new HashMap<>();

    BegunWithIt(List<Entry> entries) {
        Set<String> several = new HashSet<>();
        for (Entry entry : entries) {
            if (entry instanceof Event event
                    && (event.what() == What.SOWN || event.what() == What.PLANTED_OUT)
                    && event.planting() != null
                    && event.crop() != null) {
                String other = plantings.put(event.crop(), event.planting());
                if (other != null && !other.equals(event.planting())) {
                    several.add(event.crop());
                }
            }
        }
        plantings.keySet().removeAll(several);
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
            return new Finding(
                    plantings.get(finding.crop()),
                    finding.crop(),
                    finding.about(),
                    finding.found(),
                    finding.asked(),
                    finding.on());
        }
        return entry;
    }
}
