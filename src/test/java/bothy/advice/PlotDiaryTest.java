package bothy.advice;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What was seen on a day is no lesson for the next year. */
class PlotDiaryTest {
    @Test
    void every_note_that_the_words_know_is_of_its_day() throws IOException {
        JsonNode note = new YAMLMapper()
                .readTree(Path.of("rules/words/actions.yaml").toFile())
                .path("actions")
                .path("note");
        Set<String> known = new TreeSet<>();
        note.path("doings").fieldNames().forEachRemaining(known::add);
        note.path("details").fieldNames().forEachRemaining(known::add);

        assertThat(PlotDiary.OF_THE_DAY).containsExactlyInAnyOrderElementsOf(known);
    }
}
