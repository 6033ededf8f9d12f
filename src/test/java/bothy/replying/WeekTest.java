package bothy.replying;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.garden.Given;
import bothy.garden.Given.Because;
import bothy.garden.Inquiry;
import bothy.garden.Question;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class WeekTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 5, 22);

    @Test
    void the_list_of_one_planting_leaves_out_what_is_of_the_whole_plot() {
        Turn turn = new Turn(
                TODAY, null, null, List.of(), List.of(), List.of(), List.of(), Map.of(), null, Set.of(), List.of(),
                Map.of());
        Given ofThePlot = new Given(
                "rest-of-the-plot",
                null,
                null,
                TODAY,
                null,
                Given.Occasion.STANDING,
                Given.Sureness.SURE,
                Given.Neglect.NOTHING_MUCH,
                Map.of(),
                new Because("a rule", "common practice", List.of(), List.of()));

        assertThat(new Week(null, null, turn)
                        .listed(List.of(ofThePlot), Inquiry.of(Question.TO_DO, null, List.of("cucumber-1"))))
                .isEmpty();
    }
}
