package bothy.reading.calendar;

import bothy.reading.said.DaySaid;
import bothy.reading.said.DaySaid.Sort;
import bothy.reading.said.NumberSaid;
import bothy.reading.text.Token;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** "three weeks ago", "a fortnight back", "in ten days", "three weeks today", "a week last Monday". */
final class CountedDays {
    private static final Map<String, Integer> DAYS = Map.of(
            "day", 1, "days", 1, "week", 7, "weeks", 7, "fortnight", 14, "fortnights", 14, "month", 30, "months", 30);
    private static final Set<String> PAST = Set.of("ago", "back", "since", "earlier", "gone");
    /** "Been drying three weeks": it began then. */
    private static final Set<String> IN_THE_DRY = Set.of("drying", "curing", "cured", "dried");

    private final CalendarWords calendar;
    private final List<Token> tokens;
    private final List<NumberSaid> numbers;
    private final LocalDate today;

    CountedDays(CalendarWords calendar, List<Token> tokens, List<NumberSaid> numbers, LocalDate today) {
        this.calendar = calendar;
        this.tokens = tokens;
        this.numbers = numbers;
        this.today = today;
    }

    List<DaySaid> at(int at) {
        Integer days = DAYS.get(word(at));
        if (days == null) {
            return List.of();
        }
        NumberSaid number = numberBefore(at);
        int start = number != null ? number.start() : at - 1;
        if (number == null && !Set.of("a", "one").contains(word(at - 1))) {
            return List.of();
        }
        double count = number == null ? 1 : number.value();
        if (count < 0 || count > 1000) {
            return List.of();
        }
        return counted(count, days, start, at + 1);
    }

    private List<DaySaid> counted(double count, int days, int start, int end) {
        List<DaySaid> before = weeksBefore(count, days, start, end);
        if (!before.isEmpty()) {
            return before;
        }
        if (PAST.contains(word(end))) {
            int after = Set.of("today", "now").contains(word(end + 1)) ? end + 2 : end + 1;
            return weekdayAgo(before(count, days), start, after);
        }
        if ((word(end).equals("today")
                        || word(end).equals("tomorrow")
                        || word(end).equals("yesterday"))
                && days >= 7) {
            return weeksToday(count, days, start, end);
        }
        if (word(start - 1).equals("for") && goesOn(end)) {
            return List.of(DaySaid.exact(start - 1, word(end).equals("so") ? end + 2 : end + 1, before(count, days)));
        }
        int led = Set.of("for", "about", "nearly", "over").contains(word(start - 1)) ? start - 2 : start - 1;
        if (IN_THE_DRY.contains(word(led)) && days > 1) {
            return List.of(DaySaid.exact(led + 1, end, before(count, days)));
        }
        if (word(start - 1).equals("in")
                || (word(end).equals("from") && Set.of("now", "today").contains(word(end + 1)))) {
            LocalDate day = today.plusDays(Math.round(count * days));
            boolean from = word(end).equals("from");
            return List.of(DaySaid.exact(from ? start : start - 1, from ? end + 2 : end, day));
        }
        return List.of();
    }

    /** "A week last Saturday", "a fortnight past on Monday": so long before the last such day. */
    private List<DaySaid> weeksBefore(double count, int days, int start, int end) {
        boolean past = Set.of("last", "past").contains(word(end)) && (days == 7 || days == 14);
        int at = word(end + 1).equals("on") ? end + 2 : end + 1;
        DayOfWeek weekday = past ? weekday(at) : null;
        if (weekday == null) {
            return List.of();
        }
        LocalDate last = today.with(TemporalAdjusters.previous(weekday));
        return List.of(DaySaid.exact(start, at + 1, last.minusDays(Math.round(count * days))));
    }

    /** "For three days so far", "for a week now": it began then. */
    private boolean goesOn(int end) {
        return Set.of("now", "already").contains(word(end))
                || word(end).equals("so") && word(end + 1).equals("far");
    }

    /** "a week ago Saturday" is the Saturday of that time. */
    private List<DaySaid> weekdayAgo(LocalDate day, int start, int end) {
        int at = Set.of("on", "last").contains(word(end)) ? end + 1 : end;
        DayOfWeek weekday = weekday(at);
        if (weekday == null) {
            return List.of(DaySaid.exact(start, end, day));
        }
        return List.of(DaySaid.exact(start, at + 1, day.with(TemporalAdjusters.previousOrSame(weekday))));
    }

    /** "Three weeks today" lies ahead; of something done it is how long ago it was. */
    private List<DaySaid> weeksToday(double count, int days, int start, int end) {
        int shift = word(end).equals("tomorrow") ? 1 : word(end).equals("yesterday") ? -1 : 0;
        LocalDate from = today.plusDays(shift);
        long away = Math.round(count * days);
        return List.of(new DaySaid(start, end + 1, from.minusDays(away), from.plusDays(away), Sort.EXACT));
    }

    private LocalDate before(double count, int days) {
        if (days == 30 && count == Math.rint(count)) {
            return today.minusMonths(Math.round(count));
        }
        return today.minusDays(Math.round(count * days));
    }

    private DayOfWeek weekday(int at) {
        return at < tokens.size() ? calendar.weekday(tokens.get(at)) : null;
    }

    private NumberSaid numberBefore(int at) {
        return numbers.stream()
                .filter(number -> number.end() == at && !number.ordinal())
                .findFirst()
                .orElse(null);
    }

    private String word(int at) {
        return at < 0 || at >= tokens.size() ? "" : tokens.get(at).word();
    }
}
