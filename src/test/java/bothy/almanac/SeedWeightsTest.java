package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.agronomy.Printed;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Seeds in a gram: Kew Seed Information Database, reckoned from thousand-seed weights. A copy of a public extract was read. */
class SeedWeightsTest {
    private static final List<Map<String, String>> TABLE = Printed.rows("sheets/seed_weights.csv");

    @Test
    void the_seeds_that_the_database_counts_lie_within_the_sheets_span() {
        assertThat(TABLE).hasSize(38);
        for (Map<String, String> row : TABLE) {
            Range perGram = Published.SHEETS.get(row.get("sheet")).germination().seedsPerGram();

            assertThat(perGram.contains(Double.parseDouble(row.get("seeds_per_gram"))))
                    .as("%s in %s", row.get("seeds_per_gram"), perGram)
                    .isTrue();
        }
    }

    @Test
    void a_span_that_rests_on_the_database_alone_goes_no_further() {
        for (Sheet sheet : Published.SHEETS.values()) {
            Source source = sheet.sources().get("germination.seedsPerGram");
            if (source != null
                    && source.source().startsWith("Kew")
                    && !source.source().contains("common practice")) {
                assertThat(Published.span(Published.rows("seed_weights.csv", sheet.crop()), "seeds_per_gram"))
                        .as(sheet.crop())
                        .contains(sheet.germination().seedsPerGram());
            }
        }
    }
}
