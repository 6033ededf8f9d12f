package bothy.reading.grammar;

import bothy.almanac.Words;
import bothy.garden.Situation;
import bothy.reading.calendar.Days;
import bothy.reading.said.ActionSaid;
import bothy.reading.said.CropSaid;
import bothy.reading.said.DaySaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;
import bothy.reading.said.SeedSaid;
import bothy.reading.said.Span;
import bothy.reading.text.Phrase;
import bothy.reading.text.Spelling;
import bothy.reading.text.SpokenDates;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Takes a message apart into its parts. Built once from the words; safe to share. */
public final class Grammar {
    /** With one of these "2/6 melons" at the head of a message are two of six, else a day. */
    private static final Set<String> COME_UP = Set.of(
            "up",
            "germinated",
            "sprouted",
            "through",
            "emerged",
            "survived",
            "came",
            "come",
            "left",
            "showing",
            "alive",
            "made",
            "took",
            "died",
            "dead",
            "gone",
            "ripe",
            "ready",
            "eaten");

    private final Numbers numbers;
    private final Quantities quantities;
    private final Days days;
    private final CropNames cropNames;
    private final Places places;
    private final Actions actions;
    private final SeedAges seedAges;
    private final Spelling spelling;

    /**
     * @param words the words files
     * @param alsoKnown words that other parts of reading look for, so that spelling leaves them alone
     */
    public Grammar(Words words, Set<String> alsoKnown) {
        Set<String> ordinary = new HashSet<>(words.list("language", "/ordinary"));
        ordinary.addAll(words.list("language", "/names"));
        numbers = new Numbers(words);
        quantities = new Quantities(words);
        days = new Days(words);
        cropNames = new CropNames(words, ordinary);
        places = new Places(words);
        actions = new Actions(words);
        seedAges = new SeedAges(words);
        spelling = spelling(words, ordinary, alsoKnown);
    }

    private Spelling spelling(Words words, Set<String> ordinary, Set<String> alsoKnown) {
        Map<String, String> shortForms = new HashMap<>();
        words.names("language", "/spellings")
                .forEach(form -> shortForms.put(form, words.text("language", "/spellings/" + form, form)));
        Set<String> wanted = new HashSet<>(cropNames.mendable());
        wanted.addAll(actions.verbs());
        wanted.addAll(days.vocabulary());
        wanted.addAll(places.vocabulary());
        wanted.addAll(words.list("language", "/wanted"));
        wanted.addAll(words.list("clues", "/spelled"));
        Set<String> right = new HashSet<>(ordinary);
        right.addAll(cropNames.vocabulary());
        right.addAll(actions.vocabulary());
        right.addAll(numbers.vocabulary());
        right.addAll(quantities.vocabulary());
        right.addAll(seedAges.vocabulary());
        right.addAll(alsoKnown);
        Set<String> pairs = new HashSet<>(cropNames.pairs());
        pairs.addAll(actions.pairs());
        return new Spelling(shortForms, right, wanted, pairs, new SpokenDates(words), this::meaning);
    }

    /** What a word stands for when two spellings are equally near: its crop, or itself without its ending. */
    private String meaning(String word) {
        List<String> crops = cropNames.named(word);
        return crops.isEmpty() ? word.replaceAll("(es|s|ed|ing|e)$", "") : crops.toString();
    }

    public CropNames cropNames() {
        return cropNames;
    }

    /** The spelling, for words that were not understood. */
    public Spelling spelling() {
        return spelling;
    }

    /** A message with all that is found in it; the words that tell the age of seed stand apart. */
    public Passage passage(String message, Situation situation) {
        List<Token> tokens = spelling.tokens(message);
        SeedAges.Apart apart =
                seedAges.in(tokens, numbers.in(tokens), slots(tokens, message, situation), situation.today());
        return apart == null
                ? passage(message, situation, tokens, List.of())
                : passage(message, situation, apart.tokens(), apart.ages());
    }

    /** A message with all that is found in it but its doings, every word in its place: what a description is looked at by. */
    public Passage whole(String message, Situation situation) {
        return withoutDoings(message, situation, spelling.tokens(message), List.of());
    }

    /** The crops that a message names. */
    public List<CropSaid> crops(String message, Situation situation) {
        return cropNames.in(spelling.tokens(message), message, situation.plantings());
    }

    private Phrase.Slots slots(List<Token> tokens, String message, Situation situation) {
        return (slot, at) -> switch (slot) {
            case "n" -> ending(numbers.in(tokens), at);
            case "year" -> Passage.year(tokens.get(at)) ? at + 1 : -1;
            case "crop" -> ending(cropNames.in(tokens, message, situation.plantings()), at);
            default -> -1;
        };
    }

