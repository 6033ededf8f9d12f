package bothy;

import bothy.almanac.RulesFolder;
import bothy.channel.terminal.TerminalChat;
import bothy.conversation.Conversation;
import bothy.conversation.Knowledge;
import bothy.diary.Replay;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.weather.WeatherSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The chat in the terminal. */
class ChatVerb implements Callable<Integer> {
    @Mixin
    private RulesOption rules;

    @Mixin
    private WeatherOption weather;

    @Option(
            names = "--db",
            paramLabel = "FILE",
            description = "Diary: an SQLite file, or a jdbc:postgresql: address (default: bothy.db here).")
    private String diary;

    @Option(names = "--today", paramLabel = "DATE", description = "The day to take as today, as 2027-05-01.")
    private LocalDate today;

    @Option(names = "--demo", description = "Open a ready garden, the shared school plot, in a diary of its own.")
    private boolean demo;

    @Override
    public Integer call() throws IOException {
        RulesFolder folder = Workshop.folder(rules.folder);
        CompletableFuture<Store> opening = CompletableFuture.supplyAsync(() -> Shelf.open(address()));
        Knowledge knowledge = Workshop.knowledge(folder, Workshop.cacheFolder(), weather());
        try (Store store = Workshop.join(opening)) {
            Conversation conversation = new Conversation(store, knowledge);
            ZoneId zone = ZoneId.systemDefault();
            LocalDate day = demo ? Demo.open(store, knowledge, today, zone) : today;
            new TerminalChat(
                            conversation,
                            clock(day, zone, store),
                            zone,
                            Workshop.cacheFolder().resolve("history"),
                            System.in,
                            System.out,
                            Complaints::sentence)
                    .run();
        }
        return 0;
    }

    private WeatherSource weather() {
        if (!demo && today == null) {
            return weather.source(InstantSource.system());
        }
        if (weather.named()) {
            System.err.println("The forecast is left out: on another day than the real one it is of the wrong days.");
        }
        return WeatherSource.none();
    }

    private String address() {
        if (diary != null) {
            return diary;
        }
        if (!demo) {
            return "bothy.db";
        }
        try {
            Path folder = Files.createTempDirectory("bothy-demo");
            return folder.resolve("demo.db").toString();
        } catch (IOException unwritable) {
            throw new Complaints.MisUse("No folder for the demo's diary could be made: " + unwritable.getMessage()
                    + ". Name a file with --db.");
        }
    }

    /** The real clock, or the time of day of the real clock on another day, which is that day where the grower is. */
    static InstantSource clock(LocalDate day, ZoneId zone, Store store) {
        InstantSource real = InstantSource.system();
        if (day == null) {
            return real;
        }
        return () -> {
            ZoneId here = store.write(
                    TerminalChat.GROWER,
                    page -> Replay.garden(page.lines(), day, zone).grower().zone());
            LocalTime time = real.instant().atZone(zone).toLocalTime();
            return day.atTime(time).atZone(here).toInstant();
        };
    }

    static Instant morning(LocalDate day, ZoneId zone) {
        return day.atTime(8, 0).atZone(zone).toInstant();
    }
}
