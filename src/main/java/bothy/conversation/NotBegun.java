package bothy.conversation;

import bothy.garden.Garden;
import bothy.garden.Heard;
import bothy.garden.Inquiry;
import bothy.garden.Question;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** What comes next of a crop that is not begun yet: when and how it is begun. */
final class NotBegun {
    private static final Set<Question> WHAT_NEXT = EnumSet.of(Question.NEXT, Question.TO_DO);

    private static final String SOWING = "sowing";

    private final Garden garden;

    NotBegun(Garden garden) {
        this.garden = garden;
    }

    /** "I have a bag of seed potatoes, what now" asks when and how they are set. */
    Heard settled(Heard heard) {
        return heard.inquiries().stream().noneMatch(this::ofNone)
                ? heard
                : heard.asking(heard.inquiries().stream()
                        .flatMap(inquiry -> ofNone(inquiry) ? beginnings(inquiry.crop()) : Stream.of(inquiry))
                        .distinct()
                        .toList());
    }

    private boolean ofNone(Inquiry inquiry) {
        return WHAT_NEXT.contains(inquiry.question())
                && inquiry.topic() == null
                && inquiry.crop() != null
                && inquiry.plantings().isEmpty()
                && garden.growing().stream()
                        .noneMatch(planting -> planting.crop().equals(inquiry.crop()));
    }

    private static Stream<Inquiry> beginnings(String crop) {
        return Stream.of(
                Inquiry.of(Question.WHEN_SOW, crop, List.of()),
                Inquiry.of(Question.HOW_TO, crop, List.of()).withTopic(SOWING));
    }
}
