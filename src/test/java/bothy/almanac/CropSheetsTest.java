package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Crop sheets read from the rules folder, and what is said when one cannot be read. */
class CropSheetsTest {
    private static final String START = "crop: pea\nbotanical: Pisum sativum\nfamily: Fabaceae\n";

    @Test
    void the_sheets_of_the_rules_folder_carry_figures_and_their_sources() {
        Map<String, Sheet> sheets = CropSheets.load(RulesFolder.at(Path.of("rules")));

        Sheet cucumber = sheets.get("cucumber");
        assertThat(cucumber.family()).isEqualTo("Cucurbitaceae");
        assertThat(cucumber.growth().hardiness()).isEqualTo(Sheet.Hardiness.TENDER);
        assertThat(cucumber.germination().emergenceDays())
                .containsEntry(15.0, 13.0)
                .containsEntry(20.0, 6.0);
        assertThat(cucumber.plantingOut().weeksFromLastFrost()).isEqualTo(new Range(1, 2));
        assertThat(cucumber.curing()).isNull();
        assertThat(cucumber.sources().get("germination.minSoilTempC"))
                .isEqualTo(new Source("Harrington, Oregon State University Extension, table 1", "copy"));
    }

    @Test
    void half_hardy_is_written_with_a_hyphen() {
        Sheet sheet = pea("growth:\n  hardiness: {value: half-hardy, source: common practice, read: memory}\n");

        assertThat(sheet.growth().hardiness()).isEqualTo(Sheet.Hardiness.HALF_HARDY);
    }

    @Test
    void an_unknown_figure_is_reported_with_its_line_and_the_known_ones() {
        assertThatThrownBy(() -> pea("curing:\n  dayss: {low: 7, high: 9, source: common practice, read: memory}\n"))
                .isInstanceOf(RulesBroken.class)
                .hasMessage("crops/pea.yaml:5: \"dayss\" is not known here; allowed are days, humidityPercent, tempC. "
                        + "Correct or remove it.");
    }

    @Test
    void a_figure_without_a_source_is_reported() {
        assertThatThrownBy(() -> pea("watering:\n  mmPerWeek: {value: 25, read: memory}\n"))
                .hasMessage(
                        "crops/pea.yaml:5: mmPerWeek has no source; every figure is written with source (who says so) "
                                + "and read (copy or memory). Add it.");
    }

    @Test
    void a_word_in_place_of_a_number_is_reported() {
        assertThatThrownBy(
                        () -> pea("watering:\n  mmPerWeek: {value: plenty, source: common practice, read: memory}\n"))
                .hasMessage("crops/pea.yaml:5: mmPerWeek cannot be \"plenty\"; it takes a number. Correct it.");
    }

    @Test
    void a_span_in_place_of_one_number_is_reported() {
        assertThatThrownBy(
                        () -> pea("watering:\n  mmPerWeek: {low: 1, high: 2, source: common practice, read: memory}\n"))
                .hasMessage(
                        "crops/pea.yaml:5: mmPerWeek cannot be {\"low\":1,\"high\":2}; it takes a number. Correct it.");
    }

    @Test
    void a_low_end_above_the_high_end_is_reported() {
        assertThatThrownBy(
                        () -> pea("sowing:\n  depthMm: {low: 50, high: 25, source: common practice, read: memory}\n"))
                .hasMessage(
                        "crops/pea.yaml:5: depthMm cannot be {\"low\":50,\"high\":25}; low 50.0 is above high 25.0. "
                                + "Correct it.");
    }

    @Test
    void an_unknown_word_is_reported_with_the_words_allowed() {
        assertThatThrownBy(() -> pea("growth:\n  start: {value: cutting, source: common practice, read: memory}\n"))
                .hasMessage(
                        "crops/pea.yaml:5: start cannot be \"cutting\"; it takes one of seed, set, clove, tuber, slip, plant. "
                                + "Correct it.");
    }

    @Test
    void a_sheet_is_called_like_its_crop() {
        RulesFolder folder = RulesFolder.of(Map.of("crops/peas.yaml", START));

        assertThatThrownBy(() -> CropSheets.load(folder))
                .hasMessage(
                        "crops/peas.yaml:1: the crop is \"pea\"; a sheet is called like its crop. Rename the file to "
                                + "crops/pea.yaml or correct the crop.");
    }

    @Test
    void every_unreadable_sheet_is_reported_at_once() {
        RulesFolder folder = RulesFolder.of(Map.of("crops/pea.yaml", "", "crops/leek.yaml", "- leek\n"));

        assertThatThrownBy(() -> CropSheets.load(folder))
                .hasMessage("crops/leek.yaml:1: found no keys; a sheet begins with crop, botanical and family. "
                        + "Write the sheet or remove the file.\n"
                        + "crops/pea.yaml:1: found no keys; a sheet begins with crop, botanical and family. "
                        + "Write the sheet or remove the file.");
    }

    private static Sheet pea(String rest) {
        return CropSheets.load(RulesFolder.of(Map.of("crops/pea.yaml", START + rest)))
                .get("pea");
    }
}
