package bothy.channel.telegram;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.channel.telegram.BotApiServer.Fault;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Everything goes wrong at the same time and at random: the service refuses, answers slowly, wrongly, by half or not at all, the line is
 * reset, another reader turns up, the conversation throws and the clock jumps. Nothing is lost and each chat keeps its order.
 */
class FaultsWhileTalkingTest {
    private static final long SEED = 20270524;
    private static final int SECOND_READER = 8;
    private static final int SERVED = 9;
    private static final long PATIENCE_NANOS = 300_000_000_000L;

    @TempDir
    Path folder;

    private final Random random = new Random(SEED);
    /** Few polls bring many messages: the third meets a second reader in any case. */
    private final Deque<Integer> polls = new ArrayDeque<>(List.of(SERVED, SERVED, SECOND_READER));

    private final Deque<Integer> sendings = new ArrayDeque<>();
    private final Map<String, AtomicInteger> met = new ConcurrentHashMap<>();
    private final Talk talk = new Talk();
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
                api.push(talk.next());
                if (number % 50 == 25) {
                    jump.set(random.nextInt(-7200, 7200));
                    channel = begunAgain(channel, line, store);
                }
                Rig.sleep(number % 10 == 0 ? 20 : 0);
            }
            long until = System.nanoTime() + PATIENCE_NANOS;
            while (talk.answered(api) < messages()) {
                assertThat(System.nanoTime())
                        .as("waited in vain; seed %d, faults %s, answered %s", SEED, met, api.texts())
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
            assertThat(met.keySet())
                    .contains("429", "500", "502", "half a body", "slow", "no answer", "answer lost", "409");
            talk.assertKept(store, api);
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
        Random failing = new Random(SEED);
        Handler handler = Talk.writing(store, message -> {
            if (failing.nextInt(40) == 0) {
                throw new IllegalStateException("as if");
            }
        });
        TelegramChannel channel = new TelegramChannel(Talk.settings(line.address()), store, handler, clock);
        channel.start();
        return channel;
    }

    private synchronized Fault trouble(String method) {
        boolean polling = method.equals("getupdates");
        return switch (drawn(polling ? polls : sendings, polling ? 60 : 100)) {
            case 0 -> met("429", BotApiServer.tooFast(1));
            case 1 -> met("500", BotApiServer.refuse(500, "Internal Server Error", ""));
            case 2 -> met("502", BotApiServer.badGateway());
            case 3 -> met("half a body", BotApiServer.brokenOff());
            case 4, 5 -> met("slow", BotApiServer.slowly(300));
            case 6 -> met("no answer", BotApiServer.silence(1_500));
            case 7 -> met("answer lost", polling ? BotApiServer.dropped() : BotApiServer.answerLost());
            case SECOND_READER ->
                polling
                        ? met("409", BotApiServer.refuse(409, "Conflict: terminated by other getUpdates request", ""))
                        : BotApiServer.served();
            default -> BotApiServer.served();
        };
    }

    /** From a shuffled pack, so that every fault comes up however few calls a slow machine makes of the same messages. */
    private int drawn(Deque<Integer> pack, int cards) {
        if (pack.isEmpty()) {
            List<Integer> fresh =
                    new ArrayList<>(IntStream.range(0, cards).boxed().toList());
            Collections.shuffle(fresh, random);
            pack.addAll(fresh);
        }
        return pack.pop();
    }

    private Fault met(String name, Fault fault) {
        met.computeIfAbsent(name, key -> new AtomicInteger()).incrementAndGet();
        return fault;
    }
}
