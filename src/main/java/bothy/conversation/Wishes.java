package bothy.conversation;

import bothy.garden.Garden;
import bothy.garden.Logged;
import bothy.garden.SettingChange;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/**
 * When a grower wants to hear something unasked, from the settings told.
 *
 * @param mode whether at all
 * @param listDay the day of the weekly list
 * @param listTime when it comes on that day
 * @param quietFrom nothing unasked later than this in the evening
 * @param quietTo nor earlier than this in the morning; also when the day's look is taken
 * @param awayUntil nothing before this day, {@code null} when not away
 * @param reminders what to be reminded of, as they were asked for
 */
record Wishes(
        Mode mode,
        DayOfWeek listDay,
        LocalTime listTime,
        LocalTime quietFrom,
        LocalTime quietTo,
        LocalDate awayUntil,
        List<Reminder> reminders) {

    /** How much to say unasked. */
    enum Mode {
        ALL,
        WEEKLY,
        NONE
    }

    private static final LocalTime MORNING = LocalTime.of(8, 0);
    private static final LocalTime EVENING = LocalTime.of(20, 0);
    /** When the sky is looked at once more; most frosts of the night are sure by then and there is light to cover plants. */
    private static final LocalTime LAST_LOOK = LocalTime.of(18, 30);

    static Wishes of(Garden garden) {
        Map<String, String> told = new HashMap<>();
        RemindersTold reminders = new RemindersTold(garden.grower().zone());
        for (Logged line : garden.standing()) {
            if (line.entry() instanceof SettingChange change) {
                told.put(change.setting(), change.value());
                reminders.take(line, change);
            }
        }
        String[] quiet = told.getOrDefault("quiet", EVENING + "-" + MORNING).split("-", 2);
        LocalTime from = read(quiet[0], LocalTime::parse, EVENING);
        LocalTime to = read(quiet.length < 2 ? null : quiet[1], LocalTime::parse, MORNING);
        return new Wishes(
                read(told.get("reminders"), value -> Mode.valueOf(value.toUpperCase(Locale.ROOT)), Mode.ALL),
                read(
                        told.get("listDay"),
                        value -> DayOfWeek.valueOf(value.toUpperCase(Locale.ROOT)),
                        DayOfWeek.SATURDAY),
                read(told.get("listTime"), LocalTime::parse, to),
                to.isBefore(from) ? from : LocalTime.MAX,
                to.isBefore(from) ? to : MORNING,
                read(told.get("awayUntil"), LocalDate::parse, null),
                reminders.all());
    }

    static <T> T read(String value, Function<String, T> reading, T otherwise) {
        try {
            return value == null ? otherwise : reading.apply(value);
        } catch (DateTimeException | IllegalArgumentException unreadable) {
            return otherwise;
        }
    }

    boolean quietAt(LocalTime time) {
        return time.isBefore(quietTo) || time.isAfter(quietFrom);
    }

    boolean awayOn(LocalDate day) {
        return awayUntil != null && day.isBefore(awayUntil);
    }

    /** When the weather is looked at a second time. */
    LocalTime lastLook() {
        LocalTime hourBefore = quietFrom.minusHours(1);
        return hourBefore.isBefore(LAST_LOOK) && hourBefore.isAfter(quietTo) ? hourBefore : LAST_LOOK;
    }
}
