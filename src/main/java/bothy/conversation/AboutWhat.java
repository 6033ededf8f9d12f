package bothy.conversation;

import bothy.garden.Doubt;
import bothy.garden.Doubt.Choice;
import bothy.garden.Event;
import bothy.garden.Garden;
import bothy.garden.Heard;
import bothy.garden.Inquiry;
import bothy.garden.Kind;
import bothy.garden.Logged;
import bothy.garden.Planting;
import bothy.garden.Question;
import bothy.replying.Replier;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** What a question that names no crop is about: what the same message told of, else what was talked about last, else all there is. */
final class AboutWhat {
    private static final int MOST_CHOICES = 6;

    private static final int MOST_TALKED_OF = 4;

    /** Who talked of more crops than these is asked which one is meant. */
    private static final int MOST_MEANT = 2;

    /** Questions that have an answer for the whole plot. */
    private static final Set<Question> PLOT = EnumSet.of(
            Question.TO_DO, Question.STATUS, Question.NEXT, Question.WHAT_TO_GROW, Question.WHY, Question.COMPARE);

    private static final Set<Question> OF_ALL = EnumSet.of(Question.WHEN_WATER, Question.HOW_MUCH_WATER);

    private static final String NEXT_YEAR = "next-year";
    private static final String YEAR_REVIEW = "year-review";
    private static final Set<String> OF_PLANTS = Set.of(
            NEXT_YEAR,
            "temperature",
            "was-it-too-early",
            "young-plants-wait",
            "normal",
            "coming-up",
            "due-up",
            "up-by-now",
            "sow-again-or-wait",
            "how-long",
            "recovery",
            "remedy",
            "sun",
            "rotation",
            "ripening-off",
            "winter-ground",
            "harvest-size",
            "support-size",
            "height",
            "flowers-off",
            "flower-to-fruit",
            "fruit-a-plant",
            "indoors-in-winter");
    /** Matters that are much the same for every crop, whatever kind of question asks of them. */
    private static final Set<String> OF_ANY_CROP = Set.of(
            "mulch",
            "heat-wave",
            "flattened",
            "seed-saving",
            "in-oil",
            "pesto",
            "winter-beds",
            "freezing",
            "scapes",
            "chitting",
            "soaking",
            "seed-soil",
            "into-the-greenhouse");
    /** Of these dangers a crop must be known. */
    private static final Set<String> DANGERS_OF_A_CROP = Set.of("eating", "spraying");

    private final Garden garden;
    private final Memory memory;
    private final List<String> told;
    private final LocalDate today;
    private final boolean named;

    /** @param named whether the message names a crop that may be one of several kinds: then nothing else can be meant */
    AboutWhat(Garden garden, Memory memory, List<Logged> written, LocalDate today, boolean named) {
        this.named = named;
        this.today = today;
        this.garden = garden;
        this.memory = memory;
        this.told = written.stream()
                .map(Logged::entry)
                .filter(Event.class::isInstance)
                .map(entry -> ((Event) entry).planting())
                .filter(Objects::nonNull)
                .distinct()
                .toList();
    }

    /** Whether a message asks something that needs a crop and names no one kind. */
    static boolean isOpen(Heard heard) {
        return heard.inquiries().stream().anyMatch(inquiry -> namesNone(inquiry) && needsACrop(inquiry));
    }

    /** The same message with its questions about what they mean; one that may mean several crops is asked back. */
    Heard settled(Heard heard, Replier replier) {
        List<Inquiry> settled = new ArrayList<>();
        Inquiry open = null;
        for (Inquiry inquiry : heard.inquiries()) {
            Inquiry meant = namesNone(inquiry) && needsACrop(inquiry) ? meant(inquiry) : inquiry;
            boolean still = namesNone(meant) && needsACrop(meant);
            if (still && !named && talkedOfSome()) {
                memory.crops().forEach(crop -> settled.add(meant.ofCrop(crop)));
                continue;
            }
            if (still) {
                open = meant;
            }
            settled.add(meant);
        }
        if (open == null || named || heard.doubt() != null || crops().size() < 2 || settled.size() > 1) {
            return heard.asking(settled);
        }
        return heard.asking(List.of()).withDoubt(whichCrop(open, replier));
    }

