package bothy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A conversation file that cannot be read is told of with its line and without Java's own names. */
class ConversationFileTest {
    @TempDir
    Path folder;

    private String told(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("chat.yaml"), text);
        return catchThrowable(() -> ConversationFile.read(file)).getMessage();
    }

    @Test
    void a_day_that_is_none_is_told_with_what_it_takes() throws IOException {
        assertThat(told("title: x\nturns:\n  - at: 2027-02-31T09:00\n    grower: hello\n"))
                .contains(
                        "chat.yaml:3: \"2027-02-31T09:00\" cannot be read here; it takes a day and time such as 2027-05-01T09:00.")
                .doesNotContain("java.");
    }

    @Test
    void a_list_where_a_text_belongs_is_told() throws IOException {
        assertThat(told("title: [x]\nturns: []\n"))
                .contains("chat.yaml:1: what stands here is of another kind than it takes")
                .doesNotContain("java.", "token");
    }
}
