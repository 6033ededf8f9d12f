package bothy.diary.sql;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bothy.diary.Page;
import bothy.diary.Store;
import bothy.garden.Amendment;
import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Incoming;
import bothy.garden.Logged;
import bothy.garden.Normals;
import bothy.garden.Outgoing;
import bothy.garden.Reply;
import bothy.garden.Sent;
import bothy.garden.SettingChange;
import bothy.garden.SignSeen;
import bothy.garden.WeatherDay;
import bothy.garden.What;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What a store promises; each engine runs all of it on fresh tables. */
abstract class StoreSuite {
    static final Instant NOON = Instant.parse("2027-05-01T12:00:00.123Z");
    static final String SCHOOL = "telegram:4711";
    static final Reply ANSWER = new Reply("Noted.", List.of());

    Store store;

    /** An address at which nothing is kept yet. */
    abstract String freshAddress();

    /** Opens the same diaries again. */
    abstract String sameAddress();

    @BeforeEach
    void open() {
        store = Shelf.open(freshAddress());
    }

    @AfterEach
    void close() {
        store.close();
    }

    static Entry sown(String crop, int count) {
        return Event.of(What.SOWN, crop + "-1", crop, LocalDate.of(2027, 5, 1)).withCount(count);
    }

    static Incoming letter(String id) {
        return letter(id, "4711");
    }

    static Incoming letter(String id, String chat) {
        return new Incoming("telegram", id, "telegram:" + chat, chat, NOON, "{\"update_id\":1}");
    }

    List<Logged> lines(String grower) {
        return store.write(grower, Page::lines);
    }

    private boolean handled(String grower, String message) {
        return store.<Boolean>write(grower, page -> page.handled(message));
    }

    private void reopen() {
        store.close();
        store = Shelf.open(sameAddress());
    }

    private void reply(String chat, String text, String... buttons) {
        store.write("telegram:" + chat, page -> {
            page.send("telegram", chat, new Reply(text, List.of(buttons)), NOON);
            return null;
        });
    }

    private List<String> texts(List<Outgoing> outgoing) {
        return outgoing.stream().map(one -> one.reply().text()).toList();
    }

    @Test
    void lines_come_back_in_the_order_told_with_numbers_that_follow_on() {
        store.write(SCHOOL, page -> page.append("m1", NOON, List.of(sown("bean", 12), sown("tomato", 6))));
        List<Logged> added =
                store.write(SCHOOL, page -> page.append("m2", NOON.plusSeconds(60), List.of(sown("chard", 9))));

        assertThat(added).containsExactly(new Logged(3, "m2", NOON.plusSeconds(60), sown("chard", 9)));
        assertThat(lines(SCHOOL))
                .containsExactly(
                        new Logged(1, "m1", NOON, sown("bean", 12)),
                        new Logged(2, "m1", NOON, sown("tomato", 6)),
                        new Logged(3, "m2", NOON.plusSeconds(60), sown("chard", 9)));
    }

    @Test
    void every_sort_of_entry_comes_back_as_it_was() {
        LocalDate day = LocalDate.of(2027, 6, 2);
        List<Entry> entries = List.of(
                new Event(
                        What.PLANTED_OUT,
                        "runner-bean-1",
                        "runner-bean",
                        "‘Moonlight’ \"white\"",
                        8,
                        2.5,
                        "m²",
                        day,
                        "bed 2",
                        "modules",
                        "first; drop table grower --"),
                Event.of(What.RAIN, null, null, day).withAmount(12.0, "mm"),
                new SignSeen("no-emergence", "pea-1", "pea", day, "lower leaves", 3),
                new SettingChange("zone", "Europe/London"),
                new Amendment(1, sown("runner-bean", 9)),
                new Amendment(2, null));

        store.write(SCHOOL, page -> page.append("m1", NOON, entries));
        reopen();

        assertThat(lines(SCHOOL)).extracting(Logged::entry).isEqualTo(entries);
    }

