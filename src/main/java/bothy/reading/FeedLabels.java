package bothy.reading;

import bothy.garden.FeedLabel;
import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.garden.Units;
import bothy.reading.said.ActionSaid;
import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The strength on a feed's label as growers tell it: "10 ml per litre", "15 g in 10 l", "2 tsp to the gallon", "1 to 100", "a capful in
 * 5 litres".
 */
final class FeedLabels {
    static final String NUMBER = "(\\d+(?:[.,]\\d+)?)";
    static final String VOLUME = "(litres?|liters?|ltrs?|l|imp gal|gallons?|gal|pints?|quarts?)";

    private static final String AMOUNT =
            "(\\d+\\s*/\\s*\\d+|\\d+(?:[.,]\\d+)?|[½¼¾]|half an?|half|an?|one|two|three|four|five|six|ten)";
    private static final String MEASURE =
            "(grams?|grammes?|gms?|g|ml|mls|millilitres?|milliliters?|cc|tea\\s?spoons?(?:\\s?full?s?)?|tsps?|"
                    + "table\\s?spoons?(?:\\s?full?s?)?|tbsps?|fl\\.?\\s?oz|fluid ounces?|cap\\s?full?s?|caps?|scoop\\s?full?s?|scoops?)";
    private static final String OF_FEED = "(?:\\s+of\\s+(?:\\w+\\s+){0,3}?(?:feed|food|fertili[sz]er|it|this|stuff))?";
    /** "25 ml capful to 5 litres": what the cap holds is told with it. */
    private static final String ASIDE = "(?:\\s*\\([^)]{0,30}\\)|\\s+caps?(?:\\s?fulls?|\\s?ful)?)?";

    private static final String PER =
            "\\s*(?:per|to|tae|in|into|with|for|/|a|each|every)\\s*(?:each |every |the |an? )?";
    private static final String WATER =
            AMOUNT + "?\\s*(" + VOLUME.substring(1, VOLUME.length() - 1) + "|watering cans?|cans?)\\b";
    private static final Pattern LABEL =
            Pattern.compile("(?<![\\w.,/])" + AMOUNT + "\\s*" + MEASURE + ASIDE + OF_FEED + PER + WATER);
    private static final Pattern TURNED = Pattern.compile("\\b(?:for|per|in|into|to)\\s+(?:each |every |the )?" + WATER
            + "(?: of water)?,?\\s*(?:you need |use |take |add |put |mix (?:in )?)?" + AMOUNT + "\\s*" + MEASURE
            + "\\b");
    private static final Pattern ONE_TO =
            Pattern.compile("\\b1\\s*(?::|to|in|part to|part in)\\s*" + NUMBER + "(?!\\s*" + VOLUME + "|\\d)");
    /** What a cap or scoop holds: "a capful is 20 ml", "one cap (20ml)". */
    private static final Pattern HELD =
            Pattern.compile("(?:cap|scoop)(?:\\s?full?)?\\s*(?:is|=|holds|of|\\(|about|which is)*\\s*" + "(?:about )?"
                    + NUMBER + "\\s*(?:ml|mls|millilit(?:re|er)s?|cc)\\b");

    /** "The feed says 1 in 200": parts are of a label only where the feed is said to say so, for much else is one in so many. */
    private static final Pattern SAYS = Pattern.compile(
            "\\b(?:feed|food|fertili[sz]er|emulsion|seaweed|kelp|label|bottle|packet|pack|box|tin|tub|jug|instructions|container)\\b"
                    + "[^.!?]{0,20}\\b(?:says?|said|is|wants?|needs?|to be)\\b");

    private static final Pattern OF_LABEL =
            Pattern.compile("\\b(?:label|bottle|packet|pack|box|tin|tub|instructions|directions|container)\\b");

    private static final Map<String, Double> IN_WORDS = Map.of(
            "½", 0.5, "¼", 0.25, "¾", 0.75, "one", 1.0, "two", 2.0, "three", 3.0, "four", 4.0, "five", 5.0, "six", 6.0,
            "ten", 10.0);

    private FeedLabels() {}

    /**
     * A label found.
     *
     * @param label as if a cap held 1 ml, when it was told in caps
     * @param unknown "capful" or "scoop" when it is not known what one holds, {@code null} otherwise
     * @param from first letter of it in the message
     * @param to behind its last letter
     */
    record Found(FeedLabel label, String unknown, int from, int to) {
        boolean covers(Token token) {
            return token.from() < to && token.to() > from;
        }
    }

    /** The label told in a message, in measures or in parts. */
    static Optional<Found> in(Passage passage) {
        return measured(passage).or(() -> parts(passage.message().toLowerCase(Locale.ROOT)));
    }

    /** The label told in measures: what no other talk looks like. */
    static Optional<Found> measured(Passage passage) {
        String text = passage.message().toLowerCase(Locale.ROOT);
        Units units = passage.situation().grower().units();
        Matcher told = LABEL.matcher(text);
        if (told.find()) {
            return found(told, 1, 2, 3, text, units);
        }
        Matcher turned = TURNED.matcher(text);
        return turned.find() ? found(turned, 3, 4, 1, text, units) : Optional.empty();
    }

