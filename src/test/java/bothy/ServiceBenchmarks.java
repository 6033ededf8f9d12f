package bothy;

import bothy.conversation.Conversation;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.What;
import bothy.reminding.Rounds;
import bothy.weather.WeatherSource;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;

/** Weekly lists for many growers. */
final class ServiceBenchmarks {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final LocalDate SATURDAY = LocalDate.of(2027, 5, 22);
    private static final Instant LIST_HOUR =
            SATURDAY.atTime(8, 0).atZone(LONDON).toInstant();
    private static final List<String> CROPS =
            List.of("tomato", "cucumber", "runner-bean", "chard", "onion", "courgette");
    private static final int LOOKERS = 2;

    private ServiceBenchmarks() {}

    static void lists(Path folder, Knowledge knowledge, int... growers) {
        for (int count : growers) {
            try (Store store =
                    Shelf.open(folder.resolve("lists-" + count + ".db").toString())) {
                gardens(store, 0, count);
                lists(store, knowledge, count);
            }
        }
    }

    private static void lists(Store store, Knowledge knowledge, int count) {
        Conversation conversation = new Conversation(store, knowledge);
        double cpu = cpuSeconds();
        long begun = System.nanoTime();
        int looked;
        try (Rounds rounds = new Rounds(conversation, () -> LIST_HOUR, LONDON, LOOKERS, () -> {})) {
            looked = rounds.goRound();
        }
        double seconds = (System.nanoTime() - begun) / 1e9;
        System.out.printf(
                Locale.ROOT,
                "weekly lists for %,d growers with 6 plantings: %.1f s, %.2f ms each (%.2f ms of a core), %,d looked at, %,d replies, heap %.0f MB%n",
                count,
                seconds,
                seconds * 1000 / count,
                (cpuSeconds() - cpu) * 1000 / count,
                looked,
                store.waiting(LIST_HOUR).replies(),
                heapMegabytes());
    }

    /** Six plantings in three states each, eighteen lines a grower. */
    static void gardens(Store store, int from, int to) {
        // Many at once share their commits.
        var threads = Executors.newFixedThreadPool(16);
        for (int first = from; first < to; first += 1000) {
            int begin = first;
            threads.execute(
                    () -> IntStream.range(begin, Math.min(begin + 1000, to)).forEach(grower -> garden(store, grower)));
        }
        threads.shutdown();
        try {
            threads.awaitTermination(1, TimeUnit.HOURS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void garden(Store store, int grower) {
        List<Entry> entries = entries(grower);
        store.write("bench:" + grower, page -> {
            page.append("m", LIST_HOUR.minus(Duration.ofDays(2)), entries);
            page.lookAgain(LIST_HOUR);
            return null;
        });
    }

    private static List<Entry> entries(int grower) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < CROPS.size(); i++) {
            String crop = CROPS.get(i);
            LocalDate sown = SATURDAY.minusDays(20 + (grower + i * 7) % 40);
            entries.add(Event.of(What.SOWN, crop + "-1", crop, sown).withCount(12));
            if ((grower + i) % 3 > 0) {
                entries.add(Event.of(What.EMERGED, crop + "-1", crop, sown.plusDays(12)));
            }
            if ((grower + i) % 3 > 1) {
                entries.add(Event.of(What.PLANTED_OUT, crop + "-1", crop, SATURDAY.minusDays(3)));
            }
        }
        return entries;
    }

    private static double cpuSeconds() {
        return ProcessHandle.current().info().totalCpuDuration().orElseThrow().toMillis() / 1e3;
    }

    private static double heapMegabytes() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / 1e6;
    }

    /** @param arguments a folder, then numbers of growers */
    public static void main(String[] arguments) {
        Knowledge knowledge = Workshop.knowledge(Workshop.folder(null), null, WeatherSource.none());
        lists(
                Path.of(arguments[0]),
                knowledge,
                Arrays.stream(arguments).skip(1).mapToInt(Integer::parseInt).toArray());
    }
}
