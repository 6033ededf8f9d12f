package bothy;

import bothy.advice.RuleBook;
import bothy.almanac.KeptFiles;
import bothy.almanac.RulesFolder;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import sun.misc.Signal;
import sun.misc.SignalHandler;

/**
 * Opens a chat in a Java set for a quick start: the plain compiler, the small collector and an archive of the loaded classes, which
 * the first chat that has no rules to compile writes as it ends. Neither a jar nor Maven can ask for these itself, so the program
 * starts itself again with them and lends it the terminal. Whoever sets any Java option has chosen for himself, and nothing is started
 * again.
 */
final class QuickStart {
    /** Set in the Java that is started again: the process that started it. */
    private static final String STARTED_BY = "bothy.startedBy";

    private static final String ARCHIVES = "classes-[0-9a-f]{8}\\.jsa";
    private static final int KEPT = 2;

    /** An archive takes about 35 million bytes. */
    private static final long ROOM = 200_000_000;

    private final Path java;
    /** The program's jar first. */
    private final List<Path> jars;

    private final Path cache;

    private QuickStart(Path java, List<Path> jars, Path cache) {
        this.java = java;
        this.jars = jars;
        this.cache = cache;
    }

    /**
     * @param arguments those of the program, all of them of a chat
     * @return the exit code of the chat, or empty when it is to be held in this process
     */
    static OptionalInt chat(String[] arguments) {
        try {
            Optional<QuickStart> quick = ofThisProcess(arguments);
            return quick.isEmpty()
                    ? OptionalInt.empty()
                    : OptionalInt.of(quick.get().run(arguments));
        } catch (IOException notStarted) {
            return OptionalInt.empty();
        }
    }

    /** When the process that was started first is killed, nothing may go on writing the diary behind its back. */
    static void endWithTheFirst() {
        Long first = Long.getLong(STARTED_BY);
        if (first != null) {
            ProcessHandle.current()
                    .parent()
                    .filter(parent -> parent.pid() == first)
                    .ifPresentOrElse(parent -> parent.onExit().thenRun(QuickStart::halt), QuickStart::halt);
        }
    }

    private static void halt() {
        Runtime.getRuntime().halt(1);
    }

    private static Optional<QuickStart> ofThisProcess(String[] arguments) throws IOException {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        if (Long.getLong(STARTED_BY) != null || !Files.isExecutable(java)) {
            return Optional.empty();
        }
        Path cache = Workshop.cacheFolder();
        Optional<BuiltClasses> built = BuiltClasses.of(QuickStart.class.getClassLoader());
        if (built.isPresent()) {
            return chosenForHimself()
                    ? Optional.empty()
                    : Optional.of(new QuickStart(java, built.get().classPath(cache), cache));
        }
        String jar = System.getProperty("java.class.path");
        return jar.endsWith(".jar") && Files.isRegularFile(Path.of(jar)) && noOptions(jar, arguments)
                ? Optional.of(new QuickStart(java, List.of(Path.of(jar)), cache))
                : Optional.empty();
    }

    /** Options that Maven is given for its Java; those that come with the project do not count. */
    private static boolean chosenForHimself() {
        String options = System.getenv("MAVEN_OPTS");
        return options != null && !options.isBlank();
    }

    private static boolean noOptions(String jar, String... arguments) {
        List<String> plain = new ArrayList<>(List.of("-jar", jar));
        plain.addAll(List.of(arguments));
        ProcessHandle.Info info = ProcessHandle.current().info();
        return info.arguments().filter(given -> plain.equals(List.of(given))).isPresent();
    }

    private int run(String[] arguments) throws IOException {
        Path archive = cache.resolve(archiveName());
        boolean archived = Files.isRegularFile(archive);
        Path fresh = archive.resolveSibling(
                archive.getFileName() + "." + ProcessHandle.current().pid());
        List<String> command = new ArrayList<>(List.of(
                java.toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xshare:auto",
                // An archive that does not fit is left aside without a word.
                "-Xlog:disable",
                "-Xlog:all=error:stderr",
                "-D" + STARTED_BY + "=" + ProcessHandle.current().pid()));
        if (archived) {
            command.add("-XX:SharedArchiveFile=" + archive);
        } else if (archivable(arguments) && roomForAnArchive()) {
            command.add("-XX:ArchiveClassesAtExit=" + fresh);
        }
        command.addAll(List.of(
                "-cp",
                jars.stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator)),
                Bothy.class.getName()));
        command.addAll(List.of(arguments));
        Process chat = new ProcessBuilder(command).inheritIO().start();
        // The interrupt key reaches both processes; the chat knows what to make of it.
        Signal.handle(new Signal("INT"), SignalHandler.SIG_IGN);
        Thread ended = new Thread(() -> end(chat));
        Runtime.getRuntime().addShutdownHook(ended);
        int exit = awaited(chat);
        if (exit == 0 && !archived) {
            keep(fresh, archive);
        }
        Files.deleteIfExists(fresh);
        return exit;
    }

    private static int awaited(Process chat) {
        while (true) {
            try {
                return chat.waitFor();
            } catch (InterruptedException again) {
                chat.destroy();
            }
        }
    }

    private static void end(Process chat) {
        if (!chat.isAlive()) {
            return;
        }
        chat.destroy();
        try {
            chat.waitFor(5, TimeUnit.SECONDS);
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }

    /** Another Java or another jar loads other classes. */
    private String archiveName() throws IOException {
        CRC32 key = new CRC32();
        key.update(String.join(
                        "\0",
                        System.getProperty("java.home"),
                        System.getProperty("java.vm.version"),
                        jars.get(0).toAbsolutePath().toString(),
                        String.valueOf(Files.size(jars.get(0))),
                        Files.getLastModifiedTime(jars.get(0)).toString())
                .getBytes(StandardCharsets.UTF_8));
        return "classes-" + HexFormat.of().toHexDigits((int) key.getValue()) + ".jsa";
    }

    /**
     * Java is known to break down, at the very end, over an archive of the classes that compile rules: some come from a signed jar. A
     * chat on rules of the grower's own may compile at any time.
     */
    private boolean archivable(String... arguments) {
        return Stream.of(arguments)
                        .noneMatch(argument -> argument.startsWith(RulesOption.NAME) || argument.startsWith("@"))
                && RuleBook.compiled(RulesFolder.inside(), cache);
    }

    /** Java ends with an error when it cannot write the archive in full. */
    private boolean roomForAnArchive() {
        try {
            Files.createDirectories(cache);
            return Files.isWritable(cache) && Files.getFileStore(cache).getUsableSpace() > ROOM;
        } catch (IOException unwritable) {
            return false;
        }
    }

    private void keep(Path fresh, Path archive) {
        try {
            if (Files.isRegularFile(fresh)) {
                new KeptFiles(cache, ARCHIVES, KEPT)
                        .keep(fresh, archive.getFileName().toString());
            }
        } catch (IOException unwritable) {
            // The next chat starts a little slower and tries again.
            return;
        }
    }
}
