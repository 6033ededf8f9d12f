package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** What cannot be done as it was asked for is told in a sentence or two, exit code 2. */
class WronglyCalledTest {
    private final StringWriter told = new StringWriter();

    private int run(String... arguments) {
        CommandLine line = Bothy.line(false);
        line.setErr(new PrintWriter(told, true));
        return line.execute(arguments);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2027-02-31", "tomorrow", "1/5/2027"})
    void a_day_that_is_none_is_told_without_a_word_of_java(String day) {
        assertThat(run("--today", day)).isEqualTo(2);
        assertThat(told.toString())
                .contains("“" + day + "” is no day of the calendar; write a day as 2027-05-01.")
                .doesNotContain("java.", "Exception")
                .hasLineCount(2);
    }

    @Test
    void an_option_that_is_none_is_named() {
        assertThat(run("--frobnicate")).isEqualTo(2);
        assertThat(told.toString()).contains("--frobnicate").contains("--help").hasLineCount(2);
    }
}
