package bothy;

import bothy.advice.RuleCheck;
import bothy.advice.TroubleRules;
import bothy.almanac.Climates;
import bothy.almanac.CraftNotes;
import bothy.almanac.CropSheets;
import bothy.almanac.NotesCheck;
import bothy.almanac.Places;
import bothy.almanac.Problem;
import bothy.almanac.RulesBroken;
import bothy.almanac.RulesFolder;
import bothy.almanac.Sheet;
import bothy.almanac.SheetCheck;
import bothy.almanac.SowingCalendars;
import bothy.almanac.Words;
import bothy.almanac.troubles.TroubleCheck;
import bothy.almanac.troubles.Troubles;
import bothy.reading.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Reads a rules folder and reports what is wrong or missing in it. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Reads a rules folder and reports what is wrong or missing in it; exit 1 if anything is.")
final class CheckVerb implements Callable<Integer> {
    @Mixin
    private RulesOption rules;

    @Parameters(
            arity = "0..1",
            paramLabel = "FOLDER",
            description = "Rules folder (default: the one that comes with the program).")
    private Path folder;

    @Override
    public Integer call() {
        List<Problem> problems = problems(Workshop.folder(folder != null ? folder : rules.folder));
        problems.forEach(System.out::println);
        System.out.println(problems.isEmpty() ? "The rules are in order." : problems.size() + " to mend.");
        return problems.isEmpty() ? 0 : 1;
    }

    static List<Problem> problems(RulesFolder folder) {
        return problems(folder, RuleCheck::problems);
    }

    /** All that shows without compiling the rules, which takes long. */
    static List<Problem> asWritten(RulesFolder folder) {
        return problems(folder, RuleCheck::asWritten);
    }

    private static List<Problem> problems(RulesFolder folder, Function<RuleCheck, List<Problem>> ofTheRules) {
        List<Problem> problems = new ArrayList<>(SheetCheck.check(folder));
        RuleCheck ruleCheck = new RuleCheck(folder);
        problems.addAll(ofTheRules.apply(ruleCheck));
        problems.addAll(broken(() -> Places.in(folder)));
        problems.addAll(broken(() -> Climates.in(folder)));
        problems.addAll(broken(() -> SowingCalendars.in(folder)));
        try {
            Map<String, Sheet> sheets = CropSheets.load(folder);
            problems.addAll(troubles(folder, ruleCheck.rules()));
            Set<String> crops = new TreeSet<>(sheets.keySet());
            crops.addAll(Words.in(folder).names("crops", "/crops"));
            problems.addAll(TroubleCheck.unknownCrops(folder, crops));
            problems.addAll(NotesCheck.problems(folder, crops));
            problems.addAll(broken(() -> new Reading(Words.in(folder), CraftNotes.in(folder))));
            problems.addAll(WordingCheck.problems(folder, ruleCheck.rules(), sheets));
        } catch (RulesBroken broken) {
            broken.problems().stream().filter(one -> !problems.contains(one)).forEach(problems::add);
        }
        return problems;
    }

    private static List<Problem> troubles(RulesFolder folder, List<RuleCheck.Written> rules) {
        List<Problem> problems = new ArrayList<>(TroubleRules.problems(rules, Troubles.in(folder)));
        problems.addAll(TroubleCheck.problems(folder, TroubleRules.weighed(rules), TroubleRules.cautioned(rules)));
        return problems;
    }

    private static List<Problem> broken(Supplier<?> reading) {
        try {
            reading.get();
            return List.of();
        } catch (RulesBroken broken) {
            return broken.problems();
        }
    }
}
