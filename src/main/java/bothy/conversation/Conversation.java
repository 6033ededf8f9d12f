package bothy.conversation;

import bothy.diary.Replay;
import bothy.diary.Store;
import bothy.garden.Diagnosis;
import bothy.garden.Given;
import bothy.garden.Grower;
import bothy.garden.Logged;
import bothy.garden.Message;
import bothy.garden.Reply;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Answers messages. What a message adds to the diary, the mark that it was handled and the reply become durable together or not at
 * all. Safe for use by many threads.
 */
public final class Conversation {
    private final Store store;
    private final Supplier<Knowledge> knowledge;
    private final Entrance entrance;

    /** Open to all. */
    public Conversation(Store store, Knowledge knowledge) {
        this(store, knowledge, Door.open());
    }

    public Conversation(Store store, Knowledge knowledge, Door door) {
        this(store, () -> knowledge, door);
    }

    /** @param knowledge asked once for each message and each look, which then keeps what it got to its end */
    public Conversation(Store store, Supplier<Knowledge> knowledge, Door door) {
        this.store = store;
        this.entrance = new Entrance(door);
        this.knowledge = knowledge;
    }

    /**
     * Handles one message.
     *
     * @param address where the reply is to be sent from the outbox; {@code null} when the caller shows it itself
     * @return what came of it; empty when the message had been handled before
     * @throws bothy.diary.StoreFailure when the diary cannot be written; then nothing of the message was kept
     */
    public Optional<Outcome> handle(Message message, Address address) {
        Knowledge known = knowledge.get();
        askWeatherAhead(known, message.grower(), message.at(), message.zone());
        Optional<Reply> status =
                entrance.asksForStatus(message) ? Optional.of(status(known, message.at())) : Optional.empty();
        return store.write(message.grower(), page -> {
            if (page.handled(message.id())) {
                return Optional.empty();
            }
            Outcome outcome = status.or(() -> entrance.stopped(page, message, known.replier()))
                    .map(reply -> new Outcome(reply, List.of(), List.of(), null, false, Set.of(), List.of()))
                    .orElseGet(() -> new Exchange(known, page, message).outcome());
            page.markHandled(message.id(), message.at());
            if (address != null && !outcome.reply().text().isEmpty()) {
                page.send(address.channel(), address.chat(), outcome.reply(), message.at());
            }
            return Optional.of(outcome);
        });
    }

    private Reply status(Knowledge known, Instant now) {
        Store.Waiting waiting = store.waiting(now);
        Map<String, String> words = Map.of(
                "growers", String.valueOf(waiting.growers()),
                "letters", String.valueOf(waiting.letters()),
                "replies", String.valueOf(waiting.replies()),
                "looks", String.valueOf(waiting.looks()));
        return new Reply(known.replier().talk("status", words), List.of());
    }

    /** Gives up on a message that could not be handled: marks it as handled and says so, in one transaction. */
    public void apologise(Message message, Address address) {
        store.write(message.grower(), page -> {
            if (!page.handled(message.id())) {
                page.markHandled(message.id(), message.at());
                page.send(
                        address.channel(),
                        address.chat(),
                        new Reply(knowledge.get().replier().talk("could-not-take-in"), List.of()),
                        message.at());
            }
            return null;
        });
    }

    /**
     * Says what is due unasked at a moment, and notes in the store when to look at this garden next.
     *
     * @param grower the channel's key of the grower
     * @param moment when it is
     * @param zone the channel's time zone of the grower
     * @return empty when there is nothing to say
     */
    public Optional<Outcome> speakUp(String grower, Instant moment, ZoneId zone, Address address) {
        Knowledge known = knowledge.get();
        askWeatherAhead(known, grower, moment, zone);
        return store.write(grower, page -> {
            Optional<Outcome> outcome = new SpeakingUp(known, page, moment, zone).outcome();
            if (address != null) {
                outcome.ifPresent(said -> page.send(address.channel(), address.chat(), said.reply(), moment));
            }
            return outcome;
        });
    }

    /** Takes up growers whose garden is to be looked at; see {@link Store#takeDue}. */
    public List<String> takeDue(Instant now, Instant again, int atMost) {
        return store.takeDue(now, again, atMost);
    }

    /** The clock was ahead for a while and is right again: looks set by it are taken now. What was said already is not said again. */
    public void clockWasAhead(Instant now) {
        store.bringForward(now);
    }

    /** Asks a slow source before the diary is opened, so that no other writer waits for the network; inside it answers from memory. */
    private void askWeatherAhead(Knowledge known, String grower, Instant moment, ZoneId zone) {
        if (known.weather().slow()) {
            LocalDate day = moment.atZone(zone).toLocalDate();
            Grower where = Replay.garden(store.lines(grower), day, zone).grower();
            known.weather().around(where, day);
        }
    }

    /** Where a channel sends to. */
    public record Address(String channel, String chat) {}

    /**
     * What came of a message.
     *
     * @param reply what goes back
     * @param written the diary lines that it added
     * @param spoken the advice that the reply gives
     * @param nextLook when to look again, {@code null} when the reply names no day
     * @param asks whether the reply ends with a question
     * @param fired names of the rules that fired
     * @param diagnoses the troubles that are being looked into
     */
    public record Outcome(
            Reply reply,
            List<Logged> written,
            List<Given> spoken,
            LocalDate nextLook,
            boolean asks,
            Set<String> fired,
            List<Diagnosis> diagnoses) {}
}
