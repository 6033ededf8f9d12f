package bothy.garden;

/**
 * A setting that the grower told. Names and values: {@code zone} (IANA zone id), {@code latitude}, {@code longitude} (degrees),
 * {@code lastSpringFrost}, {@code firstAutumnFrost} (MM-DD), {@code units} ("metric", "us"), {@code soil} ("sand", "loam", "clay" …),
 * {@code frosts} ("frost-free"), {@code climate} (a word of {@link Climate}),
 * {@code dates} ("day-first", "month-first"); and when to say something unasked: {@code reminders} ("all", "weekly", "none"),
 * {@code listDay} ("sunday"), {@code listTime} (HH:MM), {@code quiet} ("21:00-07:00"), {@code awayUntil} (ISO date); and of what to
 * remind: {@code remindOn} (ISO date), and behind it {@code remindAt} (HH:MM), {@code remindEvery} (days), {@code remindOf} (the grower's
 * words); {@code remindNoMore} (words of those that are called off, empty for all).
 *
 * @param setting name of the setting
 * @param value its value in the form above
 */
public record SettingChange(String setting, String value) implements Entry {}
