package bothy.advice.clinic;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.advice.Advised;
import bothy.garden.Diagnosis;
import bothy.garden.Finding;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which signs of one planting are one trouble; common practice, no source. */
class TroublesOfOnePlantingTest {
    private static List<List<String>> troubles(Advised advised) {
        return advised.diagnoses().stream().map(Diagnosis::signs).toList();
    }

    @Test
    void signsThatNoOneCauseCanBeBehindAreTwoTroubles() {
        assertThat(troubles(Ward.seen("tomato", "holes-in-leaves", "blossom-end-rot")))
                .containsExactly(List.of("holes-in-leaves"), List.of("blossom-end-rot"));
    }

    @Test
    void signsThatOneCauseCanBeBehindAreOneTrouble() {
        assertThat(troubles(Ward.seen("tomato", "wilting", "yellow-leaves"))).hasSize(1);
    }

    @Test
    void whatATroubleDoesToTheWholePlantIsNoTroubleOfItsOwn() {
        assertThat(troubles(Ward.seen("okra", "wilting", "swollen-roots"))).hasSize(1);
    }

    @Test
    void aTroubleToldLaterLeavesTheOneBeforeOpen() {
        Advised advised = Ward.advised(
                List.of(Ward.sign("tomato", "blossom-end-rot")),
                List.of(Ward.sign("tomato", "holes-in-leaves")),
                List.of());

        assertThat(troubles(advised)).containsExactly(List.of("blossom-end-rot"), List.of("holes-in-leaves"));
        assertThat(advised.diagnoses())
                .extracting(Diagnosis::justTold)
                .as("only the new one was told of")
                .containsExactly(false, true);
    }

    @Test
    void anAnswerIsOfTheTroubleThatItWasAskedOf() {
        Advised advised = Ward.advised(
                List.of(Ward.sign("tomato", "holes-in-leaves"), Ward.sign("tomato", "blossom-end-rot")),
                List.of(Ward.found("tomato", "caterpillars-seen", "no").ofTrouble("holes-in-leaves")),
                List.of());

        assertThat(advised.diagnoses()).extracting(Diagnosis::justTold).containsExactly(true, false);
    }

    @Test
    void anOutcomeToldOfOneTroubleClosesThatOneAlone() {
        Advised advised = Ward.advised(
                List.of(Ward.sign("tomato", "holes-in-leaves"), Ward.sign("tomato", "blossom-end-rot")),
                List.of(Ward.found("tomato", Finding.OUTCOME, "better").ofTrouble("blossom-end-rot")),
                List.of());

        assertThat(advised.given()).extracting(given -> given.id()).doesNotContain("case-closed");
        assertThat(advised.given())
                .filteredOn(given -> given.id().equals("one-case-closed"))
                .extracting(given -> given.figures().get("cause"))
                .containsExactly("uneven watering");
    }

    @Test
    void anOutcomeToldOfThePlantsIsOfAllTheirTroubles() {
        Advised advised = Ward.advised(
                List.of(Ward.sign("tomato", "holes-in-leaves"), Ward.sign("tomato", "blossom-end-rot")),
                List.of(Ward.found("tomato", Finding.OUTCOME, "better")),
                List.of());

        assertThat(advised.given())
                .filteredOn(given -> given.id().equals("one-case-closed"))
                .hasSize(2);
    }
}
