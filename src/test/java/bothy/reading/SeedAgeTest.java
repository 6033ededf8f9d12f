package bothy.reading;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.garden.Event;
import bothy.garden.Heard;
import bothy.garden.What;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How old the seed is, told with a sowing or with nothing up. */
class SeedAgeTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            sowed 10 parsnips, packet from 2024                | 3
            sowed 10 parsnips. The seed was 3 years old        | 3
            sowed 10 three year old parsnip seeds              | 3
            sowed 10 parsnips, seed dated 2021                 | 6
            sowed 10 parsnips from last year's seed            | 1
            sowed 10 parsnips, this year's seed                | 0
            """)
    void a_sowing_keeps_the_age_of_its_seed(String saying, int years) {
        Event sown = Grown.usual().says(saying).statements().get(0).event();

        assertThat(sown.what()).isEqualTo(What.SOWN);
        assertThat(sown.crop()).isEqualTo("parsnip");
        assertThat(sown.count()).isEqualTo(10);
        assertThat(sown.on()).isEqualTo(LocalDate.of(2027, 5, 19));
        assertThat(sown.seedAge()).isEqualTo(years);
    }

    @Test
    void seed_that_is_only_called_old_gets_no_figure() {
        Event sown = Grown.usual()
                .says("sowed some old carrot seeds")
                .statements()
                .get(0)
                .event();

        assertThat(sown.seedAge()).isNull();
        assertThat(sown.detail()).isEqualTo("old seed");
    }

    @Test
    void the_age_of_seed_that_shows_nothing_is_read_and_corrects_nothing() {
        Grown grower = Grown.usual();
        grower.says("sowed 6 parsnips yesterday");

        Heard heard = grower.says("The parsnips haven't germinated. The packet is three years old.");

        assertThat(heard.corrects()).isFalse();
        assertThat(heard.signs()).singleElement().satisfies(sign -> {
            assertThat(sign.sign()).isEqualTo("no-emergence");
            assertThat(sign.seedAge()).isEqualTo(3);
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"my 6 year old sowed 10 beans", "sowed 10 beans", "planted the 3 year old rhubarb out"})
    void who_or_what_else_is_old_is_no_seed(String saying) {
        assertThat(Grown.usual().says(saying).statements())
                .allSatisfy(statement -> assertThat(statement.event().seedAge()).isNull());
    }
}
