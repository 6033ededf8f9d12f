package bothy.advice.clinic;

import bothy.agronomy.Weighing;
import bothy.almanac.troubles.Troubles;
import bothy.almanac.troubles.Troubles.Question;
import bothy.garden.Diagnosis;
import bothy.garden.Diagnosis.Likely;
import bothy.garden.Diagnosis.TellTale;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** Decides on one case: whether a cause is clear, else which question would tell most. */
final class Consultation {
    private static final int MOST_QUESTIONS = 3;
    /** A cause with this chance is taken as the cause. */
    private static final double CLEAR = 0.75;
    /** Less is enough where nothing need be done: the next look will show. */
    private static final double CLEAR_IF_HARMLESS = 0.6;
    /** A question that tells less than this, in nats, is not worth a grower's walk. */
    private static final double WORTH_ASKING = 0.06;
    /** A cause must come to this chance to be named as what it would be instead. */
    private static final double WOULD_TURN = 0.4;

    private static final int USUAL_CHECK_DAYS = 7;
    private final Troubles troubles;
    private final Set<String> askable;
    private final Scales scales;
    private final CaseFile file;
    private final double[] chances;

    Consultation(Troubles troubles, Set<String> askable, Scales scales, CaseFile file) {
        this.troubles = troubles;
        this.askable = askable;
        this.scales = scales;
        this.file = file;
        this.chances = scales.chances();
    }

    Diagnosis diagnosis(LocalDate today, boolean justTold) {
        List<Likely> likely = likely();
        double clear = likely.get(0).harmless() ? CLEAR_IF_HARMLESS : CLEAR;
        Map.Entry<String, Question> next =
                likely.get(0).chance() >= clear || file.asked() >= MOST_QUESTIONS ? null : best();
        Troubles.Cause first = troubles.causes().get(likely.get(0).cause());
        int days = first == null || first.check() <= 0 ? USUAL_CHECK_DAYS : first.check();
        return new Diagnosis(
                file.id(),
                file.planting(),
                file.crop(),
                file.signs(),
                likely,
                next == null ? null : next.getKey(),
                next == null ? List.of() : next.getValue().ids(),
                next == null,
                turning(scales.causes().indexOf(likely.get(0).cause())),
                file.opened(),
                (justTold ? today : file.latest()).plusDays(days),
                justTold);
    }

    private List<Likely> likely() {
        List<Likely> likely = new ArrayList<>();
        for (int i = 0; i < scales.causes().size(); i++) {
            Troubles.Cause cause = troubles.causes().get(scales.causes().get(i));
            likely.add(new Likely(
                    scales.causes().get(i), chances[i], cause != null && cause.harmless(), scales.reasons(i)));
        }
        likely.sort(Comparator.comparingDouble(Likely::chance).reversed());
        return likely;
    }

    private List<Map.Entry<String, Question>> open() {
        return troubles.questions().entrySet().stream()
                .filter(entry -> askable.contains(entry.getKey())
                        && !scales.answered().contains(entry.getKey())
                        && entry.getValue().askedAt(file.signs())
                        && troubles.askedOf(entry.getValue(), file.crop()))
                .toList();
    }

    private Map.Entry<String, Question> best() {
        Map.Entry<String, Question> best = null;
        double worth = WORTH_ASKING;
        for (Map.Entry<String, Question> entry : open()) {
            double found = Weighing.worth(chances, scales.likelihood(entry.getValue()));
            if (found > worth) {
                best = entry;
                worth = found;
            }
        }
        return best;
    }

    /** The likeliest finding after which another cause would lead. */
    private TellTale turning(int first) {
        TellTale turning = null;
        double likeliest = 0;
        for (Map.Entry<String, Question> entry : open()) {
            double[][] likelihood = scales.likelihood(entry.getValue());
            for (int answer = 0; answer < likelihood.length; answer++) {
                double[] after = Weighing.after(chances, likelihood[answer]);
                int leader = leader(after);
                double given = given(likelihood[answer]);
                if (leader != first && after[leader] >= WOULD_TURN && given > likeliest) {
                    likeliest = given;
                    turning = new TellTale(
                            entry.getKey(),
                            entry.getValue().ids().get(answer),
                            scales.causes().get(leader));
                }
            }
        }
        return turning;
    }

    private int leader(double[] after) {
        return IntStream.range(0, scales.causes().size())
                .boxed()
                .max(Comparator.comparingDouble(i -> after[i]))
                .orElseThrow();
    }

    private double given(double[] likelihood) {
        return IntStream.range(0, chances.length)
                .mapToDouble(i -> chances[i] * likelihood[i])
                .sum();
    }
}