    @Test
    void weather_days_are_kept_by_grower_and_place_and_the_newest_word_counts() {
        LocalDate day = LocalDate.of(2027, 6, 2);
        WeatherDay first = new WeatherDay(day, 8.5, 19.0, 2.4, true, 3.0, 6.5);
        WeatherDay unsure = new WeatherDay(day.plusDays(1), null, 21.0, null, true, null, null);
        WeatherDay better = new WeatherDay(day, 8.0, 19.5, 3.0, true, null, null);

        store.write(SCHOOL, page -> {
            page.keepWeather("51.00 0.00", List.of(first, unsure));
            page.keepWeather("51.00 0.00", List.of(better));
            page.keepWeather("60.00 0.00", List.of(first));
            return null;
        });
        reopen();

        assertThat(store.<List<WeatherDay>>write(SCHOOL, page -> page.weather("51.00 0.00", day)))
                .containsExactly(better, unsure);
        assertThat(store.<List<WeatherDay>>write(SCHOOL, page -> page.weather("51.00 0.00", day.plusDays(1))))
                .containsExactly(unsure);
        assertThat(store.<List<WeatherDay>>write("telegram:other", page -> page.weather("51.00 0.00", day)))
                .isEmpty();
    }

    @Test
    void normals_are_kept_by_place_and_go_with_all_else() {
        Normals normals = new Normals(
                2012,
                2015,
                new Normals.Frost(MonthDay.of(2, 9), MonthDay.of(3, 2), MonthDay.of(3, 23), 16.0, 4, 0),
                null,
                List.of(new Normals.OfMonth(6, 4, 33.2, 11.4, 21.5, List.of(493.0, 433.0))));

        store.write(SCHOOL, page -> {
            page.keepNormals("", new Normals(2001, 2002, null, null, List.of()));
            page.keepNormals("", normals);
            return null;
        });
        reopen();

        assertThat(store.<Optional<Normals>>write(SCHOOL, page -> page.normals("")))
                .contains(normals);
        assertThat(store.<Optional<Normals>>write(SCHOOL, page -> page.normals("51.00 0.00")))
                .isEmpty();
        store.write(SCHOOL, page -> {
            page.forget();
            return null;
        });
        assertThat(store.<Optional<Normals>>write(SCHOOL, page -> page.normals("")))
                .isEmpty();
    }

    @Test
    void letters_that_are_none_harm_nothing() {
        String strange = "nul \u0000 bell \u0007 half an emoji \ud83c, right to left \u202e, whole \ud83c\udf31";
        store.receive(List.of(
                new Incoming("telegram", "m1", SCHOOL, "4711", NOON, "{\"text\":\"" + "\\u0000\\ud83c" + "\"}")));
        store.write(SCHOOL, page -> {
            page.append(
                    "m1", NOON, List.of(Event.of(What.NOTE, null, null, null).withDetail(strange)));
            page.markHandled("m1", NOON);
            page.send("telegram", "4711", new Reply(strange, List.of(strange)), NOON);
            return null;
        });

        reopen();

        assertThat(((Event) lines(SCHOOL).get(0).entry()).detail())
                .startsWith("nul \u0000 bell \u0007 half an emoji ")
                .endsWith(", right to left \u202e, whole \ud83c\udf31");
        assertThat(store.toSend("telegram", NOON, 1).get(0).reply().text()).endsWith("whole \ud83c\udf31");
        assertThat(handled(SCHOOL, "m1")).isTrue();
    }

    @Test
    void growers_see_only_their_own_lines() {
        store.write("telegram:1", page -> page.append("m", NOON, List.of(sown("pea", 1))));
        store.write("telegram:2", page -> page.append("m", NOON, List.of(sown("leek", 2))));

        assertThat(lines("telegram:1")).extracting(Logged::entry).containsExactly(sown("pea", 1));
        assertThat(lines("telegram:2")).extracting(Logged::entry).containsExactly(sown("leek", 2));
        assertThat(lines("telegram:3")).isEmpty();
        assertThat(store.growers()).containsExactly("telegram:1", "telegram:2");
    }

