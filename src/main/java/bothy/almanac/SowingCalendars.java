package bothy.almanac;

import bothy.garden.Climate;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** When crops are sown where frost does not say it, by climate. From {@code sowing-calendars.yaml}. */
public final class SowingCalendars {
    private static final String FILE = "sowing-calendars.yaml";
    private static final Pattern SPAN =
            Pattern.compile("(?:(\\d{1,2}) )?([A-Z][a-z]{2})-(?:(\\d{1,2}) )?([A-Z][a-z]{2})");
    private static final int HALF_A_YEAR = 6;

    private final Map<String, Map<Climate, Calendar>> crops = new HashMap<>();

    /**
     * A time of the year as in the northern half.
     *
     * @param fromDay day of the month, 1 for its beginning
     * @param toDay day of the month, 31 for its end
     */
    public record Span(int fromDay, Month from, int toDay, Month to) {

        /** Begins in a year; it may end in the next. */
        LocalDate begins(int year, boolean south) {
            LocalDate first = LocalDate.of(year, from, 1).plusMonths(south ? HALF_A_YEAR : 0);
            return first.withDayOfMonth(Math.min(fromDay, first.lengthOfMonth()));
        }

        /** The last day of the time that begins on a day. */
        LocalDate ends(LocalDate begins, boolean south) {
            Month last = south ? to.plus(HALF_A_YEAR) : to;
            LocalDate first = LocalDate.of(begins.getYear(), last, 1);
            LocalDate end = first.withDayOfMonth(Math.min(toDay, first.lengthOfMonth()));
            if (!end.isBefore(begins)) {
                return end;
            }
            LocalDate next = first.plusYears(1);
            return next.withDayOfMonth(Math.min(toDay, next.lengthOfMonth()));
        }
    }

    /** Days of one year's time. */
    public record Time(LocalDate from, LocalDate to) {}

    /**
     * When one crop is sown in one climate.
     *
     * @param underCover raised in trays
     * @param inPlace sown, or set, where it grows
     * @param out planted out
     * @param notInHeat whether it does not stand a hot summer
     * @param overWinterDays from an autumn sowing to the first picking, {@code null} where the sheet's days hold
     */
    public record Calendar(
            List<Span> underCover, List<Span> inPlace, List<Span> out, boolean notInHeat, Range overWinterDays) {
        public Calendar {
            underCover = List.copyOf(underCover);
            inPlace = List.copyOf(inPlace);
            out = List.copyOf(out);
        }

        /** No time of the year at all. */
        public static Calendar empty() {
            return new Calendar(List.of(), List.of(), List.of(), false, null);
        }

        /** Whether no time of the year is cool enough for it. */
        public boolean never() {
            return underCover.isEmpty() && inPlace.isEmpty() && out.isEmpty();
        }

        /** The times for putting it in in any way, as seed, set, clove or plant. */
        public List<Span> all() {
            List<Span> all = new ArrayList<>(inPlace);
            all.addAll(underCover);
            all.addAll(out);
            return all;
        }
    }

    private SowingCalendars() {}

    /** No calendars: everything goes by frost. */
    public static SowingCalendars none() {
        return new SowingCalendars();
    }

    /**
     * Reads the file.
     *
     * @throws RulesBroken with file and line
     */
    public static SowingCalendars in(RulesFolder folder) {
        YamlFile file = YamlFile.in(folder, FILE);
        SowingCalendars read = new SowingCalendars();
        List<Problem> problems = new ArrayList<>();
        file.tree().fields().forEachRemaining(crop -> {
            Map<Climate, Calendar> calendars = new EnumMap<>(Climate.class);
            for (Climate climate : Climate.values()) {
                JsonNode one = crop.getValue().path(climate.word());
                try {
                    if (!one.isMissingNode()) {
                        calendars.put(climate, calendar(crop.getValue(), one));
                    }
                } catch (IllegalArgumentException wrong) {
                    problems.add(file.problem(
                            "/" + crop.getKey() + "/" + climate.word(),
                            "\"" + wrong.getMessage() + "\" is no time of the year: write Oct-Feb or 15 Mar-Jun."));
                }
            }
            read.crops.put(crop.getKey(), calendars);
        });
        if (!problems.isEmpty()) {
            throw new RulesBroken(problems);
        }
        return read;
    }

    private static Calendar calendar(JsonNode crop, JsonNode one) {
        JsonNode days = crop.path("over-winter-days");
        return new Calendar(
                spans(one.path("under-cover")),
                spans(one.path("in-place")),
                spans(one.path("out")),
                crop.path("not-in-heat").asText("").equals("true"),
                days.isObject()
                        ? new Range(
                                days.path("low").asDouble(), days.path("high").asDouble())
                        : null);
    }

    private static List<Span> spans(JsonNode written) {
        List<Span> spans = new ArrayList<>();
        if (!written.asText("").isBlank()) {
            for (String one : written.asText().split(", ")) {
                Matcher span = SPAN.matcher(one);
                if (!span.matches()) {
                    throw new IllegalArgumentException(one);
                }
                spans.add(new Span(
                        day(span.group(1), 1), month(span.group(2)), day(span.group(3), 31), month(span.group(4))));
            }
        }
        return spans;
    }

    private static int day(String written, int otherwise) {
        return written == null ? otherwise : Math.max(1, Math.min(31, Integer.parseInt(written)));
    }

    private static Month month(String written) {
        for (Month month : Month.values()) {
            if (month.getDisplayName(TextStyle.SHORT, Locale.US).equals(written)) {
                return month;
            }
        }
        throw new IllegalArgumentException(written);
    }

    /** The calendar of a crop; empty where it goes by frost. */
    public Optional<Calendar> of(String crop, Climate climate) {
        return Optional.ofNullable(crops.getOrDefault(crop, Map.of()).get(climate));
    }

    /** The crops that have calendars. */
    public java.util.Set<String> crops() {
        return java.util.Set.copyOf(crops.keySet());
    }

    /** The time, of any of the spans, that is running on a day or comes next. */
    public static Optional<Time> atOrAfter(List<Span> spans, LocalDate day, boolean south) {
        List<Time> left = times(spans, day, south).stream()
                .filter(time -> !time.to().isBefore(day))
                .toList();
        return left.stream()
                .filter(time -> !time.from().isAfter(day))
                .max(java.util.Comparator.comparing(Time::to))
                .or(() -> left.stream().findFirst());
    }

    /** The time, of any of the spans, that was over last before a day. */
    public static Optional<Time> before(List<Span> spans, LocalDate day, boolean south) {
        return times(spans, day, south).stream()
                .filter(time -> time.to().isBefore(day))
                .max(java.util.Comparator.comparing(Time::to));
    }

    /** Those of the years about a day, in order of their beginning. */
    private static List<Time> times(List<Span> spans, LocalDate day, boolean south) {
        List<Time> times = new ArrayList<>();
        for (Span span : spans) {
            for (int year = day.getYear() - 2; year <= day.getYear() + 1; year++) {
                LocalDate begins = span.begins(year, south);
                times.add(new Time(begins, span.ends(begins, south)));
            }
        }
        times.sort(java.util.Comparator.comparing(Time::from));
        return times;
    }
}
