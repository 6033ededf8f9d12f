package bothy.advice.clinic;

import bothy.advice.clinic.Clinic.Found;
import bothy.advice.facts.Answered;
import bothy.advice.facts.Evidence;
import bothy.agronomy.Weighing;
import bothy.almanac.troubles.Troubles;
import bothy.almanac.troubles.Troubles.Question;
import bothy.almanac.troubles.Troubles.Row;
import bothy.garden.Diagnosis.Reason;
import bothy.garden.Finding;
import bothy.garden.Stage;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * The weights of one case. A cause's weight is the sum, over the signs told, of how common it is behind each, and of all evidence; a
 * sign that it is not known for counts against it. What is over for "something else" is in the last place.
 */
final class Scales {
    /** A sign that a cause is not known for, log-odds. By judgement. */
    private static final double UNEXPLAINED = -1;
    /** A row seen at another stage than the planting's, log-odds. By judgement. */
    private static final double OTHER_STAGE = -2.5;
    /** A row of some crops only when no crop was told, log-odds. By judgement. */
    private static final double CROP_NOT_TOLD = -0.7;
    /** An answer that speaks so much for a cause brings it in, though no sign told it, log-odds score. By judgement. */
    private static final double BRINGS_IN = 2;
    /** The same when the trouble was described without a sign that has a name. By judgement. */
    private static final double BRINGS_IN_UNNAMED = 1;
    /** A cause that was brought in counts so much less than behind the sign that it is known for, log-odds. By judgement. */
    private static final double BROUGHT_IN = -1.2;

    /** A cause that what was seen, done and asked does not make likelier than this is told mostly by the words. By judgement. */
    private static final double BY_WORDS_ALONE = 0.4;
    /** The most that words alone make of a cause: most likely, never almost certain. By judgement. */
    private static final double MOST_BY_WORDS = 0.8;

    /** "Something else" behind a sign, log-odds: less than a cause seen occasionally. By judgement. */
    private static final double SOMETHING_ELSE = 0.0;

    private final Troubles troubles;
    private final CaseFile file;
    private final ZoneId zone;
    private final Stage stage;
    private final Seedbed seedbed;
    private final List<String> causes;
    /** Causes known for one of the signs told. */
    private final Set<String> explained = new LinkedHashSet<>();
    /** Causes known for none of them that an answer or the words of the description point to. */
    private final Set<String> pointedTo = new LinkedHashSet<>();

    private final double[] weights;
    /** The weights without those of the words of the description. */
    private final double[] seen;

    private final List<List<Reason>> reasons = new ArrayList<>();
    private final Map<String, String> answers = new LinkedHashMap<>();
    private final WordsTold words;

    /**
     * @param zone the time zone of the grower, which tells what does not live there
     * @param seedbed what is reckoned of seed that is not up, {@code null} where the case is another
     */
    Scales(Troubles troubles, CaseFile file, ZoneId zone, Stage stage, List<Found> found, Seedbed seedbed) {
        this.zone = zone;
        this.seedbed = seedbed;
        this.troubles = troubles;
        this.file = file;
        this.stage = stage;
        this.words = new WordsTold(troubles, file);
        this.causes = List.copyOf(suspects());
        this.weights = new double[causes.size() + 1];
        this.seen = new double[causes.size() + 1];
        causes.forEach(cause -> reasons.add(new ArrayList<>()));
        reasons.add(new ArrayList<>());
        signs();
        words();
        answersOfRules(found);
        evidence(found);
        told(true);
        if (seedbed != null) {
            reckoned();
        }
        told(false);
        for (int i = 0; i < weights.length; i++) {
            seen[i] += weights[i];
        }
    }

    boolean empty() {
        return causes.isEmpty();
    }

    List<String> causes() {
        return causes;
    }

    /** Questions answered so far, by the grower or by a rule. */
    Set<String> answered() {
        return answers.keySet();
    }

