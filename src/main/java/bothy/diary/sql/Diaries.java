package bothy.diary.sql;

import bothy.diary.Page;
import bothy.diary.Store;
import bothy.garden.Incoming;
import bothy.garden.Logged;
import bothy.garden.Outgoing;
import bothy.garden.Sent;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The store over one engine: the pages, and the post in its two boxes. */
final class Diaries implements Store {
    private static final Logger LOG = LoggerFactory.getLogger(Diaries.class);

    private final Engine engine;
    private final Hold hold = new Hold();
    private final Pages pages;
    private final Inbox inbox;
    private final Outbox outbox;
    private final Looks looks;
    private final Moves moves;

    Diaries(Engine engine) {
        this.engine = engine;
        this.pages = new Pages(engine);
        this.inbox = new Inbox(engine, hold);
        this.outbox = new Outbox(engine, hold);
        this.looks = new Looks(engine);
        this.moves = new Moves(engine);
    }

    @Override
    public <T> T write(String grower, Function<Page, T> work) {
        return pages.write(grower, work);
    }

    @Override
    public List<Logged> lines(String grower) {
        return engine.reading(sql -> OpenPage.lines(grower, sql, engine));
    }

    @Override
    public List<String> takeDue(Instant now, Instant again, int atMost) {
        return looks.takeDue(now, again, atMost);
    }

    @Override
    public void bringForward(Instant now) {
        looks.bringForward(now);
    }

    @Override
    public Optional<Instant> nextLook(String grower) {
        return looks.next(grower);
    }

    @Override
    public void clearPost(Instant before) {
        inbox.clear(before);
        outbox.clear(before);
        engine.inTransaction(sql -> {
            sql.run("delete from handled where at_ms < ?", before.toEpochMilli());
            return sql.run("delete from grower where last_line = 0 and state is null and look_ms is null "
                    + "and not exists (select 1 from handled h where h.grower = grower.grower) "
                    + "and not exists (select 1 from weather_day w where w.grower = grower.grower) "
                    + "and not exists (select 1 from normals n where n.grower = grower.grower)");
        });
    }

    @Override
    public Waiting waiting(Instant now) {
        return engine.reading(sql -> sql.first(
                        "select (select count(*) from inbox where handled_ms is null) as letters, "
                                + "(select count(*) from outbox where outcome is null) as replies, "
                                + "(select count(*) from grower where look_ms <= ?) as looks, "
                                + "(select count(*) from grower where last_line > 0) as growers",
                        row -> new Waiting(
                                row.getLong("letters"),
                                row.getLong("replies"),
                                row.getLong("looks"),
                                row.getLong("growers")),
                        now.toEpochMilli())
                .orElseThrow());
    }

    @Override
    public Optional<String> lookThrough() {
        return engine.lookThrough();
    }

    @Override
    public List<String> growers() {
        return engine.reading(sql ->
                sql.list("select grower from grower where last_line > 0 order by grower", row -> row.getString(1)));
    }

    @Override
    public int receive(List<Incoming> incoming) {
        return inbox.receive(incoming);
    }

    @Override
    public List<Incoming> unhandled(String channel, int atMost) {
        return inbox.unhandled(channel, atMost);
    }

    @Override
    public void setAside(String channel, String id, Instant at) {
        inbox.setAside(channel, id, at);
    }

    @Override
    public List<Outgoing> toSend(String channel, Instant now, int atMost) {
        return outbox.toSend(channel, now, atMost);
    }

    @Override
    public Optional<Outgoing> lastWithButtons(String channel, String chat) {
        return outbox.lastWithButtons(channel, chat);
    }

    @Override
    public void sent(List<Sent> replies) {
        outbox.sent(replies);
    }

    @Override
    public void putOff(long number, Instant now, Instant until, String why) {
        outbox.putOff(number, now, until, why);
    }

    @Override
    public void moved(String channel, String from, String to) {
        moves.move(channel, from, to);
    }

    @Override
    public void giveUp(long number, String why) {
        outbox.giveUp(number, why);
    }

    @Override
    public void close() {
        letGo();
        engine.close();
    }

    private void letGo() {
        try {
            if (engine.shared()) {
                engine.inTransaction(sql -> {
                    hold.release(sql);
                    return null;
                });
            }
        } catch (RuntimeException e) {
            // The others wait for what this process had until its time is over.
            LOG.warn("What was taken up could not be given back: {}", e.getMessage());
        }
    }
}
