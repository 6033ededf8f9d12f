package bothy.reading.calendar;

import bothy.almanac.Words;
import bothy.garden.Grower;
import bothy.reading.said.DaySaid;
import bothy.reading.said.DaySaid.Sort;
import bothy.reading.said.NumberSaid;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.Token;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * Finds the days told in a message. A day without a year has two readings, the last such day up to today and the next one from
 * today; records take the first, plans the second.
 */
public final class Days {
    /** What stands between "today" and the feast that it is. */
    private static final Set<String> NAMING = Set.of(
            "for", "being", "is", "was", ",", "(", "-", "on", "the", "my", "our", "as", "it", "its", "this", "happy");

    private static final int NAMED_SO = 4;

    private final CalendarWords calendar;

    public Days(Words words) {
        calendar = new CalendarWords(words);
    }

    public Set<String> vocabulary() {
        return calendar.vocabulary();
    }

    /** All days of a message in order; none overlaps another. */
    public List<DaySaid> in(List<Token> tokens, List<NumberSaid> numbers, LocalDate today, Grower grower) {
        List<DaySaid> all = new ArrayList<>();
        for (PhraseBook.Found<Integer> found : calendar.days(tokens)) {
            all.add(DaySaid.exact(found.start(), found.end(), today.plusDays(found.meaning())));
        }
        for (PhraseBook.Found<Feast> found : calendar.feasts(tokens)) {
            Feast feast = found.meaning();
            if (found.start() > 0
                    && Set.of("happy", "merry")
                            .contains(tokens.get(found.start() - 1).word())) {
                continue; // "Happy independence day!" is a greeting, in many countries on different days.
            }
            all.add(new DaySaid(found.start(), found.end(), feast.past(today), feast.future(today), Sort.EXACT));
        }
        for (PhraseBook.Found<Sort> found : calendar.unknown(tokens)) {
            if (headline(tokens, found)) {
                continue;
            }
            all.add(DaySaid.without(found.start(), found.end(), found.meaning()));
        }
        WeekdayGrammar weekdays = new WeekdayGrammar(calendar, tokens, today);
        MonthGrammar months = new MonthGrammar(calendar, tokens, today, grower);
        CountedDays counted = new CountedDays(calendar, tokens, numbers, today);
        for (int at = 0; at < tokens.size(); at++) {
            all.addAll(weekdays.at(at));
            all.addAll(months.at(at));
            all.addAll(counted.at(at));
        }
        List<DaySaid> apart = named(tokens, apart(all));
        apart.addAll(same(tokens, apart));
        apart.addAll(nextDay(tokens, apart));
        apart.removeIf(day -> !day.known() && onlyNamesToday(tokens, day, apart, today));
        apart.sort(Comparator.comparingInt(DaySaid::start));
        return apart;
    }

    /** "Bank holiday haul, picked 7 cucumbers": what the message is about, written on the day. */
    private static boolean headline(List<Token> tokens, PhraseBook.Found<Sort> found) {
        return found.start() == 0
                && tokens.get(0).is("bank")
                && found.end() < tokens.size()
                && Set.of("haul", "harvest", "picking", "jobs", "done", "!", ":", ",")
                        .contains(tokens.get(found.end()).word());
    }

    /** "Today for Thanksgiving", "today being my birthday": which day it was is told. */
    private static boolean onlyNamesToday(List<Token> tokens, DaySaid feast, List<DaySaid> days, LocalDate today) {
        return days.stream()
                .filter(day -> day.known() && day.past().equals(today))
                .anyMatch(day -> joined(tokens, day.end(), feast.start()) || joined(tokens, feast.end(), day.start()));
    }

    private static boolean joined(List<Token> tokens, int from, int to) {
        return from <= to
                && to - from <= NAMED_SO
                && tokens.subList(from, to).stream().allMatch(token -> NAMING.contains(token.word()));
    }

