package bothy.channel.terminal;

import bothy.conversation.Conversation;
import bothy.conversation.Conversation.Outcome;
import bothy.garden.Message;
import bothy.garden.Reply;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;

/** One chat: reads lines, writes replies, ends at the end of input. */
public final class TerminalChat {
    public static final String GROWER = "terminal:me";
    private static final String GREETING =
            "Tell me what you sowed, did or saw (\"sowed 6 cucumbers in modules today\"), or ask (\"what do I do this week?\").\n"
                    + "/help says more; end with Ctrl-D.";
    private final Conversation conversation;
    private final InstantSource clock;
    private final ZoneId zone;
    private final Path history;
    private final InputStream in;
    private final PrintStream out;
    private final Function<RuntimeException, String> complaint;
    private List<String> buttons = List.of();

    public TerminalChat(
            Conversation conversation,
            InstantSource clock,
            ZoneId zone,
            Path history,
            InputStream in,
            PrintStream out,
            Function<RuntimeException, String> complaint) {
        this.conversation = conversation;
        this.clock = clock;
        this.zone = zone;
        this.history = history;
        this.in = in;
        this.out = out;
        this.complaint = complaint;
    }

    /** Runs to the end of input. */
    public void run() throws IOException {
        if (System.console() == null) {
            piped();
        } else {
            edited();
        }
    }

    private void piped() throws IOException {
        PrintWriter writer = new PrintWriter(out, true, StandardCharsets.UTF_8);
        writer.println(GREETING);
        BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
        for (String line = reader.readLine(); line != null; line = reader.readLine()) {
            if (!line.isBlank()) {
                writer.println();
                writer.println(answer(line));
            }
        }
    }

    private void edited() throws IOException {
        try (Terminal terminal = TerminalBuilder.builder().system(true).build()) {
            LineReader reader = LineReaderBuilder.builder()
                    .terminal(terminal)
                    .variable(LineReader.HISTORY_FILE, history)
                    .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                    .build();
            terminal.writer().println(GREETING);
            speakUp().ifPresent(text -> terminal.writer().println("\n" + Wrapping.at(terminal.getWidth(), text)));
            String prompt = coloured(terminal) ? "\u001b[32m> \u001b[0m" : "> ";
            while (true) {
                try {
                    String line = reader.readLine("\n" + prompt);
                    if (!line.isBlank()) {
                        terminal.writer().println(Wrapping.at(terminal.getWidth(), answer(line)));
                        terminal.writer().flush();
                    }
                } catch (EndOfFileException | UserInterruptException end) {
                    return;
                }
            }
        }
    }

    private static boolean coloured(Terminal terminal) {
        return !terminal.getType().startsWith(Terminal.TYPE_DUMB);
    }

    private Optional<String> speakUp() {
        return conversation
                .speakUp(GROWER, clock.instant(), zone, null)
                .map(Outcome::reply)
                .map(this::shown);
    }

    private String answer(String line) {
        Instant now = clock.instant();
        Optional<String> pressed = pressed(line);
        Message message = new Message(
                "terminal-" + UUID.randomUUID(),
                GROWER,
                now,
                zone,
                pressed.isPresent() ? "" : line,
                null,
                null,
                false,
                pressed.orElse(null),
                null);
        try {
            return conversation
                    .handle(message, null)
                    .map(Outcome::reply)
                    .map(this::shown)
                    .orElse("");
        } catch (RuntimeException failure) {
            return complaint.apply(failure);
        }
    }

    /** A bare number taps the button of that number. */
    private Optional<String> pressed(String line) {
        String text = line.strip();
        if (!text.matches("[1-9]") || Integer.parseInt(text) > buttons.size()) {
            return Optional.empty();
        }
        return Optional.of(buttons.get(Integer.parseInt(text) - 1));
    }

    private String shown(Reply reply) {
        buttons = reply.buttons();
        StringBuilder text = new StringBuilder(reply.text());
        for (int i = 0; i < buttons.size(); i++) {
            text.append(i == 0 ? "\n" : "   ")
                    .append('[')
                    .append(i + 1)
                    .append("] ")
                    .append(buttons.get(i));
        }
        reply.documents().forEach(document -> text.append("\n\n")
                .append(document.name())
                .append(":\n")
                .append(document.content()));
        return text.toString();
    }
}
