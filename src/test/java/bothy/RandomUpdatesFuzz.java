package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.channel.telegram.BotApiServer;
import bothy.channel.telegram.Handler;
import bothy.channel.telegram.TelegramChannel;
import bothy.channel.telegram.TelegramSettings;
import bothy.channel.telegram.TelegramSettings.Webhook;
import bothy.conversation.Conversation;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Message;
import bothy.weather.WeatherSource;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Random and mutated updates through the whole way of a message. Run by {@code mvn verify -Pfuzz}; fewer with
 * {@code -Dfuzz.updates=20000}.
 */
class RandomUpdatesFuzz {
    private static final String SECRET = "a-secret-of-the-school-plot_2027";
    private static final long SEED = 20270523;
    private static final int AT_ONCE = 500;
    private static final int CHATS = 50_000;
    private static final List<String> WORDS = List.of(
            "sowed",
            "6",
            "tomatoes",
            "watered",
            "the",
            "beans",
            "yesterday",
            "?",
            "no,",
            "that was",
            "Tuesday",
            "/week",
            "/undo",
            "/mydata",
            "delete my data",
            "yes",
            "not yet",
            "remind me",
            "tomorrow",
            "away until",
            "31 February",
            "-1",
            "1e999",
            "99999999999999999999",
            "°C",
            "\u0000",
            "\uD800",
            "🥒",
            "ﷺ",
            "\u202e",
            "{crop}",
            "[",
            "'",
            "\"; drop table",
            "yellow leaves",
            "why",
            "when",
            "how much",
            "cucumbers",
            "\n\n",
            "%s",
            "${x}",
            "bed 3",
            "inches",
            "only Sundays");

    @TempDir
    Path folder;

    private Path memory;

    @Test
    void nothing_thrown_leaves_the_handler_and_the_heap_stays_flat() throws Exception {
        int updates = Integer.getInteger("fuzz.updates", 1_000_000);
        Random random = new Random(SEED);
        AtomicInteger thrown = new AtomicInteger();
        AtomicInteger handled = new AtomicInteger();
        Knowledge knowledge = Workshop.knowledge(Workshop.folder(Path.of("rules")), null, WeatherSource.none());
        try (BotApiServer api = new BotApiServer();
                Store store = Shelf.open(inMemory().resolve("fuzz.db").toString())) {
            Conversation conversation = new Conversation(store, knowledge);
            TelegramSettings settings =
                    TelegramSettings.of(BotApiServer.TOKEN, Map.of(), "Past.").withService(api.address());
            try (TelegramChannel channel = new TelegramChannel(
                    settings,
                    store,
                    counting(conversation, knowledge.replier().talk("rules-failed"), handled, thrown),
                    InstantSource.system())) {
                channel.start(new Webhook(URI.create("https://bothy.example/telegram"), SECRET));
                List<Long> heaps = new ArrayList<>();
                for (int i = 0; i < updates; i++) {
                    int status = deliver(channel, update(random, i));
                    assertThat(status).isIn(200, 400);
                    if (i % AT_ONCE == AT_ONCE - 1) {
                        awaitRoom(store, AT_ONCE);
                    }
                    if (i % (updates / 20) == updates / 20 - 1) {
                        awaitRoom(store, 0);
                        store.clearPost(Instant.now());
                        api.forget();
                        heaps.add(Math.round(heapMegabytes()));
                    }
                }
                System.out.printf(
                        "RandomUpdatesFuzz: %,d updates, %,d handled, %d thrown, heap at each twentieth %s MB (seed %d)%n",
                        updates, handled.get(), thrown.get(), heaps, SEED);
                assertThat(thrown).hasValue(0);
                assertThat(handled.get()).isGreaterThan(updates / 4);
                assertThat(heaps.get(heaps.size() - 1)).isLessThan(heaps.get(0) * 3 / 2 + 30);
            }
        }
    }

