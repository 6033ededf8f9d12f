package bothy.almanac.troubles;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Words without their endings: "rotting", "rotted" and "rots" are all "rot". */
final class Stems {
    private static final Pattern WORD = Pattern.compile("[a-z']+");
    private static final List<String> ENDINGS =
            List.of("ings", "ing", "edly", "ed", "en", "ies", "es", "s", "ly", "ish", "y");
    private static final int SHORTEST = 3;

    private static final String DENIED = Troubles.DENIED;

    private static final Set<String> DENYING = Set.of(
            "no", "not", "never", "without", "nor", "neither", "isnt", "arent", "doesnt", "dont", "didnt", "wont",
            "cant", "cannot", "havent", "hasnt", "wasnt", "werent");
    /** So many words on at most stands what is denied: "not a single hole". */
    private static final int REACH = 4;

    private Stems() {}

    static List<String> words(String text) {
        Matcher matcher = WORD.matcher(text.toLowerCase(Locale.ROOT).replace('\u2019', '\''));
        List<String> words = new ArrayList<>();
        while (matcher.find()) {
            words.add(matcher.group().replace("'", ""));
        }
        return words;
    }

    /**
     * Words with those that are denied marked: "no holes, never wilted, not a single slug".
     *
     * @param littleWords stems of words between which and what is denied nothing else is told
     */
    static List<String> denied(List<String> words, Set<String> littleWords) {
        List<String> marked = new ArrayList<>();
        int reach = 0;
        for (String word : words) {
            if (DENYING.contains(word)) {
                reach = REACH;
                marked.add(word);
            } else if (reach > 0 && !littleWords.contains(stem(word))) {
                marked.add(DENIED + word);
                reach = 0;
            } else {
                marked.add(word);
                reach--;
            }
        }
        return marked;
    }

    static Set<String> of(Collection<String> words) {
        Set<String> stems = new LinkedHashSet<>();
        words.forEach(word -> stems.add(stem(word)));
        return stems;
    }

    static String stem(String word) {
        return word.startsWith(DENIED) ? DENIED + bare(word.substring(DENIED.length())) : bare(word);
    }

    private static String bare(String word) {
        String stem = word;
        for (String ending : ENDINGS) {
            if (stem.endsWith(ending) && stem.length() - ending.length() >= SHORTEST) {
                stem = stem.substring(0, stem.length() - ending.length()) + (ending.equals("ies") ? "y" : "");
                break;
            }
        }
        int last = stem.length() - 1;
        if (last >= SHORTEST
                && stem.charAt(last) == stem.charAt(last - 1)
                && "aeiousl".indexOf(stem.charAt(last)) < 0) {
            stem = stem.substring(0, last);
        }
        if (stem.length() > SHORTEST && stem.endsWith("e")) {
            stem = stem.substring(0, stem.length() - 1);
        }
        return stem.length() > SHORTEST && stem.endsWith("y") ? stem.substring(0, stem.length() - 1) : stem;
    }
}
