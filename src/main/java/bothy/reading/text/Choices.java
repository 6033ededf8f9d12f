package bothy.reading.text;

import java.util.ArrayList;
import java.util.List;

/** Writes out the choices within brackets, also where brackets stand in brackets: "frost has (got|hit)|frosted". */
final class Choices {
    private Choices() {}

    /** Every choice as plain words. */
    static List<String> of(String inside) {
        List<String> all = new ArrayList<>();
        for (String choice : apart(inside)) {
            all.addAll(writtenOut(choice.strip()));
        }
        return all;
    }

    private static List<String> apart(String text) {
        List<String> parts = new ArrayList<>();
        int depth = 0;
        int start = 0;
        for (int i = 0; i <= text.length(); i++) {
            char c = i == text.length() ? '|' : text.charAt(i);
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (c == '|' && depth <= 0) {
                parts.add(text.substring(start, i));
                start = i + 1;
            }
        }
        return parts;
    }

    private static List<String> writtenOut(String choice) {
        int open = choice.indexOf('(');
        if (open < 0) {
            return List.of(choice.contains("  ") ? choice.replaceAll(" +", " ").strip() : choice.strip());
        }
        int close = closing(choice, open);
        boolean optional = close + 1 < choice.length() && choice.charAt(close + 1) == '?';
        String after = choice.substring(optional ? close + 2 : close + 1);
        List<String> all = new ArrayList<>();
        for (String inner : of(choice.substring(open + 1, close))) {
            all.addAll(writtenOut(choice.substring(0, open) + inner + after));
        }
        if (optional) {
            all.addAll(writtenOut(choice.substring(0, open) + after));
        }
        return all;
    }

    private static int closing(String text, int open) {
        int depth = 0;
        for (int i = open; i < text.length(); i++) {
            depth += text.charAt(i) == '(' ? 1 : text.charAt(i) == ')' ? -1 : 0;
            if (depth == 0) {
                return i;
            }
        }
        throw new IllegalArgumentException("the brackets in \"" + text + "\" do not close");
    }
}