    private static int ending(List<? extends Span> spans, int at) {
        return spans.stream()
                .filter(span -> span.start() == at)
                .mapToInt(Span::end)
                .findFirst()
                .orElse(-1);
    }

    private Passage withoutDoings(String message, Situation situation, List<Token> tokens, List<SeedSaid> seeds) {
        List<NumberSaid> found = numbers.in(tokens);
        List<Quantity> measured =
                quantities.in(tokens, found, situation.grower().units());
        List<DaySaid> told = days.in(tokens, found, situation.today(), situation.grower());
        List<DaySaid> free = told.stream()
                .filter(day -> measured.stream().noneMatch(quantity -> quantity.overlaps(day)))
                .toList();
        List<CropSaid> crops = cropNames.in(tokens, message, situation.plantings());
        List<NumberSaid> parts = partsOfWhole(tokens, crops);
        free = free.stream()
                .filter(day -> parts.stream().noneMatch(day::overlaps))
                .filter(day -> crops.stream().noneMatch(crop -> named(crop) && crop.overlaps(day)))
                .toList();
        found.addAll(parts);
        found.sort(java.util.Comparator.comparingInt(NumberSaid::start));
        return new Passage(
                message, situation, tokens, found, measured, free, crops, places.in(tokens, found), List.of(), seeds);
    }

    private Passage passage(String message, Situation situation, List<Token> tokens, List<SeedSaid> seeds) {
        Passage passage = withoutDoings(message, situation, tokens, seeds);
        List<ActionSaid> doings = free(actions.in(tokens, passage), passage.crops());
        doings.removeIf(action -> action.action().equals("frost")
                && passage.days().stream().anyMatch(action::overlaps)
                && passage.days().stream()
                        .anyMatch(day -> action.words().stream().allMatch(day::covers)));
        doings.replaceAll(action -> action.action().equals("died")
                        && passage.word(action.start()).equals("frost")
                        && Set.of("to", "down").contains(gotTo(passage, action))
                ? new ActionSaid(action.start(), action.start() + 1, "frost", null, true, null, action.words())
                : action);
        return passage.with(doings);
    }

    /** "Frost, it got to minus 2" killed nothing: the word after "got", empty when that is not said. */
    private static String gotTo(Passage passage, ActionSaid action) {
        for (int at = action.start(); at < action.end(); at++) {
            if (passage.word(at).equals("got")) {
                return passage.word(at + 1);
            }
        }
        return "";
    }

    /** "5 January King" are cabbages and no day. */
    private static boolean named(CropSaid crop) {
        return crop.variety() != null && crop.end() - crop.start() > 1;
    }

    /** "2/6 melons" are two of six. */
    private static List<NumberSaid> partsOfWhole(List<Token> tokens, List<CropSaid> crops) {
        List<NumberSaid> parts = new ArrayList<>();
        long heads = tokens.stream()
                .filter(token ->
                        token.sort() == Token.Sort.FIGURES && token.word().matches("\\d{1,2}/\\d{1,2}"))
                .count();
        if (heads > 1) {
            return parts; // A list of days.
        }
        for (int at = 0; at + 1 < tokens.size(); at++) {
            int next = at + 1;
            boolean counts = crops.stream().anyMatch(crop -> crop.start() == next)
                    || Set.of("are", "up", "germinated", "have", "seeds", "sprouted")
                            .contains(tokens.get(next).word());
            boolean dated = at > 0
                    && Set.of("sown", "sowed", "planted", "started", "from", "on", "since", "of")
                            .contains(tokens.get(at - 1).word());
            boolean day = dated || at == 0 && tokens.stream().noneMatch(token -> COME_UP.contains(token.word()));
            if (!day
                    && tokens.get(at).sort() == Token.Sort.FIGURES
                    && tokens.get(at).word().matches("\\d{1,3}/\\d{1,3}")
                    && counts) {
                parts.add(new NumberSaid(
                        at, next, Double.parseDouble(tokens.get(at).word().split("/")[0]), false));
            }
        }
        return parts;
    }

    /** A verb that is part of a crop's name is none. */
    private static List<ActionSaid> free(List<ActionSaid> actions, List<CropSaid> crops) {
        List<ActionSaid> free = new ArrayList<>(actions);
        free.removeIf(action ->
                crops.stream().anyMatch(crop -> action.words().stream().allMatch(crop::covers)));
        return free;
    }
}
