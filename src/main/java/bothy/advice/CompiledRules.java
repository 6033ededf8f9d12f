package bothy.advice;

import bothy.almanac.RulesFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
 * of the facts and the version of the rule engine: when one of these changes, the file is not found and the rules are compiled.
 * The engine has no public way to load a compiled module without its XML module, so this one class uses its inner ones.
 */
final class CompiledRules {
    private static final Logger LOG = LoggerFactory.getLogger(CompiledRules.class);
    private static final List<String> FACT_PACKAGES = List.of("garden", "almanac", "advice/facts");
    private final Path file;
    private final ReleaseId release;

    CompiledRules(RulesFolder folder, Path cache) {
        String key = key(folder);
        this.release = KieServices.get().newReleaseId("bothy", "rules", key);
        this.file = cache == null ? null : cache.resolve("rules-" + key + ".jar");
    }

    ReleaseId releaseId() {
        return release;
    }

    Optional<KieContainer> kept() {
        if (file == null || !Files.isReadable(file)) {
            return Optional.empty();
        }
        try {
            KieServices services = KieServices.get();
            KieModuleModel model = services.newKieModuleModel();
            model.newKieBaseModel("defaultKieBase").addPackage("*").setDefault(true);
            InternalKieModule module = InternalKieModuleProvider.get(release, model, file.toFile());
            services.getRepository().addKieModule(module);
            KieContainer container = services.newKieContainer(release);
            container.getKieBase();
            return Optional.of(container);
        } catch (RuntimeException | LinkageError unusable) {
            LOG.warn("Compiled rules in {} cannot be used and are compiled again: {}", file, unusable.toString());
            KieServices.get().getRepository().removeKieModule(release);
            return Optional.empty();
        }
    }

    void keep(InternalKieModule module) {
        if (file == null) {
            return;
        }
        try {
            Files.createDirectories(file.getParent());
            Path fresh = Files.createTempFile(file.getParent(), "rules-", ".new");
            Files.write(fresh, module.getBytes());
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            dropOlder();
        } catch (IOException | UncheckedIOException unwritable) {
            LOG.warn("Compiled rules cannot be kept in {}: {}", file, unwritable.toString());
        }
    }

    /** Keeps the few newest: several versions of the rules may be in use side by side. */
    private void dropOlder() throws IOException {
        try (Stream<Path> all = Files.list(file.getParent())) {
            List<Path> stale = all.filter(path -> path.getFileName().toString().matches("rules-[0-9a-f]{64}\\.jar"))
                    .sorted((a, b) ->
                            Long.compare(b.toFile().lastModified(), a.toFile().lastModified()))
                    .skip(8)
                    .toList();
            for (Path path : stale) {
                Files.deleteIfExists(path);
            }
        }
    }

    private static String key(RulesFolder folder) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (String path : folder.paths("", ".drl")) {
                digest.update((path + "\0" + folder.text(path) + "\0").getBytes(StandardCharsets.UTF_8));
            }
            digest.update(String.valueOf(KieServices.class.getPackage().getImplementationVersion())
                    .getBytes(StandardCharsets.UTF_8));
            digest.update(System.getProperty("java.specification.version").getBytes(StandardCharsets.UTF_8));
            addFactClasses(digest);
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        } catch (IOException | URISyntaxException unreadable) {
            throw new IllegalStateException("the program's own classes cannot be read", unreadable);
        }
    }

    private static void addFactClasses(MessageDigest digest) throws IOException, URISyntaxException {
        Path home = Path.of(CompiledRules.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        if (Files.isRegularFile(home)) {
            digest.update(stamp(home).getBytes(StandardCharsets.UTF_8));
            return;
        }
        for (String facts : FACT_PACKAGES) {
            try (Stream<Path> classes = Files.list(home.resolve("bothy").resolve(facts))) {
                for (Path path : classes.filter(Files::isRegularFile).sorted().toList()) {
                    digest.update(Files.readAllBytes(path));
                }
            }
        }
    }

    private static String stamp(Path jar) throws IOException {
        return jar.getFileName() + " " + Files.size(jar) + " " + Files.getLastModifiedTime(jar);
    }
}
