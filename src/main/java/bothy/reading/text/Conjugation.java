package bothy.reading.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The forms of a verb: irregular ones from the words files, the rest by the rules of English spelling. */
public final class Conjugation {
    private static final Set<Character> VOWELS = Set.of('a', 'e', 'i', 'o', 'u');
    /** Words before the verb that stay as they are: "top dress", "top dressed". */
    private static final Set<String> PREFIXES =
            Set.of("top", "side", "re", "direct", "bottom", "hand", "deep", "station", "up");

    private final Map<String, List<String>> irregular;

    /** The form a verb stands in. */
    public enum Form {
        /** "sow"; also "put" and "cut", which may be past. */
        PLAIN,
        /** "sows". */
        PLAIN_S,
        /** "sowed", "sown". */
        PAST,
        /** "sowing". */
        ING
    }

    /** @param irregular past forms by plain form ("sow": "sowed", "sown") */
    public Conjugation(Map<String, List<String>> irregular) {
        this.irregular = Map.copyOf(irregular);
    }

    /** A phrase that begins with a plain verb ("plant .. out"), in all its forms. */
    public Map<String, Form> forms(String phrase) {
        String trimmed = phrase.strip();
        int space = trimmed.indexOf(' ');
        if (space > 0 && PREFIXES.contains(trimmed.substring(0, space))) {
            return prefixed(trimmed.substring(0, space + 1), forms(trimmed.substring(space + 1)));
        }
        String verb = space < 0 ? trimmed : trimmed.substring(0, space);
        String rest = space < 0 ? "" : trimmed.substring(space);
        Map<String, Form> forms = new LinkedHashMap<>();
        forms.put(verb + rest, Form.PLAIN);
        forms.put(third(verb) + rest, Form.PLAIN_S);
        forms.put(ing(verb) + rest, Form.ING);
        past(verb).forEach(past -> forms.put(past + rest, Form.PAST));
        return forms;
    }

    private static Map<String, Form> prefixed(String prefix, Map<String, Form> forms) {
        Map<String, Form> prefixed = new LinkedHashMap<>();
        forms.forEach((text, form) -> prefixed.put(prefix + text, form));
        return prefixed;
    }

    private List<String> past(String verb) {
        List<String> past = irregular.get(verb);
        if (past != null) {
            return past;
        }
        List<String> regular = new ArrayList<>();
        if (verb.endsWith("e")) {
            regular.add(verb + "d");
        } else if (consonantY(verb)) {
            regular.add(verb.substring(0, verb.length() - 1) + "ied");
        } else {
            regular.add((doubles(verb) ? verb + verb.charAt(verb.length() - 1) : verb) + "ed");
        }
        return regular;
    }

    private static String ing(String verb) {
        if (verb.endsWith("ie")) {
            return verb.substring(0, verb.length() - 2) + "ying";
        }
        if (verb.endsWith("e") && !verb.endsWith("ee")) {
            return verb.substring(0, verb.length() - 1) + "ing";
        }
        return (doubles(verb) ? verb + verb.charAt(verb.length() - 1) : verb) + "ing";
    }

    private static String third(String verb) {
        if (consonantY(verb)) {
            return verb.substring(0, verb.length() - 1) + "ies";
        }
        return verb + (verb.matches(".*(s|x|z|ch|sh|o)") ? "es" : "s");
    }

    private static boolean consonantY(String verb) {
        return verb.length() > 1 && verb.endsWith("y") && !VOWELS.contains(verb.charAt(verb.length() - 2));
    }

    /** "pot" → "potted", "repot" → "repotted", but "water" → "watered". */
    private static boolean doubles(String word) {
        String verb = word.startsWith("re") && word.length() > 4 ? word.substring(2) : word;
        int last = verb.length() - 1;
        return verb.length() >= 3
                && verb.length() <= 4
                && !VOWELS.contains(verb.charAt(last))
                && "wxy".indexOf(verb.charAt(last)) < 0
                && VOWELS.contains(verb.charAt(last - 1))
                && !VOWELS.contains(verb.charAt(last - 2));
    }
}