    double[] chances() {
        double[] chances = Weighing.chances(weights);
        double[] bySeen = Weighing.chances(seen);
        for (int i = 0; i < causes.size(); i++) {
            boolean byWordsAlone = bySeen[i] < BY_WORDS_ALONE || onlyUnnamed() && !clueTo(causes.get(i));
            if (chances[i] > MOST_BY_WORDS && byWordsAlone) {
                // What words alone make of it beyond that is left to something else.
                chances[causes.size()] += chances[i] - MOST_BY_WORDS;
                chances[i] = MOST_BY_WORDS;
            }
        }
        return chances;
    }

    /** Whether no sign with a name was told at all. */
    private boolean onlyUnnamed() {
        return file.signs().stream().allMatch(Troubles.UNNAMED::equals);
    }

    /** Whether something found on the plant, and no mere circumstance, speaks much for a cause. */
    private boolean clueTo(String cause) {
        return file.findings().entrySet().stream().anyMatch(found -> {
            Question question = troubles.questions().get(found.getKey());
            return question != null
                    && !question.circumstance()
                    && question.pointsTo(found.getValue(), BRINGS_IN).contains(cause);
        });
    }

    List<Reason> reasons(int cause) {
        return reasons.get(cause);
    }

    /** For each answer of a question its chance under each cause, "something else" last. */
    double[][] likelihood(Question question) {
        int count = question.ids().size();
        double[][] likelihood = new double[count][weights.length];
        for (int cause = 0; cause < weights.length; cause++) {
            double[] under = Weighing.answers(question.scores(cause < causes.size() ? causes.get(cause) : null));
            for (int answer = 0; answer < count; answer++) {
                likelihood[answer][cause] = under[answer];
            }
        }
        return likelihood;
    }

    private Set<String> suspects() {
        Set<String> suspects = new LinkedHashSet<>();
        file.signs().forEach(sign -> troubles.rows(sign, file.crop()).forEach(row -> explained.add(row.cause())));
        List<String> here = explained.stream().filter(this::livesHere).toList();
        if (!here.isEmpty()) {
            explained.retainAll(here);
        }
        suspects.addAll(explained);
        file.findings().forEach((about, answer) -> pointedTo.addAll(broughtIn(about, answer)));
        words.pointTo().stream().filter(this::livesHere).forEach(pointedTo::add);
        suspects.addAll(pointedTo);
        pointedTo.removeAll(explained);
        return suspects;
    }

    /** What only a stranger does still brings the stranger in, by an answer: a new pest is worth knowing. */
    private boolean livesHere(String cause) {
        return !troubles.regions().lacks(zone, cause);
    }

    /** A description in the words that a cause is told with speaks for it, one in others speaks against it. */
    private void words() {
        for (int i = 0; i < causes.size() && !words.empty(); i++) {
            double weight = words.weight(causes.get(i));
            weights[i] += weight;
            seen[i] -= weight;
            reasons.get(i).add(new Reason(Troubles.WORDS, words.shared(causes.get(i)), weight, null));
        }
    }

    private List<String> broughtIn(String about, String answer) {
        Question question = troubles.questions().get(about);
        if (question == null || question.circumstance() || !question.countsAt(file.signs())) {
            return List.of();
        }
        return question.pointsTo(answer, unnamed() ? BRINGS_IN_UNNAMED : BRINGS_IN).stream()
                .filter(cause -> troubles.anyRow(cause, file.crop()).isPresent())
                .toList();
    }

    /** No sign that tells of a cause at this crop. */
    private boolean unnamed() {
        return file.signs().contains(Troubles.UNNAMED) || explained.isEmpty();
    }

    private void signs() {
        for (String sign : file.signs()) {
            List<Row> rows = troubles.rows(sign, file.crop());
            if (rows.isEmpty()) {
                continue;
            }
            for (int i = 0; i < causes.size(); i++) {
                sign(sign, rows, i);
            }
            weights[causes.size()] += SOMETHING_ELSE;
        }
        if (unnamed()) {
            for (int i = 0; i < causes.size(); i++) {
                unnamed(i);
            }
        }
    }

