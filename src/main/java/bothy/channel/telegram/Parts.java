package bothy.channel.telegram;

import java.util.ArrayList;
import java.util.List;

/** Cuts a long text into messages that the service takes, between paragraphs where it can. */
final class Parts {
    /** In UTF-16 units; the service refuses more than 4,096 (Bot API, sendMessage). */
    static final int LONGEST = 4_000;

    /** Where to cut, best first. */
    private static final List<String> BOUNDS = List.of("\n\n", "\n", ". ", " ");

    private Parts() {}

    static List<String> of(String text) {
        List<String> parts = new ArrayList<>();
        String rest = text.strip();
        while (rest.length() > LONGEST) {
            int cut = cut(rest);
            parts.add(rest.substring(0, cut).strip());
            rest = rest.substring(cut).strip();
        }
        parts.add(rest);
        return parts;
    }

    private static int cut(String text) {
        for (String bound : BOUNDS) {
            int found = text.lastIndexOf(bound, LONGEST - bound.length());
            if (found >= LONGEST / 4) {
                return found + bound.length();
            }
        }
        return Character.isHighSurrogate(text.charAt(LONGEST - 1)) ? LONGEST - 1 : LONGEST;
    }
}
