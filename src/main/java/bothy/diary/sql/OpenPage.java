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
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.statement.PreparedBatch;

/** One grower's page, open for one transaction. */
final class OpenPage implements Page {
    /** A page made by another process begins with another number, so that one that was removed and made again is told apart. */
    private static final long FIRST_VERSION = ThreadLocalRandom.current().nextLong(1L << 40);

    private final String grower;
    private final Handle handle;
    private final Engine engine;
    private final Standing standing;
    private long lastLine;
    private StoreFailure failed;

    /** How a page stands: its last line, and a number that rises with each write. */
    private record Standing(long lastLine, long version) {}

    private OpenPage(String grower, Handle handle, Engine engine, Standing standing) {
        this.grower = grower;
        this.handle = handle;
        this.engine = engine;
        this.standing = standing;
        this.lastLine = standing == null ? 0 : standing.lastLine();
    }

    /** Opens the page for writing and keeps other writers of this grower waiting until the transaction ends. */
    static OpenPage of(String grower, Handle handle, Engine engine) {
        Standing standing = handle.createQuery("insert into grower (grower, version) values (:grower, :first) "
                        + "on conflict (grower) do update set version = grower.version + 1 "
                        + "returning last_line, version")
                .bind("grower", grower)
                .bind("first", FIRST_VERSION)
                .map((row, context) -> standing(row))
                .one();
        return new OpenPage(grower, handle, engine, standing);
    }

    /** The page as it stands, for reading only. */
    static OpenPage asItStands(String grower, Handle handle, Engine engine) {
        Standing standing = handle.createQuery("select last_line, version from grower where grower = :grower")
                .bind("grower", grower)
                .map((row, context) -> standing(row))
                .findFirst()
                .orElse(null);
        return new OpenPage(grower, handle, engine, standing);
    }

    private static Standing standing(ResultSet row) throws SQLException {
        return new Standing(row.getLong("last_line"), row.getLong("version"));
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
        return attempt(() -> lines(grower, handle, engine));
    }

    static List<Logged> lines(String grower, Handle handle, Engine engine) {
        return handle.createQuery(
                        "select number, message, at_ms, entry from diary_line where grower = :grower order by number")
                .bind("grower", grower)
                .map((row, context) -> line(grower, row, engine))
                .list();
    }

    private static Logged line(String grower, ResultSet row, Engine engine) throws SQLException {
        long number = row.getLong("number");
        try {
            Entry entry = Json.entry(row.getString("entry"));
            return new Logged(number, row.getString("message"), Instant.ofEpochMilli(row.getLong("at_ms")), entry);
        } catch (JsonProcessingException e) {
            throw Sentences.unreadableLine(engine.place(), "Line " + number + " of " + grower, e);
        }
    }

