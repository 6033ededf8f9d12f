package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.RulesFolder;
import bothy.conversation.Conversation;
import bothy.conversation.Conversation.Outcome;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Finding;
import bothy.garden.Message;
import bothy.weather.WeatherSource;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CaseSurvivesARestartTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static Knowledge knowledge;

    @TempDir
    Path folder;

    @BeforeAll
    static void make_ready() {
        knowledge = Workshop.knowledge(RulesFolder.at(Path.of("rules")), null, WeatherSource.none());
    }

    private Outcome say(String id, String at, String text) {
        try (Store store = Shelf.open(folder.resolve("diary.db").toString())) {
            return new Conversation(store, knowledge)
                    .handle(Message.text(id, "grower", Instant.parse(at), LONDON, text), null)
                    .orElseThrow();
        }
    }

    @Test
    void an_answer_on_the_next_day_after_two_restarts_still_belongs_to_its_case() {
        say("1", "2027-05-25T09:00:00Z", "planted out 6 tomatoes");
        Outcome asked = say("2", "2027-07-25T09:00:00Z", "one tomato plant is wilting all day");
        say("3", "2027-07-25T12:00:00Z", "watered the tomatoes");
        Outcome late = say("4", "2027-07-26T09:00:00Z", "when I cut the stem there was a brown ring inside");

        assertThat(asked.asks()).isTrue();
        assertThat(late.written())
                .anySatisfy(line -> assertThat(line.entry()).isInstanceOfSatisfying(Finding.class, finding -> {
                    assertThat(finding.planting()).isEqualTo("tomato-1");
                    assertThat(finding.about()).isEqualTo("stem-ring");
                }));
        assertThat(late.diagnoses()).singleElement().satisfies(diagnosis -> {
            assertThat(diagnosis.signs()).contains("wilting-all-day");
            assertThat(diagnosis.causes().get(0).cause()).isEqualTo("fusarium or verticillium wilt");
        });
    }

    @Test
    void a_tapped_button_answers_the_question_after_a_restart() {
        say("1", "2027-05-25T09:00:00Z", "planted out 12 cabbages");
        Outcome asked = say("2", "2027-07-10T09:00:00Z", "holes in the cabbage leaves");
        String button = asked.reply().buttons().get(0);

        Outcome answered;
        try (Store store = Shelf.open(folder.resolve("diary.db").toString())) {
            Message tapped = new Message(
                    "3", "grower", Instant.parse("2027-07-11T09:00:00Z"), LONDON, "", null, null, false, button, null);
            answered = new Conversation(store, knowledge).handle(tapped, null).orElseThrow();
        }

        assertThat(answered.written()).hasSize(1);
        assertThat(answered.written().get(0).entry())
                .isInstanceOfSatisfying(
                        Finding.class, finding -> assertThat(finding.asked()).isTrue());
    }
}
