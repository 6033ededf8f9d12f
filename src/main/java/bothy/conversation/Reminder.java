package bothy.conversation;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a grower asked to be reminded of.
 *
 * @param line number of the diary's line that asks for it
 * @param told when it was asked for, in the grower's time
 * @param on the day, the first of them where it recurs
 * @param at the hour, {@code null} for the hour of the morning's look
 * @param everyDays how many days lie between two of them, {@code null} for once
 * @param of what is to be done, in the grower's words, {@code null} for what was said last
 */
record Reminder(long line, LocalDateTime told, LocalDate on, LocalTime at, Integer everyDays, String of) {
    private static final int LEAST_LETTERS = 4;

    Reminder at(LocalTime hour) {
        return new Reminder(line, told, on, hour, everyDays, of);
    }

    Reminder every(int days) {
        return new Reminder(line, told, on, at, days, of);
    }

    Reminder of(String words) {
        return new Reminder(line, told, on, at, everyDays, words);
    }

    boolean recurs() {
        return everyDays != null;
    }

    /**
     * The last moment up to now at which it was due.
     *
     * @param morning the hour where none was told
     */
    Optional<LocalDateTime> lastDue(LocalDateTime now, LocalTime morning) {
        LocalTime hour = at == null ? morning : at;
        LocalDate day = now.toLocalTime().isBefore(hour) ? now.toLocalDate().minusDays(1) : now.toLocalDate();
        if (day.isBefore(on)) {
            return Optional.empty();
        }
        long past = recurs() ? (day.toEpochDay() - on.toEpochDay()) % everyDays : day.toEpochDay() - on.toEpochDay();
        return Optional.of(day.minusDays(past).atTime(hour)).filter(due -> due.isAfter(told));
    }

    /** The first moment after now at which it is due; empty when there is none. */
    Optional<LocalDateTime> nextDue(LocalDateTime now, LocalTime morning) {
        LocalTime hour = at == null ? morning : at;
        LocalDateTime due = on.atTime(hour);
        if (recurs() && !due.isAfter(now)) {
            long past = now.toLocalDate().toEpochDay() - on.toEpochDay();
            due = due.plusDays(past / everyDays * everyDays);
            due = due.isAfter(now) ? due : due.plusDays(everyDays);
        }
        return Optional.of(due).filter(next -> next.isAfter(now));
    }

    /** Whether words that call something off ("stop reminding me to water") mean this one. */
    boolean isOf(String words) {
        Set<String> named = longWords(words);
        return named.isEmpty() || of != null && longWords(of).stream().anyMatch(named::contains);
    }

    private static Set<String> longWords(String words) {
        return Arrays.stream(words.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
                .filter(word -> word.length() >= LEAST_LETTERS)
                .map(word -> word.replaceAll("(ing|s)$", ""))
                .collect(Collectors.toSet());
    }
}
