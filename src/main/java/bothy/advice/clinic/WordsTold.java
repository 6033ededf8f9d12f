package bothy.advice.clinic;

import bothy.almanac.troubles.Troubles;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What the words of a case's description tell for and against each cause, whatever signs they name. */
final class WordsTold {
    /** The most that words alone tell against a cause, log-odds; for it they tell the logarithm of all causes at most. By judgement. */
    private static final double MOST_AGAINST = -3;
    /** From this chance on by its words alone a description brings a cause in that no sign told. By judgement. */
    private static final double BRINGS_IN = 0.02;

    private static final int MOST_BROUGHT_IN = 6;
    /** So many words must be shared. */
    private static final int LEAST_SHARED = 3;
    /** A description of so few words tells no more than its sign. */
    private static final double FEW_WORDS = 3;
    /** A description of so many words beyond those counts in full. */
    private static final double FULL_WORDS = 8;

    private final Troubles troubles;
    private final String crop;
    private final List<String> told;
    private final Map<String, Double> chances;

    WordsTold(Troubles troubles, CaseFile file) {
        this.troubles = troubles;
        this.crop = file.crop();
        this.told = file.words();
        this.chances = told.isEmpty() ? Map.of() : inPlace(file.signs());
    }

    private Map<String, Double> inPlace(List<String> signs) {
        Map<String, Double> chances = troubles.portraits().chances(told, crops());
        Set<String> outOfPlace = troubles.outOfPlace(signs, told);
        outOfPlace.forEach(cause -> chances.replace(cause, 0.0));
        return chances;
    }

    private List<String> crops() {
        if (crop == null) {
            return List.of();
        }
        List<String> crops = new ArrayList<>(troubles.groupsOf(crop));
        crops.add(crop);
        return crops;
    }

    boolean empty() {
        return told.isEmpty();
    }

    /** The causes that the words speak for most, of those that the crop can have. */
    List<String> pointTo() {
        return chances.entrySet().stream()
                .filter(entry -> entry.getValue() >= BRINGS_IN)
                .sorted(Map.Entry.<String, Double>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .filter(cause -> troubles.portraits().shared(cause, told).size() >= LEAST_SHARED)
                .filter(cause -> troubles.anyRow(cause, crop).isPresent()
                        || troubles.portraits().toldOf(cause, this::grown))
                .limit(MOST_BROUGHT_IN)
                .toList();
    }

    private boolean grown(List<String> crops) {
        return crop == null || troubles.fits(crops, crop);
    }

    /** What the words tell for a cause or against it, log-odds: how much likelier they make it than any other. */
    double weight(String cause) {
        double odds = Math.log(chances.getOrDefault(cause, 0.0) * chances.size());
        return fullness() * Math.max(MOST_AGAINST, odds);
    }

    /** The words told that the cause is told with. */
    String shared(String cause) {
        return String.join(" ", troubles.portraits().shared(cause, told));
    }

    /** A few words, most of them those of the sign, tell little more than the sign. */
    private double fullness() {
        return Math.min(1, Math.max(0, told.size() - FEW_WORDS) / FULL_WORDS);
    }
}
