package bothy.conversation;

import bothy.conversation.Wishes.Mode;
import bothy.garden.Garden;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * When a garden is to be looked at next. A rule may begin to hold on any day, so a garden in which something grows is looked at each
 * morning, in the evening once more where there is weather, and at the hour of its list; one in which nothing grows, or whose grower wants
 * to hear nothing, not at all until the grower writes.
 */
final class NextLook {
    private final Wishes wishes;
    private final boolean weather;
    private final boolean growing;
    private final ZoneId zone;
    private final LocalDateTime now;

    /** @param weather whether there is any weather for this garden */
    NextLook(Garden garden, Instant moment, boolean weather) {
        this.wishes = Wishes.of(garden);
        this.weather = weather;
        this.growing = !garden.growing().isEmpty();
        this.zone = garden.grower().zone();
        this.now = moment.atZone(zone).toLocalDateTime();
    }

    /** {@code null} for not before the grower writes again. A time that the clocks leave out is taken as much later. */
    Instant moment() {
        return candidates().stream()
                .map(this::notWhileAway)
                .filter(time -> time.isAfter(now))
                .min(Comparator.naturalOrder())
                .map(time -> time.atZone(zone).toInstant())
                .orElse(null);
    }

    private List<LocalDateTime> candidates() {
        List<LocalDateTime> times = new ArrayList<>();
        LocalDate today = now.toLocalDate();
        wishes.reminders().forEach(one -> one.nextDue(now, wishes.quietTo()).ifPresent(times::add));
        if (!growing || wishes.mode() == Mode.NONE) {
            return times;
        }
        LocalDate listDay = today.with(TemporalAdjusters.nextOrSame(wishes.listDay()));
        times.add(listDay.atTime(wishes.listTime()));
        times.add(listDay.plusWeeks(1).atTime(wishes.listTime()));
        if (wishes.mode() == Mode.ALL) {
            daily(times, today, wishes.quietTo());
            if (weather) {
                daily(times, today, wishes.lastLook());
            }
        }
        return times;
    }

    private static void daily(List<LocalDateTime> times, LocalDate today, LocalTime at) {
        times.add(today.atTime(at));
        times.add(today.plusDays(1).atTime(at));
    }

    private LocalDateTime notWhileAway(LocalDateTime time) {
        return wishes.awayOn(time.toLocalDate()) ? wishes.awayUntil().atTime(wishes.quietTo()) : time;
    }
}