    private void unnamed(int cause) {
        likeliest(causes.get(cause)).ifPresent(row -> {
            weights[cause] += weight(row);
            reasons.get(cause).add(new Reason("sign", Troubles.UNNAMED, weight(row), row.source()));
        });
    }

    private void sign(String sign, List<Row> rows, int cause) {
        Row best = null;
        double weight = !pointedTo.contains(causes.get(cause))
                        || !sign.equals(file.signs().get(0))
                ? UNEXPLAINED
                : broughtIn(causes.get(cause));
        for (Row row : rows) {
            if (row.cause().equals(causes.get(cause)) && (best == null || weight(row) > weight)) {
                best = row;
                weight = weight(row);
            }
        }
        weights[cause] += weight;
        reasons.get(cause).add(new Reason("sign", sign, weight, best == null ? null : best.source()));
    }

    private double broughtIn(String cause) {
        return Math.max(UNEXPLAINED, likeliest(cause).map(this::weight).orElse(UNEXPLAINED) + BROUGHT_IN);
    }

    /** The row of a cause at any sign that weighs most at the planting's stage. */
    private Optional<Row> likeliest(String cause) {
        return troubles.rowsOf(cause, file.crop()).stream().max(Comparator.comparingDouble(this::weight));
    }

    private double weight(Row row) {
        double weight = row.how().weight();
        if (stage != null && !troubles.seenAt(row, stage)) {
            weight += OTHER_STAGE;
        }
        return file.crop() == null && !Troubles.ofAnyCrop(row) ? weight + CROP_NOT_TOLD : weight;
    }

    /** What the grower told outranks what a rule inferred. */
    private void answersOfRules(List<Found> found) {
        Map<String, Found> byRule = new LinkedHashMap<>();
        for (Found one : found) {
            if (one.fact() instanceof Answered answered && answered.of().equals(file.id())) {
                byRule.putIfAbsent(answered.about(), one);
            }
        }
        byRule.forEach((about, one) -> {
            if (!file.findings().containsKey(about)) {
                answer(about, ((Answered) one.fact()).answer(), one);
            }
        });
    }

    /** What the reckoning of a seedbed knows too must not count twice, so it comes before it; the closer look comes after. */
    private void told(boolean known) {
        file.findings().forEach((about, answer) -> {
            if (Seedbed.KNOWN.contains(about) == known) {
                answer(about, answer, null);
            }
        });
    }

    /** Days, warmth, water and age of the seed are reckoned together; what the tables say of them gives way. */
    private void reckoned() {
        double[] shifts = seedbed.shifts(causes, chances());
        for (int i = 0; i < weights.length; i++) {
            weights[i] += shifts[i];
            reasons.get(i).add(new Reason("rule", Seedbed.REASON, shifts[i], Seedbed.SOURCE));
        }
    }

    private void answer(String about, String answer, Found rule) {
        Question question = troubles.questions().get(about);
        answers.put(about, answer);
        int place = question == null ? -1 : question.ids().indexOf(answer);
        if (place < 0 || Finding.UNKNOWN.equals(answer) || !question.countsAt(file.signs())) {
            return;
        }
        double[] likelihood = likelihood(question)[place];
        for (int i = 0; i < weights.length; i++) {
            double weight = Weighing.weight(likelihood[i], question.ids().size());
            weights[i] += weight;
            reasons.get(i)
                    .add(
                            rule == null
                                    ? new Reason("found", about + "=" + answer, weight, null)
                                    : new Reason("rule", rule.rule(), weight, rule.source()));
        }
    }

    private void evidence(List<Found> found) {
        for (Found one : found) {
            if (one.fact() instanceof Evidence evidence
                    && Objects.equals(evidence.of(), file.id())
                    && causes.contains(evidence.cause())) {
                int cause = causes.indexOf(evidence.cause());
                weights[cause] += evidence.weight();
                reasons.get(cause).add(new Reason("rule", one.rule(), evidence.weight(), one.source()));
            }
        }
    }
}
