package bothy.reading.grammar;

import bothy.reading.text.Token;
import java.util.List;
import java.util.Set;

/** The words around a name that is an ordinary word too: whether they make a crop of it. */
final class Company {
    private static final Set<String> DETERMINERS = Set.of("the", "my", "our", "those", "all");
    private static final Set<String> TENDED = Set.of(
            "gave",
            "give",
            "fed",
            "watered",
            "staked",
            "netted",
            "thinned",
            "covered",
            "mulched",
            "protected",
            "sprayed",
            "tied",
            "earthed",
            "transplanted",
            "planted",
            "sowed",
            "picked",
            "harvested");

    /** Verbs of what is done to young plants, before their little word. */
    private static final Set<String> HANDLED = Set.of(
            "hardening",
            "hardened",
            "planting",
            "planted",
            "potting",
            "potted",
            "pricking",
            "pricked",
            "tying",
            "tied",
            "earthing",
            "earthed",
            "dibbed",
            "lined",
            "bedded",
            "set");

    private static final Set<String> SOWING = Set.of("sowed", "sown", "sow", "sowing");
    private static final Set<String> SOME_OF = Set.of("half", "some", "rest");
    private static final int LIST_REACH = 14;

    private Company() {}

    /** "Picked enough salad for two". */
    static boolean grownOrGathered(List<Token> tokens, int at) {
        boolean listed = at > 2
                && (SOME_OF.contains(tokens.get(at - 1).word())
                        || tokens.get(at - 1).is("the")
                                && SOME_OF.contains(tokens.get(at - 2).word()))
                && tokens.subList(Math.max(0, at - LIST_REACH), at).stream()
                        .anyMatch(token ->
                                SOWING.contains(token.word())); // "Sowed the radishes today and half the salad".
        return listed
                || tokens.subList(Math.max(0, at - 4), at).stream().anyMatch(token -> Set.of(
                                "sowed",
                                "sown",
                                "sow",
                                "sowing",
                                "picked",
                                "cut",
                                "planted",
                                "harvested",
                                "thinned",
                                "watered",
                                "gathered",
                                "grow",
                                "growing")
                        .contains(token.word()));
    }

    /** "Gave the sprouts a feed", "staked my runners": what the grower does something to. */
    static boolean tended(List<Token> tokens, int at) {
        return at > 1
                && DETERMINERS.contains(tokens.get(at - 1).word())
                && TENDED.contains(tokens.get(at - 2).word());
    }

    /** "Hardening off the sprouts", "planted out my runners": what is done only to plants. */
    static boolean handled(List<Token> tokens, int at) {
        boolean within = at > 0
                && HANDLED.contains(tokens.get(at - 1).word())
                && at + 1 < tokens.size()
                && Set.of("off", "out", "on", "up", "in")
                        .contains(tokens.get(at + 1).word()); // "Planted sprouts out".
        boolean right = at > 1
                && Set.of("off", "out", "on", "up", "in")
                        .contains(tokens.get(at - 1).word())
                && HANDLED.contains(tokens.get(at - 2).word()); // "Planted out sprouts".
        return within
                || right
                || at > 2
                        && DETERMINERS.contains(tokens.get(at - 1).word())
                        && Set.of("off", "out", "on", "up", "in")
                                .contains(tokens.get(at - 2).word())
                        && HANDLED.contains(tokens.get(at - 3).word());
    }

    /** "The cabbages were planted out on 28/5 and the sprouts on 2/6": the list of one doing goes on with what it names. */
    static boolean carriedOn(List<Token> tokens, int start, int end) {
        boolean joined = start > 2
                && DETERMINERS.contains(tokens.get(start - 1).word())
                && Set.of("and", ",", "then", "plus")
                        .contains(tokens.get(start - 2).word());
        boolean closes = end >= tokens.size()
                || tokens.get(end).mark()
                || Set.of("on", "today", "yesterday", "too", "as", "this", "last", "a")
                        .contains(tokens.get(end).word());
        return joined
                && closes
                && tokens.subList(0, start).stream()
                        .anyMatch(token -> TENDED.contains(token.word()) || HANDLED.contains(token.word()));
    }

    /** "The brandywines", "some sungold", "sowed musselburgh": a strange word where a crop stands. */
    static boolean pointedOut(List<Token> tokens, int at) {
        String before = at == 0 ? "" : tokens.get(at - 1).word();
        return DETERMINERS.contains(before)
                || TENDED.contains(before)
                || Set.of("some", "more", "few", "these", "both", "of", "sown", "sow", "sowing", "planting", "pricked")
                        .contains(before);
    }

