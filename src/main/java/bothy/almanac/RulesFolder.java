package bothy.almanac;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The text files of a rules folder, read whole at once: from a folder, or from the copy that travels inside the jar. A folder that
 * changes later does not change this object.
 */
public final class RulesFolder {
    /**
     * Names the files of the packed rules, one a line behind its hash; written by the build, since opening the whole jar for a listing is
     * slow, and so is reading every file for a hash.
     */
    public static final String INDEX = "rules/index.txt";

    private static final String INSIDE = "rules";
    /** What the copy that travels with the program is called, unlike any path. */
    private static final String SHIPPED = "rules of the program";

    private final String name;
    private final SortedMap<String, RulesText> files;
    private final Map<String, String> parsed;
    private volatile String fingerprint;

    private RulesFolder(String name, SortedMap<String, RulesText> files) {
        this(name, files, Map.of());
    }

    private RulesFolder(String name, SortedMap<String, RulesText> files, Map<String, String> parsed) {
        this.name = name;
        this.files = files;
        this.parsed = parsed;
    }

    /**
     * The same folder, its YAML taken in parsed form when it was parsed before.
     *
     * @param cache where parsed forms are kept
     */
    public RulesFolder readyFrom(Path cache) {
        RulesFolder ready = new RulesFolder(name, files, ParsedFiles.of(this, cache));
        ready.fingerprint = fingerprint;
        return ready;
    }

    /** The parsed form of a YAML file, {@code null} when there is none. */
    JsonNode parsed(String path) {
        String json = parsed.get(path);
        return json == null ? null : ParsedFiles.tree(json);
    }

    /**
     * Reads a folder.
     *
     * @throws RulesBroken when it is not there or cannot be read
     */
    public static RulesFolder at(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new RulesBroken(List.of(new Problem(
                    folder.toString(),
                    0,
                    "there is no rules folder here; name one with --rules, or leave --rules out.")));
        }
        try {
            return new RulesFolder(folder.toString(), readAll(folder));
        } catch (IOException | UncheckedIOException unreadable) {
            throw new RulesBroken(List.of(
                    new Problem(folder.toString(), 0, "the rules folder cannot be read: " + unreadable.getMessage())));
        }
    }

    /** The copy that travels with the program. */
    public static RulesFolder inside() {
        ClassLoader loader = RulesFolder.class.getClassLoader();
        URL packed = loader.getResource(INDEX);
        if (packed == null || !"jar".equals(packed.getProtocol())) {
            return listed();
        }
        try (InputStream index = loader.getResourceAsStream(INDEX)) {
            return indexed(loader, new String(index.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new IllegalStateException("the rules packed with the program cannot be read", unreadable);
        }
    }

    private static RulesFolder indexed(ClassLoader loader, String index) {
        SortedMap<String, RulesText> files = new TreeMap<>();
        index.lines()
                .map(line -> line.split(" ", 2))
                .forEach(line -> files.put(line[1], RulesText.later(line[0], () -> packed(loader, line[1]))));
        return new RulesFolder(SHIPPED, files);
    }

    private static String packed(ClassLoader loader, String path) {
        try (InputStream in = loader.getResourceAsStream(INSIDE + "/" + path)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static RulesFolder listed() {
        URL root = RulesFolder.class.getClassLoader().getResource(INSIDE + "/wording/en.yaml");
        if (root == null) {
            throw new IllegalStateException("the program was packed without its rules");
        }
        try {
            URI wording = root.toURI();
            if ("jar".equals(wording.getScheme())) {
                try (FileSystem jar = FileSystems.newFileSystem(wording, Map.of())) {
                    return new RulesFolder(SHIPPED, readAll(jar.getPath("/" + INSIDE)));
                }
            }
            return new RulesFolder(SHIPPED, readAll(Path.of(wording).getParent().getParent()));
        } catch (IOException | URISyntaxException unreadable) {
            throw new IllegalStateException("the rules packed with the program cannot be read", unreadable);
        }
    }

    /** A folder made of the given texts by path, for tests. */
    public static RulesFolder of(Map<String, String> files) {
        SortedMap<String, RulesText> texts = new TreeMap<>();
        files.forEach((path, text) -> texts.put(path, RulesText.of(text)));
        return new RulesFolder("given", texts);
    }

    private static SortedMap<String, RulesText> readAll(Path folder) throws IOException {
        SortedMap<String, RulesText> files = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                String inside = folder.relativize(path).toString().replace('\\', '/');
                if (inside.endsWith(".yaml") || inside.endsWith(".drl") || inside.endsWith(".json")) {
                    try (InputStream in = Files.newInputStream(path)) {
                        files.put(inside, RulesText.of(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
                    }
                }
            }
        }
        return files;
    }

    /** Its paths, one a line, each behind the hash of its text. */
    public String index() {
        return index("");
    }

    /** The lines of {@link #index()} whose paths end so: they change when such a file does. */
    public String index(String suffix) {
        return paths("", suffix).stream()
                .map(path -> files.get(path).hash() + " " + path)
                .collect(Collectors.joining("\n"));
    }

    /** What to call the folder in a message. */
    public String name() {
        return name;
    }

    /** Whether it is the copy that travels with the program, which the build has checked. */
    public boolean shipped() {
        return name.equals(SHIPPED);
    }

    /** Paths in the folder that begin and end so, in order. */
    public List<String> paths(String prefix, String suffix) {
        return files.keySet().stream()
                .filter(path -> path.startsWith(prefix) && path.endsWith(suffix))
                .toList();
    }

    /**
     * The text of one file.
     *
     * @throws RulesBroken when there is no such file
     */
    public String text(String path) {
        RulesText file = files.get(path);
        if (file == null) {
            throw new RulesBroken(List.of(
                    new Problem(path, 0, "this file is missing from the rules folder " + name + "; put it back.")));
        }
        return file.text();
    }

    /** SHA-256 over all paths and the hashes of their texts, in hexadecimal. */
    public String fingerprint() {
        if (fingerprint == null) {
            fingerprint = RulesText.sha256(index());
        }
        return fingerprint;
    }
}
