package bothy.reading.calendar;

import bothy.garden.Grower;
import bothy.reading.said.DaySaid;
import bothy.reading.said.DaySaid.Sort;
import bothy.reading.text.Token;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.YearMonth;
import java.time.temporal.IsoFields;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** "3rd April", "April 3", "the 3rd", "start of May", "in March", "2027-04-03", "3/4", "week 20", "the last frost". */
final class MonthGrammar {
    /** "1/2 the bed"; "5/17 the gauge showed" is a day. */
    private static final int LARGEST_SHARE = 10;

    /** What may happen: behind these "may" is no month. */
    private static final String[] DOING = {
        "live", "be", "have", "not", "well", "yet", "come", "survive", "recover", "make", "need", "go", "pull", "die",
        "take", "get"
    };

    /** What was done right before a bare day of the month: "sown 3rd". */
    private static final String[] DONE = {
        "sown", "sowed", "up", "planted", "out", "in", "picked", "emerged", "germinated", "watered", "fed", "harvested"
    };

    private static final Set<String> LEADING = Set.of(
            "in",
            "of",
            "start",
            "mid",
            "middle",
            "early",
            "late",
            "end",
            "beginning",
            "this",
            "last",
            "next",
            "since",
            "by",
            "until",
            "till",
            "from",
            "during",
            "around",
            "about",
            "back");
    private final CalendarWords calendar;
    private final List<Token> tokens;
    private final LocalDate today;
    private final Grower grower;

    MonthGrammar(CalendarWords calendar, List<Token> tokens, LocalDate today, Grower grower) {
        this.calendar = calendar;
        this.tokens = tokens;
        this.today = today;
        this.grower = grower;
    }

    List<DaySaid> at(int at) {
        Token token = tokens.get(at);
        if (token.sort() == Token.Sort.FIGURES) {
            return figures(token.word(), at);
        }
        Integer month = calendar.month(token);
        if (month != null) {
            return named(month, at);
        }
        if (token.sort() == Token.Sort.ORDINAL) {
            return ofThisMonth((int) token.number(), at);
        }
        if (token.is("week") && at + 1 < tokens.size() && number(at + 1) && !isAny(at - 1, "every", "per", "a")) {
            return calendarWeek((int) tokens.get(at + 1).number(), at);
        }
        return token.is("frost") ? frost(at) : List.of();
    }

    private List<DaySaid> figures(String written, int at) {
        String[] parts = written.split("[-/.]");
        int[] number = new int[parts.length];
        for (int i = 0; i < parts.length; i++) {
            number[i] = Integer.parseInt(parts[i]);
        }
        if (parts[0].length() == 4) {
            return List.of(dated(number[0], number[1], number[2], at, at + 1));
        }
        boolean share = isAny(at + 1, "the") && number[0] < number[1] && number[1] <= LARGEST_SHARE;
        if (parts.length == 2
                && (share || afterwardsUnit(at))
                && !isAny(at - 1, "sown", "sowed", "planted", "started", "since")) {
            return List.of();
        }
        boolean monthFirst =
                grower.monthFirst() && !(parts.length == 2 && written.contains(".")) ? number[0] <= 12 : number[1] > 12;
        int month = number[monthFirst ? 0 : 1];
        int day = number[monthFirst ? 1 : 0];
        if (parts.length == 2) {
            return List.of(yearless(month, day, at, at + 1));
        }
        return List.of(dated(number[2] < 100 ? 2000 + number[2] : number[2], month, day, at, at + 1));
    }

    private boolean afterwardsUnit(int at) {
        return isAny(
                        at + 1, "kg", "lb", "l", "litre", "pint", "inch", "tray", "of", "cup", "a", "full", "bucket",
                        "m", "are", "were", "have", "seeds", "gallon", "up")
                || isAny(at - 1, "about", "only") && isAny(at + 1, "of");
    }

