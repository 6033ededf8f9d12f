package bothy.channel.telegram;

import bothy.garden.Document;
import bothy.garden.Outgoing;
import bothy.garden.Post;
import bothy.garden.Sent;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Empties the outbox at the pace that the service allows, in order for each chat. */
final class Sender {
    private static final Logger LOG = LoggerFactory.getLogger(Sender.class);
    private static final int AT_ONCE = 200;
    private static final Duration LOOK_AGAIN = Duration.ofSeconds(1);
    private static final BackOff BACK_OFF = new BackOff(Duration.ofSeconds(1), Duration.ofMinutes(5));

    private final Post post;
    private final Service service;
    private final Pace pace;
    private final InstantSource clock;
    private final Ending ending;
    private final Lanes lanes;

    /** Sent and not noted yet. */
    private final Queue<Sent> unnoted = new ConcurrentLinkedQueue<>();

    /** How many parts of a long reply went out already, by the reply's number. */
    private final Map<Long, Integer> partsSent = new ConcurrentHashMap<>();

    Sender(Post post, Service service, Pace pace, InstantSource clock, Ending ending, int workers) {
        this.post = post;
        this.service = service;
        this.pace = pace;
        this.clock = clock;
        this.ending = ending;
        this.lanes = new Lanes(workers, "telegram-sender");
    }

    /** There may be something to send. */
    void ring() {
        lanes.ring();
    }

    /** Works until the end comes or it is interrupted. */
    void work() throws InterruptedException {
        while (!ending.hasCome()) {
            lanes.await(sendOut());
        }
    }

    /**
     * Notes what was sent and sends what waits. Whose chat is not busy any more was noted before the outbox is looked through, so it is not
     * found there again.
     *
     * @return how long there is nothing more to do
     */
    private Duration sendOut() throws InterruptedException {
        Set<String> busy = lanes.busy();
        noteSent();
        Duration wait = LOOK_AGAIN;
        for (Outgoing reply : waiting()) {
            if (busy.contains(reply.chat())) {
                continue;
            }
            Duration leave = pace.ask(reply.chat(), clock.instant());
            if (leave.isZero()) {
                lanes.begin(reply.chat(), () -> send(reply));
            } else if (leave.compareTo(wait) < 0) {
                wait = leave;
            }
        }
        return wait;
    }

    private List<Outgoing> waiting() {
        try {
            return post.toSend(TelegramChannel.NAME, clock.instant(), AT_ONCE);
        } catch (RuntimeException e) {
            LOG.error("The outbox cannot be read, trying again: {}", e.getMessage());
            return List.of();
        }
    }

    private void send(Outgoing reply) {
        try {
            sendOrPutOff(reply);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void sendOrPutOff(Outgoing reply) throws InterruptedException {
        try {
            unnoted.add(new Sent(reply.number(), sendParts(reply)));
            partsSent.remove(reply.number());
        } catch (Refused e) {
            refused(reply, e);
        }
    }

    private String sendParts(Outgoing reply) throws InterruptedException {
        List<String> parts = Parts.of(reply.reply().text());
        String message = "";
        for (int part = partsSent.getOrDefault(reply.number(), 0); part < parts.size(); part++) {
            boolean last = part == parts.size() - 1;
            if (part > 0) {
                awaitLeave(reply.chat());
            }
            message = service.send(
                    reply.chat(), parts.get(part), last ? reply.reply().buttons() : List.of(), reply.number());
            partsSent.put(reply.number(), part + 1);
        }
        return sendDocuments(reply, parts.size(), message);
    }

    private String sendDocuments(Outgoing reply, int parts, String last) throws InterruptedException {
        String message = last;
        List<Document> documents = reply.reply().documents();
        int sent = Math.max(0, partsSent.getOrDefault(reply.number(), 0) - parts);
        for (int number = sent; number < documents.size(); number++) {
            awaitLeave(reply.chat());
            message = service.send(reply.chat(), documents.get(number));
            partsSent.put(reply.number(), parts + number + 1);
        }
        return message;
    }

    /** The first part got its leave when the reply was taken up. */
    private void awaitLeave(String chat) throws InterruptedException {
        for (Duration wait = pace.ask(chat, clock.instant()); !wait.isZero(); wait = pace.ask(chat, clock.instant())) {
            Thread.sleep(wait.toMillis());
        }
    }

    private void refused(Outgoing reply, Refused refused) throws InterruptedException {
        if (refused.tokenRefused()) {
            ending.come(Ending.TOKEN_REFUSED);
        } else if (refused.chatGone() || refused.forGood()) {
            LOG.warn("A reply will never arrive and was given up: {}", refused.getMessage());
            partsSent.remove(reply.number());
            note(() -> post.giveUp(reply.number(), refused.getMessage()));
        } else {
            Instant now = clock.instant();
            Instant until = now.plus(refused.retryAfter().orElseGet(() -> BACK_OFF.after(reply.tries() + 1)));
            if (refused.tooFast()) {
                pace.tooFast(reply.chat(), now, until);
            }
            LOG.warn("A reply waits until {}: {}", until, refused.getMessage());
            note(() -> post.putOff(reply.number(), now, until, refused.getMessage()));
        }
    }

    /** All that were sent in the meantime become durable together: one flush to disk for many. */
    private void noteSent() throws InterruptedException {
        List<Sent> sent = new ArrayList<>();
        for (Sent one = unnoted.poll(); one != null; one = unnoted.poll()) {
            sent.add(one);
        }
        if (!sent.isEmpty()) {
            note(() -> post.sent(sent));
        }
    }

    /**
     * Notes what became of a reply, trying again while the store fails: a reply that was sent and is not noted would go out a second
     * time. At the end of the channel that is better than not at all.
     */
    private void note(Runnable noting) throws InterruptedException {
        for (int failures = 1; ; failures++) {
            try {
                noting.run();
                return;
            } catch (RuntimeException e) {
                LOG.error("What became of a reply cannot be noted, trying again: {}", e.getMessage());
                if (ending.await(BACK_OFF.after(failures))) {
                    return;
                }
            }
        }
    }

    void close() {
        lanes.close();
        try {
            noteSent();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
