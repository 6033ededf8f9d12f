package bothy.conversation;

import bothy.diary.Replay;
import bothy.garden.Amendment;
import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Garden;
import bothy.garden.Heard;
import bothy.garden.Logged;
import bothy.garden.Planting;
import bothy.garden.SignSeen;
import bothy.garden.Statement;
import bothy.garden.What;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Turns what was said into the diary entries to append. */
final class Writing {
    private final Garden garden;
    private final List<Logged> lines;
    private final List<String> mentioned;
    private final Map<String, String> begunNow = new HashMap<>();
    private final Map<String, String> begunAs = new HashMap<>();
    private final Map<String, LocalDate> begunOn = new HashMap<>();

    /** @param mentioned ids of the plantings talked about last, to which a note without a crop belongs */
    Writing(Garden garden, List<Logged> lines, List<String> mentioned) {
        this.garden = garden;
        this.mentioned = mentioned;
        this.lines = new ArrayList<>(lines);
    }

    /** The entries, in the order said: corrections first, so that a statement after them meets the corrected plot. */
    List<Entry> entries(Heard heard) {
        List<Entry> entries = new ArrayList<>(heard.amendments());
        for (Statement statement : heard.statements()) {
            if (statement.sure()) {
                entries.addAll(events(statement));
            }
        }
        heard.signs().stream().map(this::ofBegun).forEach(entries::add);
        entries.addAll(heard.settings());
        return entries;
    }

    /**
     * The entries for the edited form of an earlier message: each earlier line is amended by what now stands in its place, taken back
     * when nothing does, and what is new is added.
     */
    List<Entry> edited(Heard heard, List<Logged> before) {
        List<Entry> entries = new ArrayList<>();
        List<Logged> left = new ArrayList<>(before);
        for (Statement statement : heard.statements()) {
            if (!statement.sure()) {
                continue;
            }
            Logged same = counterpart(statement, left);
            if (same == null) {
                entries.addAll(events(statement));
            } else {
                left.remove(same);
                entries.add(new Amendment(same.number(), instead(statement, (Event) same.entry())));
            }
        }
        left.forEach(line -> entries.add(new Amendment(line.number(), null)));
        heard.signs().stream().map(this::ofBegun).forEach(entries::add);
        entries.addAll(heard.settings());
        return entries;
    }

    /** What the edited message says in place of an earlier event; a crop that it no longer names is still the same one. */
    private static Event instead(Statement statement, Event earlier) {
        Event event = statement.event();
        if (event.crop() == null || event.crop().equals(earlier.crop())) {
            return event.withPlanting(earlier.planting(), earlier.crop());
        }
        return statement.plantings().isEmpty()
                ? event.withPlanting(earlier.planting(), event.crop())
                : event.withPlanting(statement.plantings().get(0), event.crop());
    }

    private static Logged counterpart(Statement statement, List<Logged> left) {
        return left.stream()
                .filter(line -> line.entry() instanceof Event event
                        && event.what() == statement.event().what())
                .findFirst()
                .orElse(null);
    }

    private List<Event> events(Statement statement) {
        Event event = statement.event();
        if (!statement.plantings().isEmpty()) {
            return statement.plantings().stream()
                    .map(id -> event.withPlanting(id, crop(id, event)))
                    .toList();
        }
        if (event.crop() == null && event.what() == What.TEMPERATURE && !begunNow.isEmpty()) {
            // "Sowed 6 cucumbers on the porch, about 15 °C there": the warmth is that of what was just begun.
            return begunNow.entrySet().stream()
                    .map(begun -> event.withPlanting(begun.getValue(), begun.getKey()))
                    .toList();
        }
        if (event.crop() == null || event.what().ofThePlot() || event.what() == What.NOTE) {
            return List.of(event);
        }
        String begun = event.what() == What.SOWN || ofAnotherVariety(event) ? null : begunNow.get(event.crop());
        String id = begun == null ? begin(event) : begun;
        return List.of(event.withPlanting(id, event.crop()));
    }

    private String crop(String planting, Event event) {
        return garden.planting(planting)
                .map(one -> one.crop())
                // An answer may come when the planting that it is about was taken back.
                .orElseGet(() -> event.crop() == null ? Replay.cropOf(planting) : event.crop());
    }

    /** "Sowed 20 carrots 3 weeks ago, nothing up": what is seen of a crop that the message begins is seen of that planting. */
    private SignSeen ofBegun(SignSeen sign) {
        if (sign.planting() != null && !sownLongEnough(sign)) {
            return sign;
        }
        if (sign.crop() == null) {
            return begunNow.size() != 1
                    ? sign
                    : begunNow.entrySet().stream()
                            .map(begun -> sign.of(begun.getValue(), begun.getKey()))
                            .findFirst()
                            .orElseThrow();
        }
        String begun = begunNow.get(sign.crop());
        return begun == null ? sign : sign.of(begun, sign.crop());
    }

    /** Of what was sown today nothing is missed yet: then it is the earlier sowing that did not come up. */
    private boolean sownLongEnough(SignSeen sign) {
        LocalDate begun = begunOn.get(sign.crop());
        return SignSeen.ofSeed(sign.sign())
                && begun != null
                && sign.on() != null
                && begun.isBefore(sign.on().minusDays(Planting.SOONEST_UP_DAYS));
    }

    /** "Chitting 2 kg of Rocket and 2 kg of Cara": two lots. */
    private boolean ofAnotherVariety(Event event) {
        String begun = begunAs.get(event.crop());
        return begun != null && event.variety() != null && !begun.equalsIgnoreCase(event.variety());
    }

    private String begin(Event event) {
        if (event.variety() != null) {
            begunAs.put(event.crop(), event.variety());
        }
        String id = Replay.nextPlanting(event.crop(), lines);
        begunNow.put(event.crop(), id);
        begunOn.put(event.crop(), event.on());
        lines.add(new Logged(Long.MAX_VALUE, "", Instant.EPOCH, event.withPlanting(id, event.crop())));
        return id;
    }
}
