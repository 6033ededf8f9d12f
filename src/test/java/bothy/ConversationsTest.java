package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.advice.RuleCheck;
import bothy.almanac.RulesFolder;
import bothy.almanac.Wording;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.weather.WeatherSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;

/** Runs every conversation file, then asks whether together they fire and withhold every rule and advice. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class ConversationsTest {
    private static final Path FILES = Path.of("conversation-tests");
    private static final RulesFolder RULES = RulesFolder.at(Path.of("rules"));
    private static final Set<String> FIRED = new TreeSet<>();
    private static final Set<String> ADVISED = new TreeSet<>();
    private static final Set<String> WITHHELD = new TreeSet<>();
    private static Knowledge knowledge;
    private static Path blank;

    @TempDir
    static Path folder;

    @BeforeAll
    static void make_ready() throws IOException {
        knowledge = Workshop.knowledge(RULES, null, WeatherSource.none());
        blank = folder.resolve("blank.db");
        Shelf.open(blank.toString()).close();
    }

    @AfterAll
    static void let_go() {
        knowledge = null;
    }

    @TestFactory
    @Order(1)
    Stream<DynamicTest> conversation() throws IOException {
        return files().stream()
                .map(path -> DynamicTest.dynamicTest(FILES.relativize(path).toString(), () -> run(path)));
    }

    private static List<Path> files() throws IOException {
        try (Stream<Path> found = Files.walk(FILES)) {
            return found.filter(path -> path.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    private static void run(Path path) throws IOException {
        Path diary = Files.createTempFile(folder, "diary", ".db");
        Files.copy(blank, diary, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        try (Store store = Shelf.open(diary.toString())) {
            Rehearsal rehearsal = new Rehearsal(ConversationFile.read(path), knowledge, store);
            rehearsal.run();
            FIRED.addAll(rehearsal.fired());
            ADVISED.addAll(rehearsal.advised());
            WITHHELD.addAll(rehearsal.withheld());
            assertThat(rehearsal.report()).as(path.toString()).isEmpty();
        }
    }

    @Test
    @Order(2)
    void at_least_forty_conversations_are_told() throws IOException {
        assertThat(files()).hasSizeGreaterThanOrEqualTo(40);
    }

    @Test
    @Order(3)
    void every_rule_is_fired_by_a_conversation() {
        assertThat(new RuleCheck(RULES).rules())
                .extracting(RuleCheck.Written::name)
                .filteredOn(name -> !FIRED.contains(name))
                .as("rules that no conversation fires")
                .isEmpty();
    }

    @Test
    @Order(4)
    void every_advice_is_expected_by_a_conversation_and_withheld_by_another() {
        Set<String> ids = Wording.in(RULES).advice().keySet();

        assertThat(ids).as("advice that no conversation expects").allMatch(ADVISED::contains);
        assertThat(ids).as("advice that no conversation withholds").allMatch(WITHHELD::contains);
    }

    @Test
    @Order(5)
    void no_conversation_withholds_an_advice_that_there_is_none_of() {
        assertThat(Wording.in(RULES).advice().keySet())
                .as("withheld by a conversation, and so held whatever happens")
                .containsAll(WITHHELD);
    }
}
