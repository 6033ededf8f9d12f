package bothy;

import bothy.channel.telegram.Handler;
import bothy.conversation.Conversation;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Incoming;
import bothy.garden.Message;
import bothy.weather.WeatherSource;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.BufferedReader;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How much more two workers on one PostgreSQL answer than one. Each worker is a process with one thread for answering, so that the
 * second can find a core of its own; the database, too, wants some of the cores, and where there are no more than two the figure tells
 * as much of the machine as of the workers.
 */
final class WorkersBench {
    private static final int CHATS = 200;
    private static final int EACH = 12;
    private static final Instant NOON = Instant.parse("2027-05-22T12:00:00Z");
    private static final List<String> SAID =
            List.of("sowed 6 tomatoes in the greenhouse today", "watered the tomatoes", "when do I feed the tomatoes?");

    private WorkersBench() {}

    static void ratio() throws Exception {
        try (EmbeddedPostgres server = EmbeddedPostgres.builder().start()) {
            String address = server.getJdbcUrl("postgres", "postgres");
            double one = perSecond(address, 1, "a");
            double two = perSecond(address, 2, "b");
            double again = perSecond(address, 1, "c");
            double single = (one + again) / 2;
            System.out.printf(
                    Locale.ROOT,
                    "workers on one PostgreSQL, %d cores for them, the database and all else: one %.0f messages a second, two %.0f: %.2f times%n",
                    Runtime.getRuntime().availableProcessors(),
                    single,
                    two,
                    two / single);
        }
    }

    private static double perSecond(String address, int count, String series) throws Exception {
        List<Process> workers = new ArrayList<>();
        try (Store store = Shelf.open(address)) {
            for (int worker = 0; worker < count; worker++) {
                workers.add(start(address));
            }
            store.receive(letters(series + "w", 4)); // each compiles its machine code first
            awaitHandled(store);
            store.receive(letters(series, EACH));
            long begun = System.nanoTime();
            awaitHandled(store);
            return CHATS * EACH / ((System.nanoTime() - begun) / 1e9);
        } finally {
            workers.forEach(Process::destroyForcibly);
        }
    }

    private static void awaitHandled(Store store) throws InterruptedException {
        while (store.waiting(NOON).letters() > 0) {
            Thread.sleep(20);
        }
    }

    private static List<Incoming> letters(String series, int each) {
        List<Incoming> letters = new ArrayList<>();
        for (int number = 0; number < each; number++) {
            for (int chat = 0; chat < CHATS; chat++) {
                String text = SAID.get(number % SAID.size());
                letters.add(new Incoming(
                        "bench", series + chat + "/" + number, "bench:" + series + chat, series + chat, NOON, text));
            }
        }
        return letters;
    }

    private static Process start(String address) throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        WorkersBench.class.getName(),
                        address)
                .redirectErrorStream(true)
                .start();
        BufferedReader output = process.inputReader();
        for (String line = output.readLine(); line != null && !line.equals("ready"); line = output.readLine()) {
            // what the libraries have to say
        }
        return process;
    }

    /** A worker, when the diary's address is given; else prints this figure alone. */
    public static void main(String[] arguments) throws Exception {
        if (arguments.length == 0) {
            ratio();
            return;
        }
        Knowledge knowledge = Workshop.knowledge(Workshop.folder(null), Workshop.cacheFolder(), WeatherSource.none());
        Store store = Shelf.open(arguments[0]);
        Handler handler = ServeVerb.handler(new Conversation(store, knowledge));
        System.out.println("ready");
        while (true) {
            for (Incoming letter : store.unhandled("bench", 64)) {
                handler.handle(
                        Message.text(letter.id(), letter.grower(), letter.at(), ZoneOffset.UTC, letter.body()),
                        "bench",
                        letter.chat());
            }
        }
    }
}
