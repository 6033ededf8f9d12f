package bothy.advice.clinic;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.advice.Advised;
import bothy.garden.Diagnosis;
import bothy.garden.Given;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every sign of the tables at every crop that can have it: the verdict goes out, and no danger without its caution. */
class CautionsGoWithTheirTroublesTest {
    private static final Set<String> SPRAYED_AGAINST = Set.of(
            "aphids",
            "whitefly",
            "red spider mite",
            "thrips",
            "slugs and snails",
            "cabbage caterpillars",
            "caterpillars",
            "flea beetle",
            "Colorado beetle",
            "powdery mildew",
            "downy mildew",
            "late blight",
            "early blight",
            "septoria leaf spot",
            "rust",
            "grey mould");
    private static final Set<String> ROTTEN = Set.of(
            "rot-in-storage", "fruit-rot", "grey-mould", "fruit-rotting-small", "blossom-end-rot", "hollow-tubers");

    private record Seen(String sign, String crop) {}

    @TestFactory
    Stream<DynamicTest> sign_at_crop() {
        return all().stream()
                .map(seen -> DynamicTest.dynamicTest(seen.sign() + " at " + seen.crop(), () -> cautioned(seen)));
    }

    private static List<Seen> all() {
        List<Seen> all = new ArrayList<>();
        Ward.TROUBLES.signs().forEach((sign, rows) -> {
            Set<String> crops = new LinkedHashSet<>();
            rows.forEach(row -> row.crops()
                    .forEach(crop -> crops.addAll(
                            crop.equals("any")
                                    ? List.of("tomato", "courgette")
                                    : Ward.TROUBLES.groups().getOrDefault(crop, List.of(crop)))));
            crops.forEach(crop -> all.add(new Seen(sign, crop)));
        });
        return all;
    }

    private static void cautioned(Seen seen) {
        Advised advised = Ward.seen(seen.crop(), seen.sign());
        Diagnosis diagnosis = Ward.only(advised);
        List<String> ids = advised.given().stream()
                .filter(given -> given.occasion() == Given.Occasion.SIGN)
                .map(Given::id)
                .toList();

        assertThat(ids).contains("likeliest-cause");
        boolean sprayed = diagnosis.causes().stream()
                .limit(2)
                .anyMatch(likely -> likely.chance() >= 0.15 && SPRAYED_AGAINST.contains(likely.cause()));
        if (sprayed) {
            assertThat(ids).contains("caution-spraying");
        }
        if (ROTTEN.contains(seen.sign())) {
            assertThat(ids).contains("caution-mould");
        }
        if (seen.sign().equals("green-tubers")
                || seen.sign().equals("bitter-fruit") && seen.crop().equals("potato")) {
            assertThat(ids).contains("caution-green-potatoes");
        }
        if (seen.sign().equals("bitter-fruit")
                && Ward.TROUBLES.groupsOf(seen.crop()).contains("cucurbit")) {
            assertThat(ids).contains("caution-bitter");
        }
    }
}
