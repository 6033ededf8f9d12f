package bothy.almanac.troubles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bothy.almanac.RulesBroken;
import bothy.almanac.RulesFolder;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TroubleBookTest {
    @Test
    void tables_are_read_when_they_are_first_wanted() {
        TroubleBook book = TroubleBook.at(RulesFolder.of(Map.of("troubles/odd.yaml", "signs: [")));

        assertThatThrownBy(book::tables).isInstanceOf(RulesBroken.class);
    }

    @Test
    void a_book_read_at_once_tells_a_slip_at_once() {
        TroubleBook book = TroubleBook.at(RulesFolder.of(Map.of("troubles/odd.yaml", "signs: [")));

        assertThatThrownBy(book::read).isInstanceOf(RulesBroken.class).hasMessageContaining("troubles/odd.yaml");
    }

    @Test
    void many_threads_get_the_same_tables() {
        TroubleBook book = TroubleBook.at(RulesFolder.at(Path.of("rules")));
        Set<Troubles> seen = ConcurrentHashMap.newKeySet();

        IntStream.range(0, 64).parallel().forEach(i -> seen.add(book.tables()));

        assertThat(seen).hasSize(1);
    }
}
