package bothy.conversation;

import bothy.garden.Amendment;
import bothy.garden.Document;
import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Garden;
import bothy.garden.Logged;
import bothy.garden.SettingChange;
import bothy.garden.SignSeen;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A diary as files to take away: everything as JSON, corrections too; what stands today as CSV for a spreadsheet. */
final class DiaryFile {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String[] COLUMNS = {
        "number",
        "told",
        "day",
        "what",
        "planting",
        "crop",
        "variety",
        "count",
        "amount",
        "unit",
        "place",
        "container",
        "detail",
        "seedAge"
    };

    private DiaryFile() {}

    /** All lines as they were told, numbered; an amendment names the number of the line that it amends. */
    static Document json(Garden garden, List<Logged> lines) {
        List<Map<String, Object>> diary = new ArrayList<>();
        for (Logged line : lines) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("number", line.number());
            one.put("told", line.at().toString());
            one.put("message", line.message());
            one.putAll(fields(line.entry()));
            diary.add(one);
        }
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("zone", garden.grower().zone().getId());
        all.put("diary", diary);
        try {
            String content = JSON.writerWithDefaultPrettyPrinter().writeValueAsString(all);
            return new Document("diary.json", "application/json", content);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static Map<String, Object> fields(Entry entry) {
        Map<String, Object> fields = new LinkedHashMap<>();
        if (entry instanceof Event event) {
            fields.put("kind", "event");
            put(fields, cells(event));
        } else if (entry instanceof SignSeen sign) {
            fields.put("kind", "sign");
            put(fields, cells(sign));
            put(fields, "where", sign.where());
        } else if (entry instanceof SettingChange change) {
            fields.put("kind", "setting");
            fields.put("setting", change.setting());
            fields.put("value", change.value());
        } else if (entry instanceof Amendment amendment) {
            fields.put("kind", "amendment");
            fields.put("amends", amendment.entry());
            fields.put("instead", amendment.instead() == null ? null : fields(amendment.instead()));
        }
        return fields;
    }

    private static void put(Map<String, Object> fields, Object[] cells) {
        for (int i = 0; i < cells.length; i++) {
            put(fields, COLUMNS[i + 2], cells[i]);
        }
    }

    private static void put(Map<String, Object> fields, String name, Object value) {
        if (value != null) {
            fields.put(name, value);
        }
    }

    private static Object[] cells(Event event) {
        return new Object[] {
            event.on() == null ? null : event.on().toString(),
            event.what().word(),
            event.planting(),
            event.crop(),
            event.variety(),
            event.count(),
            event.amount(),
            event.unit(),
            event.place(),
            event.container(),
            event.detail(),
            event.seedAge()
        };
    }

    private static Object[] cells(SignSeen sign) {
        return new Object[] {
            sign.on() == null ? null : sign.on().toString(),
            "sign",
            sign.planting(),
            sign.crop(),
            null,
            sign.count(),
            null,
            null,
            null,
            null,
            sign.sign(),
            sign.seedAge()
        };
    }

    /** The events and signs that stand, one a line. */
    static Document csv(Garden garden) {
        StringBuilder text = new StringBuilder();
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader(COLUMNS).build();
        try (CSVPrinter printer = new CSVPrinter(text, format)) {
            for (Logged line : garden.standing()) {
                Object[] cells = line.entry() instanceof Event event
                        ? cells(event)
                        : line.entry() instanceof SignSeen sign ? cells(sign) : null;
                if (cells != null) {
                    List<Object> row = new ArrayList<>(List.of(line.number(), line.at()));
                    row.addAll(java.util.Arrays.asList(cells));
                    printer.printRecord(row);
                }
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return new Document("diary.csv", "text/csv", text.toString());
    }
}
