package bothy.reading.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * Sets right what was misspelled, and nothing else: a word is changed only when it is neither a word of ours nor an ordinary
 * English one, and one word of the trade is nearer than all others. A tie is left as it stands and told apart.
 */
public final class Spelling {
    private static final Set<String> BEHIND_INCHES = Set.of("rain", "rainfall", "apart", "tall", "high");
    /** "Wed be eating them". */
    private static final Map<String, String> WOULD_TOO =
            Map.of("wed", "we", "id", "i", "youd", "you", "theyd", "they", "itd", "it");
    /** Letters before which "an" may stand; "an hour". */
    private static final String VOWELS = "aeiouhx";

    private static final Set<String> BEFORE_STATE = Set.of(
            "on",
            "over",
            "off",
            "in",
            "out",
            "up",
            "down",
            "finally",
            "just",
            "quite",
            "very",
            "really",
            "so",
            "too",
            "all",
            "now",
            "still",
            "bone",
            "through",
            "dry",
            "wet",
            "moist",
            "damp",
            "not",
            "a",
            "got",
            "been",
            "going",
            "turning",
            "looking",
            "starting",
            "flowering",
            "ready",
            "ripe",
            "full",
            "gone",
            "already",
            "covered",
            "soaking",
            "growing",
            "coming");
    private static final Set<String> APPROXIMATE = Set.of("ish", "odd");
    private static final int SHORTEST = 4;
    private static final int LONG = 8;
    /** A word two slips away begins with the same letters: "revolting" is no "repotting". */
    private static final int ALIKE = 3;

    private final Map<String, List<String>> rewritten = new HashMap<>();
    private final Set<String> known = new HashSet<>();
    private final Map<Character, List<String>> wanted = new HashMap<>();
    private final Set<String> pairs;
    /** Names in two words by how they look written as one: "frenchbeans". */
    private final Map<String, List<String>> together = new HashMap<>();

    private final SpokenDates spokenDates;
    private final UnaryOperator<String> meaning;

    /**
     * @param rewritten short forms and what they stand for ("yest" → "yesterday")
     * @param ordinary words that are right as they stand
     * @param wanted words of the trade that a misspelled word may be meant for
     * @param pairs names of the trade in two words ("runner beans"): what stands beside tells which of several is meant
     * @param spokenDates days of the month written out
     * @param meaning what a word of the trade stands for; of words with the same meaning any will do
     */
    public Spelling(
            Map<String, String> rewritten,
            Set<String> ordinary,
            Set<String> wanted,
            Set<String> pairs,
            SpokenDates spokenDates,
            UnaryOperator<String> meaning) {
        this.pairs = pairs;
        pairs.forEach(pair -> together.put(pair.replace(" ", ""), List.of(pair.split(" "))));
        this.spokenDates = spokenDates;
        this.meaning = meaning;
        rewritten.forEach((shortForm, full) -> this.rewritten.put(shortForm, List.of(full.split(" "))));
        known.addAll(ordinary);
        known.addAll(wanted);
        for (String word : wanted) {
            if (word.length() >= SHORTEST) {
                this.wanted
                        .computeIfAbsent(word.charAt(0), first -> new ArrayList<>())
                        .add(word);
            }
        }
    }

    /** The message's tokens with short forms written out and misspelled words set right. */
    public List<Token> tokens(String message) {
        List<Token> tokens = new ArrayList<>();
        for (Token token : Scanner.scan(message)) {
            if (APPROXIMATE.contains(token.word()) && !tokens.isEmpty() && counts(tokens.get(tokens.size() - 1))) {
                continue;
            }
            if (token.is("in") && !tokens.isEmpty() && counts(tokens.get(tokens.size() - 1)) && joined(tokens, token)) {
                tokens.add(token.spelled("inch")); // "6in apart", but "6 in pots".
            } else if (token.aWord()) {
                spellOut(token, tokens);
            } else {
                tokens.add(token);
            }
        }
        pastApart(tokens);
        Dictated.marks(tokens);
        spokenDates.figures(tokens);
        besideOthers(tokens);
        isForS(tokens);
        anForAnd(tokens);
        inForInch(tokens);
        hadForWould(tokens);
        return tokens;
    }