    /** "Monday 17th May", "Monday, the 17th of May": one day, which the date tells better than the weekday. */
    private List<DaySaid> named(List<Token> tokens, List<DaySaid> apart) {
        List<DaySaid> named = new ArrayList<>();
        for (DaySaid day : apart) {
            DaySaid last = named.isEmpty() ? null : named.get(named.size() - 1);
            boolean weekday = last != null
                    && day.known()
                    && calendar.weekday(tokens.get(last.end() - 1)) != null
                    && last.end() - last.start() == 1
                    && dated(tokens, day)
                    && (day.start() == last.end()
                            || day.start() == last.end() + 1
                                    && Set.of(",", "the")
                                            .contains(tokens.get(last.end()).word()));
            if (weekday) {
                named.set(named.size() - 1, day.spanning(last.start(), day.end()));
            } else {
                named.add(day);
            }
        }
        return named;
    }

    /** Whether a day is told by its date. */
    private boolean dated(List<Token> tokens, DaySaid day) {
        return tokens.subList(day.start(), day.end()).stream()
                .anyMatch(token -> calendar.month(token) != null || token.sort() == Token.Sort.ORDINAL);
    }

    /** "Lifted them on the 10th and spread them out that evening": the day told before, again. */
    private static List<DaySaid> same(List<Token> tokens, List<DaySaid> told) {
        List<DaySaid> again = new ArrayList<>();
        for (int at = 0; at + 1 < tokens.size(); at++) {
            boolean same = tokens.get(at).is("same")
                    || tokens.get(at).is("that")
                            && at > 0
                            && !tokens.get(at - 1).is("was");
            boolean part = Set.of("day", "evening", "afternoon", "night", "morning")
                    .contains(tokens.get(at + 1).word());
            int start = at;
            DaySaid before = !same || !part
                    ? null
                    : told.stream()
                            .filter(day -> day.end() <= start && day.known())
                            .reduce((first, second) -> second)
                            .orElse(null);
            if (before != null && told.stream().noneMatch(day -> day.covers(start) || day.covers(start + 1))) {
                again.add(before.spanning(start, start + 2));
            }
        }
        return again;
    }

    /** "Corn on the 9th and squash the day after", "the next day": a day from the one told before. */
    private static List<DaySaid> nextDay(List<Token> tokens, List<DaySaid> told) {
        List<DaySaid> next = new ArrayList<>();
        for (int at = 0; at + 1 < tokens.size(); at++) {
            boolean after = tokens.get(at).is("day") && tokens.get(at + 1).is("after")
                    || Set.of("next", "following").contains(tokens.get(at).word())
                            && tokens.get(at + 1).is("day");
            boolean before = tokens.get(at).is("day") && tokens.get(at + 1).is("before");
            int start = at > 0 && tokens.get(at - 1).is("the") ? at - 1 : at;
            int end = at + 2;
            boolean closes = end >= tokens.size()
                    || tokens.get(end).mark()
                    || Set.of("and", "but", "so", "i", "we", "then")
                            .contains(tokens.get(end).word());
            DaySaid base = !after && !before || !closes
                    ? null
                    : told.stream()
                            .filter(day -> day.end() <= start && day.known())
                            .reduce((first, second) -> second)
                            .orElse(null);
            boolean free = told.stream().noneMatch(day -> day.covers(start) || day.covers(end - 1));
            if (base != null && free) {
                next.add(DaySaid.exact(start, end, base.past().plusDays(after ? 1 : -1)));
            }
        }
        return next;
    }

    /** Of days that overlap the longer counts. */
    private static List<DaySaid> apart(List<DaySaid> all) {
        List<DaySaid> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparingInt((DaySaid day) -> day.start() - day.end()));
        List<DaySaid> kept = new ArrayList<>();
        for (DaySaid day : sorted) {
            if (kept.stream().noneMatch(day::overlaps)) {
                kept.add(day);
            }
        }
        kept.sort(Comparator.comparingInt(DaySaid::start));
        return kept;
    }
}
