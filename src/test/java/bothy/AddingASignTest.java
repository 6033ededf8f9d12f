package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.RulesFolder;
import bothy.conversation.Conversation;
import bothy.conversation.Conversation.Outcome;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Diagnosis;
import bothy.garden.Message;
import bothy.weather.WeatherSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sign of one's own needs a file of rules with its words beside it and a phrase that tells it, and no Java. */
class AddingASignTest {
    private static final String RULES =
            """
            signs:
              humming-leaves:
                - {cause: bees asleep, how: common, crops: [tomato], stages: [any], source: "common practice", read: memory}
                - {cause: loose wires, how: occasional, crops: [tomato], stages: [any], source: "common practice", read: memory}
            causes:
              bees asleep: {check: 2, harmless: true}
              loose wires: {check: 3}
            questions:
              striped-sleepers:
                answers:
                  "yes": {bees asleep: 3, otherwise: -2}
                  "no": {bees asleep: -1}
            """;
    private static final String WORDS =
            """
            signs:
              humming-leaves: {name: "humming leaves", meanwhile: "Listen again at noon."}
            causes:
              bees asleep: {first: "Let them sleep.", "not": "Don't shake the plant.", prevent: "plant later flowers"}
              loose wires: {first: "Tie the wires.", "not": "Don't pull them.", prevent: "tie them tight"}
            questions:
              striped-sleepers: {ask: "Are there striped sleepers under the leaves?", thing: "striped sleepers"}
            """;

    @TempDir
    Path folder;

    private void makeRules() throws IOException {
        Path shipped = Path.of("rules");
        try (Stream<Path> files = Files.walk(shipped)) {
            for (Path file : files.toList()) {
                Path to =
                        folder.resolve("rules").resolve(shipped.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(file, to);
                }
            }
        }
        Files.writeString(folder.resolve("rules/troubles/humming.yaml"), RULES);
        Files.writeString(folder.resolve("rules/wording/en-troubles-humming.yaml"), WORDS);
        Path signs = folder.resolve("rules/words/signs.yaml");
        String phrases = Files.readString(signs);
        Files.writeString(
                signs, phrases.replaceFirst("(?m)^also:$", "also:\n  humming-leaves: \"@leaf .. (hum|humming|hums)\""));
    }

    @Test
    void a_made_up_sign_is_read_weighed_and_asked_about() throws IOException {
        makeRules();
        RulesFolder rules = RulesFolder.at(folder.resolve("rules"));
        assertThat(CheckVerb.problems(rules)).isEmpty();
        try (Store store = Shelf.open(folder.resolve("diary.db").toString())) {
            Conversation conversation = new Conversation(store, Workshop.knowledge(rules, null, WeatherSource.none()));
            Outcome outcome = conversation
                    .handle(
                            Message.text(
                                    "1",
                                    "grower",
                                    Instant.parse("2027-07-10T12:00:00Z"),
                                    ZoneOffset.UTC,
                                    "the leaves of my tomatoes are humming"),
                            null)
                    .orElseThrow();

            Diagnosis diagnosis = outcome.diagnoses().get(0);
            assertThat(diagnosis.signs()).containsExactly("humming-leaves");
            assertThat(diagnosis.causes().get(0).cause()).isEqualTo("bees asleep");
            assertThat(outcome.reply().text()).contains("humming leaves");
        }
    }
}
