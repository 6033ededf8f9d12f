package bothy.diary.sql;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.diary.Store;
import bothy.garden.Incoming;
import bothy.garden.Outgoing;
import bothy.garden.Reply;
import bothy.garden.Sent;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Two processes, played by two stores, on one PostgreSQL. */
class TwoWorkersTest {
    private static final Instant NOON = Instant.parse("2027-05-01T12:00:00Z");
    private static final int CHATS = 20;
    private static final int EACH = 10;

    private EmbeddedPostgres server;
    private Store one;
    private Store other;

    @BeforeEach
    void start() throws Exception {
        server = EmbeddedPostgres.builder().start();
        one = Shelf.open(server.getJdbcUrl("postgres", "postgres"));
        other = Shelf.open(server.getJdbcUrl("postgres", "postgres"));
    }

    @AfterEach
    void stop() throws Exception {
        one.close();
        other.close();
        server.close();
    }

    private static Incoming letter(int chat, int number) {
        return new Incoming("telegram", chat + "/" + number, "telegram:" + chat, String.valueOf(chat), NOON, "{}");
    }

    private void receiveAll() {
        List<Incoming> letters = new ArrayList<>();
        for (int number = 0; number < EACH; number++) {
            for (int chat = 0; chat < CHATS; chat++) {
                letters.add(letter(chat, number));
            }
        }
        one.receive(letters);
    }

    private void reply(String chat, String text) {
        one.write("telegram:" + chat, page -> {
            page.send("telegram", chat, new Reply(text, List.of()), NOON);
            return null;
        });
    }

    @Test
    void what_one_has_taken_up_the_other_does_not_see_until_it_is_given_back() {
        one.receive(List.of(letter(1, 1), letter(1, 2), letter(2, 1)));
        reply("1", "first");

        assertThat(one.unhandled("telegram", 10)).hasSize(3);
        assertThat(other.unhandled("telegram", 10)).isEmpty();
        assertThat(one.toSend("telegram", NOON, 10)).hasSize(1);
        assertThat(other.toSend("telegram", NOON, 10)).isEmpty();
        assertThat(one.unhandled("telegram", 10)).as("still in its own hands").hasSize(3);

        one.close();
        assertThat(other.unhandled("telegram", 10)).hasSize(3);
        assertThat(other.toSend("telegram", NOON, 10)).hasSize(1);
    }

    @Test
    void every_letter_is_handled_once_and_each_chat_in_order() throws Exception {
        receiveAll();
        Map<String, List<String>> handled = new ConcurrentHashMap<>();

        var workers = Executors.newFixedThreadPool(4);
        for (Store store : List.of(one, other, one, other)) {
            workers.execute(() -> handleAll(store, handled));
        }
        workers.shutdown();
        assertThat(workers.awaitTermination(60, TimeUnit.SECONDS)).isTrue();

        assertThat(handled).hasSize(CHATS);
        handled.forEach((chat, ids) -> assertThat(ids)
                .containsExactlyElementsOf(java.util.stream.IntStream.range(0, EACH)
                        .mapToObj(number -> chat + "/" + number)
                        .toList()));
    }

    private static void handleAll(Store store, Map<String, List<String>> handled) {
        while (store.waiting(NOON).letters() > 0) {
            for (Incoming letter : store.unhandled("telegram", 50)) {
                store.write(letter.grower(), page -> {
                    if (!page.handled(letter.id())) {
                        page.markHandled(letter.id(), NOON);
                        handled.computeIfAbsent(letter.chat(), chat -> Collections.synchronizedList(new ArrayList<>()))
                                .add(letter.id());
                    }
                    return null;
                });
            }
        }
    }

    @Test
    void every_reply_is_sent_once_and_each_chat_in_order() throws Exception {
        for (int number = 0; number < EACH; number++) {
            for (int chat = 0; chat < CHATS; chat++) {
                reply(String.valueOf(chat), "reply " + number);
            }
        }
        Map<String, List<String>> sent = new ConcurrentHashMap<>();

        var workers = Executors.newFixedThreadPool(2);
        for (Store store : List.of(one, other)) {
            workers.execute(() -> sendAll(store, sent));
        }
        workers.shutdown();
        assertThat(workers.awaitTermination(60, TimeUnit.SECONDS)).isTrue();

        assertThat(sent).hasSize(CHATS);
        sent.values().forEach(texts -> assertThat(texts)
                .containsExactlyElementsOf(java.util.stream.IntStream.range(0, EACH)
                        .mapToObj(number -> "reply " + number)
                        .toList()));
    }

    private static void sendAll(Store store, Map<String, List<String>> sent) {
        while (store.waiting(NOON).replies() > 0) {
            for (Outgoing reply : store.toSend("telegram", NOON, 50)) {
                sent.computeIfAbsent(reply.chat(), chat -> Collections.synchronizedList(new ArrayList<>()))
                        .add(reply.reply().text());
                store.sent(List.of(new Sent(reply.number(), "501")));
            }
        }
    }

    @Test
    void each_garden_is_looked_at_by_one_of_them() throws Exception {
        for (int chat = 0; chat < 200; chat++) {
            one.write("telegram:" + chat, page -> {
                page.lookAgain(NOON);
                return null;
            });
        }
        List<String> looked = Collections.synchronizedList(new ArrayList<>());

        var workers = Executors.newFixedThreadPool(2);
        for (Store store : List.of(one, other)) {
            workers.execute(() -> {
                List<String> due = store.takeDue(NOON, NOON.plusSeconds(300), 7);
                while (!due.isEmpty() || store.waiting(NOON).looks() > 0) {
                    looked.addAll(due);
                    due = store.takeDue(NOON, NOON.plusSeconds(300), 7);
                }
            });
        }
        workers.shutdown();
        assertThat(workers.awaitTermination(60, TimeUnit.SECONDS)).isTrue();

        assertThat(looked).hasSize(200).doesNotHaveDuplicates();
    }
}
