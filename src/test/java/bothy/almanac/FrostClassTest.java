package bothy.almanac;

import static bothy.almanac.Sheet.Hardiness.HALF_HARDY;
import static bothy.almanac.Sheet.Hardiness.HARDY;
import static bothy.almanac.Sheet.Hardiness.TENDER;
import static org.assertj.core.api.Assertions.assertThat;

import bothy.agronomy.Printed;
import bothy.almanac.Sheet.Hardiness;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How crops stand frost: Purdue Extension HO-203, Colorado State University Extension GardenNotes 720, Michigan State University
 * Extension 2014 and others, as each row says. Their classes differ in name and for some crops in kind; a sheet takes one of them.
 */
class FrostClassTest {
    private static final Map<String, Hardiness> CLASSES = Map.of(
            "very hardy", HARDY,
            "hard frost hardy", HARDY,
            "hardy", HARDY,
            "frost tolerant", HALF_HARDY,
            "semi-hardy", HALF_HARDY,
            "light frost hardy", HALF_HARDY,
            "half-hardy", HALF_HARDY,
            "tender", TENDER,
            "warm loving", TENDER,
            "light frost susceptible", TENDER);

    @Test
    void every_crop_is_in_a_class_that_a_source_puts_it_in() {
        for (Sheet sheet : Published.SHEETS.values()) {
            assertThat(published(sheet.crop()))
                    .as(sheet.crop())
                    .contains(sheet.growth().hardiness());
        }
    }

    @Test
    void no_source_holds_a_tender_crop_for_hardy_or_a_hardy_crop_for_tender() {
        for (Sheet sheet : Published.SHEETS.values()) {
            Hardiness ours = sheet.growth().hardiness();
            Hardiness opposite = ours == TENDER ? HARDY : TENDER;

            if (ours != HALF_HARDY) {
                assertThat(published(sheet.crop())).as(sheet.crop()).doesNotContain(opposite);
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = ':',
            value = {
                "light frost susceptible: temp_c_high",
                "light frost hardy: temp_c_low",
            })
    void leaves_are_harmed_where_the_published_band_begins(String frostClass, String column) {
        List<Map<String, String>> rows = Printed.rows("sheets/frost_classes.csv").stream()
                .filter(row -> row.get("source").startsWith("Michigan State"))
                .filter(row -> row.get("class").equals(frostClass))
                .filter(row -> harmedSource(row.get("sheet")).startsWith("Michigan State"))
                .toList();

        assertThat(rows).isNotEmpty();
        rows.forEach(row -> assertThat(
                        Published.SHEETS.get(row.get("sheet")).growth().harmedBelowC())
                .as("%s", row)
                .isEqualTo(Double.parseDouble(row.get(column))));
    }

    @Test
    void lettuce_leaves_are_marked_from_the_warm_end_of_the_published_band() {
        Map<String, String> band = Published.rows("frost_classes.csv", "lettuce").stream()
                .filter(row -> row.get("kind").equals("threshold"))
                .findFirst()
                .orElseThrow();

        assertThat(Published.SHEETS.get("lettuce").growth().harmedBelowC())
                .isEqualTo(Double.parseDouble(band.get("temp_c_high")));
    }

    private static String harmedSource(String crop) {
        Source source = Published.SHEETS.get(crop).sources().get("growth.harmedBelowC");
        return source == null ? "" : source.source();
    }

    private static Set<Hardiness> published(String crop) {
        Stream<Hardiness> classes = Published.rows("frost_classes.csv", crop).stream()
                .map(row -> CLASSES.get(row.get("class")))
                .filter(hardiness -> hardiness != null);
        Stream<Hardiness> notes = Published.planting(crop, "frost_class").stream()
                .flatMap(row -> Stream.of(Hardiness.values())
                        .filter(hardiness -> named(row.get("note")).contains(hardiness)));
        return Stream.concat(classes, notes).collect(Collectors.toSet());
    }

    private static Set<Hardiness> named(String note) {
        if (note.startsWith("half-hardy to hardy") || note.startsWith("hardy to half-hardy")) {
            return Set.of(HALF_HARDY, HARDY);
        }
        if (note.startsWith("half-hardy")) {
            return Set.of(HALF_HARDY);
        }
        return note.startsWith("hardy") ? Set.of(HARDY) : note.startsWith("tender") ? Set.of(TENDER) : Set.of();
    }
}