    private List<DaySaid> named(int month, int at) {
        boolean numberAfter = number(at + 1) && tokens.get(at + 1).number() <= 31 && !count(at + 1);
        if (tokens.get(at).is("may") && !ordinal(at - 1) && isAny(at + 1, DOING)) {
            return List.of(); // "2 may live".
        }
        boolean numberBefore = number(at - 1) || (isAny(at - 1, "of") && number(at - 2));
        if (!numberAfter && !numberBefore && doubtful(at)) {
            return List.of();
        }
        if (numberBefore) {
            int start = number(at - 1) ? at - 1 : at - 2;
            return withYear(
                    month, (int) tokens.get(start).number(), isAny(start - 1, "the") ? start - 1 : start, at + 1);
        }
        if (numberAfter) {
            return withYear(month, (int) tokens.get(at + 1).number(), at, at + 2);
        }
        if (isAny(at + 1, "the") && ordinal(at + 2)) {
            return withYear(month, (int) tokens.get(at + 2).number(), at, at + 3);
        }
        return partOfMonth(month, at);
    }

    /** "may" asks and "march" walks unless a word of time leads it. */
    private boolean doubtful(int at) {
        Token token = tokens.get(at);
        boolean ambiguous =
                Set.of("may", "march", "mar", "jan", "dec", "sep", "jun").contains(token.word());
        boolean led = at > 0 && LEADING.contains(tokens.get(at - 1).word());
        return ambiguous && !led && !(token.is("march") && token.capital() && at > 0);
    }

    /** Whether a number after a month is the start of a new thought: "in May 6 came up". */
    private boolean count(int at) {
        return !ordinal(at)
                && at + 1 < tokens.size()
                && tokens.get(at + 1).aWord()
                && !isAny(
                        at + 1, "and", "i", "we", "sowed", "sown", "planted", "in", "the", "this", "last", "at", "so",
                        "but", "they", "it")
                && isAny(at - 2, "in");
    }

    private List<DaySaid> withYear(int month, int day, int start, int end) {
        int yearAt = isAny(end, ",") ? end + 1 : end;
        if (number(yearAt)
                && !ordinal(yearAt)
                && tokens.get(yearAt).number() >= 1990
                && tokens.get(yearAt).number() < 2200) {
            return List.of(dated((int) tokens.get(yearAt).number(), month, day, start, yearAt + 1));
        }
        if (isAny(start - 1, "last") && !isAny(start - 2, "the")) {
            return List.of(inThePast(month, day, start - 1, end)); // "Last October 15".
        }
        if (isAny(end, "last") && isAny(end + 1, "year")) {
            return List.of(dated(today.getYear() - 1, month, day, start, end + 2));
        }
        return List.of(yearless(month, day, start, end));
    }

    /** The latest such day that is over. */
    private DaySaid inThePast(int month, int day, int start, int end) {
        boolean later = month > today.getMonthValue() || month == today.getMonthValue() && day > today.getDayOfMonth();
        return dated(later ? today.getYear() - 1 : today.getYear(), month, day, start, end);
    }

    private List<DaySaid> partOfMonth(int month, int at) {
        int day = 0;
        int start = at;
        int before = isAny(at - 1, "of", "in") ? at - 2 : at - 1;
        if (isAny(before, "start", "beginning", "first")) {
            day = 1;
        } else if (isAny(before, "early")) {
            day = 5;
        } else if (isAny(before, "mid", "middle")) {
            day = 15;
        } else if (isAny(before, "late")) {
            day = 25;
        } else if (isAny(before, "end")) {
            day = YearMonth.of(today.getYear(), month).lengthOfMonth();
        } else if (isAny(before, "week") && isAny(before - 1, "first", "second", "third", "last")) {
            day = isAny(before - 1, "first")
                    ? 1
                    : isAny(before - 1, "second") ? 8 : isAny(before - 1, "third") ? 15 : 24;
            before--;
        }
        if (day > 0) {
            start = isAny(before - 1, "the", "around", "about") ? before - 1 : before;
            return List.of(yearless(month, day, start, at + 1).as(Sort.ABOUT));
        }
        DaySaid middle = yearless(month, 15, isAny(at - 1, "in") ? at - 1 : at, at + 1);
        return List.of(DaySaid.without(middle.start(), middle.end(), Sort.UNKNOWN));
    }

