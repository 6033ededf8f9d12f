package bothy.reading;

import bothy.garden.Event;
import bothy.garden.Heard;
import bothy.garden.SettingChange;
import bothy.garden.SignSeen;
import bothy.garden.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What was heard, in the words of the exchange vocabulary: maps, lists, texts and numbers, ready to be printed as JSON. */
public final class Vocabulary {
    private final Reading reading;

    public Vocabulary(Reading reading) {
        this.reading = reading;
    }

    /**
     * The object that is printed for one message.
     *
     * @param id the id of the input line, printed as it came; {@code null} when it had none
     */
    public Map<String, Object> object(Object id, Heard heard) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("id", id);
        object.put("entries", entries(heard));
        object.put(
                "questions",
                heard.inquiries().stream()
                        .filter(inquiry -> !inquiry.onlyTold())
                        .map(inquiry -> inquiry.question().word())
                        .distinct()
                        .toList());
        object.put("signs", List.copyOf(signs(heard.signs())));
        object.put(
                "settings", heard.settings().stream().map(Vocabulary::setting).toList());
        object.put("corrects", heard.corrects());
        object.put("asks_back", heard.doubt() != null);
        object.put("kind", heard.kind().word());
        return object;
    }

    private static List<Map<String, Object>> entries(Heard heard) {
        List<Map<String, Object>> entries = new ArrayList<>();
        for (Statement statement : heard.statements()) {
            Event event = statement.event();
            Map<String, Object> entry = new LinkedHashMap<>();
            entry.put("what", event.what().word());
            entry.put("crop", event.crop());
            entry.put("date", event.on() == null ? null : event.on().toString());
            entry.put("count", event.count());
            entry.put("amount", event.amount());
            entry.put("unit", event.unit());
            entry.put("sure", statement.sure());
            entries.add(entry);
        }
        return entries;
    }

    /** A sign and the wider one that it is a case of, so that who knows only the wider one understands it too. */
    public Set<String> signs(List<SignSeen> seen) {
        Set<String> signs = new LinkedHashSet<>();
        for (SignSeen sign : seen) {
            signs.add(sign.sign());
            String wider = reading.wider(sign.sign());
            if (wider != null) {
                signs.add(wider);
            }
        }
        return signs;
    }

    private static Map<String, Object> setting(SettingChange change) {
        Map<String, Object> setting = new LinkedHashMap<>();
        setting.put("setting", change.setting());
        setting.put("value", change.value());
        return setting;
    }
}
