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
        SlipsOfThePen.pastApart(tokens, this::known);
        Dictated.decimals(tokens);
        Dictated.marks(tokens);
        spokenDates.figures(tokens);
        besideOthers(tokens);
        SlipsOfThePen.setRight(tokens);
        PutRightAfter.in(tokens, this::ofTheTrade);
        SelfAnswered.tell(tokens);
        return tokens;
    }

    private boolean ofTheTrade(String word) {
        return !word.isEmpty() && wanted.getOrDefault(word.charAt(0), List.of()).contains(word);
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
