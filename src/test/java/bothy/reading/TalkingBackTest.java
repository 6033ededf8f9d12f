package bothy.reading;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.garden.Amendment;
import bothy.garden.Doubt.About;
import bothy.garden.Event;
import bothy.garden.Heard;
import bothy.garden.Question;
import bothy.garden.SignSeen;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Corrections, references and answers to the question that waits. */
class TalkingBackTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "no, that was Tuesday",
                "sorry, it was yesterday",
                "Actually that was yesterday",
                "oops, Tuesday not today",
                "wrong day, it was the 18th"
            })
    void a_wrong_day_is_put_right(String saying) {
        Grown grower = Grown.usual();
        grower.says("sowed 6 carrots");

        Heard heard = grower.says(saying);

        assertThat(heard.corrects()).isTrue();
        assertThat(event(heard).on()).isEqualTo(LocalDate.of(2027, 5, 18));
        assertThat(event(heard).count()).isEqualTo(6);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "8 not 6",
                "no, 8",
                "make that 8",
                "actually it was 8",
                "not 6, 8",
                "sorry I meant 8",
                "correction: 8",
                "should be 8 not 6"
            })
    void a_wrong_count_is_put_right(String saying) {
        Grown grower = Grown.usual();
        grower.says("fed the peas and sowed 6 carrots");

        Heard heard = grower.says(saying);

        assertThat(heard.amendments()).hasSize(1);
        assertThat(event(heard).count()).isEqualTo(8);
        assertThat(event(heard).crop()).isEqualTo("carrot");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "not the squash, the pumpkins",
                "sorry, I meant the pumpkins",
                "no, the pumpkins",
                "pumpkins not squash"
            })
    void an_entry_is_moved_to_another_planting(String saying) {
        Grown grower = Grown.usual();
        grower.says("planted out the squash");

        Heard heard = grower.says(saying);

        assertThat(event(heard).planting()).isEqualTo("pumpkin-1");
        assertThat(event(heard).crop()).isEqualTo("pumpkin");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "actually it was the greenhouse ones",
                "the cherry ones",
                "I meant the cherry tomatoes",
                "no, the ones in the greenhouse"
            })
    void an_entry_is_moved_to_another_planting_of_the_same_crop(String saying) {
        Grown grower = Grown.usual();
        grower.says("picked 5 plum tomatoes");

        assertThat(event(grower.says(saying)).planting()).isEqualTo("tomato-1");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "undo",
                "scrap that",
                "forget that",
                "delete that",
                "ignore my last message",
                "undo that please",
                "no scrap that"
            })
    void the_last_message_is_taken_back(String saying) {
        Grown grower = Grown.usual();
        grower.says("fed the peas and sowed 6 carrots");

        Heard heard = grower.says(saying);

        assertThat(heard.corrects()).isTrue();
        assertThat(heard.amendments()).containsExactly(new Amendment(1, null), new Amendment(2, null));
    }

    @Test
    void what_is_denied_is_taken_back() {
        Grown grower = Grown.usual();
        grower.says("watered the pumpkins");

        assertThat(grower.says("no I haven't watered the pumpkins").amendments())
                .containsExactly(new Amendment(1, null));
    }

    @Test
    void the_same_is_told_for_another_crop() {
        Grown grower = Grown.usual();
        grower.says("watered the peas");

        Heard heard = grower.says("same for the beans");

        assertThat(heard.statements()).singleElement().satisfies(statement -> {
            assertThat(statement.event().what()).isEqualTo(What.WATERED);
            assertThat(statement.plantings()).containsExactly("runner-bean-1");
        });
    }

    @Test
    void a_sign_is_moved_to_another_crop() {
        Grown grower = Grown.usual();
        grower.says("pea leaves are yellow");

        Heard heard = grower.says("I meant the pumpkin leaves");

        assertThat(((SignSeen) heard.amendments().get(0).instead()).planting()).isEqualTo("pumpkin-1");
    }

    @Test
    void a_correction_that_could_mean_two_entries_is_asked() {
        Grown grower = Grown.usual();
        grower.says("sowed 6 carrots and planted out 4 leeks");

        Heard heard = grower.says("no, it was 5");

        assertThat(heard.doubt().about()).isEqualTo(About.WHICH_ENTRY);
        assertThat(heard.doubt().choices()).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "no they are still too small",
                "also sowed 4 leeks",
                "no idea",
                "not yet",
                "when should I water them?",
                "thanks",
                "the peas are up"
            })
    void what_goes_on_corrects_nothing(String saying) {
        Grown grower = Grown.usual();
        grower.says("fed the peas");

        assertThat(grower.says(saying).corrects()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "the greenhouse ones",
                "cherry",
                "the first",
                "the cherry tomatoes",
                "1",
                "greenhouse",
                "the ones in the greenhouse",
                "cherry tomato"
            })
    void the_planting_is_named_in_words(String answer) {
        Grown grower = Grown.usual();
        grower.says("tomatoes are flowering");

        Heard heard = grower.says(answer);

        assertThat(heard.statements()).singleElement().satisfies(statement -> {
            assertThat(statement.sure()).isTrue();
            assertThat(statement.plantings()).containsExactly("tomato-1");
        });
    }

    @Test
    void both_plantings_are_meant() {
        Grown grower = Grown.usual();
        grower.says("tomatoes are flowering");

        assertThat(grower.says("both").statements().get(0).plantings()).containsExactly("tomato-1", "tomato-2");
    }

    @Test
    void an_answer_may_go_on_with_something_new() {
        Grown grower = Grown.usual();
        grower.says("tomatoes are flowering");

        Heard heard = grower.says("the plum ones, and I fed them too");

        assertThat(heard.statements())
                .extracting(statement -> statement.event().what())
                .containsExactly(What.FLOWERING, What.FED);
        assertThat(heard.statements())
                .allSatisfy(statement -> assertThat(statement.plantings()).containsExactly("tomato-2"));
    }

    @Test
    void another_subject_is_read_on_its_own() {
        Grown grower = Grown.usual();
        grower.says("tomatoes are flowering");

        Heard heard = grower.says("when do I feed the peas?");

        assertThat(heard.statements()).isEmpty();
        assertThat(heard.inquiries()).extracting(inquiry -> inquiry.question()).containsExactly(Question.FEED_WHEN);
    }

    @ParameterizedTest
    @ValueSource(strings = {"30 April", "on the 30th of april", "it was 30/4"})
    void a_missing_day_is_filled_in(String answer) {
        Grown grower = Grown.usual();
        grower.says("sowed 6 carrots the other day");

        Heard heard = grower.says(answer);

        assertThat(heard.statements().get(0).event().on()).isEqualTo(LocalDate.of(2027, 4, 30));
        assertThat(heard.statements().get(0).sure()).isTrue();
    }

    @Test
    void a_missing_count_and_a_missing_crop_are_filled_in() {
        Grown counting = Grown.usual();
        counting.says("sowed 0 carrots");
        assertThat(counting.says("20").statements().get(0).event().count()).isEqualTo(20);

        Grown naming = Grown.usual();
        naming.says("sowed 8 flurbs");
        Event event = naming.says("I meant kale").statements().get(0).event();
        assertThat(event.crop()).isEqualTo("kale");
        assertThat(event.count()).isEqualTo(8);
    }

    @Test
    void degrees_that_cannot_be_are_asked_and_answered() {
        Grown grower = Grown.usual();

        assertThat(grower.says("soil is 70C").doubt().choices())
                .extracting(choice -> choice.label())
                .contains("70 °F (21 °C)");
        assertThat(grower.says("F").statements().get(0).event().amount()).isEqualTo(21.11111);
    }

    @ParameterizedTest
    @ValueSource(strings = {"yes", "yep", "yeah I did", "done", "Yes, done"})
    void what_was_really_done_is_confirmed(String answer) {
        Grown grower = Grown.usual();
        assertThat(grower.says("Sow 6 carrots today").doubt().about()).isEqualTo(About.REALLY_DONE);

        assertThat(grower.says(answer).statements()).singleElement().satisfies(statement -> assertThat(statement.sure())
                .isTrue());
    }

    @ParameterizedTest
    @ValueSource(strings = {"no", "nope not yet", "not yet", "Not yet"})
    void what_was_not_done_is_only_a_plan(String answer) {
        Grown grower = Grown.usual();
        grower.says("Sow 6 carrots today");

        Heard heard = grower.says(answer);

        assertThat(heard.statements()).isEmpty();
        assertThat(heard.plans()).extracting(plan -> plan.what()).isEqualTo(List.of(What.SOWN));
    }

    private static Event event(Heard heard) {
        assertThat(heard.amendments()).isNotEmpty();
        return (Event) heard.amendments().get(0).instead();
    }
}
