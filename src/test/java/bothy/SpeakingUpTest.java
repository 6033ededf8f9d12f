package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.conversation.Conversation;
import bothy.conversation.Conversation.Outcome;
import bothy.conversation.Door;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Grower;
import bothy.garden.Message;
import bothy.garden.WeatherDay;
import bothy.weather.WeatherSource;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When the bot speaks first: hours, zones, clock changes, weather, and not a word too much. */
class SpeakingUpTest {
    private static final String SCHOOL = "telegram:4711";
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static Knowledge knowledge;

    @TempDir
    Path folder;

    private final List<WeatherDay> forecast = new ArrayList<>();
    private Store store;
    private Conversation conversation;
    private int messages;

    @BeforeAll
    static void make_ready() {
        knowledge = Workshop.knowledge(Workshop.folder(Path.of("rules")), null, WeatherSource.none());
    }

    @AfterAll
    static void let_go() {
        knowledge = null;
    }

    @BeforeEach
    void open() {
        store = Shelf.open(folder.resolve("diary.db").toString());
        WeatherSource sky = (Grower grower, LocalDate today) -> List.copyOf(forecast);
        conversation = new Conversation(
                store,
                new Knowledge(knowledge.reading(), knowledge.advisor(), knowledge.replier(), knowledge.sheets(), sky));
    }

    @AfterEach
    void close() {
        store.close();
    }

    private static Instant at(String localTime) {
        return LocalDateTime.parse(localTime).atZone(LONDON).toInstant();
    }

    private String tell(String localTime, String text) {
        Message message = Message.text("m" + ++messages, SCHOOL, at(localTime), LONDON, text);
        return conversation.handle(message, null).orElseThrow().reply().text();
    }

    private LocalDateTime nextLook() {
        return store.nextLook(SCHOOL)
                .map(look -> LocalDateTime.ofInstant(look, LONDON))
                .orElse(null);
    }

    /** All that is said unasked up to a time, each with the time at which it was said. */
    private List<String> saidUntil(String localTime) {
        List<String> said = new ArrayList<>();
        Optional<Instant> look = store.nextLook(SCHOOL);
        while (look.isPresent() && !look.get().isAfter(at(localTime))) {
            Optional<Outcome> outcome = conversation.speakUp(SCHOOL, look.get(), LONDON, null);
            LocalDateTime time = LocalDateTime.ofInstant(look.get(), LONDON);
            outcome.ifPresent(one -> said.add(time + " " + one.reply().text()));
            look = store.nextLook(SCHOOL);
        }
        return said;
    }

    @Test
    void a_garden_in_which_nothing_grows_is_not_looked_at() {
        tell("2027-05-01T10:00", "hello");

        assertThat(nextLook()).isNull();
    }

    @Test
    void a_garden_is_looked_at_the_next_morning_and_not_in_the_same_minute() {
        tell("2027-05-03T10:00", "planted out 6 tomatoes in the bed today");

        assertThat(nextLook()).isEqualTo("2027-05-04T08:00");
    }

    @Test
    void the_list_comes_at_its_hour_before_and_after_the_clocks_change() {
        tell("2027-03-10T10:00", "sowed 6 tomatoes in modules on the windowsill today");
        tell("2027-03-10T10:01", "only Sundays at 18:00");

        List<String> said = saidUntil("2027-04-05T00:00");

        assertThat(said)
                .extracting(one -> one.substring(0, 16))
                .containsExactly("2027-03-14T18:00", "2027-03-21T18:00", "2027-03-28T18:00", "2027-04-04T18:00");
        assertThat(at("2027-03-28T18:00")).isEqualTo("2027-03-28T17:00:00Z");
    }

    @Test
    void an_hour_that_the_clocks_leave_out_comes_an_hour_later() {
        tell("2027-03-10T10:00", "sowed 6 tomatoes in modules on the windowsill today");
        tell("2027-03-10T10:01", "only Sundays at 1:30");

        assertThat(saidUntil("2027-03-28T12:00"))
                .extracting(one -> one.substring(0, 16))
                .containsExactly("2027-03-14T01:30", "2027-03-21T01:30", "2027-03-28T02:30");
    }

    @Test
    void an_hour_that_comes_twice_brings_the_list_once() {
        tell("2027-10-20T10:00", "planted 20 cloves of garlic in the bed today");
        tell("2027-10-20T10:01", "only Sundays at 1:30");

        List<String> said = saidUntil("2027-11-01T00:00");

        assertThat(said).hasSizeLessThanOrEqualTo(2);
        assertThat(said.stream().filter(one -> one.startsWith("2027-10-31"))).hasSizeLessThanOrEqualTo(1);
    }

