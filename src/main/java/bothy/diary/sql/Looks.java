package bothy.diary.sql;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** When each garden is to be looked at. */
final class Looks {
    private final Engine engine;

    Looks(Engine engine) {
        this.engine = engine;
    }

    List<String> takeDue(Instant now, Instant again, int atMost) {
        return engine.inTransaction(handle -> {
            List<String> due = due(handle, now, atMost);
            putOff(handle, due, again);
            return due;
        });
    }

    private List<String> due(Handle handle, Instant now, int atMost) {
        return handle.createQuery("select grower from grower where look_ms <= :now order by look_ms limit :most"
                        + (engine.shared() ? " for update skip locked" : ""))
                .bind("now", now.toEpochMilli())
                .bind("most", atMost)
                .mapTo(String.class)
                .list();
    }

    private static void putOff(Handle handle, List<String> growers, Instant again) {
        if (!growers.isEmpty()) {
            handle.createUpdate("update grower set look_ms = :again where grower in (<growers>)")
                    .bind("again", again.toEpochMilli())
                    .bindList("growers", growers)
                    .execute();
        }
    }

    void bringForward(Instant now) {
        engine.inTransaction(handle -> handle.createUpdate("update grower set look_ms = :now where look_ms > :now")
                .bind("now", now.toEpochMilli())
                .execute());
    }

    Optional<Instant> next(String grower) {
        return engine.reading(handle -> handle.createQuery(
                        "select look_ms from grower where grower = :grower and look_ms is not null")
                .bind("grower", grower)
                .mapTo(Long.class)
                .findFirst()
                .map(Instant::ofEpochMilli));
    }
}
