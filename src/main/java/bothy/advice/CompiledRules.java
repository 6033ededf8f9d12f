package bothy.advice;

import bothy.almanac.KeptFiles;
import bothy.almanac.RulesFolder;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.compiler.kie.builder.impl.InternalKieModuleProvider;
import org.kie.api.KieServices;
import org.kie.api.builder.ReleaseId;
import org.kie.api.builder.model.KieModuleModel;
import org.kie.api.runtime.KieContainer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Compiled rules kept in a file, so that a start need not compile them again. The file's name is a hash over the rules, the classes
 * of the facts and the version of the rule engine: when one of these changes, the file is not found and the rules are compiled. The
 * packed program carries the compiled form of its own rules, so that even a first start need not compile. The engine has no public
 * way to load a compiled module without its XML module, so this one class uses its inner ones.
 */
final class CompiledRules {
    /** Hash of the fact classes, written into the packed program when it is built. */
    static final String FACTS = "facts.sha256";

    /** Names the version of the rule engine, in its own jar as in the packed program. */
    private static final String ENGINE = "/META-INF/maven/org.drools/drools-engine/pom.properties";

    private static final Logger LOG = LoggerFactory.getLogger(CompiledRules.class);
    private static final List<String> FACT_PACKAGES = List.of("garden", "almanac", "advice/facts", "advice/reckoned");
    private static final String NAMES = "rules-[0-9a-f]{64}\\.jar";
    private static final int KEPT = 8;
    private final String key;
    private final String name;
    private final Path cache;

    CompiledRules(RulesFolder folder, Path cache) {
        this.key = key(folder);
        this.name = "rules-" + key + ".jar";
        this.cache = cache;
    }

    ReleaseId releaseId() {
        return KieServices.get().newReleaseId("bothy", "rules", key);
    }

    /** Whether these rules lie compiled in the cache or came so with the program; told without waking the rule engine. */
    boolean ready() {
        return cache != null
                && (Files.isReadable(cache.resolve(name)) || CompiledRules.class.getResource(name) != null);
    }

    Optional<KieContainer> kept() {
        if (cache == null) {
            return Optional.empty();
        }
        Path file = cache.resolve(name);
        try {
            if (!Files.isReadable(file) && !unpack()) {
                return Optional.empty();
            }
            return Optional.of(load(file));
        } catch (IOException | RuntimeException | LinkageError unusable) {
            LOG.warn("Compiled rules in {} cannot be used and are compiled again: {}", file, unusable.toString());
            KieServices.get().getRepository().removeKieModule(releaseId());
            return Optional.empty();
        }
    }

    /** Takes the compiled rules that came with the program, if they are those wanted. */
    private boolean unpack() throws IOException {
        try (InputStream packed = CompiledRules.class.getResourceAsStream(name)) {
            if (packed != null) {
                write(packed.readAllBytes());
            }
            return packed != null;
        }
    }

    private KieContainer load(Path file) {
        KieServices services = KieServices.get();
        ReleaseId release = releaseId();
        KieModuleModel model = services.newKieModuleModel();
        model.newKieBaseModel("defaultKieBase").addPackage("*").setDefault(true);
        services.getRepository().addKieModule(InternalKieModuleProvider.get(release, model, file.toFile()));
        KieContainer container = services.newKieContainer(release);
        container.getKieBase();
        return container;
    }

    void keep(InternalKieModule module) {
        if (cache == null) {
            return;
        }
        try {
            write(module.getBytes());
        } catch (IOException | UncheckedIOException unwritable) {
            LOG.warn("Compiled rules cannot be kept in {}: {}", cache.resolve(name), unwritable.toString());
        }
    }

    /** Drops what other rules were compiled to: a program is packed with its own only. */
    void dropOthers() throws IOException {
        try (Stream<Path> all = Files.list(cache)) {
            for (Path path :
                    all.filter(file -> isOther(file.getFileName().toString())).toList()) {
                Files.delete(path);
            }
        }
    }

    private boolean isOther(String file) {
        return file.matches(NAMES) && !file.equals(name);
    }

    private void write(byte[] bytes) throws IOException {
        new KeptFiles(cache, NAMES, KEPT).write(name, out -> uncompressed(bytes, out));
    }

    /** The same jar with its thousands of small classes not compressed: it is read at every start, and written once. */
    private static void uncompressed(byte[] jar, OutputStream to) throws IOException {
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(jar));
                ZipOutputStream out = new ZipOutputStream(to)) {
            out.setLevel(Deflater.NO_COMPRESSION);
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                out.putNextEntry(new ZipEntry(entry.getName()));
                in.transferTo(out);
                out.closeEntry();
            }
        }
    }

    private static String key(RulesFolder folder) {
        MessageDigest digest = sha256();
        digest.update(folder.index(".drl").getBytes(StandardCharsets.UTF_8));
        digest.update(resource(ENGINE).orElse("unknown engine").getBytes(StandardCharsets.UTF_8));
        digest.update(System.getProperty("java.specification.version").getBytes(StandardCharsets.UTF_8));
        digest.update(facts().getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static String facts() {
        try {
            Path home = Path.of(CompiledRules.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            if (Files.isDirectory(home)) {
                return factsOf(home);
            }
            return resource(FACTS)
                    .orElseThrow(() -> new IllegalStateException("the program was packed without " + FACTS));
        } catch (IOException | URISyntaxException unreadable) {
            throw new IllegalStateException("the program's own classes cannot be read", unreadable);
        }
    }

    private static Optional<String> resource(String path) {
        try (InputStream in = CompiledRules.class.getResourceAsStream(path)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Hash over the classes of the facts in a folder of classes. */
    static String factsOf(Path classes) throws IOException {
        MessageDigest digest = sha256();
        for (String facts : FACT_PACKAGES) {
            try (Stream<Path> found = Files.list(classes.resolve("bothy").resolve(facts))) {
                for (Path path : found.filter(Files::isRegularFile).sorted().toList()) {
                    digest.update(Files.readAllBytes(path));
                }
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }
}
