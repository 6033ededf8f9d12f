package bothy;

import static java.util.concurrent.TimeUnit.SECONDS;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Chats of a jar that holds no more than the way to the program's classes, each in processes of its own. */
class QuickStartTest {
    private static final String JAVA =
            Path.of(System.getProperty("java.home"), "bin", "java").toString();

    @TempDir
    private Path folder;

    private Path jar;

    @BeforeEach
    void packs() throws IOException {
        jar = folder.resolve("bothy.jar");
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, "bothy.Bothy");
        manifest.getMainAttributes()
                .put(
                        Attributes.Name.CLASS_PATH,
                        Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                                .map(path -> Path.of(path).toUri().toString())
                                .collect(Collectors.joining(" ")));
        new JarOutputStream(Files.newOutputStream(jar), manifest).close();
    }

    @Test
    void aChatIsHeldInAJavaStartedAgainAndTheNextOneFindsItsClasses() throws Exception {
        Process first = start(List.of());
        write(first, "sowed 6 tomatoes\n");
        assertThat(read(first)).contains("Noted: 6 tomatoes sown today.");
        assertThat(first.waitFor()).isZero();
        assertThat(archives()).as("where rules were compiled").isEmpty();
        for (int again = 0; again < 2; again++) {
            Process next = start(List.of());
            write(next, "status\n");
            assertThat(read(next)).contains("omato");
            assertThat(next.waitFor()).isZero();
            assertThat(archives()).hasSize(1);
        }
    }

    @Test
    void whoeverSetsAJavaOptionIsGivenThatJavaAlone() throws Exception {
        Process chat = start(List.of("-Xmx300m"));
        write(chat, "sowed 6 tomatoes\n");
        assertThat(read(chat)).contains("Noted: 6 tomatoes sown today.");
        assertThat(chat.waitFor()).isZero();
        assertThat(archives()).isEmpty();
    }

    @Test
    void wrongOptionsAreToldAndEndWithTwo() throws Exception {
        Process wrong = start(List.of(), "--todya", "2027-05-01");
        wrong.getOutputStream().close();
        assertThat(read(wrong)).contains("--todya").contains("--today");
        assertThat(wrong.waitFor()).isEqualTo(2);
    }

    @Test
    void nothingGoesOnWhenTheProcessThatWasStartedIsKilled() throws Exception {
        for (boolean hard : new boolean[] {true, false}) {
            Process chat = start(List.of());
            OutputStream in = chat.getOutputStream();
            in.write("sowed 6 tomatoes\n".getBytes(StandardCharsets.UTF_8));
            in.flush();
            ProcessHandle again = startedBy(chat);
            if (hard) {
                chat.destroyForcibly();
            } else {
                chat.destroy();
            }
            assertThat(chat.waitFor(30, SECONDS)).isTrue();
            again.onExit().get(30, SECONDS);
            assertThat(again.isAlive()).isFalse();
        }
    }

    @Test
    void aChatFromTheFolderOfClassesIsHeldInAJavaStartedAgainToo() throws Exception {
        Path classes = copyOfTheClasses();
        assertThat(chatFrom(classes, "")).contains("Noted: 6 tomatoes sown today.");
        assertThat(archives()).as("where rules were compiled").isEmpty();
        assertThat(chatFrom(classes, "")).contains("Noted: 6 tomatoes");
        assertThat(archives()).hasSize(1);
        assertThat(chatFrom(classes, "")).contains("Noted: 6 tomatoes");
        assertThat(kept("program-.*\\.jar")).hasSize(1);
        assertThat(archives()).hasSize(1);
    }

    @Test
    void classesCompiledAnewAreNotMistakenForTheOldOnes() throws Exception {
        Path classes = copyOfTheClasses();
        chatFrom(classes, "");
        Path wording = classes.resolve("rules").resolve("wording").resolve("en.yaml");
        Files.writeString(wording, Files.readString(wording).replace("Noted: {", "Written down: {"));
        assertThat(chatFrom(classes, "")).contains("Written down: 6 tomatoes");
        assertThat(kept("program-.*\\.jar")).hasSize(2);
    }

    @Test
    void whoeverSetsMavensOptionsIsGivenThatJavaAlone() throws Exception {
        assertThat(chatFrom(copyOfTheClasses(), "-Xmx300m")).contains("Noted: 6 tomatoes sown today.");
        assertThat(kept("program-.*")).isEmpty();
    }

    private Path copyOfTheClasses() throws IOException {
        Path from = Path.of("target", "classes");
        Path to = folder.resolve("classes");
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.toList()) {
                Files.copy(path, to.resolve(from.relativize(path).toString()), StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
        return to;
    }

    /** Loads the program as Maven does, from a loader of its own in a process that is not the program's. */
    private String chatFrom(Path classes, String mavenOptions) throws Exception {
        List<String> command = new ArrayList<>(List.of(
                JAVA,
                "-cp",
                Path.of("target", "test-classes").toString(),
                FromALoader.class.getName(),
                classes.toUri().toString()));
        Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(path -> path.endsWith(".jar"))
                .map(path -> Path.of(path).toUri().toString())
                .forEach(command::add);
        command.addAll(List.of("--", "--db", folder.resolve("diary.db").toString()));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("XDG_CACHE_HOME", folder.resolve("cache").toString());
        builder.environment().put("MAVEN_OPTS", mavenOptions);
        Process chat = builder.start();
        write(chat, "sowed 6 tomatoes\n");
        String said = read(chat);
        assertThat(chat.waitFor()).isZero();
        return said;
    }

    /** A process that runs the program from a loader, as the build tool does. */
    static final class FromALoader {
        private FromALoader() {}

        /** @param arguments addresses of classes, "--", arguments of the program */
        public static void main(String[] arguments) throws Exception {
            List<String> all = List.of(arguments);
            int program = all.indexOf("--");
            List<URL> urls = new ArrayList<>();
            for (String address : all.subList(0, program)) {
                urls.add(URI.create(address).toURL());
            }
            ClassLoader loader = new URLClassLoader(urls.toArray(URL[]::new), ClassLoader.getPlatformClassLoader());
            Thread.currentThread().setContextClassLoader(loader);
            loader.loadClass("bothy.Bothy").getMethod("main", String[].class).invoke(null, (Object)
                    all.subList(program + 1, all.size()).toArray(String[]::new));
        }
    }

    private static ProcessHandle startedBy(Process chat) throws InterruptedException {
        while (true) {
            List<ProcessHandle> children = chat.children().toList();
            if (!children.isEmpty()) {
                return children.get(0);
            }
            assertThat(chat.isAlive()).isTrue();
            Thread.sleep(20);
        }
    }

    private Process start(List<String> options, String... more) throws IOException {
        List<String> command = new ArrayList<>(List.of(JAVA));
        command.addAll(options);
        command.addAll(List.of(
                "-jar", jar.toString(), "--db", folder.resolve("diary.db").toString()));
        command.addAll(List.of(more));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("XDG_CACHE_HOME", folder.resolve("cache").toString());
        return builder.start();
    }

    private static void write(Process chat, String text) throws IOException {
        try (OutputStream in = chat.getOutputStream()) {
            in.write(text.getBytes(StandardCharsets.UTF_8));
        }
    }

    private static String read(Process chat) throws IOException {
        return new String(chat.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    private List<Path> archives() throws IOException {
        return kept(".*\\.jsa.*");
    }

    private List<Path> kept(String names) throws IOException {
        try (Stream<Path> kept = Files.list(folder.resolve("cache").resolve("bothy"))) {
            return kept.filter(path -> path.getFileName().toString().matches(names))
                    .toList();
        }
    }
}
