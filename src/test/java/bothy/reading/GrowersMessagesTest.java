package bothy.reading;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.CraftNotes;
import bothy.almanac.RulesFolder;
import bothy.almanac.Words;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Messages in many voices, labelled by hand. The floors only rise. */
class GrowersMessagesTest {
    private static final RulesFolder RULES = RulesFolder.at(Path.of("rules"));
    private static final Reading READING = new Reading(Words.in(RULES), CraftNotes.in(RULES));

    @Test
    void the_messages_that_reading_was_tuned_on_are_read_right() {
        Score score = new Score(new Corpus("tuned.yaml", READING), READING);

        System.out.println(score.table("Tuned"));
        if (Boolean.getBoolean("show.wrong")) {
            score.wrong().forEach(System.out::println);
        }

        assertThat(score.share("= entries")).isGreaterThanOrEqualTo(0.985);
        assertThat(score.share("= questions")).isGreaterThanOrEqualTo(0.99);
        assertThat(score.share("= signs")).isGreaterThanOrEqualTo(0.985);
        assertThat(score.dates()).isGreaterThanOrEqualTo(0.985);
        assertThat(score.wrongSure()).isLessThanOrEqualTo(0.0023);
        assertThat(score.falseEntries()).isZero();
    }

    /** Only the figures are shown: who looks at the messages can no longer set them aside. */
    @Test
    void the_messages_set_aside_are_read_right() {
        Score score = new Score(new Corpus("set-aside.yaml", READING), READING);

        System.out.println(score.table("Set aside"));

        assertThat(score.share("= entries")).isGreaterThanOrEqualTo(0.975);
        assertThat(score.share("= questions")).isGreaterThanOrEqualTo(0.98);
        assertThat(score.share("= signs")).isGreaterThanOrEqualTo(0.98);
        assertThat(score.dates()).isGreaterThanOrEqualTo(0.97);
        assertThat(score.wrongSure()).isLessThanOrEqualTo(0.005);
        assertThat(score.falseEntries()).isZero();
    }
}
