package bothy.reading.calendar;

import bothy.reading.said.DaySaid;
import bothy.reading.said.DaySaid.Sort;
import bothy.reading.text.Token;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Set;

/** "Monday", "last Tuesday", "next Friday", "Tuesday week", "Monday last week", "at the weekend", "last week". */
final class WeekdayGrammar {
    private static final Set<String> ALSO_VERBS = Set.of("sat", "sun", "wed", "mon", "sats");
    private static final Set<String> SITS = Set.of("sat", "sats", "sun");
    private static final Set<String> CONJUNCTIONS =
            Set.of("after", "before", "when", "while", "between", "because", "cos", "so", "but");
    private static final Set<String> PREPOSITIONS =
            Set.of("in", "into", "at", "by", "with", "under", "for", "on", "from", "using");
    private static final Set<String> SEATS = Set.of(
            "on", "in", "under", "down", "there", "by", "at", "here", "outside", "with", "around", "about", "for",
            "waiting");
    /** "Sun scorched so I've rigged a shade": the light. */
    private static final Set<String> SHINES = Set.of(
            "scorched",
            "scorching",
            "burnt",
            "burned",
            "is",
            "was",
            "has",
            "came",
            "beat",
            "beating",
            "baked",
            "baking",
            "shining",
            "shone",
            "hot",
            "blazing",
            "brutal",
            "bleached",
            "finally",
            "went",
            "set",
            "fried",
            "cooked",
            "too",
            "stroke",
            "hat",
            "trap");

    private static final Set<String> BEFORE_DAY =
            Set.of("on", "last", "this", "next", "since", "from", "by", "until", "till", "past", "every", "was", "for");
    private final CalendarWords calendar;
    private final List<Token> tokens;
    private final LocalDate today;

    WeekdayGrammar(CalendarWords calendar, List<Token> tokens, LocalDate today) {
        this.calendar = calendar;
        this.tokens = tokens;
        this.today = today;
    }

    List<DaySaid> at(int at) {
        DayOfWeek day = calendar.weekday(tokens.get(at));
        if (day != null && meantAsDay(at)) {
            return List.of(weekday(day, at));
        }
        if (is(at, "weekend") && !calledOut(at)) {
            return List.of(weekend(at));
        }
        if (is(at, "week") && is(at + 1, "before") && is(at + 2, "last")) {
            return List.of(about(is(at - 1, "the") ? at - 1 : at, at + 3, today.minusDays(14)));
        }
        if (is(at, "week") && is(at + 1, "after") && is(at + 2, "next")) {
            return List.of(about(is(at - 1, "the") ? at - 1 : at, at + 3, today.plusDays(14)));
        }
        if (is(at, "week")
                && !is(at + 1, "of")
                && (is(at - 1, "last") || is(at - 1, "next") || is(at - 1, "this"))
                && !weekdayNear(at)) {
            return List.of(week(at));
        }
        return List.of();
    }

    /** Whether "sat" or "sun" is the day and not the chair or the light. */
    private boolean meantAsDay(int at) {
        Token token = tokens.get(at);
        if (!ALSO_VERBS.contains(token.word())) {
            return true;
        }
        if (Set.of("morning", "afternoon", "evening", "night", "arvo").contains(word(at + 1))) {
            return true;
        }
        if (Set.of("gone", "past").contains(word(at + 1))
                || word(at + 1).equals("just") && Set.of("gone", "past").contains(word(at + 2))) {
            return true;
        }
        if (token.is("sun") && SHINES.contains(word(at + 1))) {
            return false;
        }
        boolean led = at > 0 && BEFORE_DAY.contains(word(at - 1));
        boolean seat = SEATS.contains(word(at + 1)) || is(at - 1, "the") || is(at - 1, "and") && !token.capital();
        boolean alone = at == 0 && (at + 1 == tokens.size() || !seat);
        boolean atEnd = at + 1 == tokens.size() || tokens.get(at + 1).mark();
        return led || goesOn(at) || (!seat && (token.capital() || alone || atEnd || sumsOn(at)));
    }

    /** "Planted the leeks wed after work", "potted 4 on mon in the rain". */
    private boolean goesOn(int at) {
        boolean said = at > 1
                && !is(at, "sun")
                && !Set.of("i", "we", "he", "she", "they", "it", "who").contains(word(at - 1));
        return said
                && (CONJUNCTIONS.contains(word(at + 1))
                        || !SITS.contains(word(at)) && PREPOSITIONS.contains(word(at + 1)));
    }

    /** "1.2 kg sat and 900 g today". */
    private boolean sumsOn(int at) {
        return Set.of("and", "&", "plus").contains(word(at + 1))
                && (word(at + 2).equals("another") || word(at + 2).matches("\\d.*"))
                && !Set.of("i", "we", "he", "she", "they", "it", "just", "who").contains(word(at - 1));
    }

