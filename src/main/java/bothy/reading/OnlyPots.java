package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import java.util.Set;

/** "A balcony facing south, four big pots: what can I grow?" asks of what grows in pots, where no bed is told of. */
final class OnlyPots {
    private static final String TOPIC = "grow-in-pots";
    private static final Set<String> POTS = Set.of(
            "balcony",
            "terrace",
            "patio",
            "roof",
            "rooftop",
            "windowsill",
            "windowsills",
            "flat",
            "apartment",
            "pot",
            "pots",
            "container",
            "containers",
            "tub",
            "tubs",
            "bucket",
            "buckets",
            "planter",
            "planters",
            "trough",
            "troughs",
            "growbag",
            "growbags",
            "windowbox",
            "basket",
            "baskets");
    private static final Set<String> GROUND = Set.of(
            "bed",
            "beds",
            "plot",
            "allotment",
            "border",
            "field",
            "ground",
            "yard",
            "backyard",
            "acre",
            "patch",
            "greenhouse",
            "polytunnel");

    private OnlyPots() {}

    static Inquiry asked(Inquiry inquiry, Passage passage) {
        boolean open = inquiry.question() == Question.WHAT_TO_GROW
                && inquiry.topic() == null
                && inquiry.crop() == null
                && inquiry.plantings().isEmpty();
        Set<String> words = passage.words();
        return open && words.stream().anyMatch(POTS::contains) && words.stream().noneMatch(GROUND::contains)
                ? inquiry.withTopic(TOPIC)
                : inquiry;
    }
}
