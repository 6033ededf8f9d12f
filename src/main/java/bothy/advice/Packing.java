package bothy.advice;

import bothy.almanac.CropSheets;
import bothy.almanac.RulesFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** Run by the build before packing: puts the compiled form of the shipped rules, and the mark that they are in order, beside the classes. */
public final class Packing {
    private static final String HERE = "bothy/advice/";

    private Packing() {}

    /**
     * @param arguments the folder of classes
     * @throws IOException when it cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        Path classes = Path.of(arguments[0]);
        for (Map.Entry<String, byte[]> mark : marks(classes).entrySet()) {
            Files.write(classes.resolve(mark.getKey()), mark.getValue());
        }
        RuleBook.of(RulesFolder.inside(), classes.resolve(HERE)).close();
        new CompiledRules(RulesFolder.inside(), classes.resolve(HERE)).dropOthers();
        CropSheets.pack(classes);
    }

    /**
     * What must lie beside classes in a jar, by path: the mark of the fact classes, and the list of rules files, since a jar's
     * folders cannot be listed.
     *
     * @param classes the folder of classes
     * @throws IOException when it cannot be read
     */
    public static Map<String, byte[]> marks(Path classes) throws IOException {
        return Map.of(
                HERE + CompiledRules.FACTS,
                CompiledRules.factsOf(classes).getBytes(StandardCharsets.UTF_8),
                RulesFolder.INDEX,
                RulesFolder.inside().index().getBytes(StandardCharsets.UTF_8));
    }
}
