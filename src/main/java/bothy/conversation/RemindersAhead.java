package bothy.conversation;

import bothy.garden.Heard;
import bothy.garden.SettingChange;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/** A reminder for an hour that is past already is given on the next day: "remind me today", said at noon, or a "not yet" of yesterday's. */
final class RemindersAhead {
    private final LocalDateTime now;
    private final LocalTime morning;

    /** @param morning the hour of reminders for which none is told */
    RemindersAhead(LocalDateTime now, LocalTime morning) {
        this.now = now;
        this.morning = morning;
    }

    Heard settled(Heard heard) {
        List<SettingChange> told = heard.settings();
        List<SettingChange> ahead = new ArrayList<>();
        for (int at = 0; at < told.size(); at++) {
            SettingChange change = told.get(at);
            boolean hour = at + 1 < told.size() && told.get(at + 1).setting().equals("remindAt");
            ahead.add(
                    change.setting().equals("remindOn")
                            ? ahead(
                                    change,
                                    hour ? LocalTime.parse(told.get(at + 1).value()) : morning)
                            : change);
        }
        return heard.with(ahead);
    }

    private SettingChange ahead(SettingChange day, LocalTime hour) {
        LocalDate told = LocalDate.parse(day.value());
        boolean past = !told.atTime(hour).isAfter(now);
        return past
                ? new SettingChange(day.setting(), now.toLocalDate().plusDays(1).toString())
                : day;
    }
}
