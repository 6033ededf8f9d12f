package bothy;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Which rules to use. */
final class RulesOption {
    @Option(
            names = "--rules",
            paramLabel = "FOLDER",
            description = "Rules folder to use instead of the one that comes with the program.")
    Path folder;
}
