package bothy.conversation;

import bothy.conversation.Wishes.Mode;
import bothy.garden.Logged;
import bothy.garden.SettingChange;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** The reminders of a diary, from the settings that tell them, one after the other. */
final class RemindersTold {
    private final ZoneId zone;
    private final List<Reminder> reminders = new ArrayList<>();

    RemindersTold(ZoneId zone) {
        this.zone = zone;
    }

    List<Reminder> all() {
        return List.copyOf(reminders);
    }

    /** Takes the next setting; hour, interval and words belong to the day before them. */
    void take(Logged line, SettingChange change) {
        String value = change.value();
        switch (change.setting()) {
            case "remindOn" -> {
                LocalDate on = Wishes.read(value, LocalDate::parse, null);
                if (on != null) {
                    reminders.add(new Reminder(
                            line.number(), line.at().atZone(zone).toLocalDateTime(), on, null, null, null));
                }
            }
            case "remindAt" -> last(one -> one.at(Wishes.read(value, LocalTime::parse, null)));
            case "remindEvery" ->
                last(one -> value.matches("[1-9]\\d{0,2}") ? one.every(Integer.parseInt(value)) : one);
            case "remindOf" -> last(one -> one.of(value));
            case "remindNoMore" -> callOff(value);
            case "reminders" -> {
                if (value.equals(Mode.NONE.name().toLowerCase(Locale.ROOT))) {
                    // What was asked for once is still said; what comes back again and again is what is meant to end.
                    reminders.removeIf(Reminder::recurs);
                }
            }
            default -> {
                // of something else
            }
        }
    }

    private void last(UnaryOperator<Reminder> more) {
        if (!reminders.isEmpty()) {
            reminders.set(reminders.size() - 1, more.apply(reminders.get(reminders.size() - 1)));
        }
    }

    /** Those that share a word with what is called off; where none does, those that come again and again. */
    private void callOff(String words) {
        if (!reminders.removeIf(one -> one.isOf(words))) {
            reminders.removeIf(Reminder::recurs);
        }
    }
}
