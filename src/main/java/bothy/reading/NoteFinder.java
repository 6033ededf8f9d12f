package bothy.reading;

import bothy.almanac.CraftNotes;
import bothy.almanac.CraftNotes.Note;
import bothy.almanac.Words;
import bothy.reading.said.Passage;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import opennlp.tools.stemmer.PorterStemmer;

/**
 * Tells how near a question is to the notes of the craft and to the ways of asking for what the rules work out: by the words that they
 * share, each counting as much as it is rare among the notes. Names of crops choose among the notes and count for nothing else.
 */
final class NoteFinder {
    private static final String STEPS = "steps-asked";
    private static final String ALIKE = "alike";
    private static final String CROPS = "crops";

    /** Words told beside the question count less than those asked with. */
    private static final double BESIDE = 0.5;
    /** A word of the answer alone. */
    private static final double ANSWERED_WITH = 0.5;
    /** A word in no note, beside the rarest that is in one. */
    private static final double UNKNOWN = 0.5;
    /** How much the question's own words weigh against those of the way of asking that is nearest. */
    private static final double OF_THE_QUESTION = 0.6;
    /** Whoever names a crop is answered by a note on it rather than by one on all. */
    private static final double OF_ANY_CROP = 0.8;

    /** Words at least so rare, beside the rarest, tell what a question is about; one alone tells little. */
    private static final double TELLING = 0.25;

    private static final double BY_ONE_WORD = 0.8;

    /** Words no rarer together ask of nothing themselves. */
    private static final double LITTLE = 0.3;

    private static final double LITTLE_MORE = 0.4;

    private final List<Indexed> notes = new ArrayList<>();
    private final List<Map<String, Double>> steps = new ArrayList<>();
    private final Map<String, Double> rarity = new HashMap<>();
    private final Map<String, String> alike = new HashMap<>();
    private final Set<String> names = new HashSet<>();
    private final double rarest;

    /** @param lines the words of each way of asking */
    private record Indexed(String id, Note note, Map<String, Double> words, List<Set<String>> lines) {}

    /**
     * A note near a question.
     *
     * @param nearness from 0, nothing in common, to 1, the same words
     * @param shared how much they have in common: 1 for one word that is in no other note, little for many words of every question
     * @param own how much of the words that it asks with are the note's, from 0 to 1
     * @param ofCrop whether it is a note on the crop asked about, not one on all
     */
    record Near(String id, double nearness, double shared, double own, boolean ofCrop) {}

    NoteFinder(Words words, CraftNotes craft) {
        PorterStemmer stemmer = new PorterStemmer();
        words.names(CROPS, "/crops").forEach(crop -> words.list(CROPS, "/crops/" + crop + "/names")
                .forEach(name -> names.add(stemmer.stem(name.substring(name.lastIndexOf(' ') + 1)))));
        words.list(ALIKE, "/alike").forEach(group -> alike(group.split(","), stemmer));
        Map<String, Integer> in = new HashMap<>();
        craft.notes().forEach((id, note) -> {
            Map<String, Double> weights = new HashMap<>();
            stems(note.say(), stemmer).forEach(word -> weights.put(word, ANSWERED_WITH));
            List<Set<String>> lines =
                    note.asked().stream().map(line -> stems(line, stemmer)).toList();
            lines.forEach(line -> line.forEach(word -> weights.put(word, 1.0)));
            weights.keySet().forEach(word -> in.merge(word, 1, Integer::sum));
            notes.add(new Indexed(id, note, weights, lines));
        });
        words.lists(STEPS, "")
                .values()
                .forEach(kind -> kind.forEach(line -> {
                    Map<String, Double> weights = new HashMap<>();
                    stems(line, stemmer).forEach(word -> weights.put(word, 1.0));
                    weights.keySet().forEach(word -> in.putIfAbsent(word, 1));
                    steps.add(weights);
                }));
        double all = Math.max(1, craft.notes().size());
        in.forEach((word, count) -> rarity.put(word, rarity(all, count)));
        rarest = rarity(all, 1);
    }

    /** Squared, for one rare word tells more than three of every question. */
    private static double rarity(double all, double in) {
        double rarity = Math.log(1 + (all - in + 0.5) / (in + 0.5));
        return rarity * rarity;
    }

    private void alike(String[] group, PorterStemmer stemmer) {
        String first = stemmer.stem(group[0].strip());
        for (String word : group) {
            alike.putIfAbsent(stemmer.stem(word.strip()), first);
        }
    }

