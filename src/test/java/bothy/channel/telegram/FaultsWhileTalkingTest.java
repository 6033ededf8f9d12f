package bothy.channel.telegram;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.channel.telegram.BotApiServer.Fault;
import bothy.channel.telegram.TelegramSettings.Rate;
import bothy.diary.Page;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Event;
import bothy.garden.Message;
import bothy.garden.Reply;
import bothy.garden.What;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Everything goes wrong at the same time and at random: the service refuses, answers slowly, wrongly, by half or not at all, the line is
 * reset, another reader turns up, the conversation throws and the clock jumps. Nothing is lost and each chat keeps its order.
 */
class FaultsWhileTalkingTest {
    private static final int CHATS = 11;
    private static final long SEED = 20270524;
    private static final long PATIENCE_NANOS = 300_000_000_000L;
    private static final Rate UNBOUNDED = new Rate(1e6, 1_000_000);

    @TempDir
    Path folder;

    private final Random random = new Random(SEED);
    private final Map<String, AtomicInteger> met = new ConcurrentHashMap<>();
    private final Map<Long, List<String>> told = new HashMap<>();
    private final AtomicLong jump = new AtomicLong();
    private final InstantSource clock = () -> Instant.now().plusSeconds(jump.get());
    private int secondReaders;

    int messages() {
        return 300;
    }

    @Test
    void nothing_is_lost_and_each_chat_keeps_its_order() throws Exception {
        try (BotApiServer api = new BotApiServer();
                CutLine line = new CutLine(api.address(), new Random(SEED), 0.01);
                Store store = Shelf.open(folder.resolve("diary.db").toString())) {
            api.troubled(this::trouble);
            TelegramChannel channel = channel(line, store);
            for (int number = 0; number < messages(); number++) {
                tell(api, number);
                if (number % 50 == 25) {
                    jump.set(random.nextInt(-7200, 7200));
                    channel = begunAgain(channel, line, store);
                }
                Rig.sleep(number % 10 == 0 ? 20 : 0);
            }
            long until = System.nanoTime() + PATIENCE_NANOS;
            while (answered(api).values().stream().mapToInt(List::size).sum() < messages()) {
                assertThat(System.nanoTime())
                        .as("waited in vain; seed %d, faults %s, answered %s", SEED, met, answered(api))
                        .isLessThan(until);
                channel = begunAgain(channel, line, store);
                Rig.sleep(50);
            }
            channel.stop();

            System.out.printf(
                    "%s: %d messages, %d resets of the line, %d second readers, other faults %s, %d answered twice (seed %d)%n",
                    getClass().getSimpleName(),
                    messages(),
                    line.cuts(),
                    secondReaders,
                    new TreeMap<>(met),
                    api.received() - messages(),
                    SEED);
            assertThat(met.keySet()).contains("429", "500", "502", "half a body", "slow", "no answer", "answer lost");
            assertThat(recorded(store)).as("recorded once and in order").isEqualTo(told);
            assertThat(answered(api)).as("answered in order").isEqualTo(told);
        }
    }

    /** A second reader ends the channel with a sentence; whoever runs it starts it again when the other is gone. */
    private TelegramChannel begunAgain(TelegramChannel channel, CutLine line, Store store) throws Exception {
        if (!channel.hasEnded()) {
            return channel;
        }
        assertThat(channel.awaitEnd()).contains(Ending.SECOND_READER);
        secondReaders++;
        channel.stop();
        return channel(line, store);
    }

    private TelegramChannel channel(CutLine line, Store store) {
        TelegramSettings settings = TelegramSettings.of(BotApiServer.TOKEN, Map.of(), "Past.")
                .withService(line.address())
                .withTimes(Duration.ofSeconds(2), Duration.ofSeconds(1))
                .withPace(UNBOUNDED, UNBOUNDED, UNBOUNDED);
        TelegramChannel channel = new TelegramChannel(settings, store, writing(store), clock);
        channel.start();
        return channel;
    }

    private synchronized Fault trouble(String method) {
        boolean polling = method.equals("getupdates");
        int dice = random.nextInt(polling ? 60 : 100);
        return switch (dice) {
            case 0 -> met("429", BotApiServer.tooFast(1));
            case 1 -> met("500", BotApiServer.refuse(500, "Internal Server Error", ""));
            case 2 -> met("502", BotApiServer.badGateway());
            case 3 -> met("half a body", BotApiServer.brokenOff());
            case 4, 5 -> met("slow", BotApiServer.slowly(300));
            case 6 -> met("no answer", BotApiServer.silence(1_500));
            case 7 -> met("answer lost", polling ? BotApiServer.dropped() : BotApiServer.answerLost());
            case 8 ->
                polling
                        ? met("409", BotApiServer.refuse(409, "Conflict: terminated by other getUpdates request", ""))
                        : BotApiServer.served();
            default -> BotApiServer.served();
        };
    }

    private Fault met(String name, Fault fault) {
        met.computeIfAbsent(name, key -> new AtomicInteger()).incrementAndGet();
        return fault;
    }

    private void tell(BotApiServer api, int number) {
        long chat = 1 + number % CHATS;
        String text = "line " + number;
        told.computeIfAbsent(chat, key -> new ArrayList<>()).add(text);
        api.push(Said.text(chat, number + 1, text));
    }

    /** Writes each message down and sends it back; one time in forty it fails first. */
    private Handler writing(Store store) {
        Random failing = new Random(SEED);
        return new Handler() {
            @Override
            public void handle(Message message, String channel, String chat) {
                store.write(message.grower(), page -> {
                    if (!page.handled(message.id())) {
                        Event note =
                                Event.of(What.NOTE, null, null, LocalDate.EPOCH).withDetail(message.text());
                        page.append(message.id(), message.at(), List.of(note));
                        if (failing.nextInt(40) == 0) {
                            throw new IllegalStateException("as if");
                        }
                        page.send(channel, chat, new Reply(message.text(), List.of()), message.at());
                        page.markHandled(message.id(), message.at());
                    }
                    return null;
                });
            }

            @Override
            public void apologise(Message message, String channel, String chat, RuntimeException why) {
                throw new IllegalStateException(why);
            }
        };
    }

    private static Map<Long, List<String>> recorded(Store store) {
        Map<Long, List<String>> recorded = new HashMap<>();
        for (String grower : store.growers()) {
            recorded.put(
                    Long.valueOf(grower.replace("telegram:", "")),
                    store.write(grower, Page::lines).stream()
                            .map(line -> ((Event) line.entry()).detail())
                            .toList());
        }
        return recorded;
    }

    /** What each chat got, each answer where it came first. */
    private static Map<Long, List<String>> answered(BotApiServer api) {
        Map<Long, LinkedHashSet<String>> answered = new HashMap<>();
        api.sent()
                .forEach(sent -> answered.computeIfAbsent(sent.path("chat_id").asLong(), chat -> new LinkedHashSet<>())
                        .add(sent.path("text").asText()));
        Map<Long, List<String>> lists = new HashMap<>();
        answered.forEach((chat, texts) -> lists.put(chat, List.copyOf(texts)));
        return lists;
    }
}
