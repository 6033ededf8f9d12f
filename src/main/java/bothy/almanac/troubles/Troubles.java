package bothy.almanac.troubles;

import bothy.almanac.RulesFolder;
import bothy.garden.Stage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Signs of trouble, their causes and the questions that tell causes apart. Immutable and safe to share.
 *
 * @param signs the causes that can be behind each sign
 * @param causes what is settled about each cause
 * @param questions questions by id
 * @param groups crops by the name of their group ("brassica")
 * @param beside signs that beside others are only circumstances: the question that each answers, with the answer
 * @param stages the rows' names of stretches of growing ("seedling"), each with the stages that it takes in
 * @param apart signs that show a trouble of their own, not what another trouble does to the whole plant
 * @param seen signs whose cause was seen itself, as insects are
 * @param portraits the words that each cause is told with
 * @param spheres times of a crop's life to which some causes belong alone
 * @param regions where causes live
 * @param byCause the rows of each cause, likeliest first
 */
public record Troubles(
        Map<String, List<Row>> signs,
        Map<String, Cause> causes,
        Map<String, Question> questions,
        Map<String, List<String>> groups,
        Map<String, List<Stage>> stages,
        Map<String, Map<String, String>> beside,
        Set<String> apart,
        Set<String> seen,
        Portraits portraits,
        List<Sphere> spheres,
        Regions regions,
        Map<String, List<Row>> byCause) {
    /** The sign of a trouble that was described without any sign that has a name. */
    public static final String UNNAMED = "unnamed-trouble";

    /** What the words of a description are kept under, besides the answers to questions. */
    public static final String WORDS = "words";

    /** Stands before a word of a description that was denied: "no holes". */
    public static final String DENIED = "!";

    static final String ANY = "any";
    /** By judgement. */
    private static final double TELLS_MUCH = 3;

    Troubles(
            Map<String, List<Row>> signs,
            Map<String, Cause> causes,
            Map<String, Question> questions,
            Map<String, List<String>> groups,
            Map<String, List<Stage>> stages,
            Map<String, Map<String, String>> beside,
            Set<String> apart,
            Set<String> seen,
            Portraits portraits,
            List<Sphere> spheres,
            Regions regions) {
        this(
                signs,
                causes,
                questions,
                groups,
                stages,
                beside,
                apart,
                seen,
                portraits,
                spheres,
                regions,
                likeliestFirst(signs));
    }

    /** The causes of another time of the crop's life than the signs seen and the words told are of. */
    public Set<String> outOfPlace(List<String> seen, List<String> told) {
        return spheres.stream()
                .flatMap(sphere -> sphere.outOfPlace(seen, told).stream())
                .collect(Collectors.toSet());
    }

    private static Map<String, List<Row>> likeliestFirst(Map<String, List<Row>> signs) {
        Map<String, List<Row>> byCause =
                signs.values().stream().flatMap(List::stream).collect(Collectors.groupingBy(Row::cause));
        byCause.values().forEach(rows -> rows.sort(Comparator.comparing(Row::how)));
        return byCause;
    }

    /** How often a cause is behind a sign, among the plantings that show it. Log-odds, by judgement. */
    public enum How {
        /** The cause that comes to mind first. */
        USUAL(2.8),
        COMMON(1.8),
        OCCASIONAL(0.7),
        RARE(-0.7);

        private final double weight;

        How(double weight) {
            this.weight = weight;
        }

        /** Log-odds (natural logarithm). */
        public double weight() {
            return weight;
        }
    }

    /**
     * A cause that can be behind a sign.
     *
     * @param cause short trade term in plain words
     * @param how how often it is behind the sign
     * @param crops crops or groups of crops, or "any"
     * @param stages when it is seen, or "any"
     * @param source where it is from
     * @param read "copy": read in a stored copy; "memory": recalled
     */
    public record Row(String cause, How how, List<String> crops, List<String> stages, String source, String read) {}

    /**
     * What is settled about a cause.
     *
     * @param check days until the next look
     * @param harmless whether nothing needs doing
     * @param remove whether its first action takes plants away
     * @param saidBy advice that says the first action itself, with dates; empty for none
     */
    public record Cause(int check, boolean harmless, boolean remove, List<String> saidBy) {
        public Cause {
            saidBy = saidBy == null ? List.of() : List.copyOf(saidBy);
        }
    }

    /**
     * A question and what its answers tell.
     *
     * @param signs the signs at which it may be asked; {@code null}: at all for whose causes it tells something
     * @param crops the crops or groups of crops of which it is asked; {@code null}: of any
     * @param only whether it counts at those signs only, since its words mean something else elsewhere
     * @param circumstance whether it is about weather, place or care rather than something seen on the plant
     * @param answers for each answer its score by cause, "otherwise" for all causes not named (0 when absent)
     */
    public record Question(
            List<String> signs,
            List<String> crops,
            boolean only,
            boolean circumstance,
            Map<String, Map<String, Double>> answers) {
        private static final String OTHERWISE = "otherwise";

        /** Scores of the answers, in their order, for a cause; for "something else" when it is {@code null}. */
        public double[] scores(String cause) {
            return answers.values().stream()
                    .mapToDouble(told -> told.getOrDefault(cause == null ? OTHERWISE : cause, otherwise(told)))
                    .toArray();
        }

        private static double otherwise(Map<String, Double> told) {
            return told.getOrDefault(OTHERWISE, 0.0);
        }

        /** Ids of the answers, in order. */
        public List<String> ids() {
            return List.copyOf(answers.keySet());
        }

        /** The causes that some answer speaks for or against by name. */
        public Set<String> named() {
            Set<String> named = new TreeSet<>();
            answers.values().forEach(told -> named.addAll(told.keySet()));
            named.remove(OTHERWISE);
            return named;
        }

        /** Whether an answer tells something at these signs. */
        public boolean countsAt(List<String> seen) {
            return !only || askedAt(seen);
        }

        /** The causes that an answer speaks for by at least so much. */
        public List<String> pointsTo(String answer, double least) {
            return answers.getOrDefault(answer, Map.of()).entrySet().stream()
                    .filter(told -> !told.getKey().equals(OTHERWISE) && told.getValue() >= least)
                    .map(Map.Entry::getKey)
                    .toList();
        }

        public boolean askedAt(List<String> seen) {
            return signs == null || signs.stream().anyMatch(seen::contains);
        }
    }

    /**
     * Reads every file of troubles.
     *
     * @throws bothy.almanac.RulesBroken with file and line
     */
    public static Troubles in(RulesFolder folder) {
        return TroubleFiles.read(folder);
    }

    /** No troubles at all. */
    public static Troubles none() {
        return new Troubles(
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                Set.of(),
                Set.of(),
                new Portraits(Map.of(), List.of(), List.of()),
                List.of(),
                Regions.UNKNOWN);
    }

    /** The rows of a sign that a crop can have; all of them when the crop is not known. */
    public List<Row> rows(String sign, String crop) {
        return signs.getOrDefault(sign, List.of()).stream()
                .filter(row -> crop == null || fits(row.crops(), crop))
                .toList();
    }

    /** The likeliest row of a cause at any sign that a crop can have; all crops when the crop is not known. */
    public Optional<Row> anyRow(String cause, String crop) {
        return rowsOf(cause, crop).stream().findFirst();
    }

    /** The rows of a cause at any sign that a crop can have, likeliest first; all of them when the crop is not known. */
    public List<Row> rowsOf(String cause, String crop) {
        return byCause.getOrDefault(cause, List.of()).stream()
                .filter(row -> crop == null || fits(row.crops(), crop))
                .toList();
    }

    /** Whether what was found speaks so much for one cause that it needs no other sign. */
    public boolean tellsMuch(String about, String answer) {
        Question question = questions.get(about);
        return question != null
                && !question.circumstance()
                && !question.pointsTo(answer, TELLS_MUCH).isEmpty();
    }

    /** Whether something seen on the plant was found, so that causes can be thought of without a named sign. */
    public boolean tells(String about, String answer) {
        Question question = questions.get(about);
        return question != null
                && !question.circumstance()
                && !question.pointsTo(answer, 1).isEmpty();
    }

    /** Whether a crop is among crops or groups of crops. */
    public boolean fits(List<String> crops, String crop) {
        return crops.contains(ANY)
                || crops.contains(crop)
                || crops.stream()
                        .anyMatch(group -> groups.getOrDefault(group, List.of()).contains(crop));
    }

    /** Whether a question can be asked of a crop, or the crop is not known. */
    public boolean askedOf(Question question, String crop) {
        return question.crops() == null || crop == null || fits(question.crops(), crop);
    }

    /** Whether a row is of any crop rather than of some. */
    public static boolean ofAnyCrop(Row row) {
        return row.crops().contains(ANY);
    }

    /** Whether a row is seen at a stage. */
    public boolean seenAt(Row row, Stage stage) {
        return row.stages().contains(ANY)
                || row.stages().stream()
                        .anyMatch(name -> stages.getOrDefault(name, List.of()).contains(stage));
    }

    /** Names of the groups that a crop belongs to. */
    public List<String> groupsOf(String crop) {
        List<String> found = new ArrayList<>();
        groups.forEach((group, crops) -> {
            if (crops.contains(crop)) {
                found.add(group);
            }
        });
        return found;
    }
}
