package bothy.almanac;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All crop sheets of a rules folder. */
public final class CropSheets {
    static final String FOLDER = "crops/";

    private CropSheets() {}

    /**
     * Reads every {@code crops/*.yaml}. It fails on what makes a sheet unreadable (an unknown key, a wrong type, a figure without
     * source, a low end above its high end); whether a readable figure can be true is for {@link SheetCheck} to say.
     *
     * @return the sheets by crop, in alphabetical order
     * @throws RulesBroken with the first problem of each unreadable sheet
     */
    public static Map<String, Sheet> load(RulesFolder folder) {
        Map<String, Sheet> sheets = new LinkedHashMap<>();
        List<Problem> problems = new ArrayList<>();
        for (String path : paths(folder)) {
            try {
                Sheet sheet = new SheetFile(YamlFile.in(folder, path)).sheet();
                sheets.put(sheet.crop(), sheet);
            } catch (RulesBroken broken) {
                problems.addAll(broken.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new RulesBroken(problems);
        }
        return Collections.unmodifiableMap(sheets);
    }

    /** Paths of the sheets in a folder. */
    static List<String> paths(RulesFolder folder) {
        return folder.paths(FOLDER, ".yaml");
    }
}