    @Override
    public List<Logged> append(String message, Instant at, List<Entry> entries) {
        return attempt(() -> {
            List<Logged> lines = numbered(lastLine, message, at, entries);
            lastLine += lines.size();
            lines.forEach(this::insert);
            handle.createUpdate("update grower set last_line = :last where grower = :grower")
                    .bind("last", lastLine)
                    .bind("grower", grower)
                    .execute();
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

    private void insert(Logged line) {
        handle.createUpdate("insert into diary_line (grower, number, message, at_ms, entry) "
                        + "values (:grower, :number, :message, :at, :entry)")
                .bind("grower", grower)
                .bind("number", line.number())
                .bind("message", line.message())
                .bind("at", line.at().toEpochMilli())
                .bind("entry", Json.of(line.entry()))
                .execute();
    }

    @Override
    public boolean handled(String message) {
        return attempt(() -> handle.createQuery("select 1 from handled where grower = :grower and message = :message")
                .bind("grower", grower)
                .bind("message", message)
                .mapTo(Integer.class)
                .findFirst()
                .isPresent());
    }

    @Override
    public void markHandled(String message, Instant at) {
        attempt(() -> {
            mark(
                    "insert into handled (grower, message, at_ms) values (:grower, :message, :at) on conflict do nothing",
                    message,
                    at);
            return mark(
                    "update inbox set handled_ms = :at where grower = :grower and id = :message and handled_ms is null",
                    message,
                    at);
        });
    }

    private int mark(String statement, String message, Instant at) {
        return handle.createUpdate(statement)
                .bind("grower", grower)
                .bind("message", message)
                .bind("at", at.toEpochMilli())
                .execute();
    }

    @Override
    public Optional<String> state() {
        return attempt(() -> handle.createQuery("select state from grower where grower = :grower and state is not null")
                .bind("grower", grower)
                .mapTo(String.class)
                .findFirst());
    }

    @Override
    public void keepState(String json) {
        attempt(() -> handle.createUpdate("update grower set state = :state where grower = :grower")
                .bind("state", json)
                .bind("grower", grower)
                .execute());
    }

    @Override
    public void lookAgain(Instant moment) {
        attempt(() -> handle.createUpdate("update grower set look_ms = :moment where grower = :grower")
                .bind("moment", moment == null ? null : moment.toEpochMilli())
                .bind("grower", grower)
                .execute());
    }

    @Override
    public void forget() {
        attempt(() -> {
            for (String table : List.of("diary_line", "handled", "inbox", "outbox", "weather_day", "normals")) {
                handle.createUpdate("delete from " + table + " where grower = :grower")
                        .bind("grower", grower)
                        .execute();
            }
            lastLine = 0;
            return handle.createUpdate(
                            "update grower set last_line = 0, state = null, look_ms = null where grower = :grower")
                    .bind("grower", grower)
                    .execute();
        });
    }

    @Override
    public void send(String channel, String chat, Reply reply, Instant at) {
        attempt(() -> handle.createUpdate("insert into outbox (channel, chat, grower, at_ms, reply, buttons) "
                        + "values (:channel, :chat, :grower, :at, :reply, :buttons)")
                .bind("channel", channel)
                .bind("chat", chat)
                .bind("grower", grower)
                .bind("at", at.toEpochMilli())
                .bind("reply", Json.of(reply))
                .bind("buttons", reply.buttons().size())
                .execute());
    }

    @Override
    public List<WeatherDay> weather(String place, LocalDate from) {
        return attempt(() -> handle.createQuery("select day, tmin, tmax, rain, humid_hours, wind_ms from weather_day "
                        + "where grower = :grower and place = :place and day >= :from order by day")
                .bind("grower", grower)
                .bind("place", place)
                .bind("from", from.toString())
                .map((row, context) -> new WeatherDay(
                        LocalDate.parse(row.getString("day")),
                        number(row, "tmin"),
                        number(row, "tmax"),
                        number(row, "rain"),
                        true,
                        number(row, "humid_hours"),
                        number(row, "wind_ms")))
                .list());
    }

    private static Double number(ResultSet row, String column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? null : value;
    }

    @Override
    public void keepWeather(String place, List<WeatherDay> days) {
        attempt(() -> {
            PreparedBatch batch = handle.prepareBatch(
                    "insert into weather_day (grower, place, day, tmin, tmax, rain, humid_hours, wind_ms) "
                            + "values (:grower, :place, :day, :tmin, :tmax, :rain, :humid, :wind) "
                            + "on conflict (grower, place, day) do update set tmin = excluded.tmin, "
                            + "tmax = excluded.tmax, rain = excluded.rain, humid_hours = excluded.humid_hours, "
                            + "wind_ms = excluded.wind_ms");
            days.forEach(day -> batch.bind("grower", grower)
                    .bind("place", place)
                    .bind("day", day.date().toString())
                    .bind("tmin", day.tmin())
                    .bind("tmax", day.tmax())
                    .bind("rain", day.rain())
                    .bind("humid", day.humidHours())
                    .bind("wind", day.windMs())
                    .add());
            return batch.execute().length;
        });
    }

    @Override
    public Optional<Normals> normals(String place) {
        return attempt(() -> handle.createQuery("select kept from normals where grower = :grower and place = :place")
                .bind("grower", grower)
                .bind("place", place)
                .map((row, context) -> Json.normals(row.getString("kept")))
                .findOne());
    }

    @Override
    public void keepNormals(String place, Normals normals) {
        attempt(() -> handle.createUpdate("insert into normals (grower, place, kept) values (:grower, :place, :kept) "
                        + "on conflict (grower, place) do update set kept = excluded.kept")
                .bind("grower", grower)
                .bind("place", place)
                .bind("kept", Json.of(normals))
                .execute());
    }

    private <T> T attempt(Supplier<T> step) {
        try {
            return step.get();
        } catch (JdbiException e) {
            failed = engine.failure(e);
        } catch (StoreFailure e) {
            failed = e;
        }
        throw failed;
    }
}
