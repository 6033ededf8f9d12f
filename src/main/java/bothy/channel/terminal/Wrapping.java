package bothy.channel.terminal;

/** Breaks lines between words, so that a terminal does not break them inside one. */
final class Wrapping {
    private Wrapping() {}

    /** The text with lines of at most {@code width} characters where words allow it; as it is when the width is not known. */
    static String at(int width, String text) {
        if (width < 20) {
            return text;
        }
        StringBuilder wrapped = new StringBuilder();
        for (String line : text.split("\n", -1)) {
            wrapped.append(wrapped.length() == 0 ? "" : "\n").append(line(width, line));
        }
        return wrapped.toString();
    }

    private static String line(int width, String line) {
        StringBuilder wrapped = new StringBuilder();
        int column = 0;
        for (String word : line.split(" ", -1)) {
            if (column > 0 && column + 1 + word.length() > width) {
                wrapped.append('\n');
                column = 0;
            } else if (wrapped.length() > 0) {
                wrapped.append(' ');
                column++;
            }
            wrapped.append(word);
            column += word.length();
        }
        return wrapped.toString();
    }
}
