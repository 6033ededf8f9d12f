package bothy.replying;

import bothy.almanac.Wording;
import bothy.garden.Amendment;
import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Logged;
import bothy.garden.SettingChange;
import bothy.garden.SignSeen;
import bothy.garden.What;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One line that says what was written into the diary. */
final class Receipts {
    /** The note of a photo is told in a sentence of its own. */
    private static final String PHOTO = "photo";

    private final Wording wording;
    private final Vocabulary vocabulary;

    Receipts(Wording wording, Vocabulary vocabulary) {
        this.wording = wording;
        this.vocabulary = vocabulary;
    }

    Optional<String> line(List<Logged> written, List<Event> takenBack, List<Event> standingAgain) {
        List<String> parts = new ArrayList<>();
        List<Event> events = new ArrayList<>();
        List<SettingChange> settings = new ArrayList<>();
        List<Event> corrected = new ArrayList<>();
        List<String> right = new ArrayList<>();
        boolean undone = false;
        for (Logged line : written) {
            Entry entry = line.entry();
            if (entry instanceof Event event) {
                if (!PHOTO.equals(event.detail())) {
                    events.add(event);
                }
            } else if (entry instanceof SettingChange change) {
                settings.add(change);
            } else if (entry instanceof Amendment amendment && amendment.instead() instanceof Event event) {
                corrected.add(event);
            } else if (entry instanceof Amendment amendment && amendment.instead() instanceof SignSeen sign) {
                right.add(trouble(sign));
            } else if (entry instanceof Amendment) {
                undone = true;
            }
        }
        List<String> lines = new ArrayList<>();
        parts.addAll(new SettingsSaid(wording, vocabulary).words(settings));
        words(events).ifPresent(parts::add);
        if (!parts.isEmpty()) {
            lines.add(talk("noted", String.join("; ", parts)));
        }
        words(corrected).ifPresent(right::add);
        if (!right.isEmpty()) {
            lines.add(talk("corrected", String.join("; ", right)));
        }
        if (undone && (right.isEmpty() || !takenBack.isEmpty())) {
            lines.add(words(standingAgain)
                    .map(what -> talk("correction-taken-back", what))
                    .or(() -> words(takenBack).map(what -> talk("taken-back", what)))
                    .orElse(wording.talk().get("taken-back-all")));
        }
        return lines.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", lines));
    }

    private String talk(String id, String what) {
        return new Sentence(wording.talk().get(id))
                .fill(name -> Optional.of(what))
                .orElseThrow();
    }

    /** Events in words; the same thing done to several plantings on one day is said once. */
    Optional<String> words(List<Event> events) {
        Map<String, List<Event>> alike = new LinkedHashMap<>();
        for (Event event : events) {
            String key = event.what() + " " + event.on() + " " + event.amount() + " " + event.place() + " "
                    + event.container() + " " + (event.count() == null ? "" : event);
            alike.computeIfAbsent(key, none -> new ArrayList<>()).add(event);
        }
        List<String> parts = new ArrayList<>();
        alike.values().forEach(group -> parts.add(words(group.get(0), crops(group))));
        return parts.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", parts));
    }

    /** What was told of a trouble. */
    String trouble(SignSeen sign) {
        Map<String, String> words = new LinkedHashMap<>();
        put(
                words,
                "crops",
                sign.planting() != null
                        ? vocabulary.names().planting(sign.planting())
                        : sign.crop() == null ? null : vocabulary.names().many(sign.crop()));
        put(words, "sign", sign.sign().replace('-', ' '));
        put(words, "count", sign.count() == null ? null : String.valueOf(sign.count()));
        put(words, "on", vocabulary.quantities().nearDay(sign.on()));
        return fill("sign", words).orElse(sign.sign());
    }

    private String crops(List<Event> group) {
        return Names.list(group.stream()
                .map(event -> event.planting() != null
                        ? told(event)
                        : event.crop() == null ? "" : vocabulary.names().many(event.crop()))
                .filter(name -> !name.isEmpty())
                .toList());
    }

    /** What begins is not told apart by the day on which it does: the receipt ends with that day. */
    private String told(Event event) {
        String name = vocabulary.names().planting(event.planting());
        return event.what() == What.SOWN ? name.replaceFirst(" of \\d+ \\p{L}+$", "") : name;
    }

    private String words(Event event, String crops) {
        Map<String, String> words = new LinkedHashMap<>();
        put(words, "crops", crops.isEmpty() ? null : one(event, crops));
        put(words, "count", event.count());
        put(words, "place", crops.contains("(" + event.place() + ")") ? null : event.place());
        put(words, "container", event.container());
        put(words, "detail", event.detail());
        if (event.amount() != null && event.unit() != null) {
            put(words, "amount", vocabulary.quantities().write(unitName(event.unit()), event.amount()));
        }
        if (event.on() != null) {
            put(words, "on", vocabulary.quantities().nearDay(event.on()));
        }
        boolean set = event.what() == What.SOWN && vocabulary.planted(event.crop(), event.container());
        if (Event.CHITTING.equals(event.detail())) {
            return fill(Event.CHITTING, words).orElse(Event.CHITTING);
        }
        boolean over = event.what() == What.HARVESTED
                && "last".equals(event.detail())
                && event.count() == null
                && event.amount() == null;
        return fill(set ? "set" : over ? "done-with" : event.what().word(), words)
                .orElse(event.what().word().replace('-', ' '));
    }

    /** "1 cucumber", not "1 cucumbers". */
    private String one(Event event, String crops) {
        boolean single = event.count() != null && event.count() == 1 && event.crop() != null;
        return single
                ? crops.replace(
                        vocabulary.names().many(event.crop()),
                        vocabulary.names().one(event.crop()))
                : crops;
    }

    private static String unitName(String unit) {
        return switch (unit) {
            case "°C" -> "tempC";
            case "L" -> "Litres";
            case "mm" -> "rainMm";
            case "kg" -> "Kg";
            case "m" -> "lengthCm";
            default -> unit;
        };
    }

    private static void put(Map<String, String> words, String name, Object value) {
        if (value != null) {
            words.put(name, value.toString());
        }
    }

    private Optional<String> fill(String id, Map<String, String> words) {
        String sentence = wording.receipts().get(id);
        return sentence == null
                ? Optional.empty()
                : new Sentence(sentence).fill(name -> Optional.ofNullable(words.get(name)));
    }
}