    @Test
    void nothing_is_kept_of_work_that_throws() {
        store.receive(List.of(letter("m1")));
        IllegalStateException broken = new IllegalStateException("a rule broke");

        assertThatThrownBy(() -> store.write(SCHOOL, page -> {
                    page.append("m1", NOON, List.of(sown("bean", 12)));
                    page.markHandled("m1", NOON);
                    page.keepState("{\"asked\":1}");
                    page.send("telegram", "4711", ANSWER, NOON);
                    throw broken;
                }))
                .isSameAs(broken);

        assertThat(lines(SCHOOL)).isEmpty();
        assertThat(handled(SCHOOL, "m1")).isFalse();
        assertThat(store.write(SCHOOL, Page::state)).isEmpty();
        assertThat(store.toSend("telegram", NOON, 10)).isEmpty();
        assertThat(store.unhandled("telegram", 10)).containsExactly(letter("m1"));
    }

    @Test
    void a_number_is_not_used_again_after_a_rollback_in_between() {
        store.write(SCHOOL, page -> page.append("m1", NOON, List.of(sown("bean", 1))));
        assertThatThrownBy(() -> store.write(SCHOOL, page -> {
                    page.append("m2", NOON, List.of(sown("bean", 2)));
                    throw new IllegalStateException();
                }))
                .isInstanceOf(IllegalStateException.class);
        store.write(SCHOOL, page -> page.append("m3", NOON, List.of(sown("bean", 3))));

        assertThat(lines(SCHOOL)).extracting(Logged::number).containsExactly(1L, 2L);
        assertThat(lines(SCHOOL)).extracting(Logged::message).containsExactly("m1", "m3");
    }

    @Test
    void a_message_is_handled_once_and_its_letter_with_it() {
        store.receive(List.of(letter("m1"), letter("m2")));

        store.write(SCHOOL, page -> {
            page.markHandled("m1", NOON);
            page.markHandled("m1", NOON);
            return null;
        });

        assertThat(handled(SCHOOL, "m1")).isTrue();
        assertThat(handled(SCHOOL, "m2")).isFalse();
        assertThat(handled("telegram:1", "m1")).isFalse();
        assertThat(store.unhandled("telegram", 10)).containsExactly(letter("m2"));
    }

    @Test
    void state_is_kept_over_a_restart_and_replaced() {
        assertThat(store.write(SCHOOL, Page::state)).isEmpty();

        keepState("{\"asked\":1}");
        keepState("{\"asked\":2}");
        reopen();

        assertThat(store.write(SCHOOL, Page::state)).contains("{\"asked\":2}");
    }

    private void keepState(String json) {
        store.write(SCHOOL, page -> {
            page.keepState(json);
            return null;
        });
    }

    @Test
    void a_letter_received_twice_is_there_once() {
        assertThat(store.receive(List.of(letter("m1"), letter("m2")))).isEqualTo(2);
        assertThat(store.receive(List.of(letter("m2"), letter("m3")))).isEqualTo(1);

        assertThat(store.unhandled("telegram", 10)).extracting(Incoming::id).containsExactly("m1", "m2", "m3");
        assertThat(store.unhandled("telegram", 2)).extracting(Incoming::id).containsExactly("m1", "m2");
        assertThat(store.unhandled("web", 10)).isEmpty();
    }

    @Test
    void a_letter_set_aside_is_not_handed_out_nor_taken_in_again() {
        store.receive(List.of(letter("m1")));
        store.setAside("telegram", "m1", NOON);

        assertThat(store.unhandled("telegram", 10)).isEmpty();
        assertThat(store.receive(List.of(letter("m1")))).isZero();
    }

