package bothy.diary;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.CropSheets;
import bothy.almanac.RulesFolder;
import bothy.almanac.Sheet;
import bothy.garden.Perennials;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The diary knows no sheets, but must not end a bed that stands for years. */
class LastingCropsTest {
    @Test
    void every_crop_that_bears_each_year_is_kept_over_the_years() {
        assertThat(CropSheets.load(RulesFolder.at(Path.of("rules"))).values())
                .filteredOn(Sheet::perennial)
                .isNotEmpty()
                .extracting(Sheet::crop)
                .allMatch(Perennials::has);
    }
}
