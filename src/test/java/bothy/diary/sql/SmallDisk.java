package bothy.diary.sql;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Assumptions;

/** A disk of a few megabytes in memory; the test is skipped with a reason where it cannot be mounted. */
public final class SmallDisk implements AutoCloseable {
    private final Path folder;

    private SmallDisk(Path folder) {
        this.folder = folder;
    }

    static SmallDisk at(Path folder) {
        return at(folder, 1);
    }

    public static SmallDisk at(Path folder, int megabytes) {
        Assumptions.assumeTrue(
                run("mount", "-t", "tmpfs", "-o", "size=" + megabytes + "m", "tmpfs", folder.toString()),
                "SKIPPED: mounting a small disk needs root");
        return new SmallDisk(folder);
    }

    void makeReadOnly() {
        if (!run("mount", "-o", "remount,ro", folder.toString())) {
            throw new IllegalStateException("Could not make " + folder + " read-only");
        }
    }

    @Override
    public void close() {
        run("umount", folder.toString());
    }

    private static boolean run(String... command) {
        List<String> words = new ArrayList<>();
        Collections.addAll(words, command);
        try {
            return new ProcessBuilder(words)
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
