package bothy.diary.sql;

import bothy.diary.Page;
import bothy.garden.Entry;
import bothy.garden.Logged;
import bothy.garden.Normals;
import bothy.garden.Reply;
import bothy.garden.WeatherDay;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * A page worked out beside the database's one writer: it reads what was there at one moment and remembers what is to be written. The
 * writing is done later in one short transaction, if nobody has written to the page meanwhile.
 */
final class Draft implements Page {
    private final OpenPage before;
    private final List<Consumer<Page>> steps = new ArrayList<>();
    private final List<Logged> added = new ArrayList<>();
    private final Set<String> marked = new HashSet<>();
    private final TreeMap<String, TreeMap<LocalDate, WeatherDay>> weather = new TreeMap<>();
    private final Map<String, Normals> normals = new HashMap<>();
    private Optional<String> state;
    private boolean forgotten;
    private long lastLine;
    private List<Logged> read;

    private Draft(OpenPage before) {
        this.before = before;
        this.lastLine = before.lastLine();
    }

    static Draft of(String grower, Sql sql, Engine engine) {
        return new Draft(OpenPage.asItStands(grower, sql, engine));
    }

    void refuseIfFailed() {
        before.refuseIfFailed();
    }

    boolean isEmpty() {
        return steps.isEmpty();
    }

    /**
     * Writes it down.
     *
     * @return whether it was; not when the page is another by now
     */
    boolean written(Sql sql, Engine engine) {
        OpenPage page = OpenPage.of(before.grower(), sql, engine);
        if (!page.follows(before)) {
            return false;
        }
        steps.forEach(step -> step.accept(page));
        page.refuseIfFailed();
        return true;
    }

    @Override
    public List<Logged> lines() {
        return Stream.concat(forgotten ? Stream.of() : linesBefore().stream(), added.stream())
                .toList();
    }

    /** Read once: what stood there when the draft was begun does not change. */
    private List<Logged> linesBefore() {
        if (read == null) {
            read = before.lines();
        }
        return read;
    }

    @Override
    public List<Logged> append(String message, Instant at, List<Entry> entries) {
        List<Entry> kept = List.copyOf(entries);
        steps.add(page -> page.append(message, at, kept));
        List<Logged> lines = OpenPage.numbered(lastLine, message, at, kept);
        lastLine += lines.size();
        added.addAll(lines);
        return lines;
    }

    @Override
    public boolean handled(String message) {
        return marked.contains(message) || !forgotten && before.handled(message);
    }

    @Override
    public void markHandled(String message, Instant at) {
        steps.add(page -> page.markHandled(message, at));
        marked.add(message);
    }

    @Override
    public Optional<String> state() {
        return state != null ? state : before.state();
    }

    @Override
    public void keepState(String json) {
        steps.add(page -> page.keepState(json));
        state = Optional.ofNullable(json);
    }

    @Override
    public void lookAgain(Instant moment) {
        steps.add(page -> page.lookAgain(moment));
    }

    @Override
    public void forget() {
        steps.add(Page::forget);
        forgotten = true;
        added.clear();
        marked.clear();
        weather.clear();
        normals.clear();
        state = Optional.empty();
        lastLine = 0;
    }

    @Override
    public void send(String channel, String chat, Reply reply, Instant at) {
        steps.add(page -> page.send(channel, chat, reply, at));
    }

    @Override
    public List<WeatherDay> weather(String place, LocalDate from) {
        TreeMap<LocalDate, WeatherDay> days = new TreeMap<>();
        if (!forgotten) {
            before.weather(place, from).forEach(day -> days.put(day.date(), day));
        }
        days.putAll(weather.getOrDefault(place, new TreeMap<>()).tailMap(from));
        return List.copyOf(days.values());
    }

    @Override
    public void keepWeather(String place, List<WeatherDay> days) {
        List<WeatherDay> kept = List.copyOf(days);
        steps.add(page -> page.keepWeather(place, kept));
        TreeMap<LocalDate, WeatherDay> known = weather.computeIfAbsent(place, name -> new TreeMap<>());
        kept.forEach(day -> known.put(day.date(), day));
    }

    @Override
    public Optional<Normals> normals(String place) {
        Normals kept = normals.get(place);
        return kept != null ? Optional.of(kept) : forgotten ? Optional.empty() : before.normals(place);
    }

    @Override
    public void keepNormals(String place, Normals kept) {
        steps.add(page -> page.keepNormals(place, kept));
        normals.put(place, kept);
    }
}
