package bothy.diary;

import bothy.garden.Amendment;
import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Finding;
import bothy.garden.Garden;
import bothy.garden.Grower;
import bothy.garden.Logged;
import bothy.garden.Planting;
import bothy.garden.SettingChange;
import bothy.garden.SignSeen;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Derives a garden from the lines of a diary. The same lines give the same garden, so any past day can be seen again. */
public final class Replay {
    private Replay() {}

    /**
     * The garden as the diary told it at the end of a day.
     *
     * @param lines all lines of one grower's diary, in order of number
     * @param day lines that came in after this day, in the grower's zone, are left out
     * @param zone the channel's time zone, used until the grower tells another
     */
    public static Garden garden(List<Logged> lines, LocalDate day, ZoneId zone) {
        Instant tooLate = day.plusDays(2).atStartOfDay(zone).toInstant();
        List<Logged> known =
                lines.stream().filter(line -> line.at().isBefore(tooLate)).toList();
        List<Logged> standing = standing(known);
        return new Garden(grower(standing, zone), day, plantings(standing, day), standing);
    }

    /** The lines that hold: each amended line with what stands in its place, those taken back left out. */
    static List<Logged> standing(List<Logged> lines) {
        Map<Long, Logged> standing = new LinkedHashMap<>();
        Set<Long> cancelled = cancelled(lines);
        for (Logged line : lines) {
            if (line.entry() instanceof Amendment amendment) {
                if (cancelled.contains(line.number())) {
                    continue;
                }
                Logged amended = standing.get(amendment.entry());
                if (amended != null && amendment.instead() == null) {
                    standing.remove(amendment.entry());
                } else if (amended != null) {
                    standing.put(
                            amended.number(),
                            new Logged(amended.number(), amended.message(), amended.at(), amendment.instead()));
                }
            } else {
                standing.put(line.number(), line);
            }
        }
        return List.copyOf(standing.values());
    }

    /** Amendments that were themselves taken back. */
    private static Set<Long> cancelled(List<Logged> lines) {
        Set<Long> cancelled = new HashSet<>();
        for (int i = lines.size() - 1; i >= 0; i--) {
            Logged line = lines.get(i);
            if (line.entry() instanceof Amendment amendment
                    && amendment.instead() == null
                    && !cancelled.contains(line.number())) {
                cancelled.add(amendment.entry());
            }
        }
        return cancelled;
    }

    /**
     * The lines of the last message that still say something, as written: what "scrap that" takes back. Lines that only took others back
     * are passed over, so that saying it again goes one message further back.
     */
    public static List<Logged> last(List<Logged> lines) {
        return last(lines, byNumber(standing(lines)).keySet());
    }

    private static List<Logged> last(List<Logged> lines, Set<Long> standing) {
        Set<Long> cancelled = cancelled(lines);
        List<Logged> last = new ArrayList<>();
        for (int i = lines.size() - 1; i >= 0; i--) {
            Logged line = lines.get(i);
            boolean says = line.entry() instanceof Amendment amendment
                    ? amendment.instead() != null && !cancelled.contains(line.number())
                    : standing.contains(line.number());
            if (says && (last.isEmpty() || last.get(0).message().equals(line.message()))) {
                last.add(0, line);
            }
        }
        return last;
    }

    /** The same lines as they stand now, corrections under the number of the line that they correct: what "no, Tuesday" is about. */
    public static List<Logged> lately(List<Logged> lines) {
        Map<Long, Logged> standing = byNumber(standing(lines));
        return last(lines, standing.keySet()).stream()
                .map(line ->
                        standing.get(line.entry() instanceof Amendment amendment ? amendment.entry() : line.number()))
                .filter(java.util.Objects::nonNull)
                .distinct()
                .toList();
    }

    private static Map<Long, Logged> byNumber(List<Logged> lines) {
        Map<Long, Logged> numbered = new HashMap<>();
        lines.forEach(line -> numbered.put(line.number(), line));
        return numbered;
    }

    /** What lines with these numbers say: the event that stands there, or the event that the correction put in place. */
    public static List<Event> standingOrCorrecting(List<Logged> lines, Set<Long> numbers) {
        List<Event> events = new ArrayList<>();
        for (Logged line : standing(lines)) {
            if (numbers.contains(line.number()) && line.entry() instanceof Event event) {
                events.add(event);
            }
        }
        for (Logged line : lines) {
            boolean corrects = line.entry() instanceof Amendment amendment && amendment.instead() instanceof Event;
            if (numbers.contains(line.number()) && corrects) {
                events.add((Event) ((Amendment) line.entry()).instead());
            }
        }
        return events;
    }

    /** What the grower settled, on top of what the channel knows. */
    private static Grower grower(List<Logged> standing, ZoneId zone) {
        Settings settings = new Settings(zone);
        for (Logged line : standing) {
            if (line.entry() instanceof SettingChange change) {
                settings.take(change);
            }
        }
        return settings.grower();
    }

    private static List<Planting> plantings(List<Logged> standing, LocalDate day) {
        Map<String, List<Event>> stories = new LinkedHashMap<>();
        for (Logged line : standing) {
            if (line.entry() instanceof Event event && event.planting() != null) {
                stories.computeIfAbsent(event.planting(), id -> new ArrayList<>())
                        .add(event);
            }
        }
        List<Planting> plantings = new ArrayList<>();
        stories.forEach((id, events) -> plantings.add(new PlantingStory(id, events).planting(day)));
        return plantings;
    }

    /** The crop that a planting began as, by its id. */
    public static String cropOf(String planting) {
        return planting.replaceFirst("-\\d+$", "");
    }

    /** An id for a planting about to begin; ids of plantings that were taken back are not used again. */
    public static String nextPlanting(String crop, List<Logged> lines) {
        int highest = 0;
        for (Logged line : lines) {
            highest = Math.max(highest, number(crop, line.entry()));
            if (line.entry() instanceof Amendment amendment && amendment.instead() != null) {
                highest = Math.max(highest, number(crop, amendment.instead()));
            }
        }
        return crop + "-" + (highest + 1);
    }

    private static int number(String crop, Entry entry) {
        String id = entry instanceof Event event
                ? event.planting()
                : entry instanceof SignSeen sign
                        ? sign.planting()
                        : entry instanceof Finding finding ? finding.planting() : null;
        return id != null && id.matches(java.util.regex.Pattern.quote(crop) + "-\\d{1,6}")
                ? Integer.parseInt(id.substring(crop.length() + 1))
                : 0;
    }
}
