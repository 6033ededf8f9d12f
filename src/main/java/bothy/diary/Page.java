package bothy.diary;

import bothy.garden.Entry;
import bothy.garden.Logged;
import bothy.garden.Normals;
import bothy.garden.Reply;
import bothy.garden.WeatherDay;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** One grower's part of the store inside a transaction. */
public interface Page {

    /** All lines of the diary in order of number. */
    List<Logged> lines();

    /** Adds lines; their numbers follow on. */
    List<Logged> append(String message, Instant at, List<Entry> entries);

    /** Whether a message with this id was handled before. */
    boolean handled(String message);

    /** Marks a message as handled, also where it was received; with the lines and the reply this is one transaction. */
    void markHandled(String message, Instant at);

    /** What the conversation needs to know next time (the pending question, the last advice), as JSON; empty at first. */
    Optional<String> state();

    void keepState(String json);

    /**
     * When to look at this garden next, whether something should be said unasked.
     *
     * @param moment {@code null} for not before the grower writes again
     */
    void lookAgain(Instant moment);

    /** Removes all that is kept of this grower: diary, marks, memory, letters and replies. What is added after it stays. */
    void forget();

    /**
     * Puts a reply into the outbox.
     *
     * @param channel the channel that is to send it ("telegram")
     * @param chat the channel's address of the grower
     */
    void send(String channel, String chat, Reply reply, Instant at);

    /**
     * Weather kept of days at one place, oldest first: past days as they were observed or forecast, and days ahead as last forecast.
     *
     * @param place the place as {@link #keepWeather} named it
     * @param from first day wanted
     */
    List<WeatherDay> weather(String place, LocalDate from);

    /** Keeps days of weather at a place; a day kept before is replaced. */
    void keepWeather(String place, List<WeatherDay> days);

    /** What a station's record taken in makes normal at a place; empty when none was. */
    Optional<Normals> normals(String place);

    /** Keeps the normals of a place; those kept before are replaced. */
    void keepNormals(String place, Normals normals);
}
