package bothy.advice.clinic;

import bothy.almanac.troubles.Troubles;
import java.util.List;
import java.util.Map;

/** How like the portraits of the causes the words of a case's description are. */
final class Likeness {
    /** What full likeness of a description to a cause's portrait tells, log-odds. By judgement, tried on growers' descriptions. */
    private static final double BY_WORDS = 18;
    /** The likeness that tells neither for nor against. */
    private static final double USUAL_LIKENESS = 0.18;
    /** The most that words alone tell, log-odds: an answer to a question outweighs them. */
    private static final double MOST_BY_WORDS = 8;
    /** From this likeness on a description brings a cause in that no sign told. */
    private static final double ALIKE = 0.15;

    private static final int MOST_ALIKE = 6;
    /** So many words must be shared. */
    private static final int LEAST_ALIKE = 3;
    /** A description of so few words tells no more than its sign. */
    private static final double FEW_WORDS = 3;
    /** A description of so many words beyond those counts in full. */
    private static final double FULL_WORDS = 10;

    private final Troubles troubles;
    private final String crop;
    private final List<String> told;
    private final Map<String, Double> likeness;

    Likeness(Troubles troubles, CaseFile file) {
        String words = file.findings().get(Troubles.WORDS);
        this.troubles = troubles;
        this.crop = file.crop();
        this.told = words == null ? List.of() : List.of(words.split(" "));
        this.likeness = told.isEmpty() ? Map.of() : likened(file.signs());
    }

    private Map<String, Double> likened(List<String> signs) {
        Map<String, Double> likened = troubles.portraits().likenesses(told, this::grown);
        likened.keySet().removeAll(troubles.outOfPlace(signs, told));
        return likened;
    }

    private boolean grown(List<String> crops) {
        return crop == null || troubles.fits(crops, crop);
    }

    boolean empty() {
        return told.isEmpty();
    }

    /** The causes whose portraits the description is most like, of those that the crop can have. */
    List<String> alike() {
        return likeness.entrySet().stream()
                .filter(entry -> entry.getValue() >= ALIKE)
                .sorted(Map.Entry.<String, Double>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .filter(cause -> troubles.portraits().shared(cause, told).size() >= LEAST_ALIKE)
                .filter(cause -> troubles.anyRow(cause, crop).isPresent()
                        || troubles.portraits().toldOf(cause, this::grown))
                .limit(MOST_ALIKE)
                .toList();
    }

    /** What the description tells for a cause or against it, log-odds. */
    double weight(String cause) {
        return Math.min(MOST_BY_WORDS, BY_WORDS * fullness() * (likeness.getOrDefault(cause, 0.0) - USUAL_LIKENESS));
    }

    /** The words told that a cause's portrait holds. */
    String shared(String cause) {
        return String.join(" ", troubles.portraits().shared(cause, told));
    }

    /** A few words, most of them those of the sign, tell little more than the sign. */
    private double fullness() {
        return Math.min(1, Math.max(0, told.size() - FEW_WORDS) / FULL_WORDS);
    }
}