    @Test
    void a_frost_that_the_forecast_first_shows_in_the_evening_is_told_that_evening() {
        tell("2027-05-10T09:00", "planted out 6 tomatoes in the bed today");
        forecast.add(new WeatherDay(LocalDate.of(2027, 5, 11), 9.0, 18.0, 0.0, false));
        tell("2027-05-10T09:01", "thanks");
        saidUntil("2027-05-11T12:00");
        forecast.add(new WeatherDay(LocalDate.of(2027, 5, 12), -1.0, 9.0, 0.0, false));

        List<String> said = saidUntil("2027-05-11T23:00");

        assertThat(said)
                .singleElement()
                .asString()
                .startsWith("2027-05-11T18:30")
                .containsIgnoringCase("frost");
    }

    @Test
    void in_the_quiet_hours_nothing_is_said_and_what_was_missed_comes_in_the_morning() {
        tell("2027-05-03T10:00", "planted out 6 tomatoes in the bed today");

        assertThat(conversation.speakUp(SCHOOL, at("2027-05-04T03:00"), LONDON, null))
                .isEmpty();
        assertThat(nextLook()).isEqualTo("2027-05-04T08:00");
        assertThat(saidUntil("2027-05-04T08:00")).hasSize(1);
    }

    @Test
    void a_task_left_undone_is_raised_twice_and_then_rests_for_a_month() {
        tell("2027-04-20T10:00", "planted out 6 broad beans in the bed today");

        long raised = saidUntil("2027-05-18T23:00").stream()
                .filter(one -> one.contains("Is it done?"))
                .filter(one -> one.contains("Water the broad beans (first week out)"))
                .count();

        assertThat(raised).isBetween(1L, 2L);
    }

    @Test
    void the_same_moment_twice_says_it_once() {
        tell("2027-05-03T10:00", "planted out 6 tomatoes in the bed today");
        Instant morning = at("2027-05-04T08:00");

        assertThat(conversation.speakUp(SCHOOL, morning, LONDON, null)).isPresent();
        assertThat(conversation.speakUp(SCHOOL, morning, LONDON, null)).isEmpty();
    }

    @Test
    void whoever_wants_no_messages_is_not_looked_at_until_a_reminder_is_asked_for() {
        tell("2027-05-03T10:00", "planted out 6 tomatoes in the bed today");
        tell("2027-05-03T10:01", "stop messages");
        assertThat(nextLook()).isNull();

        tell("2027-05-03T10:02", "remind me tomorrow");
        assertThat(saidUntil("2027-06-01T00:00")).singleElement().asString().startsWith("2027-05-04T08:00");
    }

    @Test
    void a_list_missed_while_the_program_stood_still_comes_a_day_late_and_once() {
        tell("2027-04-26T10:00", "sowed 6 tomatoes in modules on the windowsill today");
        saidUntil("2027-05-07T23:00");

        Optional<Outcome> late = conversation.speakUp(SCHOOL, at("2027-05-09T10:00"), LONDON, null);

        assertThat(late.orElseThrow().reply().text()).contains("This week:");
        assertThat(saidUntil("2027-05-12T00:00")).noneMatch(one -> one.contains("This week:"));
    }

    // Who is let in, and what is kept

    private Conversation behind(Door door) {
        return new Conversation(store, knowledge, door);
    }

    private String tell(Conversation to, String grower, String time, String text) {
        Message message = Message.text("m" + ++messages, grower, at(time), LONDON, text);
        return to.handle(message, null).orElseThrow().reply().text();
    }

    @Test
    void an_uninvited_grower_gets_in_with_the_code_only_and_nothing_of_before_is_kept() {
        Conversation invited = behind(new Door(Door.Mode.INVITED, Set.of("runner-bean-27"), Set.of(), Set.of(), 0));

        assertThat(tell(invited, SCHOOL, "2027-05-03T10:00", "sowed 12 beans")).contains("invitation code");
        assertThat(tell(invited, SCHOOL, "2027-05-03T10:01", "runner-bean-28")).contains("invitation code");
        assertThat(store.lines(SCHOOL)).isEmpty();
        assertThat(tell(invited, SCHOOL, "2027-05-03T10:02", "/start runner-bean-27"))
                .contains("You are in");
        assertThat(tell(invited, SCHOOL, "2027-05-03T10:03", "sowed 12 runner beans today"))
                .contains("Noted");
        assertThat(tell(invited, "telegram:12", "2027-05-03T10:04", "hello")).contains("invitation code");
    }

