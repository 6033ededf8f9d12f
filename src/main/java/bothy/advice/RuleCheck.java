package bothy.advice;

import bothy.almanac.Problem;
import bothy.almanac.RulesBroken;
import bothy.almanac.RulesFolder;
import bothy.garden.Stage;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Looks over the rules as written: what compiles may still be wrong for a grower. */
public final class RuleCheck {
    private static final Pattern ADVICE = Pattern.compile("new\\s+Advice\\s*\\(\\s*\"([^\"]+)\"");
    private static final Pattern STAGE = Pattern.compile("Stage\\.([A-Z_]+)");
    private static final Pattern BOUND = Pattern.compile("\\$([A-Za-z]\\w*)\\s*:");
    private static final Pattern STRING_DATE = Pattern.compile("[<>=]=?\\s*\"\\d{1,4}-");
    private final RulesFolder folder;

    public RuleCheck(RulesFolder folder) {
        this.folder = folder;
    }

    /**
     * A rule as written.
     *
     * @param file path of its file
     * @param line line of its name
     * @param name its name
     * @param annotations what stands between name and "when"
     * @param condition what stands between "when" and "then"
     * @param consequence what stands after "then"
     */
    public record Written(
            String file, int line, String name, String annotations, String condition, String consequence) {

        /** Ids of the advice that the rule gives. */
        public Set<String> advice() {
            return found(ADVICE, consequence);
        }

        /** Names of the figures that it binds. */
        public Set<String> bound() {
            return found(BOUND, condition);
        }

        private static Set<String> found(Pattern pattern, String text) {
            Set<String> names = new TreeSet<>();
            Matcher matcher = pattern.matcher(text);
            while (matcher.find()) {
                names.add(matcher.group(1));
            }
            return names;
        }
    }

    /** All rules as written. */
    public List<Written> rules() {
        List<Written> rules = new ArrayList<>();
        for (String path : folder.paths("", ".drl")) {
            rules(path, folder.text(path), rules);
        }
        return rules;
    }

    private static void rules(String path, String text, List<Written> rules) {
        String[] lines = text.split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            if (lines[i].startsWith("rule ")) {
                int start = i;
                StringBuilder[] parts = {new StringBuilder(), new StringBuilder(), new StringBuilder()};
                int part = 0;
                for (i++; i < lines.length && !lines[i].strip().equals("end"); i++) {
                    String line = lines[i].strip();
                    if (line.equals("when") || line.equals("then")) {
                        part = line.equals("when") ? 1 : 2;
                    } else if (!line.startsWith("//")) {
                        parts[part].append(line).append('\n');
                    }
                }
                rules.add(new Written(
                        path,
                        start + 1,
                        lines[start].substring(5).strip().replaceAll("^\"|\"$", ""),
                        parts[0].toString(),
                        parts[1].toString(),
                        parts[2].toString()));
            }
        }
    }

    /** All that is wrong, compile errors first; only those when there are any. */
    public List<Problem> problems() {
        try {
            RuleBook.of(folder, null).close();
        } catch (RulesBroken broken) {
            return broken.problems();
        }
        return asWritten();
    }

    /** What shows from how the rules are written, without compiling them. */
    public List<Problem> asWritten() {
        List<Problem> problems = new ArrayList<>();
        List<Written> rules = rules();
        rules.forEach(rule -> alone(rule, problems));
        sameCondition(rules, problems);
        stages(rules, problems);
        return problems;
    }

    private static void alone(Written rule, List<Problem> problems) {
        if (!rule.annotations().contains("@source")) {
            problems.add(problem(
                    rule, "has no source: add @source(\"…\"), or @source(\"common practice\") when there is none."));
        }
        if (STRING_DATE.matcher(rule.condition()).find()) {
            problems.add(problem(
                    rule,
                    "compares with a date in quotes, which fails when it runs: use a figure of the sheet or Today."));
        }
        if (rule.annotations().contains("salience")) {
            problems.add(problem(rule, "has a salience: say with a fact when it holds instead."));
        }
        if (rule.condition().contains("eval(")) {
            problems.add(problem(rule, "uses eval: write the condition as a pattern, so that it can be explained."));
        }
    }

    private static Problem problem(Written rule, String text) {
        return new Problem(rule.file(), rule.line(), "rule \"" + rule.name() + "\" " + text);
    }

    private static void sameCondition(List<Written> rules, List<Problem> problems) {
        Map<String, Written> seen = new HashMap<>();
        for (Written rule : rules) {
            String condition = rule.condition().replaceAll("\\s+", " ").strip();
            Written other = seen.putIfAbsent(condition, rule);
            if (other != null) {
                problems.add(problem(
                        rule,
                        "has the same condition as \"" + other.name() + "\" (" + other.file() + ":" + other.line()
                                + "): make them one rule, or say what tells them apart."));
            }
        }
    }

    /** A stage that no rule reaches, or at which no rule gives advice, leaves the grower alone. */
    private static void stages(List<Written> rules, List<Problem> problems) {
        Set<Stage> reached = EnumSet.noneOf(Stage.class);
        Set<Stage> led = EnumSet.noneOf(Stage.class);
        for (Written rule : rules) {
            if (rule.consequence().contains("new Reached(")) {
                reached.addAll(stagesIn(rule.consequence()));
            }
            if (!rule.advice().isEmpty() && rule.condition().contains("AtStage(")) {
                led.addAll(stagesIn(rule.condition()));
            }
        }
        for (Stage stage : Stage.values()) {
            if (!reached.contains(stage)) {
                problems.add(new Problem("stages.drl", 0, "no rule reaches the stage " + stage.word() + ": add one."));
            }
            boolean last = stage == Stage.OVER || stage == Stage.PACKET;
            if (!last && !led.contains(stage)) {
                problems.add(new Problem(
                        "stages.drl",
                        0,
                        "the stage " + stage.word()
                                + " has no way on: no rule gives advice at it. Add one with AtStage(stage == Stage."
                                + stage.name() + ")."));
            }
        }
    }

    private static Set<Stage> stagesIn(String text) {
        Set<Stage> stages = EnumSet.noneOf(Stage.class);
        Matcher matcher = STAGE.matcher(text);
        while (matcher.find()) {
            stages.add(Stage.valueOf(matcher.group(1)));
        }
        return stages;
    }
}
