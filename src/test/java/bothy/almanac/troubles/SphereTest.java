package bothy.almanac.troubles;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.RulesFolder;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which causes belong to which time of a crop's life; common practice, no source. */
class SphereTest {
    private final Troubles troubles =
            TroubleBook.at(RulesFolder.at(Path.of("rules"))).tables();

    @Test
    void what_never_came_up_has_no_trouble_of_leaves() {
        assertThat(troubles.outOfPlace(List.of("no-emergence"), List.of("powder", "leaves")))
                .contains("powdery mildew", "pot too small")
                .doesNotContain("old seed", "soil too cold", "slugs and snails");
    }

    @Test
    void what_has_spots_and_tells_of_no_seed_did_not_rot_as_seed() {
        assertThat(troubles.outOfPlace(List.of("leaf-spots"), List.of("spots", "brown")))
                .contains("old seed")
                .doesNotContain("powdery mildew");
    }
}
