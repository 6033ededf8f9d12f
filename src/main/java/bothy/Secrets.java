package bothy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** What must not stand on a command line: taken from the environment, or from a file that the environment names. */
final class Secrets {
    private static final String IN_FILE = "_FILE";

    private final UnaryOperator<String> environment;

    Secrets(UnaryOperator<String> environment) {
        this.environment = environment;
    }

    /**
     * The value of {@code NAME}, or what stands in the file that {@code NAME_FILE} names; without blanks around it.
     *
     * @return empty when there is neither, or nothing in it
     * @throws Complaints.MisUse when the file cannot be read
     */
    Optional<String> of(String name) {
        String value = environment.apply(name);
        String file = environment.apply(name + IN_FILE);
        String found = value == null && file != null && !file.isBlank() ? read(name, Path.of(file)) : value;
        return Optional.ofNullable(found).map(String::strip).filter(text -> !text.isEmpty());
    }

    private static String read(String name, Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new Complaints.MisUse(name + IN_FILE + " names " + file
                    + ", which cannot be read. Look whether it is there and the program's user may read it.");
        }
    }
}
