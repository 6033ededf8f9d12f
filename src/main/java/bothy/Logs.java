package bothy;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.logging.Formatter;
import java.util.logging.Level;
import java.util.logging.LogManager;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.StreamHandler;

/**
 * The log on standard error, by the JDK's own logging. For a person at a terminal it is a line of text; for a service it is a line of JSON
 * for each record, in which exceptions keep their kinds and places and lose their messages, as these may repeat what a grower wrote.
 */
final class Logs {
    /** How the log is written. */
    enum Form {
        JSON,
        PLAIN
    }

    /** Kept here, as loggers that nobody holds are forgotten with their levels. */
    private static final List<Logger> QUIET = List.of(Logger.getLogger("org.drools"), Logger.getLogger("org.kie"));

    private static final Logger OURS = Logger.getLogger("bothy");
    private static final Logger WEATHER = Logger.getLogger("bothy.weather");
    private static final int MOST_PLACES = 12;
    private static final int MOST_CAUSES = 4;

    private Logs() {}

    /** Warnings and errors as text; that a forecast cannot be had stands in the reply. */
    static void forAPerson() {
        write(System.err, new Plain(), Level.WARNING);
        WEATHER.setLevel(Level.SEVERE);
    }

    /** Also what happens in the ordinary course of the service, as JSON. */
    static void forAService(Form form) {
        write(System.err, form == Form.JSON ? new Structured() : new Plain(), Level.INFO);
        WEATHER.setLevel(null);
    }

    static void write(OutputStream out, Formatter formatter, Level ours) {
        LogManager.getLogManager().reset();
        Logger root = Logger.getLogger("");
        root.setLevel(Level.WARNING);
        root.addHandler(new StreamHandler(out, formatter) {
            @Override
            public synchronized void publish(LogRecord entry) {
                super.publish(entry);
                flush();
            }

            /** Standard error stays open for all else. */
            @Override
            public synchronized void close() {
                flush();
            }
        });
        OURS.setLevel(ours);
        QUIET.forEach(logger -> logger.setLevel(Level.OFF));
    }

    private static String shortName(LogRecord entry) {
        String name = String.valueOf(entry.getLoggerName());
        return name.substring(name.lastIndexOf('.') + 1);
    }

    private static String level(LogRecord entry) {
        int level = entry.getLevel().intValue();
        return level >= Level.SEVERE.intValue() ? "ERROR" : level >= Level.WARNING.intValue() ? "WARN" : "INFO";
    }

    /** {@code 2027-05-01T12:00:00.123Z WARN Sender - …}, and under it the stack of an exception. */
    static final class Plain extends Formatter {
        @Override
        public String format(LogRecord entry) {
            StringWriter text = new StringWriter();
            PrintWriter out = new PrintWriter(text);
            out.printf("%s %s %s - %s%n", entry.getInstant(), level(entry), shortName(entry), formatMessage(entry));
            if (entry.getThrown() != null) {
                entry.getThrown().printStackTrace(out);
            }
            return text.toString();
        }
    }

    /** {@code {"time":…,"level":…,"logger":…,"thread":…,"message":…,"thrown":[{"kind":…,"at":[…]}]}} */
    static final class Structured extends Formatter {
        private static final JsonMapper JSON = JsonMapper.builder().build();

        @Override
        public String format(LogRecord entry) {
            ObjectNode line = JSON.createObjectNode()
                    .put("time", entry.getInstant().toString())
                    .put("level", level(entry))
                    .put("logger", entry.getLoggerName())
                    .put("thread", Thread.currentThread().getName())
                    .put("message", formatMessage(entry));
            if (entry.getThrown() != null) {
                ArrayNode causes = line.putArray("thrown");
                Throwable thrown = entry.getThrown();
                for (int depth = 0; thrown != null && depth < MOST_CAUSES; depth++, thrown = thrown.getCause()) {
                    ArrayNode places = causes.addObject()
                            .put("kind", thrown.getClass().getName())
                            .putArray("at");
                    StackTraceElement[] stack = thrown.getStackTrace();
                    for (int place = 0; place < Math.min(stack.length, MOST_PLACES); place++) {
                        places.add(stack[place].toString());
                    }
                }
            }
            return line + "\n";
        }
    }
}
