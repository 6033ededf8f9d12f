package bothy.reading.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What must be known of a phrase at once: that it can be read, the words that it can begin with and the words that it can hold. Much
 * cheaper than reading it into parts, which waits until the phrase is first looked for.
 *
 * @param beginnings the words that the phrase can begin with, empty when it may begin with anything
 * @param slot the slot with which it begins, {@code null} when it begins with none
 */
record Glance(Set<String> beginnings, String slot) {
    /** So many pieces hold the verb: "top dressed .. with". */
    private static final int HEAD = 2;

    /**
     * @param vocabulary takes the words that the phrase can hold
     * @throws IllegalArgumentException with what is wrong when the phrase cannot be read
     */
    static Glance at(String text, Map<String, List<String>> groups, Set<String> vocabulary) {
        List<String> pieces = PhraseParts.pieces(text);
        if (pieces.isEmpty()) {
            throw new IllegalArgumentException("a phrase without words");
        }
        pieces.forEach(piece -> words(piece, groups, vocabulary));
        return new Glance(beginnings(pieces, groups), slot(pieces.get(0)));
    }

    /** Of another form of a phrase that was glanced at only its head. */
    static Glance atHead(String text, Map<String, List<String>> groups, Set<String> vocabulary) {
        List<String> pieces = PhraseParts.pieces(text);
        pieces.subList(0, Math.min(pieces.size(), HEAD)).forEach(piece -> words(piece, groups, vocabulary));
        return new Glance(beginnings(pieces, groups), slot(pieces.get(0)));
    }

    /** The first word of each choice where no brackets stand within brackets. */
    private static List<String> heads(String inside) {
        List<String> heads = new ArrayList<>();
        int start = 0;
        for (int i = 0; i <= inside.length(); i++) {
            if (i == inside.length() || inside.charAt(i) == '|') {
                String choice = inside.substring(start, i).strip();
                int space = choice.indexOf(' ');
                heads.add(space < 0 ? choice : choice.substring(0, space));
                start = i + 1;
            }
        }
        return heads;
    }

    private static String slot(String first) {
        boolean slot = first.charAt(0) == '{' && first.charAt(first.length() - 1) == '}';
        return slot ? first.substring(1, first.length() - 1) : null;
    }

    private static Set<String> beginnings(List<String> pieces, Map<String, List<String>> groups) {
        Set<String> beginnings = new HashSet<>();
        for (String piece : pieces) {
            String bare = PhraseParts.bare(piece);
            if (PhraseParts.unless(bare)) {
                throw new IllegalArgumentException("what must not come next can only stand behind a word that must");
            }
            if (PhraseParts.gap(bare) || bare.charAt(0) == '{') {
                return Set.of();
            }
            String inside = bare.charAt(0) == '(' ? bare.substring(1, bare.length() - 1) : bare;
            for (String choice : inside.indexOf('(') < 0 ? heads(inside) : Choices.of(inside)) {
                if (choice.startsWith("@")) {
                    groups.get(choice.substring(1))
                            .forEach(member ->
                                    beginnings.add(PhraseParts.words(member).get(0)));
                    continue;
                }
                String first = PhraseParts.words(choice).get(0);
                if (first.charAt(0) == '{' || first.equals(PhraseParts.GAP_MARK)) {
                    return Set.of();
                }
                beginnings.add(first);
            }
            char ending = PhraseParts.ending(piece);
            if (ending != '?' && ending != '*') {
                return beginnings;
            }
        }
        return beginnings;
    }

    /** Every run of letters is a word, whatever brackets stand around it. */
    private static void words(String piece, Map<String, List<String>> groups, Set<String> into) {
        int start = 0;
        for (int i = 0; i <= piece.length(); i++) {
            char c = i == piece.length() ? ' ' : piece.charAt(i);
            if (" |()?*+!".indexOf(c) >= 0) {
                if (i > start) {
                    word(piece.substring(start, i), groups, into);
                }
                start = i + 1;
            }
        }
    }

    private static void word(String run, Map<String, List<String>> groups, Set<String> into) {
        if (PhraseParts.plain(run)) {
            into.add(run);
        } else if (run.charAt(0) == '@') {
            List<String> group = groups.get(run.substring(1));
            if (group == null) {
                throw new IllegalArgumentException("there is no group \"" + run.substring(1) + "\"");
            }
            group.forEach(member -> into.addAll(PhraseParts.words(member)));
        } else if (run.charAt(0) != '{' && !PhraseParts.gap(run)) {
            into.addAll(PhraseParts.words(run));
        }
    }
}
