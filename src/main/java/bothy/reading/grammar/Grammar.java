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
import bothy.reading.text.Spelling;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Takes a message apart into its parts. Built once from the words; safe to share. */
public final class Grammar {
    private final Numbers numbers;
    private final Quantities quantities;
    private final Days days;
    private final CropNames cropNames;
    private final Places places;
    private final Actions actions;
    private final Spelling spelling;

    /**
     * @param words the words files
     * @param alsoKnown words that other parts of reading look for, so that spelling leaves them alone
     */
    public Grammar(Words words, Set<String> alsoKnown) {
        Set<String> ordinary = new HashSet<>(words.list("language", "/ordinary"));
        numbers = new Numbers(words);
        quantities = new Quantities(words);
        days = new Days(words);
        cropNames = new CropNames(words, ordinary);
        places = new Places(words);
        actions = new Actions(words);
        spelling = spelling(words, ordinary, alsoKnown);
    }

    private Spelling spelling(Words words, Set<String> ordinary, Set<String> alsoKnown) {
        Map<String, String> shortForms = new HashMap<>();
        words.names("language", "/spellings")
                .forEach(form -> shortForms.put(form, words.text("language", "/spellings/" + form, form)));
        Set<String> wanted = new HashSet<>(cropNames.vocabulary());
        wanted.addAll(actions.verbs());
        wanted.addAll(days.vocabulary());
        wanted.addAll(places.vocabulary());
        wanted.addAll(words.list("language", "/wanted"));
        wanted.addAll(words.list("clues", "/spelled"));
        Set<String> right = new HashSet<>(ordinary);
        right.addAll(actions.vocabulary());
        right.addAll(numbers.vocabulary());
        right.addAll(quantities.vocabulary());
        right.addAll(alsoKnown);
        return new Spelling(shortForms, right, wanted, this::meaning);
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

    /** A message with all that is found in it. */
    public Passage passage(String message, Situation situation) {
        List<Token> tokens = spelling.tokens(message);
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
                .toList();
        found.addAll(parts);
        found.sort(java.util.Comparator.comparingInt(NumberSaid::start));
        Passage passage = new Passage(
                message, situation, tokens, found, measured, free, crops, places.in(tokens, found), List.of());
        List<ActionSaid> doings = free(actions.in(tokens, passage), crops);
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

    /** "2/6 melons" are two of six. */
    private static List<NumberSaid> partsOfWhole(List<Token> tokens, List<CropSaid> crops) {
        List<NumberSaid> parts = new ArrayList<>();
        for (int at = 0; at + 1 < tokens.size(); at++) {
            int next = at + 1;
            boolean counts = crops.stream().anyMatch(crop -> crop.start() == next)
                    || Set.of("are", "up", "germinated", "have", "seeds", "sprouted")
                            .contains(tokens.get(next).word());
            if (tokens.get(at).sort() == Token.Sort.FIGURES
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