    /** A folder in memory where there is one: what is looked for is no matter of the disk. */
    private Path inMemory() throws IOException {
        Path shared = Path.of("/dev/shm");
        memory = Files.isWritable(shared) ? Files.createTempDirectory(shared, "bothy-fuzz") : null;
        return memory == null ? folder : memory;
    }

    @AfterEach
    void removeMemory() throws IOException {
        if (memory != null) {
            try (Stream<Path> files = Files.walk(memory)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    private static int deliver(TelegramChannel channel, String update) throws InterruptedException {
        int status = channel.delivered(update, SECRET);
        while (status == 503) {
            Thread.sleep(20); // until it knows who it is
            status = channel.delivered(update, SECRET);
        }
        return status;
    }

    /** Keeps every core busy and the backlog short. */
    private static void awaitRoom(Store store, int atMost) throws InterruptedException {
        while (store.unhandled(TelegramChannel.NAME, atMost + 1).size() > atMost) {
            Thread.sleep(2);
        }
    }

    private static Handler counting(
            Conversation conversation, String rulesFailed, AtomicInteger handled, AtomicInteger thrown) {
        return new Handler() {
            @Override
            public void handle(Message message, String channel, String chat) {
                try {
                    var outcome = conversation.handle(message, null);
                    handled.incrementAndGet();
                    assertThat(outcome.map(said -> said.reply().text()).orElse(""))
                            .as("the reply to %s", message.text())
                            .doesNotContain(rulesFailed);
                } catch (RuntimeException | AssertionError e) {
                    thrown.incrementAndGet();
                    e.printStackTrace();
                    throw e;
                }
            }

            @Override
            public void apologise(Message message, String channel, String chat, RuntimeException why) {
                conversation.apologise(message, new Conversation.Address(channel, chat));
            }
        };
    }

    private static String update(Random random, int number) {
        long chat = 1 + random.nextInt(CHATS);
        String kind = random.nextInt(10) == 0 ? "edited_message" : "message";
        String fields =
                switch (random.nextInt(12)) {
                    case 0 ->
                        "\"location\":{\"latitude\":" + random.nextInt(-200, 200) + ",\"longitude\":"
                                + random.nextInt(-400, 400) + "}";
                    case 1 -> "\"photo\":[]";
                    case 2 -> "\"sticker\":{}";
                    default -> "\"text\":" + quoted(text(random));
                };
        String json = "{\"update_id\":" + number + ",\"" + kind + "\":{\"message_id\":" + number
                + ",\"date\":" + (1809172800L + number) + ",\"edit_date\":1809176400,\"chat\":{\"id\":" + chat
                + ",\"type\":\"private\"},\"from\":{\"id\":" + chat + ",\"is_bot\":false,\"first_name\":\"Ida\"},"
                + fields
                + "}}";
        return random.nextInt(8) == 0 ? mutated(json, random) : json;
    }

    private static String text(Random random) {
        StringBuilder text = new StringBuilder();
        for (int words = random.nextInt(1, 10); words > 0; words--) {
            text.append(WORDS.get(random.nextInt(WORDS.size()))).append(' ');
        }
        if (random.nextInt(20) == 0) {
            random.ints(random.nextInt(1, 60), 0, 0x3000).forEach(text::appendCodePoint);
        }
        return text.toString();
    }

    private static String mutated(String json, Random random) {
        StringBuilder changed = new StringBuilder(json);
        for (int changes = random.nextInt(1, 4); changes > 0; changes--) {
            int at = random.nextInt(changed.length());
            switch (random.nextInt(3)) {
                case 0 -> changed.setCharAt(at, (char) random.nextInt(32, 127));
                case 1 -> changed.deleteCharAt(at);
                default -> changed.insert(at, "null,{}[]0-\"".charAt(random.nextInt(11)));
            }
        }
        return changed.toString();
    }

    private static String quoted(String text) {
        try {
            return new com.fasterxml.jackson.databind.ObjectMapper().writeValueAsString(text);
        } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static double heapMegabytes() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / 1e6;
    }
}
