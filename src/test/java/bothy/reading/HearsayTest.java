package bothy.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HearsayTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "my daughter says I have overwatered it",
                "neighbour reckons powdery mildew",
                "everyone at the plot shouted rust",
                "the man in the shop thinks it is blossom end rot"
            })
    void what_others_take_it_for_is_no_sign(String text) {
        assertThat(Grown.usual().says(text).signs()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "my daughter says the tomatoes have yellow leaves",
                "neighbour says it is nothing but the leaves are going yellow",
                "the leaves are going yellow, my wife thinks it is the water"
            })
    void what_was_seen_is_one(String text) {
        assertThat(Grown.usual().says(text).signs()).extracting("sign").isEqualTo(List.of("yellow-leaves"));
    }
}
