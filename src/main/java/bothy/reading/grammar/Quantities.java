package bothy.reading.grammar;

import bothy.almanac.Words;
import bothy.garden.Units;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Quantity;
import bothy.reading.text.Phrase;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Finds quantities and turns them into SI: "2 lb", "half a litre", "59F", "5 ft 6 in". */
public final class Quantities {
    private static final Set<String> VESSELS =
            Set.of("can", "cans", "bucket", "buckets", "watering", "jug", "jugs", "bottles");

    private static final Set<String> BY = Set.of("by", "x", "×", "*");
    /** Behind a length these tell which one it is. */
    private static final Set<String> ASIDE = Set.of("deep", "apart");

    /** Before a unit these count it once. */
    private static final Set<String> ONE = Set.of("a", "an", "another", "whole", "full");

    private static final double METRES_AN_INCH = 0.0254;
    private static final Set<String> LENGTHS = Set.of("m", "mm");
    private static final List<String> SCALES = List.of("kg", "L", "mm", "m", "m²");
    private final PhraseBook<Unit> units = new PhraseBook<>();

    private record Unit(String si, double metric, double us) {
        double factor(Units units) {
            return units == Units.US ? us : metric;
        }
    }

    public Quantities(Words words) {
        for (String scale : SCALES) {
            for (String unit : words.names("units", "/" + scale)) {
                String at = "/" + scale + "/" + unit;
                double factor = Double.parseDouble(words.text("units", at + "/factor", "1"));
                double us = Double.parseDouble(words.text("units", at + "/us", String.valueOf(factor)));
                add(words.list("units", at + "/names"), new Unit(scale, factor, us));
            }
        }
        add(words.list("units", "/temperature/C"), new Unit("°C", 1, 1));
        add(words.list("units", "/temperature/F"), new Unit("°F", 1, 1));
        add(words.list("units", "/temperature/unknown"), new Unit("°", 1, 1));
    }

    private void add(List<String> names, Unit unit) {
        names.forEach(name -> units.add(new Phrase(name, Map.of()), unit));
    }

    public Set<String> vocabulary() {
        Set<String> spelledOut = new HashSet<>(units.vocabulary());
        spelledOut.removeIf(word -> word.length() < 3);
        return spelledOut;
    }

    /**
     * All quantities of a message in order.
     *
     * @param numbers its numbers
     * @param units whether gallons and pints are imperial or US
     */
    public List<Quantity> in(List<Token> tokens, List<NumberSaid> numbers, Units units) {
        Map<Integer, PhraseBook.Found<Unit>> named = new HashMap<>();
        for (PhraseBook.Found<Unit> found : this.units.find(tokens, 0, tokens.size(), (slot, at) -> -1)) {
            named.put(found.start(), found);
        }
        List<Quantity> quantities = new ArrayList<>();
        Set<Integer> used = new HashSet<>();
        for (NumberSaid number : numbers) {
            side(tokens, numbers, number, named)
                    .ifPresent(unit -> quantities.add(new Quantity(
                            number.start(),
                            number.end(),
                            rounded(number.value() * unit.factor(units)),
                            unit.si(),
                            number.value())));
            if (inchesOfRain(tokens, number)) {
                quantities.add(new Quantity(
                        number.start(),
                        number.end() + 1,
                        rounded(number.value() * METRES_AN_INCH),
                        "m",
                        number.value()));
            }
            PhraseBook.Found<Unit> unit = named.get(number.end());
            if (unit != null && !number.ordinal()) {
                used.add(unit.start());
                // "120 x 240 cm" are two sides, "2 x 10 litres" twice the litres.
                boolean length = LENGTHS.contains(unit.meaning().si());
                NumberSaid times = length ? null : times(tokens, numbers, number);
                join(
                        tokens,
                        quantities,
                        times == null
                                ? quantity(number.start(), unit, number.value(), units)
                                : full(tokens, quantity(times.start(), unit, times.value() * number.value(), units)));
            }
        }
        for (PhraseBook.Found<Unit> unit : named.values()) {
            if (!used.contains(unit.start()) && oneOf(tokens, unit)) {
                double part = Numbers.partAfter(tokens, unit.end());
                Quantity one = quantity(led(tokens, unit.start()), unit, 1 + part, units);
                quantities.add(part == 0 ? one : one.spanning(one.start(), one.end() + 3));
            }
        }
        return quantities;
    }

