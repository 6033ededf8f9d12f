package bothy.almanac.troubles;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.RulesFolder;
import bothy.almanac.Wording;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Nested;
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

    /** The sources whose hazards have a caution, each with a class of its own below. */
    private static final Set<String> SOURCES = Set.of(
            "National Nutrition Council, Philippines",
            "German Federal Institute for Risk Assessment via NPCK",
            "NC State University, A. Fraser 2004",
            "common practice",
            "Kansas State University, cooking dry beans",
            "Which? Gardening help pages, black bean aphid",
            "Victoria Department of Health",
            "Royal Horticultural Society 2010, potting compost advice",
            "Opticians' garden eye safety, accident figures",
            "NorthcentralPA 2022, after CDC and USDA",
            "CDC via Foodmate 2013",
            "UF/IFAS Suwannee County 2026",
            "Bolivar MU Extension column 2019");

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

    @Nested
    class NationalNutritionCouncilPhilippines {
        @TestFactory
        Stream<DynamicTest> hazard() {
            return hazardsOf("National Nutrition Council, Philippines");
        }
    }

    @Nested
    class GermanFederalInstituteForRiskAssessmentViaNPCK {
        @TestFactory
        Stream<DynamicTest> hazard() {
            return hazardsOf("German Federal Institute for Risk Assessment via NPCK");
        }
    }

    @Nested
    class NCStateUniversityAFraser2004 {
        @TestFactory
        Stream<DynamicTest> hazard() {
            return hazardsOf("NC State University, A. Fraser 2004");
        }
    }

    @Nested
    class CommonPractice {
        @TestFactory
        Stream<DynamicTest> hazard() {
            return hazardsOf("common practice");
        }
    }

    @Nested
    class KansasStateUniversityCookingDryBeans {
        @TestFactory
        Stream<DynamicTest> hazard() {
            return hazardsOf("Kansas State University, cooking dry beans");
        }
    }

    @Nested
    class WhichGardeningHelpPagesBlackBeanAphid {
        @TestFactory
        Stream<DynamicTest> hazard() {
            return hazardsOf("Which? Gardening help pages, black bean aphid");
        }
    }

    @Nested
    class VictoriaDepartmentOfHealth {
        @TestFactory
        Stream<DynamicTest> hazard() {
            return hazardsOf("Victoria Department of Health");
        }
    }

    @Nested
    class RoyalHorticulturalSociety2010PottingCompostAdvice {
        @TestFactory
        Stream<DynamicTest> hazard() {
            return hazardsOf("Royal Horticultural Society 2010, potting compost advice");
        }
    }

    @Nested
    class OpticiansGardenEyeSafetyAccidentFigures {
        @TestFactory
        Stream<DynamicTest> hazard() {
            return hazardsOf("Opticians' garden eye safety, accident figures");
        }
    }

    @Nested
    class NorthcentralPA2022AfterCDCAndUSDA {
        @TestFactory
        Stream<DynamicTest> hazard() {
            return hazardsOf("NorthcentralPA 2022, after CDC and USDA");
        }
    }

    @Nested
    class CDCViaFoodmate2013 {
        @TestFactory
        Stream<DynamicTest> hazard() {
            return hazardsOf("CDC via Foodmate 2013");
        }
    }

    @Nested
    class UFIFASSuwanneeCounty2026 {
        @TestFactory
        Stream<DynamicTest> hazard() {
            return hazardsOf("UF/IFAS Suwannee County 2026");
        }
    }

    @Nested
    class BolivarMUExtensionColumn2019 {
        @TestFactory
        Stream<DynamicTest> hazard() {
            return hazardsOf("Bolivar MU Extension column 2019");
        }
    }

    /** Hazards of the other sources are none of a trouble or its remedy. */
    @TestFactory
    Stream<DynamicTest> hazardOfAnotherSource() {
        return Csv.rows("cautions.csv").stream()
                .filter(row -> !SOURCES.contains(row.get("source")))
                .map(row -> DynamicTest.dynamicTest(named(row), () -> {
                    assertThat(CAUTIONS).doesNotContainKey(row.get("hazard"));
                    holds(row.get("hazard"));
                }));
    }

    private static Stream<DynamicTest> hazardsOf(String source) {
        List<Map<String, String>> rows = Csv.rows("cautions.csv").stream()
                .filter(row -> row.get("source").equals(source))
                .toList();
        assertThat(rows).as(source).isNotEmpty();
        return rows.stream().map(row -> DynamicTest.dynamicTest(named(row), () -> holds(row.get("hazard"))));
    }

    private static String named(Map<String, String> row) {
        return row.get("hazard") + ": " + row.get("who_or_when");
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
