package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.agronomy.Printed;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/**
 * Temperatures outside which flowers set no fruit, against the collected thresholds (ipm_thresholds.csv: University of Florida IFAS,
 * Purdue, University of Maryland, University of Minnesota, each row with its source). The limits of French beans in heat are
 * ONvegetables 2011 (snap beans in hot weather), a copy of which was read; those of aubergine (60 °F and 95 °F) common practice.
 */
class FruitSetLimitsTest {
    private static final Map<String, Set<String>> GROUPS = Map.of(
            "tomato", Set.of("tomato"),
            "sweet-pepper", Set.of("pepper"),
            "chilli", Set.of("pepper"),
            "french-bean", Set.of("bean"),
            "climbing-french-bean", Set.of("bean"));
    private static final Set<String> OTHERS = Set.of("aubergine");

    @Test
    void a_limit_is_a_published_one() {
        SoftAssertions softly = new SoftAssertions();
        GROUPS.forEach((crop, groups) -> {
            Sheet.Flowering flowering = Published.SHEETS.get(crop).flowering();
            softly.assertThat(published(groups, "night temperature", "<"))
                    .as(crop + " cold nights")
                    .contains(flowering.setNightFromC());
            if (!groups.contains("bean")) {
                softly.assertThat(published(groups, "night temperature", ">"))
                        .as(crop + " warm nights")
                        .contains(flowering.setNightToC());
                softly.assertThat(published(groups, "day temperature", ">"))
                        .as(crop + " hot days")
                        .contains(flowering.setDayToC());
            }
        });
        softly.assertAll();
    }

    @Test
    void beans_drop_their_flowers_above_30_by_day_and_20_by_night() {
        for (String crop : List.of("french-bean", "climbing-french-bean")) {
            Sheet.Flowering flowering = Published.SHEETS.get(crop).flowering();
            assertThat(flowering.setDayToC()).isEqualTo(30);
            assertThat(flowering.setNightToC()).isEqualTo(20);
        }
    }

    @Test
    void aubergine_sets_between_60_and_95_fahrenheit() {
        Sheet.Flowering flowering = Published.SHEETS.get("aubergine").flowering();
        assertThat(fahrenheit(flowering.setNightFromC())).isEqualTo(60);
        assertThat(fahrenheit(flowering.setDayToC())).isEqualTo(95);
    }

    @Test
    void no_other_sheet_tells_a_limit_that_nothing_here_holds() {
        List<Function<Sheet.Flowering, Double>> limits =
                List.of(Sheet.Flowering::setNightFromC, Sheet.Flowering::setNightToC, Sheet.Flowering::setDayToC);
        assertThat(Published.SHEETS.values())
                .filteredOn(sheet -> sheet.flowering() != null
                        && limits.stream().anyMatch(limit -> limit.apply(sheet.flowering()) != null))
                .extracting(Sheet::crop)
                .allMatch(crop -> GROUPS.containsKey(crop) || OTHERS.contains(crop));
    }

    private static long fahrenheit(double celsius) {
        return Math.round(celsius * 9 / 5 + 32);
    }

    private static List<Double> published(Set<String> groups, String quantity, String comparison) {
        return Printed.rows("troubles/ipm_thresholds.csv").stream()
                .filter(row -> Arrays.stream(row.get("crop_group").split(",")).anyMatch(groups::contains))
                .filter(row -> row.get("topic").equals("fruit set")
                        && row.get("quantity").equals(quantity)
                        && row.get("comparison").equals(comparison))
                .map(row -> Double.valueOf(row.get("value")))
                .toList();
    }
}
