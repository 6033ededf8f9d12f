package bothy.reading.grammar;

import bothy.almanac.Words;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.PlaceSaid;
import bothy.reading.text.Phrase;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds places and containers, with their number or size: "bed 2", "the back windowsill", "9cm pots". */
public final class Places {
    private static final Set<String> SIZES = Set.of("cm", "inch", "litre", "l", "gallon", "\"", "quart", "liter", "mm");
    private final PhraseBook<PlaceSaid> book = new PhraseBook<>();
    private final Set<String> describing;
    private final Set<String> looking;

    public Places(Words words) {
        words.lists("places", "/places").forEach((name, names) -> add(name, names, false));
        words.lists("places", "/containers").forEach((name, names) -> add(name, names, true));
        describing = new HashSet<>(words.list("places", "/describing"));
        looking = new HashSet<>(words.list("places", "/looking"));
    }

    private void add(String name, List<String> names, boolean container) {
        names.forEach(text -> book.add(new Phrase(text, Map.of()), new PlaceSaid(0, 0, name, container)));
    }

    public Set<String> vocabulary() {
        return book.vocabulary();
    }

    /** All places and containers of a message in order. */
    public List<PlaceSaid> in(List<Token> tokens, List<NumberSaid> numbers) {
        List<PlaceSaid> places = new ArrayList<>();
        for (PhraseBook.Found<PlaceSaid> found : book.find(tokens, 0, tokens.size(), (slot, at) -> -1)) {
            PlaceSaid kind = found.meaning();
            places.add(
                    kind.container()
                            ? container(kind.name(), found, tokens)
                            : place(kind.name(), found, tokens, numbers));
        }
        return places;
    }

    private PlaceSaid place(
            String name, PhraseBook.Found<PlaceSaid> found, List<Token> tokens, List<NumberSaid> numbers) {
        int start = found.start();
        StringBuilder whole = new StringBuilder(name);
        while (start > 0 && describing.contains(tokens.get(start - 1).word())) {
            whole.insert(0, tokens.get(--start).word() + " ");
        }
        boolean numbered = name.endsWith("bed")
                || name.equals("polytunnel")
                || name.equals("greenhouse")
                || name.equals("allotment");
        NumberSaid number = numbers.stream()
                .filter(told -> told.start() == found.end())
                .findFirst()
                .orElse(null);
        boolean counts = number != null // "Tomatoes out in the bed 6 of them".
                && number.end() < tokens.size()
                && Set.of("of", "plants", "seeds", "seedlings")
                        .contains(tokens.get(number.end()).word());
        boolean aSide = number != null // "In a raised bed 4x8".
                && number.end() + 1 < tokens.size()
                && Set.of("x", "by", "×", "*").contains(tokens.get(number.end()).word());
        if (numbered
                && number != null
                && !counts
                && !aSide
                && number.whole()
                && number.value() < (name.endsWith("bed") || name.equals("allotment") ? 100 : 10)) {
            return new PlaceSaid(start, number.end(), whole + " " + (int) number.value(), false);
        }
        return new PlaceSaid(start, found.end(), whole.toString(), false);
    }

    private static String one(String unit) {
        return unit.equals("inches") ? "inch" : unit.replaceFirst("(?<=\\w{2})s$", "");
    }

    private PlaceSaid container(String name, PhraseBook.Found<PlaceSaid> found, List<Token> tokens) {
        int start = found.start();
        while (start > 0 && looking.contains(tokens.get(start - 1).word())) {
            start--; // "In 5 big pots": the number counts the pots.
        }
        if (start > 1
                && SIZES.contains(tokens.get(start - 1).word())
                && tokens.get(start - 2).sort() == Token.Sort.NUMBER) {
            String unit =
                    tokens.get(start - 1).is("\"") || tokens.get(start - 1).is("in")
                            ? "inch"
                            : tokens.get(start - 1).word();
            return new PlaceSaid(start - 2, found.end(), tokens.get(start - 2).word() + " " + unit + " " + name, true);
        }
        int end = found.end();
        if (end + 2 < tokens.size()
                && tokens.get(end).is("of")
                && tokens.get(end + 1).sort() == Token.Sort.NUMBER
                && SIZES.contains(one(tokens.get(end + 2).word()))) {
            // "In pots of 20 litres" is their size, no watering.
            String size =
                    tokens.get(end + 1).word() + " " + one(tokens.get(end + 2).word());
            return new PlaceSaid(start, end + 3, size + " " + name, true);
        }
        return new PlaceSaid(start, found.end(), name, true);
    }
}