    /** "In the salad", "for a salad": the dish; "coming out of our ears": no cobs. */
    static boolean eaten(List<Token> tokens, int at) {
        String before = at == 0 ? "" : tokens.get(at - 1).word();
        String further = at < 2 ? "" : tokens.get(at - 2).word();
        boolean bodily = tokens.get(at).is("ears")
                && Set.of("my", "our", "your", "their", "his", "her").contains(before)
                && Set.of("of", "out", "behind", "in", "between", "off", "over").contains(further);
        return bodily
                || tokens.get(at).is("salad")
                        && (Set.of("in", "into", "for", "with").contains(before)
                                || Set.of("a", "the", "our", "my", "tonight's").contains(before)
                                        && Set.of("in", "into", "for", "with", "made", "had", "of")
                                                .contains(further));
    }

    /** "Earlies in today, 30 tubers", "sprouts planted out": what is done something to heads the note. */
    private static boolean headsIn(List<Token> tokens, int start, int end) {
        boolean opens = start == 0
                || tokens.get(start - 1).endsSentence()
                || tokens.get(start - 1).mark();
        boolean done = (HANDLED.contains(word(tokens, end)) || TENDED.contains(word(tokens, end)))
                && word(tokens, end).endsWith("ed");
        return opens && done
                || opens
                        && word(tokens, end).equals("in")
                        && (end + 1 >= tokens.size()
                                || tokens.get(end + 1).mark()
                                || Set.of("today", "yesterday", "now", "this", "at", "last", "on")
                                        .contains(word(tokens, end + 1)));
    }

    /** "The runners are in": of what grows, not of people. */
    static boolean toldOf(List<Token> tokens, int start, int end) {
        return headsIn(tokens, start, end)
                || start > 0
                        && end < tokens.size()
                        && Set.of("the", "those", "these", "all")
                                .contains(tokens.get(start - 1).word())
                        && Set.of(
                                        "in",
                                        "up",
                                        "out",
                                        "are",
                                        "have",
                                        "need",
                                        "off",
                                        "look",
                                        "today",
                                        "yesterday",
                                        "this",
                                        "went")
                                .contains(tokens.get(end).word())
                        && !Set.of("sprouts", "leaks", "cloves", "mint", "leak")
                                .contains(tokens.get(start).word());
    }

    /** "No bigger than a pea", "like a pickled onion", "the size of peas": what it is measured by. */
    static boolean compared(List<Token> tokens, int at) {
        boolean described =
                word(tokens, at - 1).matches("(pickl|boil|cook|bak|roast|dri|mash|frozen|tinn|small|big|baby).*");
        int from = described ? at - 1 : at;
        String before = word(tokens, from - 1);
        String further = word(tokens, from - 2);
        boolean one = Set.of("a", "an").contains(before)
                && Set.of("than", "like", "as").contains(further);
        boolean like = described && before.equals("like");
        boolean article = Set.of("a", "an", "my", "your", "the").contains(before);
        boolean sized = word(tokens, article ? from - 2 : from - 1).equals("of")
                && word(tokens, article ? from - 3 : from - 2).equals("size");
        return one || like || sized;
    }

    /** "My shift", "a late shift", "my lunch break": a thing, no doing. */
    static boolean owned(List<Token> tokens, int at) {
        int before = Set.of(
                                "lunch", "tea", "coffee", "dinner", "late", "early", "night", "day", "long", "double",
                                "next", "last")
                        .contains(word(tokens, at - 1))
                ? at - 2
                : at - 1;
        return Set.of("my", "the", "a", "his", "her", "this").contains(word(tokens, before));
    }

    private static String word(List<Token> tokens, int at) {
        return at < 0 || at >= tokens.size() ? "" : tokens.get(at).word();
    }

    static boolean ledByNumber(List<Token> tokens, int at) {
        return at > 0
                && (tokens.get(at - 1).sort() == Token.Sort.NUMBER
                        || Set.of(
                                        "my",
                                        "our",
                                        "me",
                                        "of",
                                        "dozen",
                                        "doz",
                                        "hundred",
                                        "two",
                                        "three",
                                        "four",
                                        "five",
                                        "six",
                                        "seven",
                                        "eight",
                                        "nine",
                                        "ten",
                                        "twelve",
                                        "fifteen",
                                        "sixteen",
                                        "eighteen",
                                        "twenty",
                                        "thirty",
                                        "forty",
                                        "fifty",
                                        "sixty",
                                        "ninety")
                                .contains(tokens.get(at - 1).word()));
    }
}
