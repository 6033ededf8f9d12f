package bothy.conversation;

import bothy.conversation.Wishes.Mode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.TemporalAdjusters;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a moment gives occasion for: the list, the morning's look, the evening's look at the weather, a reminder asked for. */
final class Occasions {
    /** A list that was missed, because the program stood still, is made up for within this time. */
    private static final int LATE_DAYS = 2;

    private final Wishes wishes;
    private final Raised raised;
    private final LocalDateTime now;

    Occasions(Wishes wishes, Raised raised, LocalDateTime now) {
        this.wishes = wishes;
        this.raised = raised;
        this.now = now;
    }

    boolean any() {
        return list() || morning() || evening() || reminder();
    }

    boolean list() {
        LocalDate day = lastListDay();
        boolean onTime = day.equals(today());
        boolean late = raised.listedOn() != null && !day.plusDays(LATE_DAYS).isBefore(today()) && !quiet();
        // A list of a day to come was sent by a clock that was ahead; it is no reason to go without until then.
        boolean told = raised.listedOn() != null
                && !raised.listedOn().isBefore(day)
                && !raised.listedOn().isAfter(today());
        return wishes.mode() != Mode.NONE && !away() && !told && (onTime || late);
    }

    private LocalDate lastListDay() {
        LocalDate day = today().with(TemporalAdjusters.previousOrSame(wishes.listDay()));
        return now.isBefore(day.atTime(wishes.listTime())) ? day.minusWeeks(1) : day;
    }

    boolean morning() {
        return wishes.mode() == Mode.ALL && !away() && !quiet() && !today().equals(raised.lookedOn());
    }

    boolean evening() {
        return wishes.mode() == Mode.ALL
                && !away()
                && !quiet()
                && !now.toLocalTime().isBefore(wishes.lastLook())
                && !today().equals(raised.eveningOn());
    }

    boolean reminder() {
        return !reminders().isEmpty();
    }

    /**
     * What to remind of now. It is said even to who else wants to hear nothing, and at an hour of the grower's own choice even when all
     * else is quiet.
     */
    List<Reminder> reminders() {
        return wishes.reminders().stream()
                .filter(one -> one.at() != null || !quiet())
                .filter(one -> one.lastDue(now, wishes.quietTo())
                        .filter(due ->
                                !due.toLocalDate().equals(raised.reminded().get(one.line())))
                        .isPresent())
                .toList();
    }

    /** Notes that these occasions were taken. */
    Raised noted(Raised before) {
        Raised after = before;
        after = list() ? after.listed(today()) : after;
        after = morning() ? after.looked(today()) : after;
        after = evening() ? after.lookedInTheEvening(today()) : after;
        return reminder() ? after.reminded(given()) : after;
    }

    /** The day for which each reminder was given last, with those given now. The hour of mornings may change, the day does not. */
    private Map<Long, LocalDate> given() {
        Map<Long, LocalDate> given = new HashMap<>();
        for (Reminder one : wishes.reminders()) {
            Optional.ofNullable(raised.reminded().get(one.line())).ifPresent(day -> given.put(one.line(), day));
        }
        for (Reminder one : reminders()) {
            one.lastDue(now, wishes.quietTo()).ifPresent(due -> given.put(one.line(), due.toLocalDate()));
        }
        return given;
    }

    LocalDate today() {
        return now.toLocalDate();
    }

    private boolean away() {
        return wishes.awayOn(today());
    }

    private boolean quiet() {
        return wishes.quietAt(now.toLocalTime());
    }
}