    /** "Runner bans": alone it could be several words, after "runner" only one. */
    private void besideOthers(List<Token> tokens) {
        for (int at = 0; at < tokens.size(); at++) {
            Token token = tokens.get(at);
            if (token.aWord() && !known(token.word())) {
                String before = at == 0 ? "" : tokens.get(at - 1).word();
                String after = at + 1 == tokens.size() ? "" : tokens.get(at + 1).word();
                List<String> fitting = nearest(token.word()).stream()
                        .filter(near -> pairs.contains(before + " " + near) || pairs.contains(near + " " + after))
                        .toList();
                if (!fitting.isEmpty()) {
                    tokens.set(at, token.spelled(fitting.get(0)));
                }
            }
        }
    }

    private static boolean joined(List<Token> tokens, Token next) {
        return tokens.get(tokens.size() - 1).to() == next.from();
    }

    /** "80ish", "30 odd": the number alone tells. */
    private static boolean counts(Token token) {
        return token.sort() == Token.Sort.NUMBER;
    }

    /** "Fed the peas an watered the beans": before a consonant no "an" stands. */
    private static void anForAnd(List<Token> tokens) {
        for (int at = 1; at + 1 < tokens.size(); at++) {
            Token next = tokens.get(at + 1);
            if (tokens.get(at).is("an")
                    && next.aWord()
                    && VOWELS.indexOf(next.word().charAt(0)) < 0) {
                tokens.set(at, tokens.get(at).spelled("and"));
            }
        }
    }

    /** "0.4 in rain", "6 in apart": inches. */
    private static void inForInch(List<Token> tokens) {
        for (int at = 1; at + 1 < tokens.size(); at++) {
            if (tokens.get(at).is("in")
                    && counts(tokens.get(at - 1))
                    && BEHIND_INCHES.contains(tokens.get(at + 1).word())) {
                tokens.set(at, tokens.get(at).spelled("inch"));
            }
        }
    }

    /** "We'd be eating them by now": what could be. */
    private static void hadForWould(List<Token> tokens) {
        for (int at = 0; at + 1 < tokens.size(); at++) {
            boolean be = tokens.get(at + 1).is("be");
            if (be && tokens.get(at).is("had")) {
                tokens.set(at, tokens.get(at).spelled("would"));
            } else if (be && WOULD_TOO.containsKey(tokens.get(at).word())) {
                Token token = tokens.get(at);
                tokens.set(at, token.spelled("would"));
                tokens.add(at, token.spelled(WOULD_TOO.get(token.word())));
            }
        }
    }

    /** "Transplant Ed 8 peppers": a telephone that knows a man of that name. */
    private void pastApart(List<Token> tokens) {
        for (int at = 1; at < tokens.size(); at++) {
            Token verb = tokens.get(at - 1);
            String past = verb.word() + (verb.word().endsWith("e") ? "d" : "ed");
            if (tokens.get(at).is("ed") && verb.aWord() && known(past)) {
                tokens.set(
                        at - 1,
                        new Token(
                                past,
                                verb.sort(),
                                verb.number(),
                                verb.from(),
                                tokens.get(at).to(),
                                verb.capital(),
                                true));
                tokens.remove(at);
            }
        }
    }

    /** "Soil's quite wet": before such a word the 's is short for "is". */
    private static void isForS(List<Token> tokens) {
        for (int at = 0; at + 1 < tokens.size(); at++) {
            if (tokens.get(at).is("'s")
                    && BEFORE_STATE.contains(tokens.get(at + 1).word())) {
                tokens.set(at, tokens.get(at).spelled("is"));
            }
        }
    }

