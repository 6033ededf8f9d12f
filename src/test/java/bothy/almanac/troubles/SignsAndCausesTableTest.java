package bothy.almanac.troubles;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.RulesFolder;
import bothy.almanac.troubles.Troubles.How;
import bothy.almanac.troubles.Troubles.Row;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Walks the collected table of signs and causes (each row with its published source, or common practice): every row must be in the
 * tables of troubles under our name of the cause, for each crop of its group, as likely or likelier, with the same source. Likelihoods
 * are judgement; the pairs of sign and cause are the source's.
 */
class SignsAndCausesTableTest {
    private static final String TABLE = "signs_causes.csv";
    private static final Troubles TROUBLES = Troubles.in(RulesFolder.at(Path.of("rules")));

    /** The rows of each source in a container that bears its name. */
    @TestFactory
    Stream<DynamicContainer> source() {
        Map<String, List<CSVRecord>> bySource = Csv.records(TABLE).stream()
                .collect(Collectors.groupingBy(row -> row.get(6), LinkedHashMap::new, Collectors.toList()));
        return bySource.entrySet().stream()
                .map(source -> DynamicContainer.dynamicContainer(
                        source.getKey(),
                        source.getValue().stream()
                                .map(row ->
                                        DynamicTest.dynamicTest(row.get(2) + ": " + row.get(3), () -> holds(row)))));
    }

    @Test
    void the_table_has_all_its_rows() {
        assertThat(Csv.records(TABLE)).hasSize(202);
    }

    private static void holds(CSVRecord cells) {
        How told = How.valueOf(cells.get(5).toUpperCase(Locale.ROOT));
        for (String crop : crops(cells.get(0))) {
            List<Row> rows = TROUBLES.rows(cells.get(2), crop);
            assertThat(rows)
                    .as("%s at %s", cells.get(2), crop)
                    .anyMatch(row -> row.cause().equals(cells.get(4))
                            && row.source().equals(cells.get(6))
                            && row.read().equals(cells.get(7))
                            && row.how().weight() >= told.weight());
        }
    }

    private static List<String> crops(String group) {
        List<String> crops = new ArrayList<>();
        for (String name : group.split(",")) {
            switch (name.strip()) {
                case "any" -> crops.add(null);
                case "beet" -> crops.add("beetroot");
                case "brussels-sprout" -> crops.add("brussels-sprouts");
                default -> crops.addAll(TROUBLES.groups().getOrDefault(name.strip(), List.of(name.strip())));
            }
        }
        return crops;
    }
}
