package bothy.reading;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.garden.Doubt;
import bothy.garden.Doubt.About;
import bothy.garden.Event;
import bothy.garden.Heard;
import bothy.garden.Kind;
import bothy.garden.Logged;
import bothy.garden.Situation;
import bothy.garden.What;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What goes on from the message before, lets its question go, or puts it right while another question waits. */
class GoingOnTest {

    @ParameterizedTest
    @ValueSource(strings = {"and the beetroot", "also beetroot", "the beetroot too", "and some beetroot as well"})
    void a_message_that_only_names_a_crop_more_tells_the_same_of_it(String saying) {
        Grown grower = Grown.usual();
        grower.says("sowed 6 carrots yesterday");

        Heard heard = grower.says(saying);

        assertThat(heard.statements()).singleElement().satisfies(statement -> {
            assertThat(statement.event().what()).isEqualTo(What.SOWN);
            assertThat(statement.event().crop()).isEqualTo("beetroot");
            assertThat(statement.event().on()).isEqualTo(Grown.TODAY.minusDays(1));
            assertThat(statement.event().count()).isNull();
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"never mind that", "forget it", "not sure"})
    void a_question_that_is_let_go_is_no_mere_chat(String saying) {
        Grown grower = Grown.usual();
        grower.says("tomatoes are flowering");

        Heard heard = grower.says(saying);

        assertThat(heard.kind()).isEqualTo(Kind.LET_GO);
        assertThat(heard.kind().word()).isEqualTo("chat");
        assertThat(heard.statements()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"no 18", "no, 18", "nope 18"})
    void a_figure_after_no_puts_right_what_was_told_while_a_trouble_question_waits(String saying) {
        Event sown = Event.of(What.SOWN, "carrot-1", "carrot", Grown.TODAY).withCount(81);
        Doubt trouble = new Doubt(
                About.ADVICE,
                Map.of("case", "pea-1"),
                List.of(
                        new Doubt.Choice("Yes", "fur-beneath=yes", null),
                        new Doubt.Choice("No", "fur-beneath=no", null)),
                null);
        Situation waiting = new Situation(
                Grown.TODAY,
                Grown.GROWER,
                List.of(),
                trouble,
                List.of(new Logged(1, "message", Instant.EPOCH, sown)),
                List.of());

        Heard heard = Grown.READING.understood(saying, waiting);

        assertThat(heard.corrects()).isTrue();
        assertThat(((Event) heard.amendments().get(0).instead()).count()).isEqualTo(18);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "gave the peas 2 litres each",
                "2 litres each for the peas",
                "watered the peas, 2 litres per plant"
            })
    void what_each_plant_got_is_told_from_what_all_got(String saying) {
        Event watered = Grown.usual().says(saying).statements().get(0).event();

        assertThat(watered.what()).isEqualTo(What.WATERED);
        assertThat(watered.amount()).isEqualTo(2);
        assertThat(watered.detail()).isEqualTo("each");
    }

    @Test
    void what_others_did_is_carried_on_to_no_crop() {
        Heard heard = Grown.usual()
                .says("Planted out the pumpkins this morning. My nephew did the digging. We lost at cards.");

        assertThat(heard.statements())
                .extracting(statement -> statement.event().what())
                .containsExactly(What.PLANTED_OUT);
    }
}