    private List<DaySaid> ofThisMonth(int day, int at) {
        boolean led = isAny(at - 1, "the", "on", "since", "from", "by") || at == 0 || isAny(at - 1, DONE);
        boolean followed = isAny(at + 1, "of") && at + 2 < tokens.size() && calendar.month(tokens.get(at + 2)) != null;
        boolean ofThis = isAny(at + 1, "of") && isAny(at + 2, "this", "last") && isAny(at + 3, "month");
        boolean bareOn = isAny(at - 1, "on") && !calendar.numbered(word(at + 1)); // "Coriander on 15th only".
        boolean closes = at + 1 == tokens.size()
                || bareOn
                || tokens.get(at + 1).mark()
                || isAny(at - 2, "on", "since", "from", "by", "was")
                || isAny(at + 1, "i", "we", "and", "but", "so", "when");
        boolean heads = heads(at) && listed(at) || behindItsCrop(at);
        boolean alone = closesLine(at) || onItsWeekday(day, at);
        if (followed || !heads && !alone && (!led || !closes && !ofThis)) {
            return List.of();
        }
        if (day > 31) {
            return List.of(DaySaid.without(at, at + 1, Sort.IMPOSSIBLE));
        }
        int start = isAny(at - 1, "the") ? at - 1 : at;
        Integer month = heads ? monthBefore(at) : null;
        if (month != null) {
            return List.of(yearless(month, day, start, at + 1));
        }
        LocalDate past = dayOfMonth(YearMonth.from(today), day);
        if (past == null || past.isAfter(today) || (ofThis && isAny(at + 2, "last"))) {
            past = dayOfMonth(YearMonth.from(today).minusMonths(1), day);
        }
        LocalDate future = dayOfMonth(YearMonth.from(today), day);
        if (future == null || future.isBefore(today)) {
            future = dayOfMonth(YearMonth.from(today).plusMonths(1), day);
        }
        if (past == null) {
            return List.of(DaySaid.without(start, at + 1, Sort.IMPOSSIBLE));
        }
        return List.of(new DaySaid(start, ofThis ? at + 4 : at + 1, past, future == null ? past : future, Sort.EXACT));
    }

    /** "5th sowed radish." stands where a line or a clause begins. */
    private boolean heads(int at) {
        boolean begins = at == 0 || tokens.get(at - 1).endsSentence() || isAny(at - 1, ",", ";", "-");
        boolean counts = at + 1 < tokens.size()
                && (tokens.get(at + 1).mark() && !isAny(at + 1, ":", "-", ",")
                        || (calendar.numbered(word(at + 1)) || isAny(at + 1, "and", "or", "of"))
                                && !(isAny(at + 1, "frost")
                                        && tokens.size() > at + 2
                                        && tokens.get(at + 2).mark()));
        return begins && at + 1 < tokens.size() && !counts;
    }

    /** "First flowers open, 16th": behind a mark and with nothing after it. */
    private boolean closesLine(int at) {
        return at > 1
                && isAny(at - 1, ",", "-", ":", "(")
                && !ordinal(at - 2)
                && (at + 1 == tokens.size() || tokens.get(at + 1).endsSentence() || isAny(at + 1, ")"));
    }

    /** "Sunday 9th and Monday 10th": the weekday that such a day of the month falls on tells that it is one. */
    private boolean onItsWeekday(int day, int at) {
        int before = isAny(at - 1, "the", ",") ? at - 2 : at - 1;
        DayOfWeek weekday = before < 0 ? null : calendar.weekday(tokens.get(before));
        return weekday != null
                && IntStream.rangeClosed(-1, 1)
                        .mapToObj(month -> dayOfMonth(YearMonth.from(today).plusMonths(month), day))
                        .anyMatch(date -> date != null && date.getDayOfWeek() == weekday);
    }

    /** "Peas 3rd, radish 5th": each day behind what it is told of. */
    private boolean behindItsCrop(int at) {
        return closesItem(at) && IntStream.range(0, tokens.size()).anyMatch(other -> other != at && closesItem(other));
    }

    private boolean closesItem(int at) {
        return ordinal(at)
                && at > 0
                && tokens.get(at - 1).aWord()
                && !isAny(at - 1, "the", "my", "our", "a", "came", "come", "in", "and", "or", "to", "was", "is", "for")
                && calendar.month(tokens.get(at - 1)) == null
                && (at + 1 == tokens.size() || tokens.get(at + 1).mark());
    }

