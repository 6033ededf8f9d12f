package bothy;

import bothy.channel.telegram.TelegramChannel;
import bothy.diary.Store;
import bothy.garden.Reply;
import java.time.InstantSource;
import java.util.List;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Whoever runs the service: told something in the log, on the terminal, and in their chats. */
final class Operators {
    private static final Logger LOG = LoggerFactory.getLogger(Operators.class);

    private final Store store;
    private final Set<String> growers;
    private final InstantSource clock;
    private volatile Runnable ring = () -> {};

    /** @param growers keys of the operators' chats ("telegram:4711") */
    Operators(Store store, Set<String> growers, InstantSource clock) {
        this.store = store;
        this.growers = Set.copyOf(growers);
        this.clock = clock;
    }

    /** @param bell rung when something was put into the outbox */
    void ring(Runnable bell) {
        ring = bell;
    }

    void tell(String sentence) {
        LOG.warn(sentence);
        for (String grower : growers) {
            try {
                String chat = grower.substring(grower.indexOf(':') + 1);
                store.write(grower, page -> {
                    page.send(TelegramChannel.NAME, chat, new Reply(sentence, List.of()), clock.instant());
                    return null;
                });
            } catch (RuntimeException e) {
                LOG.error("An operator could not be told: {}", e.getMessage());
            }
        }
        ring.run();
    }
}
