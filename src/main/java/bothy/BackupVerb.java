package bothy;

import bothy.diary.sql.Shelf;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Copies the diary while the program runs. */
@Command(
        name = "backup",
        mixinStandardHelpOptions = true,
        description =
                "Copies an SQLite diary into a new file, also while Bothy is running. To restore it: stop Bothy, move the "
                        + "diary with its -wal and -shm files away, copy the backup to its place, start Bothy.")
final class BackupVerb implements Callable<Integer> {
    @Option(
            names = "--db",
            paramLabel = "FILE",
            defaultValue = "${env:BOTHY_DB:-bothy.db}",
            description = "The diary to copy (default: ${DEFAULT-VALUE}).")
    private String diary;

    @Parameters(paramLabel = "COPY", description = "File for the copy; it must not be there yet.")
    private Path copy;

    @Override
    public Integer call() {
        Shelf.backUp(diary, copy);
        System.out.println("Copied " + diary + " to " + copy + ".");
        return 0;
    }
}
