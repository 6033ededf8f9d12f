package bothy.advice;

import bothy.almanac.CropSheets;
import bothy.almanac.RulesFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Run by the build before packing: puts the compiled form of the shipped rules, and the mark that they are in order, beside the classes. */
public final class Packing {
    private Packing() {}

    /**
     * @param arguments the folder of classes
     * @throws IOException when it cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        Path classes = Path.of(arguments[0]);
        Path here = classes.resolve("bothy").resolve("advice");
        Files.writeString(here.resolve(CompiledRules.FACTS), CompiledRules.factsOf(classes));
        RuleBook.of(RulesFolder.inside(), here).close();
        CropSheets.pack(classes);
    }
}
