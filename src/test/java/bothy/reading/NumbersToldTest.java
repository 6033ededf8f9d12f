package bothy.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bothy.garden.Doubt.About;
import bothy.garden.Event;
import bothy.garden.Heard;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Counts and amounts in figures and words. Factors: international yard and pound (1959), imperial gallon (1985), exact by definition. */
class NumbersToldTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "6; sowed 6 leeks | sowed six leeks | sowed half a dozen leeks | leeks sown x 6 | sowed leeks (6) | sowed leeks, 6 of them | sowed about 6 leeks | sowed 6 little leek seeds | sowed 6-8 leeks | sowed leeks - 6 | 6 leek seeds sown",
                "12; sowed a dozen leeks | sowed 2 trays of 6 leeks | sowed twelve leeks | sowed 12 cells of leeks | sowed 12 of the leeks | sowed 4 x 3 leeks",
                "2; sowed a couple of leeks | sowed 2 leeks | sowed a pair of leeks",
                "25; sowed twenty five leeks | sowed twenty-five leeks | sowed 25 or so leeks",
                "120; sowed 120 leeks | sowed 10 rows of 12 leeks",
                "1000; sowed 1,000 leeks | sowed 1000 leeks"
            })
    void a_count_is_the_same_however_it_is_told(int count, String sayings) {
        for (String saying : sayings.split(" \\| ")) {
            Event event = Grown.heard(saying.strip(), Grown.TODAY, false)
                    .statements()
                    .get(0)
                    .event();

            assertThat(event.count()).as(saying).isEqualTo(count);
            assertThat(event.crop()).as(saying).isEqualTo("leek");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sowed a row of leeks",
                "sowed two rows of leeks",
                "sowed some leeks",
                "sowed a few leeks",
                "sowed a packet of leeks",
                "sowed leeks in bed 2",
                "sowed leeks in 9cm pots",
                "sowed leeks 2 weeks ago",
                "sowed leeks 1cm deep",
                "sowed leeks on 3/4",
                "sowed lots of leeks",
                "sowed a tray of leeks"
            })
    void what_counts_no_plants_is_no_count(String saying) {
        Event event =
                Grown.heard(saying, Grown.TODAY, false).statements().get(0).event();

        assertThat(event.count()).as(saying).isNull();
    }

    @ParameterizedTest
    @CsvSource({
        "picked 2 kg of leeks, 2, kg",
        "picked 500g of leeks, 0.5, kg",
        "picked 3 lb of leeks, 1.360777, kg",
        "picked 8oz leeks, 0.226796, kg",
        "picked half a kilo of leeks, 0.5, kg",
        "picked a pound of leeks, 0.453592, kg",
        "picked 1 lb 8 oz of leeks, 0.680389, kg",
        "picked 1.5 kilos of leeks, 1.5, kg",
        "'picked 1,5 kg of leeks', 1.5, kg",
        "watered the leeks with 10 litres, 10, L",
        "watered leeks with 2 gallons, 9.09218, L",
        "gave the leeks 500 ml of water, 0.5, L",
        "12mm of rain, 12, mm",
        "an inch of rain, 25.4, mm",
        "half an inch of rain, 12.7, mm",
        "soil is 15C, 15, °C",
        "soil is 59F, 15, °C",
        "soil temperature 12 degrees, 12, °C",
        "greenhouse at 30 °C, 30, °C"
    })
    void an_amount_is_kept_in_si(String saying, double amount, String unit) {
        Event event =
                Grown.heard(saying, Grown.TODAY, false).statements().get(0).event();

        assertThat(event.unit()).as(saying).isEqualTo(unit);
        assertThat(event.amount()).as(saying).isCloseTo(amount, within(0.001));
    }

    @ParameterizedTest
    @ValueSource(strings = {"sowed 0 leeks", "sowed -3 leeks", "sowed 5000000 leeks", "sowed 99999999999999 leeks"})
    void a_count_that_cannot_be_is_asked(String saying) {
        Heard heard = Grown.heard(saying, Grown.TODAY, false);

        assertThat(heard.doubt().about()).as(saying).isEqualTo(About.HOW_MANY);
        assertThat(heard.statements()).noneMatch(statement -> statement.sure());
    }
}
