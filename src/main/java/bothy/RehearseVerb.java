package bothy;

import bothy.almanac.RulesBroken;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.weather.WeatherSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Runs conversation files and says what differed. */
@Command(
        name = "rehearse",
        mixinStandardHelpOptions = true,
        description = "Runs conversation files and says what differed; exit 1 if anything did.")
final class RehearseVerb implements Callable<Integer> {
    @Mixin
    private RulesOption rules;

    @Parameters(arity = "1..*", paramLabel = "PATH", description = "Conversation files, or folders of them.")
    private List<Path> paths;

    @Override
    public Integer call() throws IOException {
        Knowledge knowledge =
                Workshop.knowledge(Workshop.folder(rules.folder), Workshop.cacheFolder(), WeatherSource.none());
        int failed = 0;
        List<Path> files = files();
        for (Path path : files) {
            failed += rehearse(path, knowledge) ? 0 : 1;
        }
        System.out.println(
                files.size() + (files.size() == 1 ? " conversation, " : " conversations, ") + failed + " differed");
        return failed == 0 && !files.isEmpty() ? 0 : 1;
    }

    private List<Path> files() throws IOException {
        List<Path> files = new ArrayList<>();
        for (Path path : paths) {
            if (!Files.exists(path)) {
                throw new Complaints.MisUse("There is no " + path + "; name a conversation file or a folder of them.");
            }
            try (Stream<Path> found = Files.walk(path)) {
                found.filter(one -> one.toString().endsWith(".yaml") || one.equals(path) && Files.isRegularFile(one))
                        .sorted()
                        .forEach(files::add);
            }
        }
        return files;
    }

    private static boolean rehearse(Path path, Knowledge knowledge) throws IOException {
        Path folder = Files.createTempDirectory("bothy-rehearsal");
        Path diary = folder.resolve("diary.db");
        try (Store store = Shelf.open(diary.toString())) {
            Rehearsal rehearsal = new Rehearsal(ConversationFile.read(path), knowledge, store);
            rehearsal.run();
            System.out.println((rehearsal.differences() == 0 ? "as expected: " : "DIFFERED: ") + path);
            rehearsal.report().forEach(System.out::println);
            return rehearsal.differences() == 0;
        } catch (RulesBroken broken) {
            System.out.println("UNREADABLE: " + broken.getMessage());
            return false;
        } finally {
            try (Stream<Path> left = Files.list(folder)) {
                for (Path one : left.toList()) {
                    Files.deleteIfExists(one);
                }
            }
            Files.deleteIfExists(folder);
        }
    }
}