    private static Optional<Found> parts(String text) {
        Matcher parts = ONE_TO.matcher(text);
        return parts.find() && number(parts.group(1)) > 0
                ? Optional.of(
                        new Found(new FeedLabel(1000 / number(parts.group(1)), 1), null, parts.start(), parts.end()))
                : Optional.empty();
    }

    private static Optional<Found> found(Matcher told, int amount, int measure, int water, String text, Units units) {
        double litres = number(told.group(water)) * litres(told.group(water + 1), units);
        double count = number(told.group(amount));
        if (litres <= 0 || count <= 0) {
            return Optional.empty();
        }
        String by = told.group(measure);
        boolean scoop = by.startsWith("scoop");
        if (!scoop && !by.startsWith("cap")) {
            FeedLabel label = by.startsWith("g")
                    ? FeedLabel.weighed(count, litres)
                    : new FeedLabel(count * ml(by, units), litres);
            return Optional.of(new Found(label, null, told.start(), told.end()));
        }
        Matcher held = HELD.matcher(text);
        FeedLabel byCap = FeedLabel.inCaps(count, litres);
        boolean known = held.find() && number(held.group(1)) > 0;
        return Optional.of(new Found(
                known ? byCap.withCap(number(held.group(1))) : byCap,
                known ? null : scoop ? "scoop" : "capful",
                told.start(),
                told.end()));
    }

    /** Whether a sentence tells what the label says, and no feeding done by it. */
    static boolean read(Passage passage, int[] sentence) {
        int from = passage.tokens().get(sentence[0]).from();
        int to = Math.min(
                passage.tokens().get(sentence[1] - 1).to(), passage.message().length());
        String text = passage.message().substring(from, to).toLowerCase(Locale.ROOT);
        Optional<Found> measured = OF_LABEL.matcher(text).find() ? measured(passage) : Optional.empty();
        Optional<Found> found = measured.or(() -> SAYS.matcher(text).find() ? in(passage) : Optional.empty());
        return found.isPresent()
                && found.get().from() >= from
                && found.get().from() < to
                && inside(passage, sentence)
                        .noneMatch(action -> action.form() == Form.PAST && !within(passage, action, found.get()));
    }

    /** The message without doings that only the words of a label seem to tell. */
    static Passage apart(Passage passage, int[] sentence) {
        if (!read(passage, sentence)) {
            return passage;
        }
        List<ActionSaid> kept = new ArrayList<>(passage.actions());
        kept.removeAll(inside(passage, sentence)
                .filter(action -> Set.of("fed", "watered").contains(action.action()))
                .toList());
        return passage.with(kept);
    }

    private static Stream<ActionSaid> inside(Passage passage, int[] sentence) {
        return passage.actions().stream()
                .filter(action -> action.start() >= sentence[0] && action.end() <= sentence[1]);
    }

    private static boolean within(Passage passage, ActionSaid action, Found found) {
        return action.words().stream()
                .allMatch(at ->
                        at < passage.size() && found.covers(passage.tokens().get(at)));
    }

    static double number(String told) {
        if (told == null || told.matches("an?")) {
            return 1;
        }
        if (told.startsWith("half")) {
            return 0.5;
        }
        Double word = IN_WORDS.get(told);
        if (word != null) {
            return word;
        }
        String[] parts = told.replace(',', '.').split("\\s*/\\s*");
        double below = parts.length > 1 ? Double.parseDouble(parts[1]) : 1;
        return below == 0 ? 0 : Double.parseDouble(parts[0]) / below;
    }

    private static double ml(String measure, Units units) {
        return switch (measure.substring(0, 2)) {
            case "fl" -> units.fluidOunceMl();
            case "te", "ts" -> units.teaspoonMl();
            case "ta", "tb" -> units.tablespoonMl();
            default -> 1;
        };
    }

    static double litres(String unit, Units units) {
        double gallon = units.gallonLitres();
        if (unit.contains("can")) {
            return units.canLitres();
        }
        return switch (unit.charAt(0)) {
            case 'g', 'i' -> gallon;
            case 'p' -> gallon / 8;
            case 'q' -> gallon / 4;
            default -> 1;
        };
    }

    /** "Nettle brew for the kale. One part to ten?": named for what is asked of it, and not given yet. */
    static boolean onlyNamed(Passage passage, Clause clause, List<Inquiry> asked) {
        return clause.action().action().equals("fed")
                && clause.action().form() == null
                && asked.stream().anyMatch(one -> one.question() == Question.FEED_DOSE)
                && Passage.within(passage.days(), clause.from(), clause.to()).isEmpty()
                && IntStream.range(clause.action().start(), clause.to())
                        .anyMatch(at -> passage.word(at).equals("for"));
    }
}
