package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Inquiry;
import bothy.garden.Period;
import bothy.reading.said.DaySaid;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseFile;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.TemporalAdjusters;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The days of the diary that a question asks for: "what did I do last month", "on July 25", "in May". */
final class PeriodAsked {
    private static final String FILE = "calendar";
    private static final String OF_THE_DIARY = "diary-";
    private static final Set<DaySaid.Sort> ONE_DAY = EnumSet.of(DaySaid.Sort.EXACT, DaySaid.Sort.YEARLY);

    private final PhraseBook<String> periods = new PhraseBook<>();
    private final Map<String, Integer> months = new HashMap<>();

    PeriodAsked(Words words) {
        PhraseFile file = new PhraseFile(words, FILE, Map.of());
        words.names(FILE, "/periods").forEach(period -> file.into(periods, "/periods/" + period, period));
        words.lists(FILE, "/months")
                .forEach((month, names) -> names.forEach(name -> months.put(name, Integer.valueOf(month))));
    }

    Set<String> vocabulary() {
        return periods.vocabulary();
    }

    /** A question to the diary with the days it asks for; any other as it was. */
    Inquiry in(Inquiry inquiry, Passage passage, int[] whole, int begins) {
        // "3 lb more today, what is the total": the day is that of what is told.
        boolean ofTheTold = MattersAsked.PICKED.equals(inquiry.topic())
                && !Passage.within(passage.quantities(), whole[0], begins).isEmpty();
        int[] sentence = ofTheTold ? new int[] {begins, whole[1]} : whole;
        return inquiry.topic() != null && inquiry.topic().startsWith(OF_THE_DIARY)
                ? day(passage, sentence)
                        .or(() -> named(passage, sentence))
                        .or(() -> month(passage, sentence))
                        .map(inquiry::during)
                        .orElse(inquiry)
                : inquiry;
    }

    private static Optional<Period> day(Passage passage, int[] sentence) {
        return Passage.within(passage.days(), sentence[0], sentence[1]).stream()
                .filter(said -> ONE_DAY.contains(said.sort()) && said.known())
                .map(said -> since(passage, said.start(), said.past(), new Period(said.past(), said.past())))
                .findFirst();
    }

    private Optional<Period> named(Passage passage, int[] sentence) {
        LocalDate today = passage.situation().today();
        return periods.find(passage.tokens(), sentence[0], sentence[1], passage).stream()
                .map(found -> days(found.meaning(), today))
                .findFirst();
    }

    private static Period days(String period, LocalDate today) {
        LocalDate monday = today.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        return switch (period) {
            case "this-week" -> new Period(monday, today);
            case "last-week" -> new Period(monday.minusWeeks(1), monday.minusDays(1));
            case "this-month" -> new Period(today.withDayOfMonth(1), today);
            case "last-month" -> of(YearMonth.from(today).minusMonths(1));
            case "last-year" ->
                new Period(
                        today.withDayOfYear(1).minusYears(1),
                        today.withDayOfYear(1).minusDays(1));
            default -> new Period(today.withDayOfYear(1), today);
        };
    }

    /** A month named alone is the last such that has begun. */
    private Optional<Period> month(Passage passage, int[] sentence) {
        YearMonth now = YearMonth.from(passage.situation().today());
        for (int at = sentence[0] + 1; at < sentence[1]; at++) {
            Integer month = months.get(passage.word(at));
            boolean named = month != null
                    && Set.of("in", "during", "all", "since", "of", "for").contains(passage.word(at - 1));
            if (named) {
                boolean dated =
                        at + 1 < sentence[1] && Passage.year(passage.tokens().get(at + 1));
                YearMonth sameYear = now.withMonth(month);
                YearMonth meant = dated
                        ? YearMonth.of((int) passage.tokens().get(at + 1).number(), month)
                        : sameYear.isAfter(now) ? sameYear.minusYears(1) : sameYear;
                return Optional.of(since(passage, at, meant.atDay(1), of(meant)));
            }
        }
        return Optional.empty();
    }

    /** "Since June" goes on to today. */
    private static Period since(Passage passage, int at, LocalDate from, Period otherwise) {
        return at > 0 && passage.word(at - 1).equals("since")
                ? new Period(from, passage.situation().today())
                : otherwise;
    }

    private static Period of(YearMonth month) {
        return new Period(month.atDay(1), month.atEndOfMonth());
    }
}
