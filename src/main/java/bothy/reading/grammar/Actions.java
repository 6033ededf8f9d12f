package bothy.reading.grammar;

import bothy.almanac.RulesBroken;
import bothy.almanac.Words;
import bothy.reading.said.ActionSaid;
import bothy.reading.text.Conjugation;
import bothy.reading.text.Conjugation.Form;
import bothy.reading.text.Phrase;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** Finds what was done or seen: the verbs of the words files in all their forms, and their standing phrases. */
public final class Actions {
    private static final String FILE = "actions";
    private static final String UP = " .. up";
    private static final String THEM_UP =
            " (them|it|those|these|all|everything) up (today|now|yesterday|already|again|finally)?";
    private static final Set<String> PARTICLES = Set.of("out", "on", "up", "in", "off", "down");
    private static final String DETERMINER =
            "(a|an|the|their|its|them|another|first|second|third|fourth|final|last|good|quick|proper|bit of|some|more|weekly|light|heavy|big|all|my|our|of)";
    /** Little words between a verb and what was gathered. */
    private static final Set<String> LED = Set.of(
            "the", "our", "my", "a", "few", "some", "first", "last", "more", "of", "another", "off", "out", "up",
            "about", "around", "all", "over", "nearly");

    private static final Set<String> SETTING =
            Set.of("sown", "pricked-out", "potted-on", "planted", "planted-out", "moved");

    private final PhraseBook<Told> book = new PhraseBook<>();
    private final Set<String> verbs = new HashSet<>();
    private final Set<String> pairs = new HashSet<>();

    private record Told(String action, Form form, boolean state, String detail) {}

