package bothy;

import bothy.conversation.Conversation;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Message;
import bothy.weather.WeatherSource;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Prints how long a diagnosis turn takes with all rules loaded: growers' descriptions, each beside twenty plantings. */
public final class TroublesBench {
    private static final int WARM_UP = 1000;
    private static final int COUNTED = 1000;

    private TroublesBench() {}

    /** Runs alone. */
    public static void main(String[] arguments) throws IOException {
        turns(
                Files.createTempDirectory("bothy-troubles"),
                Workshop.knowledge(Workshop.folder(null), null, WeatherSource.none()));
    }

    static void turns(Path folder, Knowledge knowledge) throws IOException {
        List<String> texts = descriptions();
        try (Store store = Shelf.open(folder.resolve("troubles.db").toString())) {
            Conversation conversation = new Conversation(store, knowledge);
            millis(store, conversation, texts, 0, WARM_UP);
            double[][] millis = millis(store, conversation, texts, WARM_UP, COUNTED);
            Arrays.sort(millis[0]);
            Arrays.sort(millis[1]);
            System.out.printf(
                    Locale.ROOT,
                    "diagnosis turn, 20 plantings, 500 entries, %d descriptions: p50 %.1f ms, p99 %.1f ms"
                            + " (processor time alone: p50 %.1f ms, p99 %.1f ms)%n",
                    texts.size(),
                    millis[0][COUNTED / 2],
                    millis[0][COUNTED * 99 / 100],
                    millis[1][COUNTED / 2],
                    millis[1][COUNTED * 99 / 100]);
        }
    }

    /**
     * Each description is the first message of a grower of its own, whose diary is written beforehand.
     *
     * @return milliseconds by the clock, and of the processor, which a busy machine does not lengthen
     */
    private static double[][] millis(Store store, Conversation conversation, List<String> texts, int from, int count) {
        double[][] millis = new double[2][count];
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        for (int i = 0; i < count; i++) {
            String grower = "trouble:" + (from + i);
            BenchmarkedGarden.write(store, grower);
            Message message = Message.text(
                    grower,
                    grower,
                    Instant.parse("2027-07-10T12:00:00Z"),
                    ZoneOffset.UTC,
                    texts.get((from + i) % texts.size()));
            long begun = System.nanoTime();
            long worked = threads.getCurrentThreadCpuTime();
            conversation.handle(message, null).orElseThrow();
            millis[0][i] = (System.nanoTime() - begun) / 1e6;
            millis[1][i] = (threads.getCurrentThreadCpuTime() - worked) / 1e6;
        }
        return millis;
    }

    private static List<String> descriptions() throws IOException {
        List<String> texts = new ArrayList<>();
        for (int round = 1; round <= 8; round++) {
            JsonNode cases = new YAMLMapper()
                    .readTree(Path.of("src/test/resources/troubles/growers-" + round + ".yaml")
                            .toFile());
            cases.forEach(one -> texts.add(one.get("text").asText()));
        }
        return texts;
    }
}
