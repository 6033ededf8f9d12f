package bothy.reading.grammar;

import bothy.almanac.RulesBroken;
import bothy.almanac.Words;
import bothy.reading.text.Conjugation;
import bothy.reading.text.Conjugation.Form;
import bothy.reading.text.Phrase;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds what was done or seen: the verbs of the words files in all their forms, and their standing phrases. */
public final class Actions {
    private static final String FILE = "actions";
    private final PhraseBook<Told> book = new PhraseBook<>();
    private final Set<String> verbs = new HashSet<>();

    private record Told(String action, Form form, boolean state, String detail) {}

    /** @throws RulesBroken when a phrase cannot be read */
    public Actions(Words words) {
        Conjugation conjugation = new Conjugation(words.lists(FILE, "/irregular"));
        Map<String, List<String>> groups = words.lists(FILE, "/groups");
        for (String action : words.names(FILE, "/actions")) {
            String at = "/actions/" + action;
            for (String verb : words.list(FILE, at + "/verbs")) {
                conjugation.forms(verb).forEach((text, form) -> {
                    if (form == Form.PLAIN_S) {
                        return; // "seeds", "plants", "flowers" are nouns here far more often than verbs.
                    }
                    add(words, at + "/verbs", text, groups, new Told(action, form, false, null));
                    verbs.add(text.split(" ")[0]);
                });
            }
            words.list(FILE, at + "/done")
                    .forEach(text -> add(words, at + "/done", text, groups, new Told(action, null, false, null)));
            words.list(FILE, at + "/states")
                    .forEach(text -> add(words, at + "/states", text, groups, new Told(action, null, true, null)));
            words.lists(FILE, at + "/details")
                    .forEach((detail, phrases) -> phrases.forEach(text ->
                            add(words, at + "/details/" + detail, text, groups, new Told(action, null, true, detail))));
        }
    }

    private void add(Words words, String at, String text, Map<String, List<String>> groups, Told told) {
        try {
            book.add(new Phrase(text, groups), told);
        } catch (IllegalArgumentException wrong) {
            throw new RulesBroken(
                    List.of(words.problem(FILE, at, "\"" + text + "\" is no phrase: " + wrong.getMessage() + ".")));
        }
    }

    public Set<String> vocabulary() {
        return book.vocabulary();
    }

    /** Words that a slip of the thumb is most likely meant for: the verbs. */
    public Set<String> verbs() {
        return verbs;
    }

    /** All doings and states of a message in order; none uses another's words. */
    public List<ActionSaid> in(List<Token> tokens, Phrase.Slots slots) {
        List<ActionSaid> said = new ArrayList<>();
        for (PhraseBook.Found<Told> found : book.find(tokens, 0, tokens.size(), slots)) {
            Told told = found.meaning();
            if (told.form() == Form.PLAIN && noun(tokens, found, slots)) {
                continue;
            }
            said.add(new ActionSaid(
                    found.start(),
                    found.end(),
                    told.action(),
                    told.form(),
                    told.state(),
                    told.detail(),
                    found.place().words()));
        }
        return said;
    }

    /** "The harvest", "6 plant", "tomato feed" name things; only "I water" does. */
    private static boolean noun(List<Token> tokens, PhraseBook.Found<Told> found, Phrase.Slots slots) {
        int at = found.start();
        if (found.place().length() > 1 || at == 0) {
            return false;
        }
        for (int start = Math.max(0, at - 3); start < at; start++) {
            if (slots.end("crop", start) == at || slots.end("n", start) == at) {
                return true;
            }
        }
        return BEFORE_NOUN.contains(tokens.get(at - 1).word());
    }

    private static final Set<String> BEFORE_NOUN = Set.of(
            "a", "an", "the", "my", "our", "some", "of", "liquid", "weekly", "good", "first", "light", "hard", "heavy",
            "more", "your", "his", "her", "this", "that", "any", "much", "little", "big", "for", "with", "in", "on",
            "tomato", "plant", "from", "every", "each", "another", "last", "next", "enough", "rain", "ground", "after",
            "bad", "late", "early", "these", "those", "great", "nice", "second", "new");
}
