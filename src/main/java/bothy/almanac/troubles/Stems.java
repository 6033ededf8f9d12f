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

    private Stems() {}

    static List<String> words(String text) {
        Matcher matcher = WORD.matcher(text.toLowerCase(Locale.ROOT).replace('\u2019', '\''));
        List<String> words = new ArrayList<>();
        while (matcher.find()) {
            words.add(matcher.group().replace("'", ""));
        }
        return words;
    }

    static Set<String> of(Collection<String> words) {
        Set<String> stems = new LinkedHashSet<>();
        words.forEach(word -> stems.add(stem(word)));
        return stems;
    }

    static String stem(String word) {
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