    /** "0.8 in on the gauge", "1.5 in of rain", "2 in overnight": the short form is also the commonest of prepositions. */
    private static boolean inchesOfRain(List<Token> tokens, NumberSaid number) {
        int behind = number.end() + 1;
        if (behind > tokens.size()
                || number.ordinal()
                || !tokens.get(number.end()).is("in")) {
            return false;
        }
        List<String> next = tokens.subList(behind, Math.min(tokens.size(), behind + 3)).stream()
                .map(Token::word)
                .toList();
        boolean rain = !next.isEmpty()
                && (next.get(0).startsWith("rain")
                        || next.get(0).equals("of")
                                && next.size() > 1
                                && next.get(1).startsWith("rain")
                        || next.contains("gauge"));
        boolean part = !number.whole()
                && (next.isEmpty()
                        || tokens.get(behind).mark()
                        || Set.of(
                                        "overnight",
                                        "last",
                                        "yesterday",
                                        "today",
                                        "on",
                                        "since",
                                        "so",
                                        "total",
                                        "fell",
                                        "and")
                                .contains(next.get(0)));
        return rain || part;
    }

    /** "4 by 8 foot": the first side is measured as the second. */
    private static Optional<Unit> side(
            List<Token> tokens,
            List<NumberSaid> numbers,
            NumberSaid number,
            Map<Integer, PhraseBook.Found<Unit>> named) {
        boolean by = number.end() < tokens.size()
                && BY.contains(tokens.get(number.end()).word());
        return !by
                ? Optional.empty()
                : numbers.stream()
                        .filter(other -> other.start() == number.end() + 1)
                        .map(other -> named.get(other.end()))
                        .filter(Objects::nonNull)
                        .map(PhraseBook.Found::meaning)
                        .filter(unit -> LENGTHS.contains(unit.si()))
                        .findFirst();
    }

    private static int led(List<Token> tokens, int unit) {
        return unit == 0 || tokens.get(unit - 1).endsSentence() ? unit : unit - 1;
    }

    /** "2 x 10 litre cans", "two 10 litre cans": how many times the quantity, {@code null} when once. */
    private static NumberSaid times(List<Token> tokens, List<NumberSaid> numbers, NumberSaid number) {
        boolean marked = number.start() > 0 && tokens.get(number.start() - 1).is("x");
        int vessel = number.end() + 1;
        boolean cans =
                vessel < tokens.size() && VESSELS.contains(tokens.get(vessel).word());
        int end = marked ? number.start() - 1 : cans ? number.start() : -1;
        return end < 0
                ? null
                : numbers.stream()
                        .filter(many -> many.end() == end && many.whole() && !many.ordinal())
                        .findFirst()
                        .orElse(null);
    }

    /** With the vessel that holds it. */
    private static Quantity full(List<Token> tokens, Quantity quantity) {
        boolean vessel = quantity.end() < tokens.size()
                && quantity.unit().equals("L")
                && VESSELS.contains(tokens.get(quantity.end()).word());
        return vessel ? quantity.spanning(quantity.start(), quantity.end() + 1) : quantity;
    }

    /** "a kilo", "an ounce". */
    private static boolean oneOf(List<Token> tokens, PhraseBook.Found<Unit> unit) {
        if (unit.start() == 0 || tokens.get(unit.start() - 1).endsSentence()) {
            return tokens.get(unit.start()).word().length() > 2
                    && unit.end() < tokens.size()
                    && (tokens.get(unit.end()).is("of") || Numbers.partAfter(tokens, unit.end()) > 0);
        }
        Token before = tokens.get(unit.start() - 1);
        boolean longEnough = tokens.get(unit.start()).word().length() > 2;
        return longEnough && ONE.contains(before.word()) && !unit.meaning().si().startsWith("°");
    }

    private static Quantity quantity(int start, PhraseBook.Found<Unit> unit, double told, Units units) {
        String si = unit.meaning().si();
        if (si.equals("°F")) {
            return new Quantity(start, unit.end(), rounded((told - 32) / 1.8), "°C", told);
        }
        return new Quantity(start, unit.end(), rounded(told * unit.meaning().factor(units)), si, told);
    }

    /** "5 ft 6 in" is one length; in "8 ft 10 in deep" the depth is another. */
    private static void join(List<Token> tokens, List<Quantity> quantities, Quantity next) {
        Quantity last = quantities.isEmpty() ? null : quantities.get(quantities.size() - 1);
        boolean goesOn = last != null
                && last.end() == next.start()
                && last.unit().equals(next.unit())
                && !next.degrees()
                && !ASIDE.contains(tokens.get(next.end() - 1).word())
                && !(next.end() < tokens.size()
                        && ASIDE.contains(tokens.get(next.end()).word()))
                && next.value() < last.value();
        if (goesOn) {
            quantities.set(
                    quantities.size() - 1,
                    new Quantity(
                            last.start(), next.end(), rounded(last.value() + next.value()), last.unit(), last.told()));
        } else {
            quantities.add(next);
        }
    }

    private static double rounded(double value) {
        return Math.abs(value) > 1e12 ? value : Math.round(value * 1e5) / 1e5;
    }
}
