package bothy.almanac;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Files of one kind in the user's cache, each under the hash of what it was made from: whole or not there, and only the newest stay. */
public final class KeptFiles {
    private final Path folder;
    private final String names;
    private final int kept;

    /**
     * @param names what their names look like, a regular expression
     * @param kept how many stay; several programs and versions of rules may be in use side by side
     */
    public KeptFiles(Path folder, String names, int kept) {
        this.folder = folder;
        this.names = names;
        this.kept = kept;
    }

    /**
     * Keeps a file and drops the oldest of its kind.
     *
     * @throws IOException when the folder cannot be written
     */
    public void write(String name, byte[] bytes) throws IOException {
        write(name, out -> out.write(bytes));
    }

    /** Writes the bytes of a file. */
    @FunctionalInterface
    public interface Content {
        void to(OutputStream out) throws IOException;
    }

    /**
     * Keeps what is written and drops the oldest of its kind; what cannot be written in full leaves nothing behind.
     *
     * @throws IOException when the folder cannot be written
     */
    public void write(String name, Content content) throws IOException {
        Files.createDirectories(folder);
        Path fresh = Files.createTempFile(folder, "fresh-", ".new");
        try {
            try (OutputStream out = Files.newOutputStream(fresh)) {
                content.to(out);
            }
            keep(fresh, name);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    /**
     * Keeps a file that was written beside the others, under its name.
     *
     * @throws IOException when the folder cannot be written
     */
    public void keep(Path fresh, String name) throws IOException {
        Files.move(fresh, folder.resolve(name), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        try (Stream<Path> all = Files.list(folder)) {
            List<Path> stale = all.filter(path -> path.getFileName().toString().matches(names))
                    .sorted(Comparator.comparing((Path path) -> path.toFile().lastModified())
                            .reversed())
                    .skip(kept)
                    .toList();
            for (Path path : stale) {
                Files.deleteIfExists(path);
            }
        }
    }
}