    @Test
    void who_is_not_on_the_list_stays_outside() {
        Conversation listed = behind(new Door(Door.Mode.LISTED, Set.of(), Set.of(SCHOOL), Set.of(), 0));

        assertThat(tell(listed, "telegram:12", "2027-05-03T10:00", "sowed 12 runner beans"))
                .contains("not on it");
        assertThat(tell(listed, SCHOOL, "2027-05-03T10:00", "sowed 12 runner beans today"))
                .contains("Noted");
        assertThat(store.growers()).containsExactly(SCHOOL);
    }

    @Test
    void who_writes_too_fast_is_told_once_and_another_chat_does_not_wait() {
        Conversation paced = behind(new Door(Door.Mode.OPEN, Set.of(), Set.of(), Set.of(), 3));

        for (int i = 0; i < 3; i++) {
            assertThat(tell(paced, SCHOOL, "2027-05-03T10:00", "watered")).doesNotContain("faster");
        }
        assertThat(tell(paced, SCHOOL, "2027-05-03T10:00", "watered")).contains("faster");
        assertThat(tell(paced, SCHOOL, "2027-05-03T10:00", "watered")).isEmpty();
        assertThat(tell(paced, "telegram:12", "2027-05-03T10:00", "hello")).doesNotContain("faster");
        assertThat(tell(paced, SCHOOL, "2027-05-03T10:01", "hello")).doesNotContain("faster");
    }

    @Test
    void only_an_operator_is_told_how_the_service_is_doing() {
        Conversation run = behind(new Door(Door.Mode.OPEN, Set.of(), Set.of(), Set.of(SCHOOL), 0));
        tell(run, "telegram:12", "2027-05-03T10:00", "sowed 12 runner beans today");

        assertThat(tell(run, SCHOOL, "2027-05-03T10:00", "/status")).contains("1 growers");
        assertThat(tell(run, "telegram:12", "2027-05-03T10:01", "/status")).contains("do not know that command");
    }

    @Test
    void everything_is_deleted_after_asking_and_only_then() {
        tell("2027-05-03T10:00", "planted out 6 tomatoes in the bed today");
        tell("2027-05-03T10:01", "delete my data");
        tell("2027-05-03T10:02", "no");
        assertThat(store.lines(SCHOOL)).isNotEmpty();

        assertThat(tell("2027-05-03T10:03", "delete my data")).contains("Delete everything");
        assertThat(tell("2027-05-03T10:04", "yes")).contains("Everything is deleted");
        assertThat(store.lines(SCHOOL)).isEmpty();
        assertThat(nextLook()).isNull();
    }

    @Test
    void my_data_comes_as_two_files_with_every_line() {
        tell("2027-05-03T10:00", "sowed 12 runner beans today");
        tell("2027-05-03T10:01", "no, 14");
        Message ask = Message.text("ask", SCHOOL, at("2027-05-03T10:02"), LONDON, "/mydata");
        var documents = conversation.handle(ask, null).orElseThrow().reply().documents();

        assertThat(documents).extracting(document -> document.name()).containsExactly("diary.json", "diary.csv");
        assertThat(documents.get(0).content()).contains("\"count\" : 12").contains("\"count\" : 14");
        assertThat(documents.get(1).content().lines())
                .hasSize(2)
                .last()
                .asString()
                .contains(",sown,runner-bean-1,runner-bean,,14,");
    }

    @Test
    void the_zone_of_a_shared_place_is_asked_once() {
        Message place = new Message(
                "place", SCHOOL, at("2027-05-03T10:00"), ZoneId.of("UTC"), "", 53.8, -1.5, false, null, null);
        Outcome first = conversation.handle(place, null).orElseThrow();
        assertThat(first.reply().buttons()).contains("Europe/London");

        Message press = new Message(
                "press",
                SCHOOL,
                at("2027-05-03T10:01"),
                ZoneId.of("UTC"),
                "",
                null,
                null,
                false,
                "Europe/London",
                null);
        assertThat(conversation.handle(press, null).orElseThrow().reply().text())
                .contains("Europe/London");

        Message again = new Message(
                "again", SCHOOL, at("2027-05-03T10:02"), ZoneId.of("UTC"), "", 53.8, -1.6, false, null, null);
        assertThat(conversation.handle(again, null).orElseThrow().reply().buttons())
                .isEmpty();
    }
}
