package bothy.almanac.troubles;

import bothy.almanac.Problem;
import bothy.almanac.RulesFolder;
import bothy.almanac.troubles.Troubles.Question;
import bothy.almanac.troubles.Troubles.Row;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Looks over the tables of troubles: what reads well may still leave a grower with a guess. */
public final class TroubleCheck {
    private static final Pattern DANGEROUS = Pattern.compile("\\b([Bb]ait|[Ss]pray(?! by guess| for it)|label for)\\b");
    private static final String WORDS = "wording/en-troubles.yaml";
    private final Troubles troubles;
    private final TroubleWording wording;
    private final Set<String> byRules;
    private final Set<String> cautioned;
    private final List<Problem> problems = new ArrayList<>();

    private TroubleCheck(RulesFolder folder, Set<String> byRules, Set<String> cautioned) {
        this.cautioned = cautioned;
        this.troubles = Troubles.in(folder);
        this.wording = TroubleWording.in(folder);
        this.byRules = byRules;
    }

    /**
     * All that is wrong or missing.
     *
     * @param byRules causes that some rule weighs by name
     * @param cautioned causes that some caution goes out with
     */
    public static List<Problem> problems(RulesFolder folder, Set<String> byRules, Set<String> cautioned) {
        TroubleCheck check = new TroubleCheck(folder, byRules, cautioned);
        check.troubles.signs().forEach(check::sign);
        check.troubles.causes().keySet().forEach(check::cause);
        check.troubles.questions().keySet().forEach(check::question);
        return List.copyOf(check.problems);
    }

    /**
     * Crops of the tables that nobody can name.
     *
     * @param known names of crops that have a sheet or stand among the words
     */
    public static List<Problem> unknownCrops(RulesFolder folder, Set<String> known) {
        Troubles troubles = Troubles.in(folder);
        Set<String> all = new TreeSet<>(known);
        troubles.groups().forEach((group, crops) -> {
            all.add(group);
            all.addAll(crops);
        });
        List<Problem> problems = new ArrayList<>();
        troubles.signs().forEach((sign, rows) -> rows.stream()
                .flatMap(row -> row.crops().stream())
                .distinct()
                .filter(crop -> !crop.equals(Troubles.ANY) && !all.contains(crop))
                .forEach(crop -> problems.add(new Problem(
                        "troubles/",
                        0,
                        "the crop \"" + crop + "\" at " + sign
                                + " is not known: its row can never count. Mend its spelling, or add its words."))));
        return problems;
    }

    private void sign(String sign, List<Row> rows) {
        Set<String> causes = rows.stream().map(Row::cause).collect(Collectors.toCollection(TreeSet::new));
        if (causes.size() < 2) {
            say(
                    "troubles/",
                    "the sign \"" + sign + "\" has fewer than two causes: nothing is left to tell apart. Add one.");
        }
        if (!wording.signs().containsKey(sign)) {
            say(WORDS, "the sign \"" + sign + "\" has no words: add it under signs:.");
        }
        List<String> ordered = List.copyOf(causes);
        for (int i = 0; i < ordered.size(); i++) {
            for (int j = i + 1; j < ordered.size(); j++) {
                pair(sign, rows, ordered.get(i), ordered.get(j));
            }
        }
    }

    private void pair(String sign, List<Row> rows, String one, String other) {
        if (!byRules.contains(one)
                && !byRules.contains(other)
                && together(rows, one, other)
                && !separated(one, other)) {
            say(
                    "troubles/",
                    "no evidence separates \"" + one + "\" from \"" + other + "\" at " + sign
                            + ": add a question whose answers score them apart, or a rule.");
        }
    }

    /** Whether a crop can have both. */
    private boolean together(List<Row> rows, String one, String other) {
        return crops(rows, one).stream().anyMatch(crops(rows, other)::contains);
    }

    private Set<String> crops(List<Row> rows, String cause) {
        Set<String> crops = new TreeSet<>();
        for (Row row : rows) {
            if (row.cause().equals(cause)) {
                row.crops().forEach(crop -> {
                    if (Troubles.ofAnyCrop(row)) {
                        troubles.groups().values().forEach(crops::addAll);
                    } else {
                        crops.addAll(troubles.groups().getOrDefault(crop, List.of(crop)));
                    }
                });
            }
        }
        return crops;
    }

    private boolean separated(String one, String other) {
        return troubles.questions().values().stream()
                .anyMatch(question -> !Arrays.equals(question.scores(one), question.scores(other)));
    }

    private void cause(String cause) {
        TroubleWording.Cause words = wording.causes().get(cause);
        if (words == null || words.first() == null) {
            say(WORDS, "the cause \"" + cause + "\" says not what to do first: add it under causes:.");
        }
        if (words != null && words.crops() != null) {
            words.crops().forEach((crop, own) -> {
                if (own == null || own.first() == null) {
                    say(WORDS, "the cause \"" + cause + "\" at " + crop + " says not what to do first: add it.");
                }
            });
        }
        if (words != null
                && !cautioned.contains(cause)
                && DANGEROUS.matcher(words.toString()).find()) {
            say(
                    "troubles/cautions.drl",
                    "what is said of \"" + cause
                            + "\" speaks of bait or spraying, but no caution goes out with it: add it to one.");
        }
        boolean used = troubles.signs().values().stream().flatMap(List::stream).anyMatch(row -> row.cause()
                .equals(cause));
        if (!used) {
            say("troubles/", "the cause \"" + cause + "\" is behind no sign: take it out, or add its row.");
        }
    }

    private void question(String id) {
        Question question = troubles.questions().get(id);
        TroubleWording.Asked words = wording.questions().get(id);
        if (words == null || (words.thing() == null && words.told() == null)) {
            say(WORDS, "the question \"" + id + "\" has no words for its answers: add thing: or told:.");
            return;
        }
        for (Map<String, String> named : Arrays.asList(words.answers(), words.told())) {
            if (named != null && !named.keySet().equals(Set.copyOf(question.ids()))) {
                say(
                        WORDS,
                        "the question \"" + id + "\" has the answers " + question.ids() + ", its words "
                                + named.keySet() + ": make them the same.");
            }
        }
    }

    private void say(String file, String text) {
        problems.add(new Problem(file, 0, text));
    }
}
