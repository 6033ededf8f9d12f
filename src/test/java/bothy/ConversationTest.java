package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.RulesFolder;
import bothy.conversation.Conversation;
import bothy.conversation.Conversation.Outcome;
import bothy.conversation.Knowledge;
import bothy.diary.Replay;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Event;
import bothy.garden.Garden;
import bothy.garden.Message;
import bothy.garden.What;
import bothy.weather.WeatherSource;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One grower writes; the diary is a real file. */
class ConversationTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 5, 20);
    private static final Instant NOW = TODAY.atTime(18, 0).toInstant(ZoneOffset.UTC);
    private static Knowledge knowledge;

    @TempDir
    Path folder;

    private Store store;
    private Conversation conversation;
    private int number;

    @BeforeAll
    static void make_ready() {
        knowledge = Workshop.knowledge(RulesFolder.at(Path.of("rules")), null, WeatherSource.none());
    }

    @BeforeEach
    void open() {
        store = Shelf.open(folder.resolve("diary.db").toString());
        conversation = new Conversation(store, knowledge);
    }

    @AfterEach
    void close() {
        store.close();
    }

    private Outcome says(String text) {
        return conversation
                .handle(message("m" + number++, text, null, null), null)
                .orElseThrow();
    }

    private static Message message(String id, String text, String pressed, String edits) {
        return new Message(id, "test:1", NOW, ZoneOffset.UTC, text, null, null, false, pressed, edits);
    }

    private Garden garden() {
        return store.write("test:1", page -> Replay.garden(page.lines(), TODAY, ZoneOffset.UTC));
    }

    private List<Event> events() {
        return garden().events();
    }

    @Test
    void an_edited_message_corrects_its_entry() {
        says("sowed 6 cucumbers in modules");

        conversation.handle(message("edit-1", "sowed 8 cucumbers in modules", null, "m0"), null);

        assertThat(events()).singleElement().satisfies(event -> {
            assertThat(event.count()).isEqualTo(8);
            assertThat(event.planting()).isEqualTo("cucumber-1");
        });
        assertThat(store.<Integer>write("test:1", page -> page.lines().size()))
                .as("the first entry is still in the log")
                .isEqualTo(2);
    }

    @Test
    void an_edited_message_that_no_longer_names_its_crop_still_means_it() {
        says("watered the cucumbers");
        conversation.handle(message("edit-1", "watered them with 10 litres", null, "m0"), null);

        assertThat(garden().plantings()).hasSize(1);
        assertThat(garden().plantings().get(0).crop()).isEqualTo("cucumber");
        assertThat(says("watered the cucumbers").reply().text()).contains("cucumbers");
    }

    @Test
    void a_location_that_is_no_place_on_earth_is_not_written() {
        Outcome outcome = conversation
                .handle(new Message("loc", "test:1", NOW, ZoneOffset.UTC, "", 199.0, -148.0, false, null, null), null)
                .orElseThrow();

        assertThat(outcome.reply().text()).contains("no place on earth");
        assertThat(garden().grower().latitude()).isNull();
    }

    @Test
    void an_edited_message_takes_back_what_it_no_longer_says_and_adds_what_is_new() {
        says("sowed 6 cucumbers in modules and 12 peas outdoors");

        conversation.handle(message("edit-1", "sowed 6 cucumbers in modules", null, "m0"), null);

        assertThat(events()).extracting(Event::crop).containsExactly("cucumber");
    }

    @Test
    void a_message_handed_over_twice_is_recorded_once() {
        Message sown = message("same", "sowed 6 cucumbers in modules", null, null);

        Optional<Outcome> first = conversation.handle(sown, null);
        Optional<Outcome> second = conversation.handle(sown, null);

        assertThat(first).isPresent();
        assertThat(second).isEmpty();
        assertThat(events()).hasSize(1);
    }

    @Test
    void a_question_waits_through_a_restart_and_a_button_answers_it() {
        says("sowed 6 tomatoes in the greenhouse");
        says("sowed 6 tomatoes on the windowsill");
        Outcome asked = says("the tomatoes are up");
        assertThat(asked.asks()).isTrue();
        assertThat(asked.written()).isEmpty();

        close();
        open();
        String button = asked.reply().buttons().get(0);
        conversation.handle(message("tap-1", "", button, null), null);

        assertThat(events())
                .filteredOn(event -> event.what() == What.EMERGED)
                .singleElement()
                .extracting(Event::planting)
                .isEqualTo("tomato-1");
    }

    @Test
    void a_button_of_an_older_question_writes_nothing_wrong() {
        says("sowed 6 tomatoes in the greenhouse");

        conversation.handle(message("tap-1", "", "Yes, some are up", null), null);

        assertThat(events()).extracting(Event::what).doesNotContain(What.DIED, What.HARVESTED);
        assertThat(events()).hasSizeLessThanOrEqualTo(2);
    }

    @Test
    void undo_goes_back_one_message_at_a_time_and_keeps_the_log() {
        says("sowed 6 cucumbers in modules");
        says("sowed 12 peas outdoors");

        says("/undo");
        assertThat(events()).extracting(Event::crop).containsExactly("cucumber");
        says("/undo");
        assertThat(events()).isEmpty();

        assertThat(store.<Integer>write("test:1", page -> page.lines().size())).isEqualTo(4);
    }

    @Test
    void scrapping_a_correction_brings_the_first_word_back() {
        says("sowed 6 cucumbers in modules");
        says("8 not 6");
        assertThat(events()).singleElement().extracting(Event::count).isEqualTo(8);

        says("/undo");

        assertThat(events()).singleElement().extracting(Event::count).isEqualTo(6);
    }

    @Test
    void a_planting_taken_back_does_not_lend_its_name_to_the_next() {
        says("sowed 6 cucumbers in modules");
        says("/undo");
        says("sowed 9 cucumbers in modules");

        assertThat(garden().plantings()).singleElement().satisfies(planting -> {
            assertThat(planting.id()).isEqualTo("cucumber-2");
            assertThat(planting.sown()).isEqualTo(9);
        });
    }

    @Test
    void a_past_day_can_be_seen_again_as_it_was() {
        says("sowed 6 cucumbers in modules");
        Instant later = NOW.plusSeconds(10 * 86_400);
        conversation.handle(
                Message.text("late", "test:1", later, ZoneOffset.UTC, "planted out 5 cucumbers in bed 2"), null);

        Garden then = store.write("test:1", page -> Replay.garden(page.lines(), TODAY.plusDays(1), ZoneOffset.UTC));

        assertThat(then.events()).extracting(Event::what).containsExactly(What.SOWN);
    }

    @Test
    void a_told_time_zone_moves_the_day() {
        says("my time zone is Australia/Sydney");
        says("sowed 6 peas outdoors today");

        assertThat(events())
                .singleElement()
                .extracting(Event::on)
                .isEqualTo(NOW.atZone(ZoneId.of("Australia/Sydney")).toLocalDate());
    }

    @Test
    void a_location_shared_is_kept_to_a_kilometre() {
        conversation.handle(
                new Message("loc", "test:1", NOW, ZoneOffset.UTC, "", 53.3811234, -1.4701234, false, null, null), null);

        assertThat(garden().grower().latitude()).isEqualTo(53.38);
        assertThat(garden().grower().longitude()).isEqualTo(-1.47);
    }

    @Test
    void a_photo_alone_is_not_pretended_to_be_seen() {
        Outcome outcome = conversation
                .handle(new Message("photo", "test:1", NOW, ZoneOffset.UTC, "", null, null, true, null, null), null)
                .orElseThrow();

        assertThat(outcome.reply().text()).contains("cannot see pictures");
    }
}
