package bothy.almanac;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

    /**
     * The same sheets for a start that is to be quick: when the folder was read without a fault before, each sheet is read when it is
     * first wanted.
     *
     * @param cache folder in which it is remembered that the sheets are in order, {@code null} to read them all
     * @throws RulesBroken with the first problem of each unreadable sheet
     */
    public static Map<String, Sheet> quickly(RulesFolder folder, Path cache) {
        InOrder inOrder = new InOrder(folder, cache);
        if (inOrder.known()) {
            return new SheetsOnDemand(folder);
        }
        Map<String, Sheet> sheets = load(folder);
        inOrder.remember();
        return sheets;
    }

    /**
     * Run by the build before packing, beside the classes of this package: reads the shipped sheets and leaves a mark that they are in
     * order.
     *
     * @throws IOException when the mark cannot be written
     */
    public static void pack(Path classes) throws IOException {
        RulesFolder folder = RulesFolder.inside();
        load(folder);
        Files.writeString(classes.resolve("bothy/almanac").resolve(InOrder.SHIPPED), folder.fingerprint());
        Files.write(
                classes.resolve("bothy/almanac").resolve(ParsedFiles.name(folder)),
                ParsedFiles.bytes(ParsedFiles.parse(folder)));
    }

    /** Paths of the sheets in a folder. */
    static List<String> paths(RulesFolder folder) {
        return folder.paths(FOLDER, ".yaml");
    }
}
