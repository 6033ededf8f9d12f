package bothy.almanac.troubles;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.RulesFolder;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.TestFactory;

/**
 * Walks the collected thresholds of integrated pest management (each row with its source): where a trouble's words give a grower the
 * figure it must be the published one. Rows that are about weather, sowing or storing as such are held by the tests of those; they
 * are named here, so that a new row must be put somewhere.
 */
class PublishedThresholdsTest {
    private static final TroubleWording WORDS = TroubleWording.in(RulesFolder.at(Path.of("rules")));

    /** The cause whose words tell the figure, with how they write it. */
    private record Told(String cause, String figure) {}

    private static final Map<String, Told> TOLD = Map.ofEntries(
            Map.entry("clubroot 7.2", new Told("clubroot", "pH 7\\.2")),
            Map.entry("clubroot 7", new Told("clubroot", "seven years")),
            Map.entry("white rot 8", new Told("white rot", "eight years")),
            Map.entry("cutworm 2.5", new Told("cutworm", "2 to 3 cm into the soil")),
            Map.entry("cabbage root fly 15", new Told("cabbage root fly", "15 cm")),
            Map.entry("carrot fly 60", new Told("carrot fly", "60 cm")),
            Map.entry("late blight 14", new Told("late blight", "two weeks")),
            Map.entry("hardening off 7-14", new Told("sun and wind scorch", "7 to 14 days")),
            Map.entry("leggy 10-15", new Told("too little light", "10 to 15 cm")),
            Map.entry("leggy 16-21", new Told("too warm", "16 to 21 °C")),
            Map.entry("ripening indoors 18-21", new Told("too cool or late", "18 to 21 °C")),
            Map.entry("magnesium 7-14", new Told("magnesium shortage", "weekly or fortnightly")),
            Map.entry("curing 27-29", new Told("not cured or bruised", "27 to 29 °C")),
            Map.entry("storage 13-15", new Told("store too cold", "13 to 15 °C")),
            Map.entry("storage 10", new Told("store too cold", "below 10 °C")));

    /** The sources whose figures are told, each with a class of its own below. */
    private static final Set<String> SOURCES = Set.of(
            "common practice",
            "R. Smith and S. Koike, UC Cooperative Extension",
            "Growing Magazine, after Oregon State University",
            "Intergardening, onion white rot",
            "Extension ask-an-expert archive 867003 (Minnesota)",
            "Penn State Extension 2012, winter storage",
            "T. Dickerson in Garden News, Dec 2018",
            "Laidback Gardener, cutworms");

    /** Held elsewhere: by the tests of the weather of a trouble, of sheets, of sowing and of storing, or not used. */
    private static final Set<String> ELSEWHERE = Set.of(
            "late blight warning (Hutton)",
            "late blight warning (Smith, older)",
            "late blight warning (Hyre)",
            "fruit set",
            "fruit shape",
            "growth",
            "phosphorus uptake",
            "ripening",
            "pod set",
            "pollination",
            "powdery mildew",
            "rust",
            "clubroot",
            "common scab",
            "flea beetle",
            "cutworm",
            "bean beetle",
            "bolting",
            "bulbing",
            "clove division",
            "heat",
            "germination",
            "frost",
            "storage");

    @Nested
    class CommonPractice {
        @TestFactory
        Stream<DynamicTest> row() {
            return rowsOf("common practice");
        }
    }

    @Nested
    class RSmithAndSKoikeUCCooperativeExtension {
        @TestFactory
        Stream<DynamicTest> row() {
            return rowsOf("R. Smith and S. Koike, UC Cooperative Extension");
        }
    }

    @Nested
    class GrowingMagazineAfterOregonStateUniversity {
        @TestFactory
        Stream<DynamicTest> row() {
            return rowsOf("Growing Magazine, after Oregon State University");
        }
    }

    @Nested
    class IntergardeningOnionWhiteRot {
        @TestFactory
        Stream<DynamicTest> row() {
            return rowsOf("Intergardening, onion white rot");
        }
    }

    @Nested
    class ExtensionAskAnExpertArchive867003Minnesota {
        @TestFactory
        Stream<DynamicTest> row() {
            return rowsOf("Extension ask-an-expert archive 867003 (Minnesota)");
        }
    }

    @Nested
    class PennStateExtension2012WinterStorage {
        @TestFactory
        Stream<DynamicTest> row() {
            return rowsOf("Penn State Extension 2012, winter storage");
        }
    }

    @Nested
    class TDickersonInGardenNewsDec2018 {
        @TestFactory
        Stream<DynamicTest> row() {
            return rowsOf("T. Dickerson in Garden News, Dec 2018");
        }
    }

    @Nested
    class LaidbackGardenerCutworms {
        @TestFactory
        Stream<DynamicTest> row() {
            return rowsOf("Laidback Gardener, cutworms");
        }
    }

    /** Rows of the other sources give no figure to a trouble's words. */
    @TestFactory
    Stream<DynamicTest> rowOfAnotherSource() {
        return Csv.rows("ipm_thresholds.csv").stream()
                .filter(row -> !SOURCES.contains(row.get("source")))
                .map(row -> DynamicTest.dynamicTest(named(row), () -> {
                    assertThat(TOLD).doesNotContainKey(row.get("topic") + " " + row.get("value"));
                    holds(row);
                }));
    }

    private static Stream<DynamicTest> rowsOf(String source) {
        List<Map<String, String>> rows = Csv.rows("ipm_thresholds.csv").stream()
                .filter(row -> row.get("source").equals(source))
                .toList();
        assertThat(rows).as(source).isNotEmpty();
        return rows.stream().map(row -> DynamicTest.dynamicTest(named(row), () -> holds(row)));
    }

    private static String named(Map<String, String> row) {
        return row.get("topic") + " " + row.get("value") + " " + row.get("unit");
    }

    private static void holds(Map<String, String> row) {
        Told told = TOLD.get(row.get("topic") + " " + row.get("value"));
        if (told == null) {
            assertThat(ELSEWHERE).contains(row.get("topic"));
            return;
        }
        TroubleWording.Cause words = WORDS.causes().get(told.cause());
        // Figures stand in braces, so that each grower reads them in his own units.
        String bare = (words.first() + " " + words.not() + " " + words.prevent())
                .replaceAll("[{}]", "")
                .replace("–", " to ");
        assertThat(bare).containsPattern(told.figure());
    }
}
