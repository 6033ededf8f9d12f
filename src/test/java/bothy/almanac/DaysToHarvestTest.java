package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/**
 * Days to flower, to ripe fruit and to the first harvest: Knott's Handbook for Vegetable Growers (recalled), FAO Irrigation and
 * Drainage Paper 56 table 11 (read), FAO Training Manual 3 (recalled) and society guides, as each row says. Figures that sheets
 * reckon themselves are reckoned again here.
 */
class DaysToHarvestTest {
    private static final double WHOLE_DAYS = 0.01;
    private static final double DAYS_IN_WEEK = 7;

    @Test
    void the_harvest_comes_within_the_published_days_from_sowing() {
        SoftAssertions softly = new SoftAssertions();
        for (Sheet sheet : Published.SHEETS.values()) {
            List<Map<String, String>> rows = fromSowing(sheet.crop());
            if (Published.planting(sheet.crop(), "days_to_maturity_from_transplant")
                    .isEmpty()) {
                Published.span(rows, "value_low", "value_high", "total_d")
                        .ifPresent(published -> Published.within(
                                softly,
                                sheet,
                                "harvest.daysFromSowing",
                                sheet.harvest().daysFromSowing(),
                                published,
                                WHOLE_DAYS));
            }
        }
        softly.assertAll();
    }

    @Test
    void a_crop_timed_from_planting_out_takes_the_seedlings_age_on_top() {
        List<Sheet> timed = Published.SHEETS.values().stream()
                .filter(sheet -> !Published.planting(sheet.crop(), "days_to_maturity_from_transplant")
                        .isEmpty())
                .toList();

        assertThat(timed)
                .extracting(Sheet::crop)
                .containsExactly(
                        "aubergine",
                        "broccoli",
                        "brussels-sprouts",
                        "cabbage",
                        "cauliflower",
                        "celeriac",
                        "celery",
                        "chilli",
                        "sweet-pepper",
                        "tomato");
        for (Sheet sheet : timed) {
            Range published = Published.span(
                            Published.planting(sheet.crop(), "days_to_maturity_from_transplant"),
                            "value_low",
                            "value_high")
                    .orElseThrow();
            Range age = sheet.sowing().weeksToPlantingOut();
            assertThat(sheet.harvest().daysFromPlantingOut()).as(sheet.crop()).isEqualTo(published);
            assertThat(sheet.harvest().daysFromSowing())
                    .as(sheet.crop())
                    .isEqualTo(new Range(
                            published.low() + age.low() * DAYS_IN_WEEK, published.high() + age.high() * DAYS_IN_WEEK));
        }
    }

    @Test
    void own_sums_from_planting_out_add_up() {
        List<Sheet> reckoned = with("harvest.daysFromPlantingOut", "own sum");

        assertThat(reckoned).hasSizeGreaterThan(5);
        for (Sheet sheet : reckoned) {
            Range whole = sheet.harvest().daysFromSowing();
            Range age = sheet.sowing().weeksToPlantingOut();
            assertThat(sheet.harvest().daysFromPlantingOut())
                    .as(sheet.crop())
                    .isEqualTo(new Range(
                            whole.low() - age.low() * DAYS_IN_WEEK, whole.high() - age.high() * DAYS_IN_WEEK));
        }
    }

    @Test
    void own_sums_to_the_first_flower_add_up() {
        List<Sheet> reckoned = with("flowering.daysFromSowing", "own sum");

        assertThat(reckoned).hasSizeGreaterThan(3);
        for (Sheet sheet : reckoned) {
            Range harvest = Published.span(
                            Published.planting(sheet.crop(), "days_to_maturity_from_sowing").stream()
                                    .filter(row -> row.get("source").contains("Knott"))
                                    .toList(),
                            "value_low",
                            "value_high")
                    .orElseThrow();
            Range ripening = sheet.flowering().daysToRipe();
            assertThat(sheet.flowering().daysFromSowing())
                    .as(sheet.crop())
                    .isEqualTo(new Range(harvest.low() - ripening.low(), harvest.high() - ripening.high()));
        }
    }

    @Test
    void fruit_ripens_within_the_published_days_from_the_flower() {
        SoftAssertions softly = new SoftAssertions();
        for (Sheet sheet : Published.SHEETS.values()) {
            if (sheet.flowering() != null) {
                Published.span(Published.planting(sheet.crop(), "days_flower_to_fruit"), "value_low", "value_high")
                        .ifPresent(published -> Published.within(
                                softly,
                                sheet,
                                "flowering.daysToRipe",
                                sheet.flowering().daysToRipe(),
                                published,
                                WHOLE_DAYS));
            }
        }
        softly.assertAll();
    }

    @Test
    void flowers_open_when_the_development_stage_of_the_FAO_table_ends() {
        List<Sheet> fromTable = with("flowering.daysFromSowing", "FAO Irrigation and Drainage Paper 56").stream()
                .filter(sheet -> !sheet.sources()
                        .get("flowering.daysFromSowing")
                        .source()
                        .contains("common practice"))
                .toList();

        assertThat(fromTable)
                .extracting(Sheet::crop)
                .containsExactly("mangetout", "pea", "pumpkin", "sweetcorn", "winter-squash");
        for (Sheet sheet : fromTable) {
            List<Double> days = Published.rows("stage_lengths.csv", sheet.crop()).stream()
                    .map(row -> Double.parseDouble(row.get("l_ini_d")) + Double.parseDouble(row.get("l_dev_d")))
                    .sorted()
                    .toList();
            assertThat(sheet.flowering().daysFromSowing())
                    .as(sheet.crop())
                    .isEqualTo(new Range(days.get(0), days.get(days.size() - 1)));
        }
    }

    private static List<Sheet> with(String path, String source) {
        return Published.SHEETS.values().stream()
                .filter(sheet -> Stream.ofNullable(sheet.sources().get(path))
                        .anyMatch(given -> given.source().startsWith(source)))
                .toList();
    }

    private static List<Map<String, String>> fromSowing(String crop) {
        return Stream.concat(
                        Published.planting(
                                crop, "days_to_maturity_from_sowing", "days_to_ready", "growing_period_field")
                                .stream(),
                        Published.rows("stage_lengths.csv", crop).stream())
                .toList();
    }
}