    /** Whether other lines begin with a day too, or a month was told before. */
    private boolean listed(int at) {
        if (monthBefore(at) != null) {
            return true;
        }
        for (int other = 0; other < tokens.size(); other++) {
            if (other != at && ordinal(other) && heads(other)) {
                return true;
            }
        }
        return false;
    }

    private Integer monthBefore(int at) {
        for (int before = at - 1; before >= 0; before--) {
            Integer month = calendar.month(tokens.get(before));
            if (month != null && !doubtful(before) || month != null && (ordinal(before - 1) || ordinal(before + 1))) {
                return month;
            }
        }
        return null;
    }

    private List<DaySaid> calendarWeek(int week, int at) {
        if (week < 1 || week > 53) {
            return List.of();
        }
        LocalDate monday = LocalDate.of(today.getYear(), 1, 4)
                .with(DayOfWeek.MONDAY)
                .with(IsoFields.WEEK_OF_WEEK_BASED_YEAR, Math.min(week, 52));
        LocalDate past = monday.isAfter(today) ? monday.minusWeeks(52) : monday;
        LocalDate future = monday.isBefore(today.minusDays(6)) ? monday.plusWeeks(52) : monday;
        return List.of(new DaySaid(at, at + 2, past, future, Sort.ABOUT));
    }

    private List<DaySaid> frost(int at) {
        boolean last = isAny(at - 1, "last");
        boolean first = isAny(at - 1, "first");
        MonthDay usual = last ? grower.lastSpringFrost() : first ? grower.firstAutumnFrost() : null;
        boolean asDate = isAny(at - 2, "before", "after", "since", "at", "around", "until", "by", "the")
                && (isAny(at - 3, "before", "after", "since", "at", "around", "until", "by") || !isAny(at - 2, "the"));
        if (!asDate || (!last && !first)) {
            return List.of();
        }
        if (usual == null) {
            return List.of(DaySaid.without(at - 1, at + 1, Sort.UNKNOWN));
        }
        return List.of(yearless(usual.getMonthValue(), usual.getDayOfMonth(), at - 1, at + 1)
                .as(Sort.ABOUT));
    }

    private DaySaid dated(int year, int month, int day, int start, int end) {
        LocalDate date = date(year, month, day);
        return date == null
                ? DaySaid.without(start, end, Sort.IMPOSSIBLE)
                : new DaySaid(start, end, date, date, Sort.YEARLY);
    }

    private DaySaid yearless(int month, int day, int start, int end) {
        LocalDate here = date(today.getYear(), month, day);
        LocalDate before = date(today.getYear() - 1, month, day);
        LocalDate after = date(today.getYear() + 1, month, day);
        if (here == null) {
            return DaySaid.without(start, end, Sort.IMPOSSIBLE);
        }
        LocalDate past = here.isAfter(today) ? before : here;
        LocalDate future = here.isBefore(today) ? after : here;
        return new DaySaid(start, end, past == null ? here : past, future == null ? here : future, Sort.EXACT);
    }

    private static LocalDate date(int year, int month, int day) {
        try {
            return LocalDate.of(year, month, day);
        } catch (DateTimeException noSuchDay) {
            return null;
        }
    }

    private static LocalDate dayOfMonth(YearMonth month, int day) {
        return month.isValidDay(day) ? month.atDay(day) : null;
    }

    private boolean number(int at) {
        return at >= 0
                && at < tokens.size()
                && tokens.get(at).number() >= 1
                && tokens.get(at).number() == Math.rint(tokens.get(at).number());
    }

    private boolean ordinal(int at) {
        return at >= 0 && at < tokens.size() && tokens.get(at).sort() == Token.Sort.ORDINAL;
    }

    private String word(int at) {
        return at < 0 || at >= tokens.size() ? "" : tokens.get(at).word();
    }

    private boolean isAny(int at, String... words) {
        return at >= 0
                && at < tokens.size()
                && List.of(words).contains(tokens.get(at).word());
    }
}
