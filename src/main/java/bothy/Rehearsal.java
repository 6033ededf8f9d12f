package bothy;

import bothy.conversation.Conversation;
import bothy.conversation.Conversation.Outcome;
import bothy.conversation.Knowledge;
import bothy.conversation.StationTaken;
import bothy.diary.Replay;
import bothy.diary.Store;
import bothy.garden.Entry;
import bothy.garden.Given;
import bothy.garden.Grower;
import bothy.garden.Logged;
import bothy.garden.Message;
import bothy.garden.Normals;
import bothy.garden.SettingChange;
import bothy.garden.WeatherDay;
import bothy.weather.StationRecord;
import bothy.weather.WeatherSource;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Runs one conversation file on an empty diary. */
final class Rehearsal {
    private static final String GROWER = "rehearsal";
    private final ConversationFile file;
    private final Conversation conversation;
    private final Store store;
    private final ZoneId zone;
    private final List<String> report = new ArrayList<>();
    private final Set<String> fired = new HashSet<>();
    private final Set<String> advised = new HashSet<>();
    private final Set<String> withheld = new HashSet<>();
    private int differences;

    Rehearsal(ConversationFile file, Knowledge knowledge, Store store) {
        this.file = file;
        this.store = store;
        this.conversation = new Conversation(
                store,
                new Knowledge(
                        knowledge.reading(), knowledge.advisor(), knowledge.replier(), knowledge.sheets(), weather()));
        this.zone = ZoneId.of(
                file.grower() == null || file.grower().zone() == null
                        ? "Europe/London"
                        : file.grower().zone());
    }

    /** Names of the rules that fired in any turn. */
    Set<String> fired() {
        return fired;
    }

    /** Ids of advice that a turn expected, and of advice that a turn expected to be withheld. */
    Set<String> advised() {
        return advised;
    }

    Set<String> withheld() {
        return withheld;
    }

    int differences() {
        return differences;
    }

    /** Lines that say what differed, with the turn, the reply and the entries. */
    List<String> report() {
        return report;
    }

    void run() {
        settle();
        int number = 0;
        for (ConversationFile.Turn turn : file.turns()) {
            number++;
            Expectation.Followed followed = follow(turn, number);
            if (turn.expect() != null) {
                compare(turn, followed, number);
            }
        }
    }

    private void compare(ConversationFile.Turn turn, Expectation.Followed followed, int number) {
        advised.addAll(
                turn.expect().advice() == null ? List.of() : turn.expect().advice());
        withheld.addAll(
                turn.expect().notAdvice() == null ? List.of() : turn.expect().notAdvice());
        List<String> found = Expectation.differences(turn.expect(), followed);
        if (!found.isEmpty()) {
            differences += found.size();
            report.add("turn " + number + ", " + turn.at() + ": " + said(turn));
            found.forEach(one -> report.add("  " + one));
            report.add("  reply: " + followed.text().replace("\n", "\n         "));
            report.add("  advice: " + followed.spoken().stream().map(Given::id).toList());
            followed.written().forEach(line -> report.add("  entry: " + line.entry()));
        }
    }

    private static String said(ConversationFile.Turn turn) {
        return turn.grower() != null ? turn.grower() : turn.press() != null ? "[" + turn.press() + "]" : "(unasked)";
    }

    private void settle() {
        settings();
        if (file.record() != null) {
            takeRecord(Path.of(file.record()));
        }
    }

    /** Takes in the station's record as the command does. */
    private void takeRecord(Path record) {
        try (Reader csv = Files.newBufferedReader(record)) {
            List<WeatherDay> days = StationRecord.read(csv, record.toString());
            Instant before = file.turns().get(0).at().minusDays(1).atZone(zone).toInstant();
            store.write(GROWER, page -> {
                Grower known = Replay.garden(page.lines(), LocalDate.ofInstant(before, zone), zone)
                        .grower();
                Normals normals = StationNormals.of(days, known.southern());
                StationTaken.keep(page, known, days, normals);
                return page.append("record", before, List.copyOf(StationTaken.frostDates(normals)));
            });
        } catch (IOException unread) {
            throw new UncheckedIOException("The record " + record + " cannot be read.", unread);
        }
    }

    private void settings() {
        ConversationFile.Grower grower = file.grower();
        if (grower == null) {
            return;
        }
        List<Entry> settings = new ArrayList<>();
        add(settings, "zone", grower.zone());
        add(settings, "latitude", grower.latitude());
        add(settings, "longitude", grower.longitude());
        add(settings, "lastSpringFrost", grower.lastSpringFrost());
        add(settings, "firstAutumnFrost", grower.firstAutumnFrost());
        add(settings, "units", grower.units());
        add(settings, "soil", grower.soil());
        if (!settings.isEmpty()) {
            Instant before = file.turns().get(0).at().minusDays(1).atZone(zone).toInstant();
            store.write(GROWER, page -> page.append("settings", before, settings));
        }
    }

    private static void add(List<Entry> settings, String name, Object value) {
        if (value != null) {
            settings.add(new SettingChange(name, value.toString()));
        }
    }

    private Expectation.Followed follow(ConversationFile.Turn turn, int number) {
        List<Outcome> outcomes = new ArrayList<>();
        if (turn.grower() == null && turn.press() == null && turn.location() == null && !turn.photo()) {
            outcomes.addAll(unasked(turn.at()));
        } else {
            conversation.handle(message(turn, number), null).ifPresent(outcomes::add);
        }
        List<String> texts = new ArrayList<>();
        List<Logged> written = new ArrayList<>();
        List<Given> spoken = new ArrayList<>();
        LocalDate nextLook = null;
        boolean asks = false;
        for (Outcome outcome : outcomes) {
            texts.add(outcome.reply().text());
            outcome.reply().documents().forEach(document -> texts.add(document.content()));
            written.addAll(outcome.written());
            spoken.addAll(outcome.spoken());
            nextLook = outcome.nextLook();
            asks = outcome.asks();
            fired.addAll(outcome.fired());
        }
        return new Expectation.Followed(String.join("\n\n", texts), written, spoken, nextLook, asks);
    }

    /** What the bot says by itself: at each look that was due since the last turn. */
    private List<Outcome> unasked(LocalDateTime until) {
        List<Outcome> outcomes = new ArrayList<>();
        Instant end = until.atZone(zone).toInstant();
        Optional<Instant> look = store.nextLook(GROWER);
        while (look.isPresent() && !look.get().isAfter(end)) {
            conversation.speakUp(GROWER, look.get(), zone, null).ifPresent(outcomes::add);
            look = store.nextLook(GROWER);
        }
        return outcomes;
    }

    private Message message(ConversationFile.Turn turn, int number) {
        List<Double> location = turn.location();
        return new Message(
                "turn-" + number,
                GROWER,
                turn.at().atZone(zone).toInstant(),
                zone,
                turn.grower() == null ? "" : turn.grower(),
                location == null ? null : location.get(0),
                location == null ? null : location.get(1),
                turn.photo(),
                turn.press(),
                null);
    }

    private WeatherSource weather() {
        List<ConversationFile.Weather> days = file.weather() == null ? List.of() : file.weather();
        return (Grower grower, LocalDate today) -> days.stream()
                .map(day -> new WeatherDay(
                        day.date(),
                        day.tmin(),
                        day.tmax(),
                        day.rain(),
                        !day.date().isAfter(today),
                        day.humidHours(),
                        day.wind()))
                .toList();
    }
}
