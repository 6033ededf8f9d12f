package bothy.conversation;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Set;

/**
 * Who is let in.
 *
 * @param mode whether everybody is
 * @param codes invitation codes, secrets
 * @param listed growers' keys ("telegram:4711") that are let in
 * @param operators growers' keys that may ask how the service is doing; they are let in
 * @param perMinute how many messages a minute one chat may write, 0 for any number
 */
public record Door(Mode mode, Set<String> codes, Set<String> listed, Set<String> operators, int perMinute) {

    /** Who is let in. */
    public enum Mode {
        /** Everybody. */
        OPEN,
        /** Who tells an invitation code, once. */
        INVITED,
        /** Who is on the list. */
        LISTED
    }

    public Door {
        codes = Set.copyOf(codes);
        listed = Set.copyOf(listed);
        operators = Set.copyOf(operators);
    }

    /** Open to all, without any limit. */
    public static Door open() {
        return new Door(Mode.OPEN, Set.of(), Set.of(), Set.of(), 0);
    }

    boolean knows(String grower) {
        return mode == Mode.OPEN || listed.contains(grower) || operators.contains(grower);
    }

    /** Whether a text tells a code. Takes as long for a wrong code as for a right one. */
    boolean opensWith(String text) {
        boolean opens = false;
        for (String word : text.strip().split("\\s+", 8)) {
            for (String code : codes) {
                opens |= MessageDigest.isEqual(
                        code.getBytes(StandardCharsets.UTF_8), word.getBytes(StandardCharsets.UTF_8));
            }
        }
        return opens;
    }

    @Override
    public String toString() {
        return "Door[" + mode + ", " + codes.size() + " codes, " + listed.size() + " listed]";
    }
}
