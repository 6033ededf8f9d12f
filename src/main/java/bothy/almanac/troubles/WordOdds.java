package bothy.almanac.troubles;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/**
 * How likely each cause is by the words of a description alone: a multinomial logistic regression on the words of the pictures that
 * the causes are told with, each word weighed by how few pictures hold it.
 *
 * <p>Source of the method: D. R. Cox 1958 (logistic regression), K. Spärck Jones 1972 (weights of words), H. Robbins and S. Monro 1951
 * (steps that shrink); from memory. What is learnt is the same at every start. Immutable and safe to share.
 */
final class WordOdds {
    /** Passes over all pictures, the first step and what each step forgets: tried on growers' descriptions. */
    private static final int PASSES = 5;

    private static final float FIRST_STEP = 1.5f;
    private static final float SHRINKING = 0.3f;
    private static final float FORGOTTEN = 3e-5f;
    /** Odds below this of the best are none. */
    private static final float NOTHING = -20;

    /** Stands before the name of a crop or of a group of crops among the words. */
    static final String CROP = "@";
    /** A crop counts so much less than a word as rare. By judgement, tried likewise. */
    private static final float CROP_SHARE = 0.8f;

    private static final long ORDER = 1958;

    /**
     * One picture of a cause.
     *
     * @param stems its words without their endings, and its crops with {@link #CROP} before each
     */
    record Example(String cause, Set<String> stems) {}

    private final List<String> causes;
    private final Map<String, Integer> places = new HashMap<>();
    private final float[] worth;
    private final float[][] weights;

    WordOdds(List<Example> examples) {
        causes = List.copyOf(
                new LinkedHashSet<>(examples.stream().map(Example::cause).toList()));
        List<Integer> held = new ArrayList<>();
        for (Example example : examples) {
            for (String stem : example.stems()) {
                int place = places.computeIfAbsent(stem, first -> places.size());
                if (place == held.size()) {
                    held.add(0);
                }
                held.set(place, held.get(place) + 1);
            }
        }
        worth = new float[held.size()];
        for (int i = 0; i < worth.length; i++) {
            worth[i] = (float) Math.log((double) examples.size() / held.get(i));
        }
        places.forEach((stem, place) -> worth[place] *= stem.startsWith(CROP) ? CROP_SHARE : 1);
        weights = new float[worth.length][causes.size()];
        learn(examples);
    }

    private void learn(List<Example> examples) {
        Map<String, Integer> numbers = new HashMap<>();
        causes.forEach(cause -> numbers.put(cause, numbers.size()));
        List<Example> order = new ArrayList<>(examples);
        Random shuffle = new Random(ORDER);
        for (int pass = 0; pass < PASSES; pass++) {
            Collections.shuffle(order, shuffle);
            float step = FIRST_STEP / (1 + SHRINKING * pass);
            for (Example example : order) {
                Told told = told(example.stems());
                float[] off = odds(told);
                normalise(off);
                off[numbers.get(example.cause())] -= 1;
                step(told, off, step);
            }
        }
    }

    private void step(Told told, float[] off, float step) {
        for (int i = 0; i < told.places.length; i++) {
            float[] weight = weights[told.places[i]];
            for (int cause = 0; cause < off.length; cause++) {
                weight[cause] -= step * (told.values[i] * off[cause] + FORGOTTEN * weight[cause]);
            }
        }
    }

    /** Words as places with values of length one together. */
    private record Told(int[] places, float[] values) {}

    private Told told(Collection<String> stems) {
        int[] found = stems.stream()
                .distinct()
                .filter(places::containsKey)
                .mapToInt(places::get)
                .toArray();
        float[] values = new float[found.length];
        double square = 0;
        for (int i = 0; i < found.length; i++) {
            values[i] = worth[found[i]];
            square += values[i] * values[i];
        }
        float length = square > 0 ? (float) Math.sqrt(square) : 1;
        for (int i = 0; i < found.length; i++) {
            values[i] /= length;
        }
        return new Told(found, values);
    }

    private float[] odds(Told told) {
        float[] odds = new float[causes.size()];
        for (int i = 0; i < told.places.length; i++) {
            float[] weight = weights[told.places[i]];
            for (int cause = 0; cause < odds.length; cause++) {
                odds[cause] += told.values[i] * weight[cause];
            }
        }
        return odds;
    }

    private static void normalise(float[] odds) {
        float most = odds[0];
        for (float one : odds) {
            most = Math.max(most, one);
        }
        float sum = 0;
        for (int i = 0; i < odds.length; i++) {
            odds[i] = odds[i] - most < NOTHING ? 0 : (float) Math.exp(odds[i] - most);
            sum += odds[i];
        }
        for (int i = 0; i < odds.length; i++) {
            odds[i] /= sum;
        }
    }

    /**
     * The chance of each cause, all together one; where no word is known, each as likely as the other.
     *
     * @param stems the words told without their endings, and the crop and its groups with {@link #CROP} before each
     */
    Map<String, Double> chances(Collection<String> stems) {
        if (causes.isEmpty()) {
            return Map.of();
        }
        Told words = told(stems);
        float[] odds = odds(words);
        // Learnt from words of length one together: the more of them are told, the more they tell.
        float sureness = (float) Math.sqrt(words.places.length);
        for (int i = 0; i < odds.length; i++) {
            odds[i] *= sureness;
        }
        normalise(odds);
        Map<String, Double> chances = new HashMap<>();
        for (int i = 0; i < odds.length; i++) {
            chances.put(causes.get(i), (double) odds[i]);
        }
        return chances;
    }
}
