package bothy.reading.told;

import bothy.garden.Event;
import bothy.garden.What;
import bothy.reading.said.Clause;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** "Sown 6 courgettes in pots today, they are in the porch": where they were sown, and nothing was carried there. */
final class StandsWhereBegun {
    private static final Set<What> BEGINNING = Set.of(What.SOWN, What.PRICKED_OUT, What.POTTED_ON);

    private StandsWhereBegun() {}

    /** What a clause tells, without the places of what was begun on the same day, which {@code before} then has. */
    static List<Told> without(Clause clause, List<Told> now, List<Told> before) {
        if (clause.action().form() != null || !clause.crops().isEmpty()) {
            return now;
        }
        List<Told> others = new ArrayList<>(now);
        for (Told stands : now) {
            for (int i = 0; i < before.size(); i++) {
                Event begun = before.get(i).event();
                if (stands.event().what() == What.MOVED && sameLot(begun, stands.event())) {
                    String place = begun.place() == null ? stands.event().place() : begun.place();
                    before.set(i, before.get(i).with(begun.withPlace(place, begun.container())));
                    others.remove(stands);
                }
            }
        }
        return others;
    }

    private static boolean sameLot(Event begun, Event stands) {
        return BEGINNING.contains(begun.what())
                && begun.crop() != null
                && begun.crop().equals(stands.crop())
                && Objects.equals(begun.on(), stands.on());
    }
}
