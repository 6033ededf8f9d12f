package bothy.channel.telegram;

import bothy.channel.telegram.TelegramSettings.Rate;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Event;
import bothy.garden.Message;
import bothy.garden.Reply;
import bothy.garden.What;
import java.net.URI;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** The channel with a diary as a program of its own, to be killed, or listened to. */
final class ChannelProgram {
    private ChannelProgram() {}

    /** @param args the diary's address, the service's address, the token, and "stop" to stop by itself at the end of standard input */
    public static void main(String[] args) throws Exception {
        Store store = Shelf.open(args[0]);
        TelegramSettings settings = TelegramSettings.of(args[2], Map.of("week", "What to do this week"), "Past.")
                .withService(URI.create(args[1]))
                .withTimes(Duration.ofSeconds(2), Duration.ofSeconds(1))
                .withPace(new Rate(1000, 1000), new Rate(1000, 1000), new Rate(1000, 1000));
        TelegramChannel channel = new TelegramChannel(settings, store, writingInto(store), Clock.systemUTC());
        channel.start();
        if (args.length > 3) {
            System.in.transferTo(java.io.OutputStream.nullOutputStream());
            channel.stop();
        }
        System.out.println("Ended: " + channel.awaitEnd().orElse("stopped"));
        channel.stop();
        store.close();
    }

    private static Handler writingInto(Store store) {
        return new Handler() {
            @Override
            public void handle(Message message, String channel, String chat) {
                store.write(message.grower(), page -> {
                    if (!page.handled(message.id())) {
                        Event note =
                                Event.of(What.NOTE, null, null, LocalDate.EPOCH).withDetail(message.text());
                        page.append(message.id(), message.at(), List.of(note));
                        page.send(channel, chat, new Reply(message.text(), List.of()), message.at());
                        page.markHandled(message.id(), message.at());
                    }
                    return null;
                });
            }

            @Override
            public void apologise(Message message, String channel, String chat, RuntimeException why) {
                throw new IllegalStateException(why);
            }
        };
    }

    /** Starts the program, its output and log in one stream. */
    static Process start(List<String> options, String... arguments) throws java.io.IOException {
        List<String> command = new java.util.ArrayList<>();
        command.add(java.nio.file.Path.of(System.getProperty("java.home"), "bin", "java")
                .toString());
        command.add("-XX:TieredStopAtLevel=1");
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), ChannelProgram.class.getName()));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command).redirectErrorStream(true).start();
    }
}
