package bothy.almanac.troubles;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words that each cause is told with, and how like a portrait the words of a description are. A word counts the more the fewer
 * causes it is told of (its weight is the logarithm of all causes over those, squared as in the cosine of two such lists).
 *
 * <p>Source of the method: K. Spärck Jones 1972, A statistical interpretation of term specificity; G. Salton 1975, A vector space
 * model for automatic indexing; both from memory. The words are by judgement. Immutable and safe to share.
 */
public final class Portraits {
    private static final Pattern WORD = Pattern.compile("[a-z']+");
    private static final List<String> ENDINGS =
            List.of("ings", "ing", "edly", "ed", "en", "ies", "es", "s", "ly", "ish", "y");
    private static final int SHORTEST = 3;

    private final Map<String, Set<String>> stems = new HashMap<>();
    private final Map<String, Double> worth = new HashMap<>();
    private final Map<String, List<String>> holders = new HashMap<>();
    private final Map<String, Double> full = new HashMap<>();
    /** What a portrait of usual length comes to: a short one is not the likelier for being short. */
    private final double usual;

    /** @param words the words of each cause, as a text */
    Portraits(Map<String, String> words) {
        Map<String, Integer> causes = new HashMap<>();
        words.forEach((cause, text) -> {
            Set<String> own = new HashSet<>();
            words(text).forEach(word -> own.add(stem(word)));
            own.forEach(stem -> causes.merge(stem, 1, Integer::sum));
            stems.put(cause, own);
        });
        causes.forEach((stem, count) -> worth.put(stem, Math.log((double) words.size() / count)));
        stems.forEach((cause, own) -> {
            full.put(cause, own.stream().mapToDouble(this::square).sum());
            own.forEach(stem ->
                    holders.computeIfAbsent(stem, first -> new ArrayList<>()).add(cause));
        });
        usual = full.values().stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElse(1);
    }

    /** The words of a text that some portrait holds, each once, in the order told. */
    public List<String> known(String text) {
        Map<String, String> known = new java.util.LinkedHashMap<>();
        for (String word : words(text)) {
            if (worth.containsKey(stem(word))) {
                known.putIfAbsent(stem(word), word);
            }
        }
        return List.copyOf(known.values());
    }

    /**
     * How like each cause's portrait the words told are.
     *
     * @param told words that portraits hold
     * @return by cause, above 0 (no word shared: the cause is not in it) up to 1 (the same words)
     */
    public Map<String, Double> likenesses(Collection<String> told) {
        Map<String, Double> shared = new HashMap<>();
        double all = 0;
        for (String stem : stemsOf(told)) {
            double weight = square(stem);
            all += weight;
            holders.getOrDefault(stem, List.of()).forEach(cause -> shared.merge(cause, weight, Double::sum));
        }
        double told2 = all;
        shared.values().removeIf(weight -> weight <= 0);
        shared.replaceAll((cause, weight) -> weight / Math.sqrt(Math.max(usual, full.get(cause)) * told2));
        return shared;
    }

    private static Set<String> stemsOf(Collection<String> words) {
        Set<String> stemsOf = new LinkedHashSet<>();
        words.forEach(word -> stemsOf.add(stem(word)));
        return stemsOf;
    }

    /** The words told that a cause's portrait holds. */
    public List<String> shared(String cause, Collection<String> told) {
        Set<String> own = stems.getOrDefault(cause, Set.of());
        return told.stream().filter(word -> own.contains(stem(word))).toList();
    }

    /** The causes that have a portrait. */
    public Set<String> causes() {
        return Set.copyOf(stems.keySet());
    }

    private double square(String stem) {
        double weight = worth.getOrDefault(stem, 0.0);
        return weight * weight;
    }

    private static List<String> words(String text) {
        Matcher matcher = WORD.matcher(text.toLowerCase(Locale.ROOT).replace('\u2019', '\''));
        return matcher.results().map(found -> found.group().replace("'", "")).toList();
    }

    /** A word without its ending: "rotting", "rotted" and "rots" are all "rot". */
    private static String stem(String word) {
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