    @Test
    void replies_leave_one_at_a_time_in_each_chat() {
        reply("1", "first");
        reply("1", "second");
        reply("2", "other");

        List<Outgoing> now = store.toSend("telegram", NOON, 10);
        assertThat(texts(now)).containsExactly("first", "other");

        store.sent(List.of(new Sent(now.get(0).number(), "77")));
        assertThat(texts(store.toSend("telegram", NOON, 10))).containsExactly("second", "other");
        assertThat(store.toSend("web", NOON, 10)).isEmpty();
    }

    @Test
    void a_reply_put_off_holds_back_what_follows_it_in_its_chat_only() {
        reply("1", "first");
        reply("1", "second");
        reply("2", "other");
        long first = store.toSend("telegram", NOON, 1).get(0).number();

        store.putOff(first, NOON, NOON.plusSeconds(7), "too many requests");

        assertThat(texts(store.toSend("telegram", NOON.plusSeconds(6), 10))).containsExactly("other");
        Outgoing again = store.toSend("telegram", NOON.plusSeconds(7), 10).get(0);
        assertThat(again.reply().text()).isEqualTo("first");
        assertThat(again.tries()).isEqualTo(1);
    }

    @Test
    void a_reply_put_off_by_a_clock_that_was_ahead_is_due_when_the_clock_is_set_right() {
        reply("1", "first");
        long first = store.toSend("telegram", NOON, 1).get(0).number();
        Instant ahead = NOON.plus(Duration.ofHours(3));

        store.putOff(first, ahead, ahead.plusSeconds(7), "too many requests");

        assertThat(texts(store.toSend("telegram", ahead.plusSeconds(6), 10))).isEmpty();
        assertThat(texts(store.toSend("telegram", NOON, 10))).containsExactly("first");
    }

    @Test
    void a_reply_given_up_makes_way_for_the_next() {
        reply("1", "first");
        reply("1", "second");

        store.giveUp(store.toSend("telegram", NOON, 1).get(0).number(), "blocked");

        assertThat(texts(store.toSend("telegram", NOON, 10))).containsExactly("second");
    }

    @Test
    void only_the_newest_buttons_of_a_chat_are_found_sent_or_not() {
        assertThat(store.lastWithButtons("telegram", "1")).isEmpty();
        reply("1", "Which beans?", "the early ones", "the late ones");
        reply("1", "Seven or eight?", "7", "8");
        reply("1", "no buttons");
        reply("2", "elsewhere", "yes");
        store.sent(List.of(new Sent(store.toSend("telegram", NOON, 1).get(0).number(), "77")));

        assertThat(store.lastWithButtons("telegram", "1"))
                .hasValueSatisfying(found -> assertThat(found.reply().buttons()).containsExactly("7", "8"));
    }

    @Test
    void what_was_put_into_the_boxes_is_there_after_a_restart() {
        store.receive(List.of(letter("m1")));
        reply("1", "Zwei Zeilen\n\nmit “Zeichen” 🌱 und Null: " + "x".repeat(5000));
        List<Outgoing> before = store.toSend("telegram", NOON, 10);

        reopen();

        assertThat(store.unhandled("telegram", 10)).containsExactly(letter("m1"));
        assertThat(store.toSend("telegram", NOON, 10)).isEqualTo(before);
    }

    @Test
    void eight_threads_writing_for_twenty_growers_lose_nothing() throws Exception {
        int rounds = 25;
        ExecutorService threads = Executors.newFixedThreadPool(8);
        List<Callable<List<Logged>>> work = new ArrayList<>();
        for (int round = 0; round < rounds; round++) {
            String message = "m" + round;
            IntStream.range(0, 20)
                    .forEach(grower -> work.add(() -> store.write(
                            "grower-" + grower,
                            page -> page.append(message, NOON, List.of(sown("bean", 1), sown("pea", 2))))));
        }

        for (Future<List<Logged>> done : threads.invokeAll(work)) {
            assertThat(done.get()).hasSize(2);
        }
        threads.shutdown();

        assertThat(store.growers()).hasSize(20);
        for (String grower : store.growers()) {
            assertThat(lines(grower))
                    .extracting(Logged::number)
                    .isEqualTo(LongStream.rangeClosed(1, 2 * rounds).boxed().toList());
        }
    }

