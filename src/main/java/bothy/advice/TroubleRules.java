package bothy.advice;

import bothy.advice.clinic.Clinic;
import bothy.almanac.Problem;
import bothy.almanac.troubles.Troubles;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Holds the rules about troubles against the tables: a name that the tables do not know can never match, so its rule never fires. */
public final class TroubleRules {
    private static final Pattern EVIDENCE = Pattern.compile("new\\s+Evidence\\s*\\(\\s*\\$\\w+,\\s*\"([^\"]+)\"");
    private static final Pattern ANSWERED =
            Pattern.compile("new\\s+Answered\\s*\\(\\s*\\$\\w+,\\s*\"([^\"]+)\",\\s*\"([^\"]+)\"");
    private static final Pattern SIGN = Pattern.compile("signs contains \"([^\"]+)\"");
    private static final Pattern CAUSE = Pattern.compile("cause (?:==|in) \\(?((?:\\s*\"[^\"]+\",?)+)");
    private static final Pattern FOUND = Pattern.compile("about == \"([^\"]+)\",\\s*answer == \"([^\"]+)\"");
    private static final Pattern CHANCE = Pattern.compile("chance\\s*>=?\\s*(\\d+\\.?\\d*)");
    /** Signs of what is eaten and must not be. */
    private static final Pattern NOT_FOR_EATING =
            Pattern.compile("(?:.*-)?(?:rot|rotting|mould|bitter|green-tubers)(?:-.*)?");
    /** A rotting stem is no food. */
    private static final Set<String> OF_NO_PRODUCE = Set.of("stem-rot");

    private static final Pattern QUOTED = Pattern.compile("\"([^\"]+)\"");
    private final Troubles troubles;
    private final List<Problem> problems = new ArrayList<>();

    private TroubleRules(Troubles troubles) {
        this.troubles = troubles;
    }

    /** The causes that some rule weighs by name. */
    public static Set<String> weighed(List<RuleCheck.Written> rules) {
        Set<String> weighed = new TreeSet<>();
        for (RuleCheck.Written rule : rules) {
            Matcher matcher = EVIDENCE.matcher(rule.consequence());
            while (matcher.find()) {
                weighed.add(matcher.group(1));
            }
        }
        return weighed;
    }

    /** The causes that some caution goes out with. */
    public static Set<String> cautioned(List<RuleCheck.Written> rules) {
        Set<String> cautioned = new TreeSet<>();
        rules.stream().filter(rule -> rule.file().endsWith("cautions.drl")).forEach(rule -> {
            Matcher causes = CAUSE.matcher(rule.condition());
            while (causes.find()) {
                Matcher quoted = QUOTED.matcher(causes.group(1));
                while (quoted.find()) {
                    cautioned.add(quoted.group(1));
                }
            }
        });
        return cautioned;
    }

    /** Names in rules that the tables do not know. */
    public static List<Problem> problems(List<RuleCheck.Written> rules, Troubles troubles) {
        TroubleRules check = new TroubleRules(troubles);
        rules.forEach(check::rule);
        check.cautions(rules);
        return List.copyOf(check.problems);
    }

    private void rule(RuleCheck.Written rule) {
        Matcher evidence = EVIDENCE.matcher(rule.consequence());
        while (evidence.find()) {
            known(rule, "cause", evidence.group(1), troubles.causes().keySet());
        }
        Matcher answered = ANSWERED.matcher(rule.consequence());
        while (answered.find()) {
            known(rule, "question", answered.group(1), troubles.questions().keySet());
            Troubles.Question question = troubles.questions().get(answered.group(1));
            if (question != null) {
                known(rule, "answer", answered.group(2), question.answers().keySet());
            }
        }
        found(rule);
        Matcher sign = SIGN.matcher(rule.condition());
        while (sign.find()) {
            known(rule, "sign", sign.group(1), troubles.signs().keySet());
        }
        Matcher causes = CAUSE.matcher(rule.condition());
        while (causes.find()) {
            Matcher quoted = QUOTED.matcher(causes.group(1));
            while (quoted.find()) {
                known(rule, "cause", quoted.group(1), troubles.causes().keySet());
            }
        }
    }

    /** What is rotten, mouldy, bitter or green is not for eating: some caution must name each such sign. */
    private void cautions(List<RuleCheck.Written> rules) {
        Set<String> named = new TreeSet<>();
        rules.stream().filter(rule -> rule.file().endsWith("cautions.drl")).forEach(rule -> {
            Matcher sign = SIGN.matcher(rule.condition());
            while (sign.find()) {
                named.add(sign.group(1));
            }
        });
        troubles.signs().keySet().stream()
                .filter(sign -> NOT_FOR_EATING.matcher(sign).matches() && !OF_NO_PRODUCE.contains(sign))
                .filter(sign -> !named.contains(sign))
                .forEach(
                        sign -> problems.add(
                                new Problem(
                                        "troubles/cautions.drl",
                                        0,
                                        "the sign \"" + sign
                                                + "\" is of something not to be eaten, but no caution goes out with it: add it to one.")));
    }

    /** What a condition asks for of a closer look, which some answer must be able to tell. */
    private void found(RuleCheck.Written rule) {
        Matcher found = FOUND.matcher(rule.condition());
        while (found.find()) {
            if (Clinic.ofNoPlant(found.group(1))) {
                known(rule, "answer", found.group(2), Set.of("yes"));
                continue;
            }
            known(rule, "question", found.group(1), troubles.questions().keySet());
            Troubles.Question question = troubles.questions().get(found.group(1));
            if (question != null) {
                known(rule, "answer", found.group(2), Set.copyOf(question.ids()));
            }
        }
        Matcher chance = CHANCE.matcher(rule.condition());
        while (chance.find()) {
            if (Double.parseDouble(chance.group(1)) > 1) {
                problems.add(new Problem(
                        rule.file(),
                        rule.line(),
                        "rule \"" + rule.name() + "\" asks for a chance of " + chance.group(1)
                                + ", and none is above 1: it can never fire. Mend the figure."));
            }
        }
    }

    private void known(RuleCheck.Written rule, String kind, String name, Set<String> names) {
        if (!names.contains(name)) {
            problems.add(
                    new Problem(
                            rule.file(),
                            rule.line(),
                            "rule \"" + rule.name() + "\" names the " + kind + " \"" + name
                                    + "\", which the tables of troubles do not know: it can never fire. Mend the name, or add it."));
        }
    }
}
