package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import org.junit.jupiter.api.Test;

class LogsTest {
    private static LogRecord record() {
        LogRecord entry = new LogRecord(Level.SEVERE, "A message could not be handled (1 times now)");
        entry.setLoggerName("bothy.channel.telegram.Desk");
        entry.setThrown(new IllegalStateException(
                "sowed beans by the medlar", new NumberFormatException("For input string: \"medlar\"")));
        return entry;
    }

    @Test
    void a_record_is_one_line_of_json_without_the_words_of_its_exceptions() throws IOException {
        String line = new Logs.Structured().format(record());

        assertThat(line).endsWith("}\n").doesNotContain("medlar");
        assertThat(line.lines()).hasSize(1);
        JsonNode json = new ObjectMapper().readTree(line);
        assertThat(json.path("level").asText()).isEqualTo("ERROR");
        assertThat(json.path("logger").asText()).isEqualTo("bothy.channel.telegram.Desk");
        assertThat(json.path("message").asText()).isEqualTo("A message could not be handled (1 times now)");
        assertThat(json.path("thrown").findValuesAsText("kind"))
                .containsExactly("java.lang.IllegalStateException", "java.lang.NumberFormatException");
        assertThat(json.path("thrown").path(0).path("at").path(0).asText()).contains("LogsTest.record");
    }

    @Test
    void for_a_person_it_is_a_line_of_text_with_the_stack() {
        assertThat(new Logs.Plain().format(record()))
                .contains(" ERROR Desk - A message could not be handled (1 times now)")
                .contains("at bothy.LogsTest.record");
    }
}
