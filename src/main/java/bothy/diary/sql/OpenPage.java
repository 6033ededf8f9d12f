package bothy.diary.sql;

import bothy.diary.Page;
import bothy.diary.StoreFailure;
import bothy.garden.Entry;
import bothy.garden.Logged;
import bothy.garden.Normals;
import bothy.garden.Reply;
import bothy.garden.WeatherDay;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Supplier;

/** One grower's page, open for one transaction. */
final class OpenPage implements Page {
    /** A page made by another process begins with another number, so that one that was removed and made again is told apart. */
    private static final long FIRST_VERSION = ThreadLocalRandom.current().nextLong(1L << 40);

    private final String grower;
    private final Sql sql;
    private final Engine engine;
    private final Standing standing;
    private long lastLine;
    private StoreFailure failed;

    /** How a page stands: its last line, and a number that rises with each write. */
    private record Standing(long lastLine, long version) {}

    private OpenPage(String grower, Sql sql, Engine engine, Standing standing) {
        this.grower = grower;
        this.sql = sql;
        this.engine = engine;
        this.standing = standing;
        this.lastLine = standing == null ? 0 : standing.lastLine();
    }

    /** Opens the page for writing and keeps other writers of this grower waiting until the transaction ends. */
    static OpenPage of(String grower, Sql sql, Engine engine) {
        Standing standing = sql.first(
                        "insert into grower (grower, version) values (?, ?) "
                                + "on conflict (grower) do update set version = grower.version + 1 "
                                + "returning last_line, version",
                        OpenPage::standing,
                        grower,
                        FIRST_VERSION)
                .orElseThrow();
        return new OpenPage(grower, sql, engine, standing);
    }

    /** The page as it stands, for reading only. */
    static OpenPage asItStands(String grower, Sql sql, Engine engine) {
        Standing standing = sql.first(
                        "select last_line, version from grower where grower = ?", OpenPage::standing, grower)
                .orElse(null);
        return new OpenPage(grower, sql, engine, standing);
    }

    private static Standing standing(ResultSet row) throws SQLException {
        return new Standing(row.getLong(1), row.getLong(2));
    }

    /** Whether nobody wrote to the page after it stood as the other tells. */
    boolean follows(OpenPage before) {
        return standing.version() == (before.standing == null ? FIRST_VERSION : before.standing.version() + 1);
    }

    String grower() {
        return grower;
    }

    long lastLine() {
        return lastLine;
    }

    /** A failure that the work swallowed must not let the rest of it become durable. */
    void refuseIfFailed() {
        if (failed != null) {
            throw failed;
        }
    }

    @Override
    public List<Logged> lines() {
        return attempt(() -> lines(grower, sql, engine));
    }

    static List<Logged> lines(String grower, Sql sql, Engine engine) {
        return sql.list(
                "select number, message, at_ms, entry from diary_line where grower = ? order by number",
                row -> line(grower, row, engine),
                grower);
    }

    private static Logged line(String grower, ResultSet row, Engine engine) throws SQLException {
        long number = row.getLong(1);
        try {
            Entry entry = Json.entry(row.getString(4));
            return new Logged(number, row.getString(2), Instant.ofEpochMilli(row.getLong(3)), entry);
        } catch (JsonProcessingException e) {
            throw Sentences.unreadableLine(engine.place(), "Line " + number + " of " + grower, e);
        }
    }

    @Override
    public List<Logged> append(String message, Instant at, List<Entry> entries) {
        return attempt(() -> {
            List<Logged> lines = numbered(lastLine, message, at, entries);
            lastLine += lines.size();
            sql.runEach(
                    "insert into diary_line (grower, number, message, at_ms, entry) values (?, ?, ?, ?, ?)",
                    lines.stream().map(this::values).toList());
            sql.run("update grower set last_line = ? where grower = ?", lastLine, grower);
            return lines;
        });
    }

    static List<Logged> numbered(long after, String message, Instant at, List<Entry> entries) {
        List<Logged> lines = new ArrayList<>();
        for (Entry entry : entries) {
            lines.add(new Logged(after + 1 + lines.size(), message, Instant.ofEpochMilli(at.toEpochMilli()), entry));
        }
        return List.copyOf(lines);
    }

