package bothy.reading;

import bothy.garden.Grower;
import bothy.garden.Planting;
import bothy.garden.Situation;
import bothy.garden.Units;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/** Labelled messages from a file beside the tests. */
final class Corpus {
    private static final LocalDate DAY = LocalDate.of(2027, 5, 19);
    private final List<Labelled> messages = new ArrayList<>();

    /** One message and what it says. {@code entries}, {@code asks} … are {@code null} when the label is silent about them. */
    record Labelled(
            String say,
            Situation situation,
            List<String> entries,
            List<String> asks,
            List<String> signs,
            List<String> settings,
            boolean nothing,
            boolean unsure,
            boolean loose,
            boolean looseAsks,
            boolean corrects) {}

    Corpus(String file, Reading reading) {
        this(tree(file), reading);
    }

    /** A file anywhere: messages that are read for the first time. */
    Corpus(Path file, Reading reading) throws IOException {
        this(new YAMLMapper().readTree(file.toFile()), reading);
    }

    private Corpus(JsonNode tree, Reading reading) {
        for (JsonNode message : tree.get("messages")) {
            messages.add(labelled(message, tree.get("gardens"), reading));
        }
    }

    List<Labelled> messages() {
        return messages;
    }

    private static JsonNode tree(String file) {
        try (InputStream in = Corpus.class.getResourceAsStream("/reading/" + file)) {
            return new YAMLMapper().readTree(in);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Labelled labelled(JsonNode message, JsonNode gardens, Reading reading) {
        LocalDate today =
                message.has("today") ? LocalDate.parse(message.get("today").asText()) : DAY;
        Grower grower = new Grower(
                ZoneId.of("Europe/London"),
                null,
                null,
                null,
                null,
                message.has("us") ? Units.US : Units.METRIC,
                null,
                message.has("month-first"));
        List<String> lines = texts(gardens.path(message.path("garden").asText("none")));
        PlantingLines plantingLines = new PlantingLines(reading);
        List<Planting> plantings = plantingLines.read(lines, today, grower);
        Situation situation = new Situation(
                today,
                grower,
                plantings,
                null,
                List.of(),
                List.of(),
                texts(message.path("mentioned")),
                List.of(),
                plantingLines.happened(lines, today, grower),
                List.of());
        boolean nothing = message.has("nothing");
        return new Labelled(
                message.get("say").asText(),
                situation,
                texts(message.path("entries")),
                texts(message.path("asks")),
                texts(message.path("signs")),
                texts(message.path("settings")),
                nothing,
                message.has("unsure"),
                message.has("loose"),
                message.has("loose-asks"),
                message.has("corrects"));
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(item -> texts.add(item.asText()));
        return texts;
    }
}
