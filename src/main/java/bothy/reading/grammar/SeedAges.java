package bothy.reading.grammar;

import bothy.almanac.Words;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.SeedSaid;
import bothy.reading.text.Phrase;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseBook.Found;
import bothy.reading.text.PhraseFile;
import bothy.reading.text.Token;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds how old seed is told to be and takes the words of it out of the sentence: "last year's seed" is no day, "3 year old seed" no
 * count.
 */
final class SeedAges {
    private static final String FILE = "seed-age";
    /** Older seed is told in jest. */
    private static final int OLDEST = 50;

    private final PhraseBook<String> book = new PhraseBook<>();
    private final Set<String> kept;

    /** What is left of a message without the words of the age, and the ages. */
    record Apart(List<Token> tokens, List<SeedSaid> ages) {}

    SeedAges(Words words) {
        PhraseFile file = new PhraseFile(words, FILE, Map.of());
        for (String sort : words.names(FILE, "")) {
            if (!sort.equals("kept")) {
                file.into(book, "/" + sort, sort);
            }
        }
        kept = new HashSet<>(words.list(FILE, "/kept"));
    }

    Set<String> vocabulary() {
        return book.vocabulary();
    }

    /** The message taken apart, {@code null} when it tells no age of seed. */
    Apart in(List<Token> tokens, List<NumberSaid> numbers, Phrase.Slots slots, LocalDate today) {
        if (tokens.stream().noneMatch(token -> kept.contains(token.word()))) {
            return null;
        }
        BitSet out = new BitSet();
        List<Found<String>> ages = new ArrayList<>();
        List<Integer> years = new ArrayList<>();
        for (Found<String> found : book.find(tokens, 0, tokens.size(), slots)) {
            Integer age = years(found, tokens, numbers, today);
            if (age == null || age >= 0 && age <= OLDEST) {
                ages.add(found);
                years.add(age);
                out.or(found.place().words());
                found.place().words().stream()
                        .filter(at -> namesWhatWasSown(tokens, at, found))
                        .forEach(out::clear);
            }
        }
        if (ages.isEmpty()) {
            return null;
        }
        List<Token> left = new ArrayList<>();
        for (int at = 0; at < tokens.size(); at++) {
            if (!out.get(at)) {
                left.add(tokens.get(at));
            }
        }
        List<SeedSaid> said = new ArrayList<>();
        for (int i = 0; i < ages.size(); i++) {
            int end = ages.get(i).end();
            said.add(new SeedSaid(end - out.get(0, end).cardinality(), years.get(i)));
        }
        return new Apart(left, said);
    }

    /** "Parsnip seed" stays, "the packet" goes with what is told of it. */
    private boolean namesWhatWasSown(List<Token> tokens, int at, Found<String> found) {
        return kept.contains(tokens.get(at).word())
                && at > 0
                && !found.place().words().get(at - 1)
                && !tokens.get(at - 1).mark()
                && !Set.of("the", "my", "this", "from")
                        .contains(tokens.get(at - 1).word());
    }

    private static Integer years(Found<String> found, List<Token> tokens, List<NumberSaid> numbers, LocalDate today) {
        return switch (found.meaning()) {
            case "old" -> null;
            case "years" -> number(found, numbers);
            case "year" -> today.getYear() - number(found, numbers);
            default -> Integer.valueOf(found.meaning());
        };
    }

    private static int number(Found<String> found, List<NumberSaid> numbers) {
        return numbers.stream()
                .filter(number -> number.start() >= found.start() && number.end() <= found.end())
                .mapToInt(number -> (int) number.value())
                .reduce((first, second) -> second)
                .orElse(-1);
    }
}