    private DaySaid weekday(DayOfWeek day, int at) {
        LocalDate past = today.with(TemporalAdjusters.previousOrSame(day));
        LocalDate future = today.with(TemporalAdjusters.nextOrSame(day));
        int start = at;
        int end = at + 1;
        while (Set.of("morning", "afternoon", "evening", "night", "arvo", "lunchtime")
                .contains(word(end))) {
            end++;
        }
        if (is(at - 1, "last") || is(at - 1, "past")) {
            start--;
            past = today.with(TemporalAdjusters.previous(day));
            future = past;
        } else if (is(at - 1, "next")) {
            start--;
            future = today.with(TemporalAdjusters.next(day));
            past = future;
        } else if (is(at - 1, "this")) {
            start--;
            past = today.with(TemporalAdjusters.nextOrSame(day));
            past = past.isAfter(today) && past.minusDays(7).isAfter(today.minusDays(7)) ? past.minusDays(7) : past;
        }
        return weeksAway(past, future, day, start, end);
    }

    private DaySaid weeksAway(LocalDate past, LocalDate future, DayOfWeek day, int start, int end) {
        if (is(end, "week") && (is(end + 1, "past") || is(end + 1, "gone") || is(end + 1, "ago"))) {
            return DaySaid.exact(start, end + 2, past.minusDays(7));
        }
        if (is(end, "week") || (is(end, "in") && is(end + 1, "a") && is(end + 2, "week"))) {
            int after = is(end, "week") ? end + 1 : end + 3;
            LocalDate later = today.with(TemporalAdjusters.next(day)).plusDays(7);
            return new DaySaid(start, after, later, later, Sort.EXACT);
        }
        if (is(end, "last") && is(end + 1, "week")) {
            return DaySaid.exact(start, end + 2, inWeek(-1, day));
        }
        if (is(end, "before") && is(end + 1, "last")) {
            return DaySaid.exact(start, end + 2, past.minusDays(7));
        }
        if (is(start - 2, "last") && is(start - 1, "week")) {
            return DaySaid.exact(start - 2, end, inWeek(-1, day));
        }
        if (is(start - 1, "on") && is(start - 2, "week") && is(start - 3, "last")) {
            return DaySaid.exact(start - 3, end, inWeek(-1, day));
        }
        if (is(start - 1, "on") && is(start - 2, "week") && (is(start - 3, "a") || is(start - 3, "one"))) {
            return DaySaid.exact(
                    start - 3, end, today.with(TemporalAdjusters.next(day)).plusDays(7));
        }
        if (is(end, "next") && is(end + 1, "week")) {
            return DaySaid.exact(start, end + 2, inWeek(1, day));
        }
        return new DaySaid(start, end, past, future, Sort.EXACT);
    }

    private LocalDate inWeek(int weeks, DayOfWeek day) {
        return today.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY))
                .plusWeeks(weeks)
                .with(TemporalAdjusters.nextOrSame(day));
    }

    /** "Long weekend done: 4 cucumbers planted yesterday", "Labour weekend! Planted out …": what kind of weekend it is. */
    private boolean calledOut(int at) {
        return at > 0
                && Set.of("long", "labour", "labor", "easter", "busy", "lovely", "great", "holiday", "productive")
                        .contains(word(at - 1))
                && Set.of("done", "!", ":", "haul", "jobs", "job", "over").contains(word(at + 1));
    }

    private DaySaid weekend(int at) {
        int start = at;
        boolean last = is(at - 1, "last");
        boolean next = is(at - 1, "next");
        while (start > 0 && Set.of("the", "at", "last", "next", "this", "over").contains(word(start - 1))) {
            start--;
        }
        LocalDate past = today.with(TemporalAdjusters.previousOrSame(DayOfWeek.SATURDAY));
        if (last && today.getDayOfWeek().getValue() >= 6) {
            past = past.minusDays(7);
        }
        LocalDate future = today.with(TemporalAdjusters.nextOrSame(DayOfWeek.SATURDAY));
        if (is(at + 1, "before") && is(at + 2, "last")) {
            return about(start, at + 3, past.minusDays(7));
        }
        return new DaySaid(start, at + 1, next ? future : past, last ? past : future, Sort.ABOUT);
    }

    private DaySaid week(int at) {
        if (is(at - 1, "last")) {
            return about(at - 1, is(at + 1, "sometime") ? at + 2 : at + 1, today.minusDays(7));
        }
        return about(at - 1, at + 1, is(at - 1, "next") ? today.plusDays(7) : today);
    }

    private static DaySaid about(int start, int end, LocalDate day) {
        return new DaySaid(start, end, day, day, Sort.ABOUT);
    }

    private boolean weekdayNear(int at) {
        return near(at - 2) || near(at + 1) || (is(at + 1, "on") && near(at + 2));
    }

    private boolean near(int at) {
        return at >= 0 && at < tokens.size() && calendar.weekday(tokens.get(at)) != null;
    }

    private boolean is(int at, String word) {
        return word(at).equals(word);
    }

    private String word(int at) {
        return at < 0 || at >= tokens.size() ? "" : tokens.get(at).word();
    }
}
