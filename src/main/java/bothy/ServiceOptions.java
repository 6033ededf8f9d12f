package bothy;

import bothy.channel.telegram.TelegramSettings.Rate;
import bothy.conversation.Door;
import bothy.conversation.Door.Mode;
import java.net.InetSocketAddress;
import java.net.URI;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/**
 * How the service is run. Each option may stand on the command line, in a file named with {@code @FILE} (one option a line, # begins a
 * comment), or in the environment; secrets in the environment only, or in a file that it names ({@code NAME_FILE}).
 */
final class ServiceOptions {
    @Option(
            names = "--door",
            paramLabel = "WHO",
            defaultValue = "${env:BOTHY_DOOR:-open}",
            description = "Who is let in: open (everybody), invited (who tells a code of BOTHY_INVITE_CODES), listed "
                    + "(chats of --let-in). Default: ${DEFAULT-VALUE}.")
    private Mode door;

    @Option(
            names = "--let-in",
            paramLabel = "CHAT",
            split = ",",
            defaultValue = "${env:BOTHY_LET_IN:-}",
            description = "Numbers of Telegram chats that are let in, groups too (they begin with -).")
    private List<String> letIn;

    @Option(
            names = "--operators",
            paramLabel = "CHAT",
            split = ",",
            defaultValue = "${env:BOTHY_OPERATORS:-}",
            description = "Numbers of Telegram chats that may ask /status.")
    private List<String> operators;

    @Option(
            names = "--messages-per-minute",
            paramLabel = "N",
            defaultValue = "${env:BOTHY_MESSAGES_PER_MINUTE:-30}",
            description = "How many messages a minute one chat may write; 0 for any number. Default: ${DEFAULT-VALUE}.")
    private int perMinute;

    @Option(
            names = "--http",
            paramLabel = "[HOST:]PORT",
            defaultValue = "${env:BOTHY_HTTP:-}",
            description =
                    "Where to serve /health, /metrics and the webhook; host 127.0.0.1 unless given. Default: nowhere.")
    private String http;

    @Option(
            names = "--webhook",
            paramLabel = "ADDRESS",
            defaultValue = "${env:BOTHY_WEBHOOK:-}",
            description = "Public https address under which --http is reached: Telegram then sends messages there, to "
                    + "ADDRESS/telegram, instead of being asked for them. Needs BOTHY_WEBHOOK_SECRET.")
    private String webhook;

    @Option(
            names = "--keep-days",
            paramLabel = "DAYS",
            defaultValue = "${env:BOTHY_KEEP_DAYS:-30}",
            description =
                    "How long handled messages and sent replies are kept; diaries are kept until their grower deletes "
                            + "them. At least 2. Default: ${DEFAULT-VALUE}.")
    private int keepDays;

    @Option(
            names = "--sends-per-second",
            paramLabel = "N",
            defaultValue = "${env:BOTHY_SENDS_PER_SECOND:-25}",
            description =
                    "How many messages a second this process sends at most, all chats together. Telegram takes about 30 from "
                            + "one bot: with several processes give each its share. Default: ${DEFAULT-VALUE}.")
    private int sendsPerSecond;

    private final Secrets secrets;

    ServiceOptions() {
        this(new Secrets(System::getenv));
    }

    ServiceOptions(Secrets secrets) {
        this.secrets = secrets;
    }

    Door door() {
        Set<String> codes = words(secrets.of("BOTHY_INVITE_CODES").orElse(""));
        if (door == Mode.INVITED && codes.isEmpty()) {
            throw new Complaints.MisUse(
                    "--door invited needs at least one code in BOTHY_INVITE_CODES (apart by commas).");
        }
        if (perMinute < 0) {
            throw new Complaints.MisUse("--messages-per-minute " + perMinute + " is less than 0; 0 is any number.");
        }
        return new Door(door, codes, growers("--let-in", letIn), growers("--operators", operators), perMinute);
    }

    private static Set<String> words(String text) {
        return Arrays.stream(text.split(","))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .collect(Collectors.toSet());
    }

    private static Set<String> growers(String option, List<String> chats) {
        Stream<String> told = chats == null ? Stream.of() : chats.stream();
        return told.map(String::strip)
                .filter(chat -> !chat.isEmpty())
                .map(chat -> {
                    if (!chat.matches("-?\\d{1,19}")) {
                        throw new Complaints.MisUse(
                                option + " " + chat + " is no chat: give its number; groups begin with -.");
                    }
                    return "telegram:" + chat;
                })
                .collect(Collectors.toSet());
    }

    /** The pace of all messages that this process sends. */
    Rate sending() {
        if (sendsPerSecond < 1) {
            throw new Complaints.MisUse("--sends-per-second " + sendsPerSecond + " is too few: at least 1.");
        }
        return new Rate(sendsPerSecond, sendsPerSecond);
    }

    int keepDays() {
        if (keepDays < 2) {
            throw new Complaints.MisUse("--keep-days " + keepDays + " is too short: Telegram may hand a message over "
                    + "again for a day, so at least 2.");
        }
        return keepDays;
    }

    /** {@code null} for nowhere. */
    InetSocketAddress http() {
        if (http == null || http.isBlank()) {
            return null;
        }
        int colon = http.lastIndexOf(':');
        String port = http.substring(colon + 1);
        if (!port.matches("\\d{1,5}") || Integer.parseInt(port) > 65_535) {
            throw new Complaints.MisUse(
                    "--http " + http + " has no port: give 8080, or host and port as 0.0.0.0:8080.");
        }
        return new InetSocketAddress(colon < 0 ? "127.0.0.1" : http.substring(0, colon), Integer.parseInt(port));
    }

    /** Where Telegram is to send messages, {@code null} to ask for them. */
    URI webhook() {
        if (webhook == null || webhook.isBlank()) {
            return null;
        }
        if (!webhook.startsWith("https://")) {
            throw new Complaints.MisUse(
                    "--webhook " + webhook + " is no https:// address; Telegram sends to no other.");
        }
        if (http() == null) {
            throw new Complaints.MisUse("--webhook needs --http as well: where to listen behind that address.");
        }
        return URI.create(webhook.replaceAll("/+$", "") + Porch.WEBHOOK);
    }

    String webhookSecret() {
        String secret = secrets.of("BOTHY_WEBHOOK_SECRET").orElse("");
        if (!secret.matches("[A-Za-z0-9_-]{16,256}")) {
            throw new Complaints.MisUse("--webhook needs BOTHY_WEBHOOK_SECRET in the environment: 16 to 256 letters, "
                    + "digits, _ or -, made at random (openssl rand -hex 32).");
        }
        return secret;
    }
}