    /** @throws RulesBroken when a phrase cannot be read */
    public Actions(Words words) {
        Conjugation conjugation = new Conjugation(words.lists(FILE, "/irregular"));
        Map<String, List<String>> groups = new HashMap<>(words.lists(FILE, "/groups"));
        groups.put("animal", words.list("losses", "/animals"));
        groups.put("force", words.list("losses", "/forces"));
        for (String action : words.names(FILE, "/actions")) {
            String at = "/actions/" + action;
            addVerbs(words, at + "/verbs", groups, conjugation, action, null);
            addNouns(words, at + "/nouns", groups, conjugation, action);
            for (String detail : words.names(FILE, at + "/doings")) {
                addVerbs(words, at + "/doings/" + detail, groups, conjugation, action, detail);
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

    /** "Gave the leeks their second thinning", "thinning done": the doing as a noun. */
    private void addNouns(
            Words words, String at, Map<String, List<String>> groups, Conjugation conjugation, String action) {
        for (String noun : words.list(FILE, at)) {
            String giving = "give .. " + DETERMINER + "* " + noun;
            Phrase give = new Phrase(giving, groups);
            conjugation
                    .forms(giving)
                    .forEach((text, form) -> add(
                            words,
                            at,
                            giving,
                            form == Form.PLAIN ? give : give.inForm(text),
                            new Told(action, form, false, null)));
            List.of(
                            "(had|have had|has had|got|getting) " + DETERMINER + "* " + noun,
                            "(did|done|doing|finished|made) " + DETERMINER + "* " + noun,
                            DETERMINER + "+ " + noun + " (done|finished|complete|today|yesterday|for|of)",
                            noun + " (done|finished|complete|completed)")
                    .forEach(text -> add(words, at, text, groups, new Told(action, null, false, null)));
        }
    }

    private void addVerbs(
            Words words,
            String at,
            Map<String, List<String>> groups,
            Conjugation conjugation,
            String action,
            String detail) {
        List<String> all = new ArrayList<>(words.list(FILE, at));
        // "Earthed them up today" does not tell that they are up today.
        words.list(FILE, at).stream()
                .filter(verb -> verb.endsWith(" .. up") && verb.indexOf(' ') == verb.length() - UP.length())
                .forEach(verb -> all.add(verb.substring(0, verb.indexOf(' ')) + THEM_UP));
        for (String verb : all) {
            if (verb.startsWith("@") && groups.containsKey(groupOf(verb))) {
                addAnyOf(words, at, verb, groups, conjugation, new Told(action, null, false, detail));
                continue;
            }
            Phrase plain = new Phrase(verb, groups);
            conjugation.forms(verb).forEach((text, form) -> {
                if (form == Form.PLAIN_S) {
                    return; // "seeds", "plants", "flowers" are nouns here far more often than verbs.
                }
                Told told = new Told(action, form, false, detail);
                add(words, at, verb, form == Form.PLAIN ? plain : plain.inForm(text), told);
                int space = text.indexOf(' ');
                verbs.add(space < 0 ? text : text.substring(0, space));
                if (space > 0 && PARTICLES.contains(text.substring(space + 1))) {
                    pairs.add(text);
                }
            });
        }
    }

    /** "@placing .. in": any verb of a group, one phrase for each form. */
    private void addAnyOf(
            Words words, String at, String verb, Map<String, List<String>> groups, Conjugation conjugation, Told told) {
        Map<Form, List<String>> forms = new EnumMap<>(Form.class);
        for (String one : groups.get(groupOf(verb))) {
            conjugation.forms(one).forEach((text, form) -> {
                if (form != Form.PLAIN_S) {
                    forms.computeIfAbsent(form, first -> new ArrayList<>()).add(text);
                    verbs.add(text);
                }
            });
        }
        forms.forEach((form, texts) -> add(
                words,
                at,
                "(" + String.join("|", texts) + ")"
                        + verb.substring(1 + groupOf(verb).length()),
                groups,
                new Told(told.action(), form, false, told.detail())));
    }

    private static String groupOf(String verb) {
        int space = verb.indexOf(' ');
        return verb.substring(1, space < 0 ? verb.length() : space);
    }

    private void add(Words words, String at, String text, Map<String, List<String>> groups, Told told) {
        add(words, at, text, new Phrase(text, groups), told);
    }

    private void add(Words words, String at, String text, Phrase phrase, Told told) {
        try {
            book.add(phrase, told);
        } catch (IllegalArgumentException wrong) {
            throw new RulesBroken(
                    List.of(words.problem(FILE, at, "\"" + text + "\" is no phrase: " + wrong.getMessage() + ".")));
        }
    }

    public Set<String> vocabulary() {
        return book.vocabulary();
    }

    /** Verbs with the little word that belongs to them: "plant out". */
    Set<String> pairs() {
        return pairs;
    }

    /** Words that a slip of the thumb is most likely meant for: the verbs. */
    public Set<String> verbs() {
        return verbs;
    }

    /** All doings and states of a message in order; none uses another's words. */
    public List<ActionSaid> in(List<Token> tokens, Phrase.Slots slots) {
        List<ActionSaid> said = new ArrayList<>();
        for (PhraseBook.Found<Told> found : found(tokens, slots)) {
            Told told = found.meaning();
            if (told.action().equals("note")
                    && told.detail() == null
                    && (NotDone.asked(tokens, found.start()) || NotDone.ofAList(tokens, found.start()))) {
                continue;
            }
            if (told.form() == null
                    && (lastOf(said, tokens, told, found)
                            || gathered(said, tokens, slots, told, found.start())
                            || alreadyDone(said, tokens, slots, told, found.start())
                            || portion(said, tokens, told, found.start()))) {
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
        said.removeIf(one -> said.stream().anyMatch(next -> carries(one, next, tokens)));
        for (int i = 1; i < said.size(); i++) {
            if (shares(said.get(i - 1), said.get(i), tokens, slots)) {
                ActionSaid one = said.get(i);
                said.set(i, new ActionSaid(one.start(), one.end(), "fed", null, false, null, one.words()));
            }
        }
        return said;
    }

    /** "Garlic was planted in October, 60 cloves": what reaches over the comma is none, the verb before it is one by itself. */
    private List<PhraseBook.Found<Told>> found(List<Token> tokens, Phrase.Slots slots) {
        List<PhraseBook.Found<Told>> all = book.all(tokens, 0, tokens.size(), slots);
        all.removeIf(found -> found.meaning().form() != null && NotDone.acrossComma(tokens, found.place(), slots));
        all.removeIf(
                found -> NotDone.only(tokens, found.place(), found.meaning().form()));
        all.removeIf(found -> Qualifying.only(
                tokens, found.meaning().action(), found.meaning().form(), found.place(), slots));
        // "Planted sprouts out" sees none.
        all.removeIf(found -> found.meaning().action().equals("emerged")
                && tokens.get(found.start()).is("sprouts")
                && Company.handled(tokens, found.start()));
        List<PhraseBook.Found<Told>> verbs = List.copyOf(all);
        all.removeIf(found -> found.meaning().action().equals("emerged")
                && tokens.get(found.start()).is("up")
                && (headsUp(tokens, found) || verbs.stream().anyMatch(verb -> takesUp(verb, found))));
        // "Tipped a bucket over the lettuces" waters them; "2 kilo with pods on" were picked.
        all.removeIf(found -> found.meaning().form() == null
                && verbs.stream().anyMatch(verb -> tippedOver(verb, found) || carries(verb, found, tokens)));
        // "Before my shift", "after a long move", "on my lunch break".
        all.removeIf(found -> List.of("shift", "move", "break")
                        .contains(tokens.get(found.start()).word())
                && Company.owned(tokens, found.start()));
        // "Pulled all 10 lettuces up".
        all.removeIf(found -> found.meaning().action().equals("emerged")
                && found.meaning().form() == null
                && tokens.get(found.end() - 1).is("up")
                && verbs.stream()
                        .anyMatch(verb -> verb.meaning().form() != null
                                && verb.start() < found.start()
                                && verb.place().words().get(found.end() - 1)));
        all.removeIf(found -> verbs.stream().anyMatch(verb -> describes(verb, found, slots) || objectOf(verb, found)));
        return book.withoutShared(all);
    }

    private static boolean tippedOver(PhraseBook.Found<Told> verb, PhraseBook.Found<Told> found) {
        return found.meaning().action().equals("protected")
                && verb.meaning().action().equals("watered")
                && verb.meaning().form() != null
                && verb.start() < found.start()
                && verb.place().words().intersects(found.place().words());
    }

    private static boolean carries(PhraseBook.Found<Told> verb, PhraseBook.Found<Told> found, List<Token> tokens) {
        return found.meaning().action().equals("fruit-set")
                && verb.meaning().action().equals("harvested")
                && verb.start() < found.start()
                && tokens.get(found.start() - 1).is("with");
    }

    /** "Put the dried onions away": within another doing, right before the crop, it says of what kind they are. */
    private static boolean describes(PhraseBook.Found<Told> verb, PhraseBook.Found<Told> found, Phrase.Slots slots) {
        return found.meaning().form() == Form.PAST
                && found.end() - found.start() == 1
                && slots.end("crop", found.end()) > 0
                && verb.meaning().form() != null
                && verb.start() < found.start()
                && verb.place().words().length() - 1 > found.end();
    }

    /** "Planted 6 kale out on Wednesday", "put 24 leek seeds in a tray": what is told belongs to the verb right before it. */
    private static boolean objectOf(PhraseBook.Found<Told> verb, PhraseBook.Found<Told> found) {
        boolean planted = found.meaning().action().equals("planted-out")
                && verb.meaning().action().startsWith("planted");
        boolean seed = found.meaning().action().equals("sown")
                && !verb.meaning().action().equals("sown");
        return (planted || seed)
                && found.meaning().form() == null
                && verb.meaning().form() != null
                && verb.start() + 1 == found.start();
    }

    /** "Earthed the spuds up on Monday": the "up" belongs to the verb before it, and nothing is up. */
    private static boolean takesUp(PhraseBook.Found<Told> verb, PhraseBook.Found<Told> up) {
        return verb.meaning().form() != null
                && verb.start() < up.start()
                && verb.place().words().get(up.start());
    }

    /** "Heads up: slugs about"; "up: peas and radish" heads a list. */
    private static boolean headsUp(List<Token> tokens, PhraseBook.Found<Told> up) {
        return tokens.get(up.end() - 1).mark()
                && up.start() > 0
                && !tokens.get(up.start() - 1).mark();
    }

    /** "2 pints of comfrey tea to the peas, 4 pints to the tomatoes": the same feed. */
    private static boolean shares(ActionSaid before, ActionSaid one, List<Token> tokens, Phrase.Slots slots) {
        boolean bare = one.action().equals("watered")
                && one.form() == null
                && tokens.subList(one.start(), one.lastWord() + 1).stream()
                        .noneMatch(token -> token.word().startsWith("water"));
        return bare
                && before.action().equals("fed")
                && before.end() <= one.start()
                && tokens.subList(before.lastWord(), one.start()).stream().noneMatch(Token::endsSentence)
                && (slots.end("n", one.start()) > 0 || tokens.get(one.start()).is("a"));
    }

    /** "Given 3 litres liquid feed to the leeks": what was given is the feed, not water. */
    private static boolean carries(ActionSaid one, ActionSaid next, List<Token> tokens) {
        return one.action().equals("watered")
                && next.action().equals("fed")
                && one.end() <= next.start()
                && next.start() - one.lastWord() <= 2
                && tokens.subList(one.lastWord() + 1, next.start()).stream()
                        .allMatch(token -> token.is("of") || token.is("the") || token.is("a"));
    }

    /** "Planted the last of the onions" picks none. */
    private static boolean lastOf(List<ActionSaid> said, List<Token> tokens, Told told, PhraseBook.Found<Told> found) {
        ActionSaid before = said.isEmpty() ? null : said.get(said.size() - 1);
        return before != null
                && told.action().equals("harvested")
                && before.form() != null
                && found.start() - before.lastWord() <= 2
                && found.start() > before.lastWord()
                && tokens.subList(before.lastWord() + 1, found.start()).stream().noneMatch(Token::mark);
    }

    /** "Pulled thirty ears on the fourth", "picked the first pods": what was gathered is not only beginning to form. */
    private static boolean gathered(
            List<ActionSaid> said, List<Token> tokens, Phrase.Slots slots, Told told, int start) {
        ActionSaid before = said.isEmpty() ? null : said.get(said.size() - 1);
        return before != null
                && told.action().equals("fruit-set")
                && before.action().equals("harvested")
                && before.form() != null
                && start > before.lastWord()
                && IntStream.range(before.lastWord() + 1, start)
                        .allMatch(at -> LED.contains(tokens.get(at).word()) || counted(slots, at));
    }

    private static boolean counted(Phrase.Slots slots, int at) {
        return slots.end("n", at) > 0 || slots.end("n", at - 1) > at;
    }

    /** "Carrots in the bed" tells where they went, unless a verb before it did: "sowed carrots in the bed". */
    private static boolean alreadyDone(
            List<ActionSaid> said, List<Token> tokens, Phrase.Slots slots, Told told, int start) {
        int behind = slots.end("crop", start);
        boolean stands = behind > 0
                && behind < tokens.size()
                && Set.of("are", "is", "have", "has", "were")
                        .contains(tokens.get(behind).word()); // "Watered the peas and the kale is all netted".
        ActionSaid before = said.isEmpty() ? null : said.get(said.size() - 1);
        int counted = slots.end("n", start);
        if (before != null && before.form() != null && slots.end("crop", counted) > 0) {
            List<Token> between = tokens.subList(Math.min(before.lastWord() + 1, start), start);
            boolean setting = told.action().equals("planted") && SETTING.contains(before.action());
            // "Potted up 9 tomato plants into the bed", "pricked out the celery and 20 leeks into rows".
            if (between.stream().allMatch(token -> LED.contains(token.word()))
                    || setting && between.stream().noneMatch(Token::mark)) {
                return true;
            }
        }
        if (before == null || behind < 0 || stands) {
            return false;
        }
        return before.form() != null
                && tokens.subList(Math.min(before.end(), start), start).stream()
                        .noneMatch(token -> token.mark() && !listed(tokens, before.end(), token, slots));
    }

    /** The comma in "sowed 20 radishes, 30 carrots in bed 2": a crop ends before it and another item follows. */
    private static boolean listed(List<Token> tokens, int from, Token comma, Phrase.Slots slots) {
        int here = tokens.indexOf(comma);
        boolean crop = IntStream.range(from, here).anyMatch(at -> slots.end("crop", at) == here);
        int next = here + 1;
        next += next < tokens.size()
                        && (tokens.get(next).is("and") || tokens.get(next).is("a"))
                ? 1
                : 0;
        int item = next < tokens.size() && slots.end("n", next) > 0 ? slots.end("n", next) : next;
        return crop && comma.is(",") && item < tokens.size() && slots.end("crop", item) > 0;
    }

    /** "Fed the squash half a litre each": the litres are what the verb before gave. */
    private static boolean portion(List<ActionSaid> said, List<Token> tokens, Told told, int start) {
        ActionSaid before = said.isEmpty() ? null : said.get(said.size() - 1);
        return before != null
                && told.action().equals("watered")
                && Set.of("watered", "fed").contains(before.action())
                && before.form() != null
                && tokens.subList(before.lastWord(), Math.max(start, before.lastWord())).stream()
                        .noneMatch(token -> token.mark() || token.is("and"));
    }
}