    @Test
    void of_many_writing_at_the_same_time_those_that_throw_take_nothing_of_the_others_along() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(8);
        List<Callable<Boolean>> work = new ArrayList<>();
        for (int number = 0; number < 400; number++) {
            int count = number;
            work.add(() -> {
                try {
                    store.write("grower-" + count % 5, page -> {
                        page.append("m" + count, NOON, List.of(sown("bean", count)));
                        if (count % 3 == 0) {
                            throw new IllegalStateException("a rule broke");
                        }
                        return null;
                    });
                    return true;
                } catch (IllegalStateException e) {
                    return false;
                }
            });
        }

        List<Future<Boolean>> done = threads.invokeAll(work);
        threads.shutdown();

        List<String> kept = new ArrayList<>();
        for (String grower : store.growers()) {
            List<Logged> lines = lines(grower);
            assertThat(lines)
                    .extracting(Logged::number)
                    .isEqualTo(LongStream.rangeClosed(1, lines.size()).boxed().toList());
            lines.forEach(line -> kept.add(line.message()));
        }
        for (int number = 0; number < 400; number++) {
            assertThat(done.get(number).get()).isEqualTo(number % 3 != 0);
            assertThat(kept.contains("m" + number)).isEqualTo(number % 3 != 0);
        }
    }

    @Test
    void two_threads_handling_the_same_message_write_it_once() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(4);
        Callable<Boolean> handling = () -> store.write(SCHOOL, page -> {
            if (page.handled("m1")) {
                return false;
            }
            page.append("m1", NOON, List.of(sown("bean", 1)));
            page.markHandled("m1", NOON);
            return true;
        });

        int wrote = 0;
        for (Future<Boolean> done : threads.invokeAll(List.of(handling, handling, handling, handling))) {
            wrote += done.get() ? 1 : 0;
        }
        threads.shutdown();

        assertThat(wrote).isEqualTo(1);
        assertThat(lines(SCHOOL)).hasSize(1);
    }

    private void lookAt(String grower, Instant moment) {
        store.write(grower, page -> {
            page.append("m", NOON, List.of(sown("bean", 1)));
            page.lookAgain(moment);
            return null;
        });
    }

    @Test
    void a_garden_whose_look_is_due_is_taken_up_once_and_again_when_the_look_was_broken_off() {
        lookAt("telegram:1", NOON.minusSeconds(60));
        lookAt("telegram:2", NOON.minusSeconds(120));
        lookAt("telegram:3", NOON.plusSeconds(1));
        lookAt("telegram:4", null);

        assertThat(store.takeDue(NOON, NOON.plusSeconds(300), 10))
                .containsExactlyInAnyOrder("telegram:2", "telegram:1");
        assertThat(store.takeDue(NOON, NOON.plusSeconds(300), 10)).isEmpty();
        assertThat(store.takeDue(NOON.plusSeconds(300), NOON.plusSeconds(600), 2))
                .hasSize(2);
        assertThat(store.nextLook("telegram:4")).isEmpty();
    }

    @Test
    void what_is_forgotten_is_gone_and_the_grower_begins_anew() {
        lookAt(SCHOOL, NOON);
        lookAt("telegram:12", NOON);
        store.receive(List.of(letter("m1"), letter("m2", "12")));
        reply("4711", "Noted.", "Done");
        store.write(SCHOOL, page -> {
            page.keepState("{}");
            page.forget();
            page.markHandled("m1", NOON);
            page.send("telegram", "4711", new Reply("Gone.", List.of()), NOON);
            return null;
        });

        assertThat(store.lines(SCHOOL)).isEmpty();
        assertThat(store.growers()).containsExactly("telegram:12");
        assertThat(texts(store.toSend("telegram", NOON, 10))).containsExactly("Gone.");
        assertThat(store.unhandled("telegram", 10)).extracting(Incoming::id).containsExactly("m2");
        assertThat(store.nextLook(SCHOOL)).isEmpty();
        assertThat(store.<java.util.Optional<String>>write(SCHOOL, Page::state)).isEmpty();
        List<Logged> anew = store.write(SCHOOL, page -> page.append("m3", NOON, List.of(sown("pea", 1))));
        assertThat(anew).extracting(Logged::number).containsExactly(1L);
    }

    @Test
    void old_post_that_is_done_is_removed_and_nothing_else() {
        store.receive(List.of(letter("old"), letter("waiting")));
        store.setAside("telegram", "old", NOON);
        reply("4711", "first");
        reply("4711", "second");
        store.sent(List.of(new Sent(store.toSend("telegram", NOON, 1).get(0).number(), "501")));
        store.write(SCHOOL, page -> page.append("m", NOON, List.of(sown("bean", 1))));

        store.clearPost(NOON.plusSeconds(1));

        assertThat(store.waiting(NOON)).isEqualTo(new Store.Waiting(1, 1, 0, 1));
        assertThat(store.receive(List.of(letter("old"))))
                .as("forgotten, so new again")
                .isEqualTo(1);
        assertThat(store.lines(SCHOOL)).hasSize(1);
    }

    @Test
    void a_chat_that_moves_takes_its_diary_and_its_post_along_once() {
        store.write("telegram:-1", page -> {
            page.append("-1/1", NOON, List.of(sown("bean", 12)));
            page.markHandled("-1/1", NOON);
            page.keepState("{}");
            page.lookAgain(NOON);
            page.send("telegram", "-1", new Reply("Noted.", List.of()), NOON);
            return null;
        });
        store.receive(List.of(new Incoming("telegram", "-1/2", "telegram:-1", "-1", NOON, "{}")));

        store.moved("telegram", "-1", "-1001");
        store.moved("telegram", "-1", "-1001");

        assertThat(store.growers()).containsExactly("telegram:-1001");
        assertThat(lines("telegram:-1001")).extracting(Logged::entry).containsExactly(sown("bean", 12));
        assertThat(store.write("telegram:-1001", Page::state)).contains("{}");
        assertThat(store.nextLook("telegram:-1001")).contains(NOON);
        assertThat(store.<Boolean>write("telegram:-1001", page -> page.handled("-1/1")))
                .isTrue();
        assertThat(store.toSend("telegram", NOON, 9)).extracting(Outgoing::chat).containsExactly("-1001");
        assertThat(store.unhandled("telegram", 9))
                .extracting(Incoming::grower, Incoming::chat)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("telegram:-1001", "-1001"));
        List<Logged> next =
                store.write("telegram:-1001", page -> page.append("-1001/1", NOON, List.of(sown("pea", 1))));
        assertThat(next).extracting(Logged::number).containsExactly(2L);
    }

    @Test
    void a_chat_that_moves_to_where_there_is_a_diary_stays() {
        store.write("telegram:-1", page -> page.append("a", NOON, List.of(sown("bean", 12))));
        store.write("telegram:-2", page -> page.append("b", NOON, List.of(sown("pea", 1))));

        store.moved("telegram", "-1", "-2");

        assertThat(lines("telegram:-1")).hasSize(1);
        assertThat(lines("telegram:-2")).extracting(Logged::entry).containsExactly(sown("pea", 1));
    }

    @Test
    void a_sound_store_has_nothing_wrong_inside() {
        lookAt(SCHOOL, NOON);

        assertThat(store.lookThrough()).isEmpty();
    }
}
