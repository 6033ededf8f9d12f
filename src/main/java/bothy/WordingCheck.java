package bothy;

import bothy.advice.RuleCheck;
import bothy.almanac.Problem;
import bothy.almanac.RulesBroken;
import bothy.almanac.RulesFolder;
import bothy.almanac.Sheet;
import bothy.almanac.Wording;
import bothy.almanac.YamlFile;
import bothy.garden.Planting;
import bothy.garden.Stage;
import bothy.garden.What;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Holds the wording against the rules and the sheets: advice without words, words without advice, names that nothing fills in. */
final class WordingCheck {
    private static final String FILE = "wording/en.yaml";
    private static final Pattern NAME = Pattern.compile("\\{([A-Za-z][A-Za-z.-]*)}");
    private static final Set<String> ALWAYS = Set.of(
            "nextCheck",
            "due",
            "crops",
            "counted",
            "crop",
            "planting",
            "s",
            "are",
            "have",
            "do",
            "They",
            "they",
            "them",
            "their",
            "prevent");
    private final YamlFile file;
    private final Wording wording;
    private final List<Problem> problems = new ArrayList<>();

    private WordingCheck(RulesFolder folder) {
        this.file = YamlFile.in(folder, FILE);
        this.wording = Wording.in(folder);
    }

    static List<Problem> problems(RulesFolder folder, List<RuleCheck.Written> rules, Map<String, Sheet> sheets) {
        try {
            WordingCheck check = new WordingCheck(folder);
            check.advice(rules);
            check.phrases(sheets);
            check.words();
            return check.problems;
        } catch (RulesBroken broken) {
            return broken.problems();
        }
    }

    private void advice(List<RuleCheck.Written> rules) {
        Map<String, Set<String>> bound = new HashMap<>();
        for (RuleCheck.Written rule : rules) {
            for (String id : rule.advice()) {
                if (!wording.advice().containsKey(id)) {
                    problems.add(new Problem(
                            rule.file(),
                            rule.line(),
                            "the advice \"" + id + "\" has no wording: add it under advice: in " + FILE + "."));
                }
                // What every rule of the advice binds can be relied on.
                bound.merge(id, rule.bound(), (a, b) -> {
                    Set<String> both = new TreeSet<>(a);
                    both.retainAll(b);
                    return both;
                });
            }
        }
        wording.advice().forEach((id, says) -> says(id, says, bound.get(id)));
    }

    private void says(String id, Wording.Says says, Set<String> bound) {
        String at = "/advice/" + id;
        if (bound == null) {
            problems.add(file.problem(at, "no rule gives the advice \"" + id + "\": take it out, or write its rule."));
            return;
        }
        Set<String> known = new TreeSet<>(bound);
        known.addAll(ALWAYS);
        known.addAll(sheetNames());
        Arrays.stream(Planting.class.getRecordComponents())
                .map(RecordComponent::getName)
                .forEach(known::add);
        for (String sentence : Arrays.asList(says.say(), says.because(), says.todo(), says.ask())) {
            names(sentence).stream()
                    .filter(name -> !known.contains(name))
                    .forEach(name -> problems.add(file.problem(
                            at, "nothing fills in {" + name + "}: bind it in the rule, or use one of " + known + ".")));
        }
        if (says.say() == null) {
            problems.add(file.problem(at, "the advice \"" + id + "\" says nothing: add say:."));
        }
        if (says.done() != null && What.of(says.done()).isEmpty()) {
            problems.add(file.problem(at + "/done", "there is no entry \"" + says.done() + "\"."));
        }
        if (says.answers() != null) {
            says.answers().forEach(answer -> answer(at, answer));
        }
    }

    private void answer(String at, Wording.Answer answer) {
        if (answer.what() != null && What.of(answer.what()).isEmpty()) {
            problems.add(file.problem(at + "/answers", "there is no entry \"" + answer.what() + "\"."));
        }
    }

    private static Set<String> names(String sentence) {
        Set<String> names = new TreeSet<>();
        if (sentence != null) {
            Matcher matcher = NAME.matcher(sentence);
            while (matcher.find()) {
                names.add(matcher.group(1));
            }
        }
        return names;
    }

    private static Set<String> sheetNames() {
        Set<String> names = new TreeSet<>();
        for (RecordComponent group : Sheet.class.getRecordComponents()) {
            if (group.getType().isRecord()) {
                Arrays.stream(group.getType().getRecordComponents())
                        .map(RecordComponent::getName)
                        .forEach(names::add);
            }
        }
        return names;
    }

    /** Ids in sheets that a sentence shows need a phrase. */
    private void phrases(Map<String, Sheet> sheets) {
        for (Sheet sheet : sheets.values()) {
            List<String> ids = new ArrayList<>();
            if (sheet.harvest() != null) {
                ids.addAll(
                        sheet.harvest().cues() == null
                                ? List.of()
                                : sheet.harvest().cues());
                ids.add(sheet.harvest().cut());
            }
            if (sheet.storing() != null) {
                ids.add(sheet.storing().how());
            }
            if (sheet.plantingOut() != null) {
                ids.add(sheet.plantingOut().support());
            }
            if (sheet.watering() != null) {
                ids.add(sheet.watering().critical());
                ids.add(sheet.watering().stopCue());
            }
            ids.stream()
                    .filter(id -> id != null && !wording.phrases().containsKey(id))
                    .forEach(id -> problems.add(new Problem(
                            "crops/" + sheet.crop() + ".yaml",
                            0,
                            "\"" + id + "\" has no phrase: add it under phrases: in " + FILE + ".")));
        }
    }

    private void words() {
        for (Stage stage : Stage.values()) {
            if (!wording.stages().containsKey(stage.word())) {
                problems.add(
                        file.problem("/stages", "the stage \"" + stage.word() + "\" has no everyday words: add them."));
            }
        }
        for (What what : What.values()) {
            if (!wording.receipts().containsKey(what.word())) {
                problems.add(file.problem("/receipts", "the entry \"" + what.word() + "\" has no receipt: add it."));
            }
        }
    }
}