    /**
     * The nearest note to a question.
     *
     * @param crop the crop that it names, {@code null} for none
     * @param begins the token from which on it asks; what stands before tells of what
     */
    Optional<Near> nearest(String crop, Passage passage, int begins, int end) {
        Map<String, Double> asked = words(passage, begins, end);
        Near best = null;
        for (Indexed one : notes) {
            if (one.note().of(crop)) {
                double line = one.lines().stream()
                        .mapToDouble(words -> covered(words, asked))
                        .max()
                        .orElse(0);
                double nearness = nearness(asked, one.words(), line)
                        * (crop != null && one.note().crops().isEmpty() ? OF_ANY_CROP : 1);
                if (best == null || nearness > best.nearness()) {
                    best = new Near(
                            one.id(),
                            nearness,
                            shared(asked, one.words()) / rarest,
                            own(asked, one.words()),
                            !one.note().crops().isEmpty());
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** How a crop is grown at all, for one of which nothing else is written; empty for the others. */
    Optional<String> growing(String crop) {
        return notes.stream()
                .filter(one -> one.note().crops().contains(crop))
                .map(Indexed::id)
                .filter(id -> id.endsWith("-growing") || id.endsWith("-growing-" + crop))
                .findFirst();
    }

    /** How near the nearest way of asking for what the rules work out is, from 0 to 1. */
    double nearestStep(Passage passage, int begins, int end) {
        Map<String, Double> asked = words(passage, begins, end);
        return steps.stream()
                .mapToDouble(words -> nearness(asked, words, covered(words.keySet(), asked)))
                .max()
                .orElse(0);
    }

    private double nearness(Map<String, Double> asked, Map<String, Double> words, double line) {
        double shared = 0;
        double all = 0;
        int telling = 0;
        for (Map.Entry<String, Double> word : asked.entrySet()) {
            double rare = rarity.getOrDefault(word.getKey(), UNKNOWN * rarest);
            all += word.getValue() * rare;
            double of = words.getOrDefault(word.getKey(), 0.0);
            shared += word.getValue() * rare * of;
            telling += of > 0 && rare > TELLING * rarest ? 1 : 0;
        }
        double nearness = all == 0 ? 0 : OF_THE_QUESTION * shared / all + (1 - OF_THE_QUESTION) * line;
        return telling < 2 ? BY_ONE_WORD * nearness : nearness;
    }

    private double shared(Map<String, Double> asked, Map<String, Double> words) {
        return asked.entrySet().stream()
                .filter(word -> words.containsKey(word.getKey()))
                .mapToDouble(word -> word.getValue() * rarity.get(word.getKey()))
                .sum();
    }

    private double own(Map<String, Double> asked, Map<String, Double> words) {
        Map<String, Double> own = new HashMap<>(asked);
        own.values().removeIf(weight -> weight < 1);
        double all = own.keySet().stream()
                .mapToDouble(word -> rarity.getOrDefault(word, UNKNOWN * rarest))
                .sum();
        // "What does it need", "what now": such words ask of what was told before them.
        boolean little = all < LITTLE * rarest && shared(asked, words) > LITTLE_MORE * rarest;
        return all == 0 || little ? 1 : shared(own, words) / all;
    }

    private double covered(Set<String> line, Map<String, Double> asked) {
        double shared = 0;
        double all = 0;
        for (String word : line) {
            double weight = rarity.get(word);
            all += weight;
            shared += asked.containsKey(word) ? weight : 0;
        }
        return all == 0 ? 0 : shared / all;
    }

    private Map<String, Double> words(Passage passage, int begins, int end) {
        PorterStemmer stemmer = new PorterStemmer();
        Map<String, Double> words = new HashMap<>();
        for (int at = 0; at < passage.size(); at++) {
            Token token = passage.tokens().get(at);
            if (token.aWord() && passage.cropAt(at).isEmpty()) {
                String stem = stem(token, passage, stemmer);
                if (!names.contains(stem)) {
                    words.merge(stem, at >= begins && at < end ? 1 : BESIDE, Math::max);
                }
            }
        }
        return words;
    }

    /** A word that is in a note was not misspelt, whatever else it is near. */
    private String stem(Token token, Passage passage, PorterStemmer stemmer) {
        String written = stemmer.stem(
                passage.message().substring(token.from(), token.to()).toLowerCase(Locale.ROOT));
        String meant = alike.getOrDefault(written, written);
        if (rarity.containsKey(meant)) {
            return meant;
        }
        String mended = stemmer.stem(token.word());
        return alike.getOrDefault(mended, mended);
    }

    private Set<String> stems(String text, PorterStemmer stemmer) {
        Set<String> stems = new HashSet<>();
        for (String word : text.toLowerCase(Locale.ROOT).replace("'", "").split("[^\\p{L}]+")) {
            String stem = stemmer.stem(word);
            if (!word.isEmpty() && !names.contains(stem)) {
                stems.add(alike.getOrDefault(stem, stem));
            }
        }
        return stems;
    }
}
