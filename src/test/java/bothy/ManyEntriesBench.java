package bothy;

import bothy.conversation.Conversation;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Message;
import bothy.weather.WeatherSource;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Locale;

/**
 * The time of a reply to a grower of usual size while the diary of all growers together grows a thousandfold. All sizes are measured in
 * turns, message by message, in one process, so that the ratio does not hang on how busy the machine is. The other growers' entries are
 * made inside the database; ten million written one by one would take hours.
 */
final class ManyEntriesBench {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final Instant MORNING =
            LocalDate.of(2027, 5, 22).atTime(8, 0).atZone(LONDON).toInstant();
    private static final int EACH = 12;
    private static final int ASKED = 40;
    private static final int WARM_UP = 300;
    private static final int COUNTED = 300;

    private ManyEntriesBench() {}

    static void replies(Path folder, Knowledge knowledge, int... totals) throws SQLException {
        Store[] stores = new Store[totals.length];
        Conversation[] conversations = new Conversation[totals.length];
        for (int size = 0; size < totals.length; size++) {
            String file = folder.resolve("entries-" + totals[size] + ".db").toString();
            stores[size] = Shelf.open(file);
            ServiceBenchmarks.gardens(stores[size], 0, ASKED);
            fill(file, totals[size] / EACH);
            conversations[size] = new Conversation(stores[size], knowledge);
        }
        double[][] millis = new double[totals.length][COUNTED];
        for (int number = 0; number < WARM_UP + COUNTED; number++) {
            for (int size = 0; size < totals.length; size++) {
                millis[size][number % COUNTED] = answer(conversations[size], number);
            }
        }
        double smallest = median(millis[0]);
        for (int size = 0; size < totals.length; size++) {
            System.out.printf(
                    Locale.ROOT,
                    "message to reply beside %,d entries: p50 %.2f ms, %.2f times that of the smallest%n",
                    totals[size],
                    median(millis[size]),
                    median(millis[size]) / smallest);
            stores[size].close();
        }
    }

    private static double answer(Conversation conversation, int number) {
        Message message = Message.text(
                "b" + number,
                "bench:" + number % ASKED,
                MORNING,
                LONDON,
                number / ASKED % 2 == 0 ? "watered the tomatoes" : "when do I feed the tomatoes?");
        long begun = System.nanoTime();
        conversation.handle(message, null).orElseThrow();
        return (System.nanoTime() - begun) / 1e6;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    /** Growers with twelve entries each, and for each entry a mark, a letter and a reply as they are kept for a month. */
    private static void fill(String file, int growers) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            connection.setAutoCommit(false);
            String numbers =
                    "with recursive n(i) as (select 1 union all select i + 1 from n where i < " + growers + ") ";
            String entries = "with recursive n(i) as (select 0 union all select i + 1 from n where i < "
                    + (growers * EACH - 1) + ") ";
            long at = MORNING.toEpochMilli();
            statement.execute("insert into grower (grower, last_line, look_ms) " + numbers
                    + "select 'other:' || i, 12, " + at + " + i from n");
            statement.execute("insert into diary_line (grower, number, message, at_ms, entry) " + entries
                    + "select 'other:' || (1 + i / 12), 1 + i % 12, 'm' || i, " + at + ", "
                    + "'{\"kind\":\"event\",\"what\":\"watered\",\"crop\":\"tomato\",\"on\":\"2027-05-20\"}' from n");
            statement.execute("insert into handled (grower, message, at_ms) " + entries
                    + "select 'other:' || (1 + i / 12), 'm' || i, " + at + " from n");
            connection.commit();
        }
    }

    /** Prints this figure alone. */
    public static void main(String[] arguments) throws Exception {
        Path folder = arguments.length > 0 ? Path.of(arguments[0]) : Files.createTempDirectory("bothy-entries");
        replies(
                folder,
                Workshop.knowledge(Workshop.folder(null), null, WeatherSource.none()),
                1_000,
                10_000,
                100_000,
                1_000_000,
                10_000_000);
    }
}
