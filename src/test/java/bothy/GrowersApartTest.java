package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.conversation.Conversation;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Message;
import bothy.garden.Reply;
import bothy.weather.WeatherSource;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Growers write in every order and at the same time, and never see a word of each other. */
class GrowersApartTest {
    private static final int GROWERS = 6;
    private static final int MESSAGES = 25;
    private static final long SEED = 20270522;
    private static final Instant BEGIN = Instant.parse("2027-05-20T08:00:00Z");
    private static final List<String> SAID = List.of(
            "sowed 6 tomatoes in %s today",
            "sowed 12 runner beans in %s today",
            "planted out 4 courgettes in %s today",
            "watered everything in %s",
            "what do I do this week?",
            "/plot",
            "/why",
            "/undo",
            "/mydata",
            "when do I feed the tomatoes?",
            "tomatoes in %s have yellow leaves",
            "yes",
            "remind me tomorrow");

    @TempDir
    Path folder;

    private record Said(int grower, String text) {}

    /** Each grower's bed has a number of its own, which nothing else mentions. */
    private static String bed(int grower) {
        return "bed " + (41 + grower);
    }

    @Test
    void no_reply_names_a_bed_of_another_grower() throws Exception {
        Knowledge knowledge = Workshop.knowledge(Workshop.folder(Path.of("rules")), null, WeatherSource.none());
        List<Said> said = Collections.synchronizedList(new ArrayList<>());
        try (Store store = Shelf.open(folder.resolve("diary.db").toString())) {
            Conversation conversation = new Conversation(store, knowledge);
            var threads = Executors.newFixedThreadPool(4);
            for (int grower = 0; grower < GROWERS; grower++) {
                int number = grower;
                threads.execute(() -> talk(conversation, store, number, said));
            }
            threads.shutdown();
            assertThat(threads.awaitTermination(120, TimeUnit.SECONDS)).isTrue();
        }

        for (int grower = 0; grower < GROWERS; grower++) {
            int number = grower;
            List<String> own = said.stream()
                    .filter(one -> one.grower() == number)
                    .map(Said::text)
                    .toList();
            assertThat(own).as("seed %d", SEED).anyMatch(text -> text.contains(bed(number)));
            for (int other = 0; other < GROWERS; other++) {
                String foreign = bed(other);
                boolean mine = other == grower;
                assertThat(own).as("seed %d", SEED).noneMatch(text -> !mine && text.contains(foreign));
            }
        }
    }

    private static void talk(Conversation conversation, Store store, int grower, List<Said> said) {
        Random random = new Random(SEED + grower);
        String key = "telegram:" + grower;
        for (int i = 0; i < MESSAGES; i++) {
            Instant at = BEGIN.plusSeconds(3600L * i);
            String text = i < 2 ? SAID.get(i) : SAID.get(random.nextInt(SAID.size()));
            // The same ids for all growers: an id counts within its chat.
            Message message = Message.text("m" + i, key, at, ZoneOffset.UTC, text.formatted(bed(grower)));
            conversation.handle(message, null).ifPresent(one -> add(said, grower, one.reply()));
            Optional<Instant> look = store.nextLook(key).filter(time -> !time.isAfter(at));
            look.flatMap(time -> conversation.speakUp(key, time, ZoneOffset.UTC, null))
                    .ifPresent(one -> add(said, grower, one.reply()));
        }
    }

    private static void add(List<Said> said, int grower, Reply reply) {
        said.add(new Said(grower, reply.text() + reply.buttons()));
        reply.documents().forEach(document -> said.add(new Said(grower, document.content())));
    }
}
