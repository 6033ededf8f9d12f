package bothy.channel.telegram;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.channel.telegram.TelegramSettings.Rate;
import bothy.diary.Store;
import bothy.garden.Event;
import bothy.garden.Message;
import bothy.garden.Reply;
import bothy.garden.What;
import java.net.URI;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Numbered lines told by a few chats, and what became of them: what the diaries have and what was answered. */
final class Talk {
    static final int CHATS = 11;
    private static final Rate UNBOUNDED = new Rate(1e6, 1_000_000);

    private final Map<Long, List<String>> told = new HashMap<>();
    private int count;

    /** The next line, as an update. */
    String next() {
        long chat = 1 + count % CHATS;
        String text = "line " + count++;
        told.computeIfAbsent(chat, key -> new ArrayList<>()).add(text);
        return Said.text(chat, count, text);
    }

    int count() {
        return count;
    }

    static TelegramSettings settings(URI service) {
        return TelegramSettings.of(BotApiServer.TOKEN, Map.of(), "Past.")
                .withService(service)
                .withTimes(Duration.ofSeconds(2), Duration.ofSeconds(1))
                .withPace(UNBOUNDED, UNBOUNDED, UNBOUNDED);
    }

    /**
     * Writes each message down and sends it back.
     *
     * @param between called between the diary line and the reply, inside the transaction
     */
    static Handler writing(Store store, Consumer<Message> between) {
        return new Handler() {
            @Override
            public void handle(Message message, String channel, String chat) {
                store.write(message.grower(), page -> {
                    if (!page.handled(message.id())) {
                        Event note =
                                Event.of(What.NOTE, null, null, LocalDate.EPOCH).withDetail(message.text());
                        page.append(message.id(), message.at(), List.of(note));
                        between.accept(message);
                        page.send(channel, chat, new Reply(message.text(), List.of()), message.at());
                        page.markHandled(message.id(), message.at());
                    }
                    return null;
                });
            }

            /** No trouble of a test lasts for ever, so no message may be given up: it is tried again. */
            @Override
            public void apologise(Message message, String channel, String chat, RuntimeException why) {
                throw new IllegalStateException(why);
            }
        };
    }

    /** How many lines got an answer, of those told so far. */
    int answered(BotApiServer api) {
        return answers(api).values().stream().mapToInt(List::size).sum();
    }

    void assertKept(Store store, BotApiServer api) {
        assertThat(recorded(store)).as("recorded once and in order").isEqualTo(told);
        assertThat(answers(api)).as("answered in order").isEqualTo(told);
    }

    private static Map<Long, List<String>> recorded(Store store) {
        Map<Long, List<String>> recorded = new HashMap<>();
        for (String grower : store.growers()) {
            recorded.put(
                    Long.valueOf(grower.replace("telegram:", "")),
                    store.lines(grower).stream()
                            .map(line -> ((Event) line.entry()).detail())
                            .toList());
        }
        return recorded;
    }

    /** What each chat got, each answer where it came first. */
    private static Map<Long, List<String>> answers(BotApiServer api) {
        Map<Long, LinkedHashSet<String>> answered = new HashMap<>();
        api.sent()
                .forEach(sent -> answered.computeIfAbsent(sent.path("chat_id").asLong(), chat -> new LinkedHashSet<>())
                        .add(sent.path("text").asText()));
        Map<Long, List<String>> lists = new HashMap<>();
        answered.forEach((chat, texts) -> lists.put(chat, List.copyOf(texts)));
        return lists;
    }
}
