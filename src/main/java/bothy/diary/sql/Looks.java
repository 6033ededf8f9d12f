package bothy.diary.sql;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** When each garden is to be looked at. */
final class Looks {
    private final Engine engine;

    Looks(Engine engine) {
        this.engine = engine;
    }

    List<String> takeDue(Instant now, Instant again, int atMost) {
        return engine.inTransaction(sql -> {
            List<String> due = due(sql, now, atMost);
            putOff(sql, due, again);
            return due;
        });
    }

    private List<String> due(Sql sql, Instant now, int atMost) {
        return sql.list(
                "select grower from grower where look_ms <= ? order by look_ms limit ?"
                        + (engine.shared() ? " for update skip locked" : ""),
                row -> row.getString(1),
                now.toEpochMilli(),
                atMost);
    }

    private static void putOff(Sql sql, List<String> growers, Instant again) {
        sql.runEach(
                "update grower set look_ms = ? where grower = ?",
                growers.stream()
                        .map(grower -> new Object[] {again.toEpochMilli(), grower})
                        .toList());
    }

    void bringForward(Instant now) {
        long millis = now.toEpochMilli();
        engine.inTransaction(sql -> sql.run("update grower set look_ms = ? where look_ms > ?", millis, millis));
    }

    Optional<Instant> next(String grower) {
        return engine.reading(sql -> sql.first(
                "select look_ms from grower where grower = ? and look_ms is not null",
                row -> Instant.ofEpochMilli(row.getLong(1)),
                grower));
    }
}
