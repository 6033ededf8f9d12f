package bothy.almanac;

/**
 * Something wrong in the rules folder.
 *
 * @param file path within the folder ("crops/tomato.yaml")
 * @param line line counted from 1, 0 when the whole file is meant
 * @param text what was found, what is allowed and what to do, as a sentence or two
 */
public record Problem(String file, int line, String text) {
    @Override
    public String toString() {
        return line > 0 ? file + ":" + line + ": " + text : file + ": " + text;
    }
}
