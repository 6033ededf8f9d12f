package bothy.reading;

import bothy.almanac.CraftNotes;
import bothy.almanac.CraftNotes.Said;
import bothy.almanac.Words;
import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.NoteFinder.Near;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook.Found;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Takes a question for one that a note of the craft answers, where no phrase tells what is asked or a note is plainly nearer. What the
 * rules work out from sheet and diary stays with them. How near a note must be was set on half of 200 questions that were written
 * without sight of the notes, and on the questions of the corpus.
 */
final class NotesAsked {
    /** Enough where no phrase tells what is asked. */
    private static final Wanted OF_ANYTHING = new Wanted(0.4, 0.4, 0.4, 0);
    /** Enough to be said as a guess where there would be no answer. */
    private static final Wanted AS_A_GUESS = new Wanted(0.3, 0.3, 0.3, 0);
    /** Enough where the phrases tell no more than the step or the kind. */
    private static final Wanted OF_THE_STEP = new Wanted(0.45, 0.4, 0.25, 0.07);
    /** Enough against what the rules mostly work out. */
    private static final Wanted INSTEAD = new Wanted(0.65, 0.4, 0.5, 0.1);
    /** Enough against what the rules always work out. */
    private static final Wanted BY_FAR = new Wanted(0.5, 0.4, 0.5, 0.2);
    /** Enough against what frost does to all crops, and to take words that look like a trouble for what is asked. */
    private static final Wanted CERTAIN = new Wanted(0.9, 0.4, 1, 0.2);

    /** What a message that asks for help has, without the form of a question: "cats keep digging in my seed bed". */
    private static final Set<String> ASKING =
            Set.of("or", "keep", "keeps", "help", "advice", "ideas", "tips", "wondering", "recommend");

    /** So much nearer a note on no single crop must be where a crop is asked about, and where none is, and so much more it must share. */
    private static final double NEARER_BESIDE_A_CROP = 0.2;

    private static final double NEARER_OF_ALL = 0.05;
    private static final double SHARED_OF_ALL = 0.1;

    private static final String REMEDY = "remedy";
    private static final String FROST = "frost";

    /** The step alone, which most questions of how something is done name in passing. */
    private static final Set<String> STEPS = Set.of(
            "sowing",
            "planting-out",
            "harvesting",
            "thinning",
            "watering",
            "feeding",
            "storing",
            "protecting",
            "supporting",
            "whether-too-late",
            "normal",
            "remedy",
            "recovery",
            "composting",
            "pollinating",
            "next-year",
            "following");

    /** What the rules work out from sheet and diary, better than any note. */
    private static final Set<Question> WORKED_OUT = EnumSet.of(
            Question.TO_DO,
            Question.NEXT,
            Question.STATUS,
            Question.STILL_TIME,
            Question.WHEN_SOW,
            Question.SPACING,
            Question.WHEN_WATER,
            Question.HOW_MUCH_WATER,
            Question.WHEN_STOP_WATERING,
            Question.FEED_WHEN,
            Question.FEED_WHAT,
            Question.FEED_DOSE);

    /** What the rules work out for most, so that a note must be all but the same question. */
    private static final Set<Question> MOSTLY_WORKED_OUT = EnumSet.of(
            Question.WHEN_PLANT_OUT, Question.WHAT_TO_GROW, Question.HOW_STORE, Question.SAFE, Question.COMPARE);

    /** What only the diary tells. */
    private static final Set<Question> DIARY = EnumSet.of(Question.TO_DO, Question.NEXT, Question.STATUS);

    private final NoteFinder finder;

    /**
     * What a note needs to answer a question.
     *
     * @param nearness how near it must be at least
     * @param own how much of what it is asked with must be the note's: what is told before it is told of many things
     * @param shared how much it must share with the question at least, however short that is
     * @param further how much nearer it must be than every way of asking for what the rules work out; 0 where they work out nothing
     */
    private record Wanted(double nearness, double own, double shared, double further) {
        /** More is wanted of a note on no single crop, which the words of any question may draw in, and most when a crop is named. */
        boolean met(Near near, boolean ofCrop, double step) {
            double more = near.ofCrop() ? 0 : ofCrop ? NEARER_BESIDE_A_CROP : NEARER_OF_ALL;
            double moreShared = near.ofCrop() ? 0 : SHARED_OF_ALL;
            return near.nearness() >= nearness + more
                    && near.own() >= own
                    && near.shared() >= shared + moreShared
                    && (further == 0 || near.nearness() >= step + further);
        }
    }

    NotesAsked(Words words, CraftNotes notes) {
        finder = new NoteFinder(words, notes);
    }

