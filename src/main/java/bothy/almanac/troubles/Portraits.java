package bothy.almanac.troubles;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The words that each cause is told with: what a description's words make of each cause ({@link #chances}), and, for whether it describes
 * a trouble at all, how like them the words are: like a cause's portrait (all its words),
 * and like the nearest two of its tellings (each the words of one picture of it, at some crops): one telling may be like by chance. A word counts the more the fewer causes it is
 * told of (its weight is the logarithm of all causes over those, squared as in the cosine of two such lists).
 *
 * <p>Source of the method: K. Spärck Jones 1972, A statistical interpretation of term specificity; G. Salton 1975, A vector space
 * model for automatic indexing; both from memory. The words are by judgement. Immutable and safe to share.
 */
public final class Portraits {
    /** A telling at the very crop counts so much more than one at any crop. By judgement, tried on growers' descriptions. */
    private static final double AT_THE_CROP = 1.3;
    /** What full likeness to a cause's portrait, to its nearest telling and to the next one count. By judgement, tried so too. */
    private static final double PORTRAIT = 0.8;

    private static final double NEAREST = 0.9;
    private static final double NEXT = 0.3;

    /** One way in which a cause is told, at some crops or groups of crops. */
    record Telling(String cause, List<String> crops, String words) {}

    private record Picture(String cause, List<String> crops, Set<String> stems) {
        boolean ofAnyCrop() {
            return crops.contains("any");
        }
    }

    private final Set<String> overlooked;
    private final List<Picture> portraits = new ArrayList<>();
    private final List<Picture> tellings = new ArrayList<>();
    private final Map<String, Set<String>> stems = new HashMap<>();
    private final Map<String, Double> worth = new HashMap<>();
    private final double[] full;
    private final Map<String, List<Integer>> holders = new HashMap<>();
    /** What a portrait, and what a telling, of usual length comes to: a short one is not the likelier for being short. */
    private final double usualPortrait;

    private final double usualTelling;

    private final WordOdds odds;

    /**
     * @param words the words of each cause, as a text
     * @param told the tellings
     * @param overlooked words that tell nothing anywhere
     */
    Portraits(Map<String, String> words, List<Telling> told, Collection<String> overlooked) {
        this.overlooked = Stems.of(overlooked);
        words.forEach((cause, text) -> portraits.add(new Picture(cause, List.of("any"), telling(text))));
        told.forEach(one -> tellings.add(new Picture(one.cause(), one.crops(), telling(one.words()))));
        List<Picture> all = new ArrayList<>(portraits);
        all.addAll(tellings);
        all.forEach(picture ->
                stems.computeIfAbsent(picture.cause(), first -> new HashSet<>()).addAll(picture.stems()));
        Map<String, Integer> causes = new HashMap<>();
        stems.values().forEach(own -> own.forEach(stem -> causes.merge(stem, 1, Integer::sum)));
        causes.forEach((stem, count) -> worth.put(stem, Math.log((double) stems.size() / count)));
        full = all.stream()
                .mapToDouble(
                        one -> one.stems().stream().mapToDouble(this::square).sum())
                .toArray();
        for (int i = 0; i < full.length; i++) {
            for (String stem : all.get(i).stems()) {
                holders.computeIfAbsent(stem, first -> new ArrayList<>()).add(i);
            }
        }
        odds = new WordOdds(all.stream()
                .map(one -> new WordOdds.Example(one.cause(), with(one.stems(), one.crops())))
                .toList());
        usualPortrait = mean(0, portraits.size());
        usualTelling = mean(portraits.size(), full.length);
    }

    private double mean(int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += full[i];
        }
        return to > from ? sum / (to - from) : 1;
    }

    private Set<String> telling(String text) {
        Set<String> own = Stems.of(Stems.denied(Stems.words(text), overlooked));
        own.removeAll(overlooked);
        return own;
    }

    /** The words of a text that tell of some cause, each once, in the order told. */
    public List<String> known(String text) {
        Map<String, String> known = new LinkedHashMap<>();
        for (String word : Stems.denied(Stems.words(text), overlooked)) {
            if (worth.containsKey(Stems.stem(word))) {
                known.putIfAbsent(Stems.stem(word), word);
            }
        }
        return List.copyOf(known.values());
    }

    /**
     * How like each cause the words told are.
     *
     * @param told words that tell of some cause
     * @param fits whether crops or groups of crops, as tellings have them, take in the crop
     * @return by cause, above 0 (no word shared: the cause is not in it); about 1 is a portrait's or a telling's very words, and both add up
     */
    public Map<String, Double> likenesses(Collection<String> told, Predicate<List<String>> fits) {
        double[] shared = new double[full.length];
        double all = 0;
        for (String stem : Stems.of(told)) {
            double weight = square(stem);
            all += weight;
            for (int picture : holders.getOrDefault(stem, List.of())) {
                shared[picture] += weight;
            }
        }
        Map<String, Double> likenesses = new HashMap<>();
        Map<String, double[]> nearest = new HashMap<>();
        for (int i = 0; i < full.length; i++) {
            if (shared[i] > 0 && i < portraits.size()) {
                double like = shared[i] / Math.sqrt(Math.max(usualPortrait, full[i]) * all);
                likenesses.put(portraits.get(i).cause(), PORTRAIT * like);
            } else if (shared[i] > 0) {
                Picture telling = tellings.get(i - portraits.size());
                if (telling.ofAnyCrop() || fits.test(telling.crops())) {
                    double like = shared[i] / Math.sqrt(Math.max(usualTelling, full[i]) * all);
                    keepNearest(
                            nearest.computeIfAbsent(telling.cause(), first -> new double[2]),
                            telling.ofAnyCrop() ? like : like * AT_THE_CROP);
                }
            }
        }
        nearest.forEach((cause, two) -> likenesses.merge(cause, NEAREST * two[0] + NEXT * two[1], Double::sum));
        return likenesses;
    }

    /**
     * The chance of each cause by the words told alone, all together one.
     *
     * @param told words that tell of some cause
     * @param crops the crop and the groups that it is of, empty when no crop was told
     */
    public Map<String, Double> chances(Collection<String> told, Collection<String> crops) {
        return odds.chances(with(Stems.of(told), crops));
    }

    private static Set<String> with(Set<String> stems, Collection<String> crops) {
        Set<String> all = new HashSet<>(stems);
        crops.stream().filter(crop -> !crop.equals(Troubles.ANY)).forEach(crop -> all.add(WordOdds.CROP + crop));
        return all;
    }

    private static void keepNearest(double[] two, double like) {
        if (like > two[0]) {
            two[1] = two[0];
            two[0] = like;
        } else {
            two[1] = Math.max(two[1], like);
        }
    }

    /** Whether some telling of a cause is of a crop. */
    public boolean toldOf(String cause, Predicate<List<String>> fits) {
        return tellings.stream().anyMatch(one -> one.cause().equals(cause) && fits.test(one.crops()));
    }

    /** The words told that a cause is told with. */
    public List<String> shared(String cause, Collection<String> told) {
        Set<String> own = stems.getOrDefault(cause, Set.of());
        return told.stream().filter(word -> own.contains(Stems.stem(word))).toList();
    }

    /** The causes that are told with words. */
    public Set<String> causes() {
        return Set.copyOf(stems.keySet());
    }

    private double square(String stem) {
        double weight = worth.getOrDefault(stem, 0.0);
        return weight * weight;
    }
}
