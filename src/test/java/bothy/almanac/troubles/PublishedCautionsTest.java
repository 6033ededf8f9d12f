package bothy.almanac.troubles;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.RulesFolder;
import bothy.almanac.Wording;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Walks the collected table of what can hurt people (each row with its source): a hazard that a trouble or its remedy brings has its
 * caution, worded with what the source asks for and given by some rule.
 */
class PublishedCautionsTest {
    private static final String WORDS = read("rules/wording/en.yaml");
    private static final String RULES = Stream.of("rules", "rules/troubles")
            .flatMap(PublishedCautionsTest::drl)
            .collect(Collectors.joining("\n"));

    /** The caution of a hazard, and words that it must hold. */
    private record Caution(String id, String... words) {}

    private static final Map<String, Caution> CAUTIONS = Map.ofEntries(
            Map.entry("toxic bitter cucurbits", new Caution("caution-bitter", "spit it out", "medical advice")),
            Map.entry("green or bitter potatoes", new Caution("caution-green-potatoes", "green", "bitter", "dark")),
            Map.entry("green potatoes", new Caution("caution-green-potatoes", "green", "medical help")),
            Map.entry(
                    "leaves and unripe fruit of the nightshade family",
                    new Caution("caution-nightshade", "berries", "poison")),
            Map.entry("raw kidney beans", new Caution("caution-raw-beans", "soaked", "boiled hard")),
            Map.entry("raw runner and French beans", new Caution("caution-raw-beans", "cook them through")),
            Map.entry("pesticides", new Caution("caution-spraying", "label", "law", "licensed")),
            Map.entry("pesticides and bees", new Caution("caution-spraying", "open flowers")),
            Map.entry("slug bait", new Caution("caution-slug-bait", "label", "children", "pets")),
            Map.entry("legionella in compost", new Caution("caution-compost", "face", "wash")),
            Map.entry("legionella in water", new Caution("caution-warm-water", "standing warm water")),
            Map.entry("canes and eyes", new Caution("caution-canes", "cap")),
            Map.entry(
                    "electric propagators, pumps, lamps near water",
                    new Caution("caution-electrics", "residual-current")),
            Map.entry("botulism in home canning", new Caution("caution-canning", "pressure canner", "tested recipe")),
            Map.entry("garlic or herbs in oil", new Caution("caution-garlic-in-oil", "herbs", "fridge")),
            Map.entry(
                    "parsnip and celery sap burns",
                    new Caution("caution-sap", "gloves", "sleeves", "wash it off at once", "doctor")),
            Map.entry("herbicide drift on food crops", new Caution("caution-herbicide", "local advice")),
            Map.entry("herbicide in manure or compost", new Caution("caution-herbicide", "weedkiller")),
            Map.entry("mouldy or rotting stored crops", new Caution("caution-mould", "do not cut round")));

    /** Hazards of a garden at large that no trouble and no remedy of ours brings. */
    private static final Set<String> NOT_OF_A_TROUBLE = Set.of(
            "rhubarb leaves",
            "broad beans and favism",
            "legionella at work",
            "tetanus",
            "ladders",
            "mowers, trimmers, shredders",
            "baked or cooked potatoes left warm",
            "nitrate in leafy crops",
            "well water and nitrate",
            "lead in town soil",
            "former industrial land",
            "treated wood and tyres",
            "fresh manure",
            "sprouted seed and treated seed",
            "fungal dust and heaps",
            "rats and standing water",
            "unknown plants",
            "lifting and heat",
            "glass and netting");

    @TestFactory
    Stream<DynamicTest> hazard() {
        return Csv.rows("cautions.csv").stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.get("hazard") + ": " + row.get("who_or_when"), () -> holds(row.get("hazard"))));
    }

    @Test
    void the_wording_of_the_cautions_can_be_read() {
        assertThat(Wording.in(RulesFolder.at(Path.of("rules")))).isNotNull();
    }

    private static void holds(String hazard) {
        Caution caution = CAUTIONS.get(hazard);
        if (caution == null) {
            assertThat(NOT_OF_A_TROUBLE).contains(hazard);
            return;
        }
        int at = WORDS.indexOf("\n  " + caution.id() + ":");
        assertThat(at).as(caution.id() + " is worded").isPositive();
        String said = WORDS.substring(
                at, WORDS.indexOf("\n  caution-", at + 1) < 0 ? WORDS.length() : Math.min(WORDS.length(), at + 400));
        assertThat(said).contains(caution.words());
        assertThat(RULES).contains("\"" + caution.id() + "\"");
    }

    private static Stream<String> drl(String folder) {
        try (Stream<Path> files = Files.list(Path.of(folder))) {
            return files.filter(file -> file.toString().endsWith(".drl")).map(Path::toString).toList().stream()
                    .map(PublishedCautionsTest::read);
        } catch (java.io.IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }

    private static String read(String file) {
        try {
            return Files.readString(Path.of(file));
        } catch (java.io.IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }
}
