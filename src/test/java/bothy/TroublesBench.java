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
    private static final int WARM_UP = 1500;
    private static final int COUNTED = 2000;

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
            double[] millis = millis(store, conversation, texts, WARM_UP, COUNTED);
            Arrays.sort(millis);
            System.out.printf(
                    Locale.ROOT,
                    "diagnosis turn, 20 plantings, 500 entries, %d descriptions: p50 %.1f ms, p99 %.1f ms%n",
                    texts.size(),
                    millis[millis.length / 2],
                    millis[(int) (millis.length * 0.99)]);
        }
    }

    /** Each description is the first message of a grower of its own, whose diary is written beforehand. */
    private static double[] millis(Store store, Conversation conversation, List<String> texts, int from, int count) {
        double[] millis = new double[count];
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
            conversation.handle(message, null).orElseThrow();
            millis[i] = (System.nanoTime() - begun) / 1e6;
        }
        return millis;
    }

    private static List<String> descriptions() throws IOException {
        List<String> texts = new ArrayList<>();
        for (int round = 1; round <= 7; round++) {
            JsonNode cases = new YAMLMapper()
                    .readTree(Path.of("src/test/resources/troubles/growers-" + round + ".yaml")
                            .toFile());
            cases.forEach(one -> texts.add(one.get("text").asText()));
        }
        return texts;
    }
}
