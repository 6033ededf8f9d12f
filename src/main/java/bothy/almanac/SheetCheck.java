package bothy.almanac;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The thorough check of all crop sheets: against the schema beside them, and for figures that contradict one another. It takes
 * longer than {@link CropSheets#load}, so it is for the check of a changed folder and not for each start.
 */
public final class SheetCheck {
    private static final Comparator<Problem> BY_PLACE =
            Comparator.comparing(Problem::file).thenComparing(Problem::line).thenComparing(Problem::text);

    private SheetCheck() {}

    /**
     * Everything that is wrong in the sheets of a folder, in the order of files and lines.
     *
     * @throws RulesBroken when the schema itself is missing or cannot be read
     */
    public static List<Problem> check(RulesFolder folder) {
        SheetSchema schema = SheetSchema.in(folder);
        List<Problem> problems = new ArrayList<>();
        for (String path : CropSheets.paths(folder)) {
            problems.addAll(check(schema, YamlFile.in(folder, path)));
        }
        problems.sort(BY_PLACE);
        return List.copyOf(problems);
    }

    private static List<Problem> check(SheetSchema schema, YamlFile file) {
        try {
            List<Problem> against = schema.problems(file);
            return against.isEmpty() ? new Contradictions(new SheetFile(file).sheet(), file).found() : against;
        } catch (RulesBroken unreadable) {
            return unreadable.problems();
        }
    }
}
