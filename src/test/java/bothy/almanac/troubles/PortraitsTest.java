package bothy.almanac.troubles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PortraitsTest {
    private static final Portraits PORTRAITS = new Portraits(
            Map.of(
                    "borer", "stem hole sawdust wilts",
                    "drought", "dry wilts crisp",
                    "rot", "stem soft wilts"),
            List.of(),
            List.of());

    @Test
    void a_word_counts_in_all_its_forms() {
        assertThat(PORTRAITS.known("The stems are wilting, holes")).containsExactly("stems", "wilting", "holes");
        assertThat(PORTRAITS.shared("borer", List.of("stems", "wilting", "dry")))
                .containsExactly("stems", "wilting");
    }

    @Test
    void a_word_of_every_portrait_tells_nothing() {
        // Each of the three is told with "wilts": its weight is the logarithm of 3 over 3.
        assertThat(PORTRAITS.likenesses(List.of("wilted"), crops -> true)).isEmpty();
    }

    @Test
    void the_same_words_are_as_like_as_can_be_and_others_not_at_all() {
        // Likeness to a portrait counts 0.8; ln 3 squared for each of dry and crisp; a portrait of usual length holds
        // (2 + 2 + 1) / 3 such, and ln 1.5
        // squared twice.
        double one = Math.log(3) * Math.log(3);
        double half = Math.log(1.5) * Math.log(1.5);
        double usual = (2 * one + half + 2 * one + one + half) / 3;
        double own = Math.max(usual, 2 * one);
        assertThat(PORTRAITS.likenesses(List.of("dry", "crisp"), crops -> true).get("drought"))
                .isEqualTo(0.8 * 2 * one / Math.sqrt(own * 2 * one), within(1e-12));
        assertThat(PORTRAITS.likenesses(List.of("dry", "crisp"), crops -> true)).doesNotContainKey("borer");
    }

    @Test
    void a_telling_counts_at_its_own_crops_only_and_there_more_than_one_of_any_crop() {
        Portraits told = told(telling("borer", "squash", "sawdust hole"), telling("hail", "any", "torn holes"));
        // Likeness to the nearest telling counts 0.9. Of two causes each sawdust and torn are of one: ln 2 squared;
        // hole is of both and tells nothing.
        double one = Math.log(2) * Math.log(2);

        assertThat(told.likenesses(List.of("sawdust"), crops -> crops.contains("squash")))
                .containsOnlyKeys("borer")
                .hasEntrySatisfying("borer", like -> assertThat(like)
                        .isEqualTo(0.9 * 1.3 * one / Math.sqrt(one * one), within(1e-12)));
        assertThat(told.likenesses(List.of("sawdust"), crops -> false)).isEmpty();
        assertThat(told.likenesses(List.of("torn"), crops -> false).get("hail")).isEqualTo(0.9, within(1e-12));
    }

    @Test
    void a_second_telling_that_is_like_adds_a_third_of_what_the_nearest_does() {
        Portraits.Telling sawdust = telling("borer", "any", "sawdust");
        Portraits told = told(sawdust, sawdust, sawdust, telling("hail", "any", "torn"));

        assertThat(told.likenesses(List.of("sawdust"), crops -> true).get("borer"))
                .isEqualTo(0.9 + 0.3, within(1e-12));
    }

    @Test
    void words_to_overlook_tell_nothing() {
        Portraits told =
                new Portraits(Map.of("borer", "plant wilts", "hail", "torn leaves"), List.of(), List.of("plants"));

        assertThat(told.known("my plant wilts")).containsExactly("wilts");
    }

    private static Portraits told(Portraits.Telling... tellings) {
        return new Portraits(Map.of(), List.of(tellings), List.of());
    }

    private static Portraits.Telling telling(String cause, String crop, String text) {
        return new Portraits.Telling(cause, List.of(crop), text);
    }
}
