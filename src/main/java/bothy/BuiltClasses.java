package bothy;

import bothy.advice.Packing;
import bothy.almanac.KeptFiles;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * The folder of classes from which Maven runs the program, put into a jar in the cache: Java archives only the classes of jars. The
 * jar's name tells of every file in the folder, so that what was compiled anew is packed anew.
 */
final class BuiltClasses {
    private static final String JARS = "program-[0-9a-f]{8}\\.jar";
    private static final int KEPT = 2;

    private final Path classes;
    private final List<Path> libraries;

    private BuiltClasses(Path classes, List<Path> libraries) {
        this.classes = classes;
        this.libraries = libraries;
    }

    /** The classes that a loader takes from one folder and from jars beside it, empty when they come from elsewhere. */
    static Optional<BuiltClasses> of(ClassLoader loader) {
        if (!(loader instanceof URLClassLoader builds)) {
            return Optional.empty();
        }
        List<Path> folders = new ArrayList<>();
        List<Path> jars = new ArrayList<>();
        for (URL url : builds.getURLs()) {
            Path path = path(url);
            if (path != null && Files.isDirectory(path)) {
                folders.add(path);
            } else if (path != null && Files.isRegularFile(path)) {
                jars.add(path);
            }
        }
        return folders.size() == 1 ? Optional.of(new BuiltClasses(folders.get(0), jars)) : Optional.empty();
    }

    private static Path path(URL url) {
        try {
            URI uri = url.toURI();
            return "file".equals(uri.getScheme()) ? Path.of(uri) : null;
        } catch (URISyntaxException | IllegalArgumentException elsewhere) {
            return null;
        }
    }

    /**
     * The class path: the jar of these classes, packed when it is not there yet, and the jars of the libraries. They are named one by
     * one, since Java archives no class of a jar that it finds by the address in another jar's manifest.
     *
     * @throws IOException when the cache cannot be written
     */
    List<Path> classPath(Path cache) throws IOException {
        Map<String, Path> files = files();
        Path jar = cache.resolve("program-" + key(files) + ".jar");
        if (!Files.isRegularFile(jar)) {
            new KeptFiles(cache, JARS, KEPT).write(jar.getFileName().toString(), out -> pack(files, out));
        }
        List<Path> jars = new ArrayList<>(List.of(jar));
        jars.addAll(libraries);
        return jars;
    }

    /** Files and folders by their names in a jar, where a folder's ends in a stroke: what looks for a folder must find it. */
    private Map<String, Path> files() throws IOException {
        Map<String, Path> files = new TreeMap<>();
        try (Stream<Path> found = Files.walk(classes)) {
            for (Path path : found.filter(path -> !path.equals(classes)).toList()) {
                String name = classes.relativize(path).toString().replace('\\', '/');
                files.put(Files.isDirectory(path) ? name + "/" : name, path);
            }
        }
        return files;
    }

    private String key(Map<String, Path> files) throws IOException {
        List<Path> all = new ArrayList<>(files.values());
        all.addAll(libraries);
        CRC32 key = new CRC32();
        for (Path file : all) {
            key.update((file + "\0" + Files.size(file) + "\0" + Files.getLastModifiedTime(file) + "\0")
                    .getBytes(StandardCharsets.UTF_8));
        }
        return HexFormat.of().toHexDigits((int) key.getValue());
    }

    /** The marks of an earlier packing are left behind, for they may tell of other classes. */
    private void pack(Map<String, Path> files, OutputStream out) throws IOException {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        Map<String, byte[]> marks = Packing.marks(classes);
        try (JarOutputStream jar = new JarOutputStream(out, manifest)) {
            jar.setLevel(Deflater.NO_COMPRESSION);
            for (Map.Entry<String, Path> file : files.entrySet()) {
                if (!marks.containsKey(file.getKey()) && !file.getKey().startsWith("META-INF/MANIFEST")) {
                    boolean folder = file.getKey().endsWith("/");
                    put(jar, file.getKey(), folder ? new byte[0] : Files.readAllBytes(file.getValue()));
                }
            }
            for (Map.Entry<String, byte[]> mark : marks.entrySet()) {
                put(jar, mark.getKey(), mark.getValue());
            }
        }
    }

    private static void put(JarOutputStream jar, String name, byte[] bytes) throws IOException {
        jar.putNextEntry(new JarEntry(name));
        jar.write(bytes);
        jar.closeEntry();
    }
}
