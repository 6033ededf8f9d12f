package bothy.reading.calendar;

import bothy.almanac.Words;
import bothy.reading.said.DaySaid.Sort;
import bothy.reading.text.Phrase;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.Token;
import java.time.DayOfWeek;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The words of the calendar as the words files list them. */
final class CalendarWords {
    private final Map<String, DayOfWeek> weekdays = new HashMap<>();
    private final Map<String, Integer> months = new HashMap<>();
    private final PhraseBook<Integer> days = new PhraseBook<>();
    private final PhraseBook<Feast> feasts = new PhraseBook<>();
    private final PhraseBook<Sort> unknown = new PhraseBook<>();
    private final Set<String> numbered;

    CalendarWords(Words words) {
        words.lists("calendar", "/weekdays")
                .forEach((day, names) ->
                        names.forEach(name -> weekdays.put(name, DayOfWeek.valueOf(day.toUpperCase(Locale.ROOT)))));
        words.lists("calendar", "/months")
                .forEach((month, names) -> names.forEach(name -> months.put(name, Integer.valueOf(month))));
        words.lists("calendar", "/days").forEach((days, phrases) -> add(phrases, this.days, Integer.valueOf(days)));
        words.lists("calendar", "/feasts").forEach((feast, phrases) -> add(phrases, feasts, Feast.of(feast)));
        add(words.list("calendar", "/vague"), unknown, Sort.UNKNOWN);
        add(words.list("calendar", "/asking"), unknown, Sort.UNKNOWN);
        numbered = Set.copyOf(words.list("calendar", "/numbered"));
    }

    private static <T> void add(List<String> phrases, PhraseBook<T> book, T meaning) {
        phrases.forEach(phrase -> book.add(new Phrase(phrase, Map.of()), meaning));
    }

    Set<String> vocabulary() {
        Set<String> vocabulary = new HashSet<>(weekdays.keySet());
        vocabulary.addAll(months.keySet());
        vocabulary.addAll(List.of("yesterday", "tomorrow", "fortnight", "tonight", "weekend", "morning", "overnight"));
        return vocabulary;
    }

    /** Whether a word names what "2nd" and the like tell apart from others of its kind: a row, a batch, a truss. */
    boolean numbered(String word) {
        return numbered.contains(word);
    }

    DayOfWeek weekday(Token token) {
        return token.aWord() ? weekdays.get(token.word()) : null;
    }

    Integer month(Token token) {
        return token.aWord() ? months.get(token.word()) : null;
    }

    List<PhraseBook.Found<Integer>> days(List<Token> tokens) {
        return days.find(tokens, 0, tokens.size(), (slot, at) -> -1);
    }

    List<PhraseBook.Found<Feast>> feasts(List<Token> tokens) {
        return feasts.find(tokens, 0, tokens.size(), (slot, at) -> -1);
    }

    List<PhraseBook.Found<Sort>> unknown(List<Token> tokens) {
        return unknown.find(tokens, 0, tokens.size(), (slot, at) -> -1);
    }
}
