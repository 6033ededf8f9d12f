package bothy;

import bothy.conversation.Conversation;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.weather.WeatherSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Prints the figures; run by {@code mvn verify -Pbench}. Nothing fails on a figure: a busy machine is no defect. */
public final class Benchmarks {
    private static final int WARM_UP = 2000;
    private static final int COUNTED = 2000;

    private Benchmarks() {}

    /** @param arguments folder with the packed program */
    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("bothy-bench");
        starts(Path.of(arguments[0]), folder);
        replies(folder);
        TroublesBench.turns(folder, Workshop.knowledge(Workshop.folder(null), null, WeatherSource.none()));
        Knowledge knowledge = Workshop.knowledge(Workshop.folder(null), null, WeatherSource.none());
        ServiceBenchmarks.lists(folder, knowledge, 1_000, 10_000, 100_000);
        ManyEntriesBench.replies(folder, knowledge, 1_000, 10_000, 100_000, 1_000_000, 10_000_000);
        ThroughputBench.ratio(folder, null);
        ThroughputBench.ratio(folder, knowledge);
        WorkersBench.ratio();
        bothy.bench.FiguresBench.main(new String[0]);
        System.exit(0); // the library of the bare bot leaves threads behind
    }

    private static void starts(Path jar, Path folder) throws IOException, InterruptedException {
        Path cache = folder.resolve("cache");
        List<String> packed = List.of(
                "java",
                "-jar",
                jar.toString(),
                "--db",
                folder.resolve("start.db").toString());
        System.out.printf(Locale.ROOT, "start to first reply, packed jar, first ever: %.2f s%n", start(packed, cache));
        System.out.printf(
                Locale.ROOT, "start to first reply, packed jar, median of 9: %.2f s%n", median(packed, cache, 9));
        List<String> maven =
                List.of("mvn", "-q", "compile", "exec:java", "-Dexec.args=--db " + folder.resolve("maven.db"));
        start(maven, cache);
        System.out.printf(
                Locale.ROOT, "start to first reply, Maven command, median of 5: %.2f s%n", median(maven, cache, 5));
    }

    private static double median(List<String> command, Path cache, int runs) throws IOException, InterruptedException {
        double[] seconds = new double[runs];
        for (int i = 0; i < runs; i++) {
            seconds[i] = start(command, cache);
        }
        Arrays.sort(seconds);
        return seconds[runs / 2];
    }

    /** Seconds from the start of the process to the end of its first reply. */
    private static double start(List<String> command, Path cache) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("XDG_CACHE_HOME", cache.toString());
        long begun = System.nanoTime();
        Process process = builder.start();
        process.getOutputStream()
                .write("sowed 6 cucumbers in modules today\n".getBytes(java.nio.charset.StandardCharsets.UTF_8));
        process.getOutputStream().close();
        double found = Double.NaN;
        try (var reader = process.inputReader()) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (line.contains("Noted")) {
                    found = (System.nanoTime() - begun) / 1e9;
                }
            }
        }
        process.waitFor();
        return found;
    }

    private static void replies(Path folder) {
        Knowledge knowledge = Workshop.knowledge(Workshop.folder(null), null, WeatherSource.none());
        try (Store store = Shelf.open(folder.resolve("replies.db").toString())) {
            Conversation conversation = new Conversation(store, knowledge);
            answers(store, conversation, 0, WARM_UP);
            double[] millis = answers(store, conversation, WARM_UP, COUNTED);
            Arrays.sort(millis);
            System.out.printf(
                    Locale.ROOT,
                    "message to reply, 20 plantings, 500 entries: p50 %.1f ms, p99 %.1f ms%n",
                    millis[millis.length / 2],
                    millis[(int) (millis.length * 0.99)]);
        }
        heap(folder, knowledge);
    }

    /** Milliseconds of each message; every eight messages a fresh garden, so that the diary stays at its size. */
    private static double[] answers(Store store, Conversation conversation, int from, int count) {
        double[] millis = new double[count];
        String grower = null;
        for (int i = 0; i < count; i++) {
            int number = from + i;
            if (i % BenchmarkedGarden.MESSAGES.size() == 0) {
                grower = "bench:" + number;
                BenchmarkedGarden.write(store, grower);
            }
            var message = BenchmarkedGarden.message(number, grower);
            long begun = System.nanoTime();
            conversation.handle(message, null).orElseThrow();
            millis[i] = (System.nanoTime() - begun) / 1e6;
        }
        return millis;
    }

    /** The heap over ten thousand messages of growers who each write a hundred. */
    private static void heap(Path folder, Knowledge knowledge) {
        try (Store store = Shelf.open(folder.resolve("heap.db").toString())) {
            Conversation conversation = new Conversation(store, knowledge);
            double early = 0;
            for (int number = 1; number <= 10_000; number++) {
                conversation.handle(BenchmarkedGarden.message(number, "bench:" + number / 100), null);
                if (number == 1000) {
                    early = heapMegabytes();
                }
            }
            double late = heapMegabytes();
            System.out.printf(
                    Locale.ROOT,
                    "heap after 10,000 messages: %.1f MB against %.1f MB after 1,000 (%+.1f %%)%n",
                    late,
                    early,
                    (late / early - 1) * 100);
        }
    }

    private static double heapMegabytes() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / 1e6;
    }
}