    private Object[] values(Logged line) {
        return new Object[] {grower, line.number(), line.message(), line.at().toEpochMilli(), Json.of(line.entry())};
    }

    @Override
    public boolean handled(String message) {
        return attempt(() -> sql.first(
                        "select 1 from handled where grower = ? and message = ?", row -> row.getInt(1), grower, message)
                .isPresent());
    }

    @Override
    public void markHandled(String message, Instant at) {
        attempt(() -> {
            sql.run(
                    "insert into handled (grower, message, at_ms) values (?, ?, ?) on conflict do nothing",
                    grower,
                    message,
                    at.toEpochMilli());
            return sql.run(
                    "update inbox set handled_ms = ? where grower = ? and id = ? and handled_ms is null",
                    at.toEpochMilli(),
                    grower,
                    message);
        });
    }

    @Override
    public Optional<String> state() {
        return attempt(() -> sql.first(
                "select state from grower where grower = ? and state is not null", row -> row.getString(1), grower));
    }

    @Override
    public void keepState(String json) {
        attempt(() -> sql.run("update grower set state = ? where grower = ?", json, grower));
    }

    @Override
    public void lookAgain(Instant moment) {
        Long millis = moment == null ? null : moment.toEpochMilli();
        attempt(() -> sql.run("update grower set look_ms = ? where grower = ?", millis, grower));
    }

    @Override
    public void forget() {
        attempt(() -> {
            for (String table : List.of("diary_line", "handled", "inbox", "outbox", "weather_day", "normals")) {
                sql.run("delete from " + table + " where grower = ?", grower);
            }
            lastLine = 0;
            return sql.run("update grower set last_line = 0, state = null, look_ms = null where grower = ?", grower);
        });
    }

    @Override
    public void send(String channel, String chat, Reply reply, Instant at) {
        attempt(() -> sql.run(
                "insert into outbox (channel, chat, grower, at_ms, reply, buttons) values (?, ?, ?, ?, ?, ?)",
                channel,
                chat,
                grower,
                at.toEpochMilli(),
                Json.of(reply),
                reply.buttons().size()));
    }

    @Override
    public List<WeatherDay> weather(String place, LocalDate from) {
        return attempt(() -> sql.list(
                "select day, tmin, tmax, rain, humid_hours, wind_ms from weather_day "
                        + "where grower = ? and place = ? and day >= ? order by day",
                row -> new WeatherDay(
                        LocalDate.parse(row.getString("day")),
                        number(row, "tmin"),
                        number(row, "tmax"),
                        number(row, "rain"),
                        true,
                        number(row, "humid_hours"),
                        number(row, "wind_ms")),
                grower,
                place,
                from.toString()));
    }

    private static Double number(ResultSet row, String column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? null : value;
    }

    @Override
    public void keepWeather(String place, List<WeatherDay> days) {
        attempt(() -> sql.runEach(
                "insert into weather_day (grower, place, day, tmin, tmax, rain, humid_hours, wind_ms) "
                        + "values (?, ?, ?, ?, ?, ?, ?, ?) "
                        + "on conflict (grower, place, day) do update set tmin = excluded.tmin, "
                        + "tmax = excluded.tmax, rain = excluded.rain, humid_hours = excluded.humid_hours, "
                        + "wind_ms = excluded.wind_ms",
                days.stream()
                        .map(day -> new Object[] {
                            grower,
                            place,
                            day.date().toString(),
                            day.tmin(),
                            day.tmax(),
                            day.rain(),
                            day.humidHours(),
                            day.windMs()
                        })
                        .toList()));
    }

    @Override
    public Optional<Normals> normals(String place) {
        return attempt(() -> sql.first(
                "select kept from normals where grower = ? and place = ?",
                row -> Json.normals(row.getString(1)),
                grower,
                place));
    }

    @Override
    public void keepNormals(String place, Normals normals) {
        attempt(() -> sql.run(
                "insert into normals (grower, place, kept) values (?, ?, ?) "
                        + "on conflict (grower, place) do update set kept = excluded.kept",
                grower,
                place,
                Json.of(normals)));
    }

    private <T> T attempt(Supplier<T> step) {
        try {
            return step.get();
        } catch (Sql.Failed e) {
            failed = engine.failure(e);
        } catch (StoreFailure e) {
            failed = e;
        }
        throw failed;
    }
}
