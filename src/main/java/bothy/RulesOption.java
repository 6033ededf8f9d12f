package bothy;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Which rules to use. */
final class RulesOption {
    static final String NAME = "--rules";

    @Option(
            names = NAME,
            paramLabel = "FOLDER",
            description = "Rules folder to use instead of the one that comes with the program.")
    Path folder;
}
