package bothy;

import bothy.almanac.YamlFile;
import bothy.conversation.Conversation;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.garden.Message;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;

/** A ready garden to look round in: the shared school plot, told message by message. */
final class Demo {
    private static final String SCRIPT = "demo.yaml";

    /** The script: the day to open on, and the messages told before it. */
    private record Script(LocalDate day, List<Line> lines) {}

    private record Line(LocalDateTime at, String says) {}

    private Demo() {}

    /**
     * Tells the script to an empty diary.
     *
     * @param today the day asked for, {@code null} for the script's own
     * @return the day to open on
     */
    static LocalDate open(Store store, Knowledge knowledge, LocalDate today, ZoneId zone) throws IOException {
        try (InputStream in = Demo.class.getResourceAsStream(SCRIPT)) {
            Script script =
                    new YamlFile(SCRIPT, new String(in.readAllBytes(), StandardCharsets.UTF_8)).as(Script.class);
            Conversation conversation = new Conversation(store, knowledge);
            int number = 0;
            for (Line line : script.lines()) {
                conversation.handle(
                        Message.text(
                                "demo-" + number++,
                                "terminal:me",
                                line.at().atZone(zone).toInstant(),
                                zone,
                                line.says()),
                        null);
            }
            LocalDate day = today == null ? script.day() : today;
            System.out.println("The shared school plot, opened on " + day + ". Try: /plot");
            return day;
        }
    }
}
