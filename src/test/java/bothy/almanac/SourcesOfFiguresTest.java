package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.agronomy.Printed;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every figure of a sheet says where it comes from, and says no more than was read. */
class SourcesOfFiguresTest {
    private static final Map<String, String> READ = Printed.rows("sheets/sources.csv").stream()
            .collect(Collectors.toMap(row -> row.get("label"), row -> row.get("read")));

    @Test
    void every_source_is_on_the_list_of_sources() {
        for (Sheet sheet : Published.SHEETS.values()) {
            sheet.sources().forEach((path, source) -> {
                for (String part : source.source().split("; ")) {
                    assertThat(label(part))
                            .as("%s %s: %s", sheet.crop(), path, part)
                            .isNotNull();
                }
            });
        }
    }

    @Test
    void a_figure_is_read_from_a_copy_only_when_all_its_sources_are() {
        for (Sheet sheet : Published.SHEETS.values()) {
            sheet.sources().forEach((path, source) -> {
                boolean recalled = Arrays.stream(source.source().split("; "))
                        .anyMatch(part -> "memory".equals(READ.get(label(part))));
                assertThat(source.read()).as("%s %s", sheet.crop(), path).isEqualTo(recalled ? "memory" : "copy");
            });
        }
    }

    @Test
    void every_source_on_the_list_is_used() {
        Set<String> used = new HashSet<>();
        Published.SHEETS.values().forEach(sheet -> sheet.sources().values().forEach(source -> {
            for (String part : source.source().split("; ")) {
                used.add(label(part));
            }
        }));

        assertThat(used).containsExactlyInAnyOrderElementsOf(READ.keySet());
    }

    private static String label(String part) {
        return READ.keySet().stream()
                .filter(part::startsWith)
                .max(Comparator.comparing(String::length))
                .orElse(null);
    }
}