    /** "When should I start everything" after a few crops were named is about each of them. */
    private boolean talkedOfSome() {
        return memory.crops().size() > 1 && memory.crops().size() <= MOST_TALKED_OF;
    }

    private Doubt whichCrop(Inquiry open, Replier replier) {
        List<Choice> choices = new ArrayList<>();
        crops().forEach((crop, plantings) -> choices.add(new Choice(
                replier.named(crop, garden, today),
                crop,
                Heard.nothing(Kind.QUESTION).asking(List.of(open.ofCrop(crop).about(plantings))))));
        return new Doubt(
                Doubt.About.WHICH_CROP,
                Map.of(),
                choices.size() > MOST_CHOICES ? choices.subList(0, MOST_CHOICES) : choices,
                null);
    }

    private Map<String, List<String>> crops() {
        Map<String, List<String>> crops = new LinkedHashMap<>();
        for (Planting planting : garden.growing()) {
            crops.computeIfAbsent(planting.crop(), crop -> new ArrayList<>()).add(planting.id());
        }
        return crops;
    }

    private Inquiry meant(Inquiry inquiry) {
        if (NEXT_YEAR.equals(inquiry.topic())) {
            List<String> ofTheYear = garden.plantings().stream()
                    .filter(planting ->
                            planting.begun() != null && planting.begun().isAfter(today.minusYears(1)))
                    .map(Planting::id)
                    .toList();
            // A year of several crops is looked back on as a whole.
            return cropsOf(ofTheYear).size() > 1
                    ? inquiry.asking(Question.STATUS).withTopic(YEAR_REVIEW)
                    : about(inquiry, ofTheYear);
        }
        List<String> growing = garden.growing().stream().map(Planting::id).toList();
        for (List<String> likely : named ? List.of(told) : List.of(told, memory.mentioned())) {
            List<String> known = likely.stream().filter(growing::contains).toList();
            if (!known.isEmpty() && (cropsOf(known).size() <= MOST_MEANT || OF_ALL.contains(inquiry.question()))) {
                return about(inquiry, known);
            }
        }
        if (named) {
            return inquiry;
        }
        if (memory.crops().size() == 1) {
            return inquiry.ofCrop(memory.crops().get(0));
        }
        return crops().size() == 1 || OF_ALL.contains(inquiry.question()) ? about(inquiry, growing) : inquiry;
    }

    private Inquiry about(Inquiry inquiry, List<String> plantings) {
        List<String> crops = cropsOf(plantings);
        return inquiry.ofCrop(crops.size() == 1 ? crops.get(0) : null).about(plantings);
    }

    private List<String> cropsOf(List<String> plantings) {
        return plantings.stream()
                .flatMap(id -> garden.planting(id).stream())
                .map(Planting::crop)
                .distinct()
                .toList();
    }

    private static boolean namesNone(Inquiry inquiry) {
        return inquiry.crop() == null && inquiry.plantings().isEmpty();
    }

    private static boolean needsACrop(Inquiry inquiry) {
        boolean can = inquiry.label() != null;
        boolean compost = inquiry.question() == Question.HOW_MANY_FIT && "compost".equals(inquiry.topic());
        boolean matter = inquiry.question() == Question.OTHER
                && (inquiry.topic() == null || !OF_PLANTS.contains(inquiry.topic()));
        // A dog and onions, split fruit, treated wood: the answer is the same for every crop, or the crop is named.
        boolean danger = inquiry.question() == Question.SAFE
                && inquiry.topic() != null
                && !DANGERS_OF_A_CROP.contains(inquiry.topic());
        boolean any = inquiry.topic() != null && OF_ANY_CROP.contains(inquiry.topic());
        return !PLOT.contains(inquiry.question()) && !can && !compost && !matter && !any && !danger;
    }
}
