package bothy.channel.telegram;

import bothy.conversation.Discretion;
import bothy.garden.Incoming;
import bothy.garden.Message;
import bothy.garden.Post;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Takes what waits in the inbox to the handler: in order for each chat, several chats at once. A message that fails is tried again after
 * a while, and the rest of its chat waits with it; after a few times the grower is told.
 */
final class Desk {
    private static final Logger LOG = LoggerFactory.getLogger(Desk.class);
    private static final int AT_ONCE = 500;
    private static final int TRIES = 5;
    private static final int REMEMBERED = 10_000;
    private static final Duration LOOK_AGAIN = Duration.ofSeconds(1);
    private static final BackOff BACK_OFF = new BackOff(Duration.ofMillis(250), Duration.ofSeconds(30));

    private final Post post;
    private final Handler handler;
    private final Me me;
    private final InstantSource clock;
    private final Ending ending;
    private final Lanes lanes;
    private final Runnable onHandled;
    private final Map<String, Failing> failing = new ConcurrentHashMap<>();

    /** The letters handled last. One that waits all the same was handled in an earlier life and is set aside. */
    private final Set<String> done = Collections.synchronizedSet(Collections.newSetFromMap(new LinkedHashMap<>() {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Boolean> eldest) {
            return size() > REMEMBERED;
        }
    }));

    /** A chat whose first message failed. */
    private record Failing(int times, Instant next) {}

    Desk(Post post, Handler handler, Me me, InstantSource clock, Ending ending, int workers, Runnable onHandled) {
        this.post = post;
        this.handler = handler;
        this.me = me;
        this.clock = clock;
        this.ending = ending;
        this.lanes = new Lanes(workers, "telegram-desk");
        this.onHandled = onHandled;
    }

    /** There is new post. */
    void ring() {
        lanes.ring();
    }

    /** Works until the end comes or it is interrupted. */
    void work() throws InterruptedException {
        while (!ending.hasCome()) {
            handOut();
            lanes.await(LOOK_AGAIN);
        }
    }

    private void handOut() {
        Set<String> busy = lanes.busy();
        waiting().forEach((chat, letters) -> {
            if (!busy.contains(chat) && due(chat)) {
                lanes.begin(chat, () -> handleAll(chat, letters));
            }
        });
    }

    private Map<String, List<Incoming>> waiting() {
        Map<String, List<Incoming>> byChat = new LinkedHashMap<>();
        try {
            post.unhandled(TelegramChannel.NAME, AT_ONCE)
                    .forEach(letter -> byChat.computeIfAbsent(letter.chat(), chat -> new ArrayList<>())
                            .add(letter));
        } catch (RuntimeException e) {
            LOG.error("The inbox cannot be read, trying again: {}", e.getMessage());
        }
        return byChat;
    }

    private boolean due(String chat) {
        Failing last = failing.get(chat);
        return last == null || !clock.instant().isBefore(last.next());
    }

    private void handleAll(String chat, List<Incoming> letters) {
        for (Incoming letter : letters) {
            if (!handled(chat, letter)) {
                return;
            }
            onHandled.run();
        }
    }

    private boolean handled(String chat, Incoming letter) {
        Optional<Message> message = Optional.empty();
        try {
            message = done.contains(letter.id()) ? Optional.empty() : message(letter);
            if (message.isPresent()) {
                // With its lines and its reply the handler marks it as handled, so that it waits no more.
                handler.handle(message.get(), TelegramChannel.NAME, chat);
                done.add(letter.id());
            } else {
                post.setAside(TelegramChannel.NAME, letter.id(), clock.instant());
            }
            failing.remove(chat);
            return true;
        } catch (RuntimeException e) {
            return gaveUp(chat, message.orElseGet(() -> Letter.unread(letter)), e);
        } catch (Error e) {
            // Such as rules that never end: no reason to stop answering the others.
            return gaveUp(chat, message.orElseGet(() -> Letter.unread(letter)), new IllegalStateException(e));
        }
    }

    /** Empty for a button of an older question: there is nothing to hand over. */
    private Optional<Message> message(Incoming incoming) {
        Letter letter = Letter.of(incoming);
        return letter.tap().isPresent()
                ? Keyboard.label(
                                letter.tap().get().getData(),
                                post.lastWithButtons(TelegramChannel.NAME, incoming.chat()))
                        .map(label -> letter.pressed(incoming, label))
                : Optional.of(letter.message(incoming, me));
    }

    private boolean gaveUp(String chat, Message message, RuntimeException failure) {
        int times = failing.getOrDefault(chat, new Failing(0, Instant.MIN)).times() + 1;
        LOG.error("A message could not be handled ({} times now): {}", times, Discretion.of(failure), failure);
        if (times >= TRIES && apologised(message, chat, failure)) {
            failing.remove(chat);
            return true;
        }
        failing.put(chat, new Failing(times, clock.instant().plus(BACK_OFF.after(times))));
        return false;
    }

    private boolean apologised(Message message, String chat, RuntimeException why) {
        try {
            handler.apologise(message, TelegramChannel.NAME, chat, why);
            post.setAside(TelegramChannel.NAME, message.id(), clock.instant());
            return true;
        } catch (RuntimeException | Error e) {
            LOG.error("The message is kept and tried again: {}", Discretion.of(e));
            return false;
        }
    }

    void close() {
        lanes.close();
    }
}