    /** Words of the trade that are equally near to a word that was not set right; empty when none is near. */
    public List<String> near(String word) {
        return known(word) ? List.of() : nearest(word);
    }

    public boolean known(String word) {
        return known.contains(word);
    }

    private void spellOut(Token token, List<Token> into) {
        List<String> full = rewritten.get(token.word());
        if (full == null) {
            full = Contractions.apart(token.word());
        }
        if (full.size() > 1 || !full.get(0).equals(token.word())) {
            full.forEach(word -> into.add(
                    new Token(word, token.sort(), token.number(), token.from(), token.to(), token.capital(), false)));
            return;
        }
        List<String> apart = known(token.word()) ? List.of() : together.getOrDefault(token.word(), List.of());
        if (!apart.isEmpty()) {
            apart.forEach(word -> into.add(
                    new Token(word, token.sort(), token.number(), token.from(), token.to(), token.capital(), true)));
            return;
        }
        into.add(setRight(token));
    }

    private Token setRight(Token token) {
        String word = token.word();
        if (known(word)) {
            return token;
        }
        String bare = word.replace("'", "");
        if (known(bare)) {
            return token.spelled(bare);
        }
        if (bare.endsWith("in") && known(bare + "g")) {
            return token.spelled(bare + "g"); // "Lookin", "plantin'".
        }
        List<String> nearest = nearest(bare);
        return nearest.size() == 1 ? token.spelled(inThePast(bare, nearest.get(0))) : token;
    }

    /** "Wated" is meant for "watered", not for "water", and "prickd" for "pricked". */
    private String inThePast(String word, String near) {
        String past = near + "ed";
        boolean told = word.endsWith("d") && !near.endsWith("d");
        return told && wanted.getOrDefault(past.charAt(0), List.of()).contains(past) ? past : near;
    }

    private List<String> nearest(String word) {
        if (word.length() < SHORTEST || word.length() > 24) {
            return List.of();
        }
        int best = word.length() >= LONG ? 2 : 1;
        List<String> nearest = new ArrayList<>();
        for (String candidate : wanted.getOrDefault(word.charAt(0), List.of())) {
            boolean far = best > 1 && !candidate.regionMatches(0, word, 0, ALIKE);
            int slips = Nearness.slips(word, candidate, far ? 1 : best);
            slips = far && slips > 1 ? best + 1 : slips;
            if (slips < best) {
                nearest.clear();
                best = slips;
            }
            if (slips <= best) {
                nearest.add(candidate);
            }
        }
        return oneOrTie(word, nearest);
    }

    /** Of two that are equally near the one with the same letters in another order, or the same length, is meant. */
    private List<String> oneOrTie(String word, List<String> nearest) {
        if (nearest.size() < 2) {
            return nearest;
        }
        List<String> sameLetters = nearest.stream()
                .filter(candidate -> sorted(candidate).equals(sorted(word)))
                .toList();
        if (sameLetters.size() == 1) {
            return sameLetters;
        }
        List<String> undoubled = nearest.stream()
                .filter(candidate -> undoubled(candidate).equals(undoubled(word)))
                .toList();
        if (undoubled.size() == 1) {
            return undoubled; // "Thined" is rather "thinned" than "twined".
        }
        if (word.endsWith("ed")) {
            List<String> past = nearest.stream()
                    .filter(candidate -> candidate.endsWith("ed"))
                    .toList();
            if (past.size() == 1) {
                return past;
            }
        }
        String first = nearest.get(0);
        boolean oneMeaning =
                nearest.stream().allMatch(other -> meaning.apply(other).equals(meaning.apply(first)));
        return oneMeaning ? List.of(first) : nearest;
    }

    private static String undoubled(String word) {
        return word.replaceAll("(.)\\1", "$1");
    }

    private static String sorted(String word) {
        return word.chars()
                .sorted()
                .collect(StringBuilder::new, (letters, letter) -> letters.append((char) letter), StringBuilder::append)
                .toString();
    }
}
