package bothy.advice.reckoning;

import bothy.advice.reckoned.HarvestTold;
import bothy.garden.Event;
import bothy.garden.Picked;
import bothy.garden.Question;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Adds up the harvest of a planting for whoever looks back on it. */
final class HarvestReckoning {
    private static final String LOOKING_BACK = "next-year";

    private HarvestReckoning() {}

    static Optional<HarvestTold> of(Subject subject) {
        boolean asked = subject.inquiries().stream()
                .anyMatch(inquiry -> inquiry.question() == Question.OTHER && LOOKING_BACK.equals(inquiry.topic()));
        List<Event> picked = subject.events().stream()
                .filter(event -> event.what() == What.HARVESTED)
                .toList();
        if (!asked || picked.isEmpty()) {
            return Optional.empty();
        }
        LocalDate first = picked.get(0).on();
        LocalDate last = picked.get(picked.size() - 1).on();
        Picked all = Picked.in(picked);
        return Optional.of(
                new HarvestTold(subject.id(), all.kg(), all.pieces(), first, last.equals(first) ? null : last));
    }
}