    /**
     * The questions of a sentence, each as one for a note where that is nearer.
     *
     * @param troubles what looks wrong in the sentence, which is answered as a trouble
     */
    List<Inquiry> in(List<Inquiry> asked, Passage passage, int begins, int end, List<Found<String>> troubles) {
        return asked.stream()
                .map(inquiry -> topic(inquiry, passage, begins, end, !troubles.isEmpty())
                        .or(() -> growing(inquiry, !troubles.isEmpty()))
                        .map(topic -> Inquiry.of(inquiry.question(), inquiry.crop(), List.of())
                                .withTopic(topic))
                        .orElse(inquiry))
                .distinct()
                .toList();
    }

    /** What is asked of a crop of which no more is written than how it is grown. */
    private Optional<String> growing(Inquiry inquiry, boolean troubled) {
        boolean ofTheGrower = inquiry.eaten() != null
                || inquiry.question() == Question.SAFE
                || DIARY.contains(inquiry.question())
                || inquiry.topic() != null && inquiry.topic().startsWith("diary-");
        return troubled || ofTheGrower || inquiry.crop() == null
                ? Optional.empty()
                : finder.growing(inquiry.crop()).map(Said.AS_ALL_THERE_IS::id);
    }

    /** What looks wrong, without what is only asked of: "can I split my rhubarb" has no split stalks. */
    static List<Found<String>> withoutAsked(List<Found<String>> troubles, List<Inquiry> asked, int begins) {
        boolean note = asked.stream().anyMatch(inquiry -> CraftNotes.is(inquiry.topic()));
        return note
                ? troubles.stream().filter(trouble -> trouble.start() < begins).toList()
                : troubles;
    }

    /** A message of which nothing else was understood may ask without the form of a question: "onion sets: push right in or leave the tip out". */
    Optional<Inquiry> unasked(Passage passage) {
        if (passage.words().stream().noneMatch(ASKING::contains)) {
            return Optional.empty();
        }
        Set<String> crops = passage.crops().stream().map(CropSaid::crop).collect(Collectors.toSet());
        String crop = crops.size() == 1 ? crops.iterator().next() : null;
        return finder.nearest(crop, passage, 0, passage.size())
                .filter(near -> INSTEAD.met(near, crop != null, 0))
                .map(near -> Inquiry.of(Question.OTHER, crop, List.of()).withTopic(near.id()));
    }

    /** The topic that a note makes of the question. */
    private Optional<String> topic(Inquiry inquiry, Passage passage, int begins, int end, boolean troubled) {
        Wanted wanted = wanted(inquiry);
        if (wanted == null) {
            return Optional.empty();
        }
        boolean ofCrop = inquiry.crop() != null;
        return finder.nearest(inquiry.crop(), passage, begins, end)
                .filter(near -> !troubled || CERTAIN.met(near, ofCrop, 0))
                .map(near -> {
                    double step = wanted.further() == 0 ? 0 : finder.nearestStep(passage, begins, end);
                    if (wanted.met(near, ofCrop, step)) {
                        return near.id();
                    }
                    return open(inquiry) && AS_A_GUESS.met(near, ofCrop, 0) ? Said.AS_A_GUESS.id(near.id()) : null;
                });
    }

    /** What a note needs to answer it; {@code null} when none may. */
    private static Wanted wanted(Inquiry inquiry) {
        boolean figured = inquiry.eaten() != null
                || inquiry.on() != null && !open(inquiry)
                || inquiry.length() != null
                || inquiry.amount() != null
                || inquiry.count() != null;
        if (figured) {
            return null;
        }
        if (open(inquiry)) {
            return inquiry.question() == Question.HOW_TO ? OF_THE_STEP : OF_ANYTHING;
        }
        if (inquiry.topic() != null && !STEPS.contains(inquiry.topic())) {
            return FROST.equals(inquiry.topic()) ? CERTAIN : null;
        }
        if (WORKED_OUT.contains(inquiry.question())) {
            return BY_FAR;
        }
        return MOSTLY_WORKED_OUT.contains(inquiry.question()) ? INSTEAD : OF_THE_STEP;
    }

    /** Whether no phrase tells what is asked. */
    private static boolean open(Inquiry inquiry) {
        if (inquiry.crop() == null && REMEDY.equals(inquiry.topic())) {
            return true; // "The bed is heavy clay, what do I do with it?"
        }
        return inquiry.topic() == null
                ? inquiry.question() == Question.OTHER || inquiry.question() == Question.HOW_TO
                : inquiry.topic().equals(Inquiry.UNWRITTEN);
    }
}
