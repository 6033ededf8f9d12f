package bothy.reading;

import bothy.garden.Eaten;
import bothy.garden.Inquiry;
import bothy.garden.Planting;
import bothy.garden.Question;
import bothy.reading.said.CropSaid;
import bothy.reading.said.DaySaid;
import bothy.reading.said.Passage;
import bothy.reading.told.PlantingsMeant;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Makes inquiries of asking sentences: what is asked, of which crop and plantings, with the figures told. */
final class Inquiries {
    /** Of these one question names several crops: which of them, or one beside the other. */
    private static final Set<Question> NOT_EACH =
            Set.of(Question.COMPARE, Question.WHAT_TO_GROW, Question.OTHER, Question.TO_DO, Question.SPACING);

    private static final Set<String> ANY = Set.of("anything", "any", "something", "which", "what", "plants");

    /** Whoever asks whether it is time to eat something may mean whether it can be eaten. */
    private static final Set<Question> OF_EATING = Set.of(Question.SAFE, Question.READY);

    /** "If it freezes": that "it" is nothing of the grower's. */
    private static final Set<String> WEATHER =
            Set.of("freezes", "rains", "snows", "pours", "hails", "freezing", "raining", "snowing");

    private static final Set<String> HAPPENED = Set.of("happen", "happens", "happened", "happening");
    private static final String FROST = "frost";

    private static final Set<Question> OF_THE_COLD = Set.of(Question.SAFE, Question.STATUS, Question.OTHER);
    private static final Set<String> OTHER_DANGERS = Set.of(FROST, "spraying");
    /** Of these a length told before the question is what is asked about. */
    private static final Set<Question> SIZED =
            Set.of(Question.HOW_MANY_FIT, Question.SPACING, Question.READY, Question.HOW_HARVEST);

    private static final Set<Question> OF_OLD_SEED =
            Set.of(Question.OTHER, Question.SAFE, Question.STATUS, Question.HOW_STORE);
    private static final Set<String> OF_THE_GARDEN = Set.of(
            "seedlings",
            "seeds",
            "seed",
            "plants",
            "plant",
            "leaves",
            "roots",
            "soil",
            "compost",
            "manure",
            "flowers",
            "fruit");
    private static final Set<Question> ALIKE_IN_KIND = Set.of(Question.OTHER, Question.HOW_TO);
    private static final Set<Question> WHOLE_PLOT = Set.of(Question.TO_DO, Question.WHAT_TO_GROW);
    /** What "in bed 3" is asked of what stands there. */
    private static final Set<Question> OF_A_PLACE = EnumSet.of(
            Question.STATUS,
            Question.READY,
            Question.HOW_HARVEST,
            Question.SPACING,
            Question.WHEN_WATER,
            Question.HOW_MUCH_WATER,
            Question.WHEN_STOP_WATERING,
            Question.FEED_WHEN,
            Question.FEED_WHAT,
            Question.SAFE,
            Question.NEXT,
            Question.HOW_TO);

    /** "And when?": so many words at most ask of what was asked before them. */
    private static final int BARE = 2;

    private static final Set<Question> WHAT_TO_DO = Set.of(Question.TO_DO, Question.HOW_TO, Question.OTHER);
    private final Questions questions;

    Inquiries(Questions questions) {
        this.questions = questions;
    }

    /** One for each crop of a list: "when do I sow leeks and sweetcorn" asks of two. */
    List<Inquiry> all(Passage passage, int[] sentence, int begins) {
        List<Inquiry> meanings = questions.meanings().in(passage, sentence).stream()
                .map(topic -> Inquiry.of(
                                says(passage, sentence, "difference") ? Question.COMPARE : Question.OTHER,
                                null,
                                List.of())
                        .withTopic(topic))
                .toList();
        if (!meanings.isEmpty()) {
            return meanings;
        }
        Optional<String> reason = questions.reasons().in(passage, sentence);
        if (reason.isPresent()) {
            return List.of(Inquiry.of(Question.WHY, null, List.of()).withTopic(reason.get()));
        }
        Eaten eaten = questions.eating().in(passage, sentence, begins);
        boolean whether = eaten != null && questions.eating().asksWhether(eaten, passage, sentence);
        Question question = whether
                ? Question.SAFE
                : ShortlyAsked.kind(questions.asked(passage, sentence, begins), passage, sentence, begins);
        List<Inquiry> each = each(passage, sentence, begins, question);
        return questions.matters().withThePlan(each, passage, sentence).stream()
                .map(inquiry ->
                        eaten == null || !OF_EATING.contains(inquiry.question()) ? inquiry : inquiry.ofEating(eaten))
                // "The lettuce got frosted, can I still eat it" asks of no frost to come.
                .map(inquiry -> whether && OTHER_DANGERS.contains(String.valueOf(inquiry.topic()))
                        ? inquiry.withTopic("eating")
                        : inquiry)
                .toList();
    }

    private List<Inquiry> each(Passage passage, int[] sentence, int begins, Question question) {
        // "Got tomato and chilli seeds, what do I do first" asks of both.
        boolean ofSeed =
                question == Question.TO_DO && (says(passage, sentence, "seeds") || says(passage, sentence, "seed"));
        List<CropSaid> named = CropsListed.of(passage, sentence, begins);
        // "I want peas, carrots and a pumpkin. What do I do and when?" asks when each is begun.
        boolean whenEach = sentence[1] - begins > BARE
                && WHAT_TO_DO.contains(question)
                && questions.topic(passage, begins, sentence[1]) == null
                && says(passage, new int[] {begins, sentence[1]}, "when")
                && named.size() > 1
                && named.stream().noneMatch(said -> ShortlyAsked.grows(said, passage));
        Question each = whenEach ? Question.WHEN_SOW : question;
        List<CropSaid> listed = NOT_EACH.contains(each) && !ofSeed ? List.of() : named;
        if (listed.size() < 2) {
            return List.of(of(passage, sentence, begins, question, crop(passage, sentence, begins)));
        }
        return listed.stream()
                .map(said -> of(passage, sentence, begins, each, said))
                .distinct()
                .toList();
    }

    private Inquiry of(Passage passage, int[] sentence, int begins, Question question, CropSaid said) {
        List<Planting> plantings = plantings(passage, sentence, said, question);
        String crop = name(said, plantings);
        String topic =
                switch (question) {
                    // "Hardening off schedule for the peppers" names the step before it asks.
                    case HOW_TO, HOW_STORE ->
                        Optional.ofNullable(questions.topic(passage, begins, sentence[1]))
                                .orElseGet(() -> questions.topic(passage, sentence[0], sentence[1]));
                    case STILL_TIME -> asksWhetherTooLate(passage, sentence) ? "whether-too-late" : null;
                    // "Frost tonight, are they all right?" names the danger before it asks.
                    case SAFE ->
                        Optional.ofNullable(questions.danger(passage, sentence[0], sentence[1]))
                                .or(() -> frostBefore(passage, sentence))
                                .orElse("eating");
                    default -> null;
                };
        Inquiry inquiry = SizesAsked.in(
                new Inquiry(
                        question,
                        crop,
                        PlantingsMeant.ids(plantings),
                        topic,
                        day(passage, begins, sentence[1]),
                        null,
                        null,
                        null,
                        null,
                        null),
                passage,
                sized(passage, sentence, begins, question),
                sentence[1]);
        Inquiry counted = questions.numbers().in(inquiry, passage, begins, sentence[1]);
        Inquiry ofThePlace = questions.climate().in(counted, passage, begins, sentence[1]);
        if (!ofThePlace.equals(counted)) {
            return HeatToCome.asked(ofThePlace, passage);
        }
        Inquiry ofMatter = NumbersAsked.COMPOST.equals(counted.topic())
                ? counted
                : PlaceOfTheDiary.asked(
                        ofThePlot(ofKin(questions.matters().in(counted, passage, sentence, begins), said)),
                        counted,
                        passage,
                        sentence);
        if (ofMatter.question() == Question.WHY
                && ofMatter.topic() == null
                && (ownSubject(passage, begins, sentence) || ofWhatHappened(passage, begins, sentence))) {
            return ofMatter.withTopic(Inquiry.UNWRITTEN);
        }
        Inquiry ofPeriod = questions.periods().in(ofAny(ofMatter, passage, sentence), passage, sentence, begins);
        Inquiry settled = HeatToCome.asked(
                ofTheColdPast(ofOldSeed(likeliest(ofPeriod, said), passage), passage, begins), passage);
        Inquiry ofTheNight =
                questions.eating().in(passage, sentence, begins) == null ? ColdNight.asked(settled, passage) : settled;
        Inquiry placed = OnlyPots.asked(
                StartsOut.asked(questions.cues().in(ofTheNight, passage), passage, begins, sentence[1]), passage);
        return NightAhead.asked(placed, passage);
    }

    /** "There was a frost this morning. Will the peas take harm?": of nothing to eat. */
    private Optional<String> frostBefore(Passage passage, int[] sentence) {
        return Optional.ofNullable(questions.danger(passage, 0, sentence[0]))
                .filter(FROST::equals)
                .filter(frost -> questions.eating().in(passage, sentence, sentence[0]) == null);
    }

    /** "-4 last night, are my carrots ok?": of what the cold did, not of eating. */
    private static Inquiry ofTheColdPast(Inquiry inquiry, Passage passage, int begins) {
        boolean open = OF_THE_COLD.contains(inquiry.question())
                && (inquiry.topic() == null
                        || inquiry.topic().equals("eating")
                        || inquiry.topic().equals("normal"));
        return open && inquiry.eaten() == null && ColdPast.told(passage, begins)
                ? inquiry.asking(Question.OTHER).withTopic("recovery")
                : inquiry;
    }

    /** "Do I pinch anything out" asks of each crop that grows. */
    private static Inquiry ofAny(Inquiry inquiry, Passage passage, int[] sentence) {
        boolean any = "pruning".equals(inquiry.topic())
                && inquiry.crop() == null
                && inquiry.plantings().isEmpty()
                && ANY.stream().anyMatch(word -> says(passage, sentence, word));
        return any
                ? inquiry.about(PlantingsMeant.ids(passage.situation().plantings().stream()
                        .filter(planting -> !planting.over())
                        .toList()))
                : inquiry;
    }

    /** "Will it rain" asks of the weather, not of what was talked about. */
    private static Inquiry ofThePlot(Inquiry inquiry) {
        boolean weather = inquiry.topic() != null && inquiry.topic().startsWith("forecast");
        return weather ? inquiry.ofCrop(null).about(List.of()) : inquiry;
    }

    /** "After the beans": what follows goes by the family, which all kinds of bean share. */
    private static Inquiry ofKin(Inquiry inquiry, CropSaid said) {
        return "following".equals(inquiry.topic()) && inquiry.crop() == null && said != null
                ? inquiry.ofCrop(said.crop())
                : inquiry;
    }

    /** "Are the seeds from 2022 still good": how old seed is was taken out of the sentence before it was read. */
    private static Inquiry ofOldSeed(Inquiry inquiry, Passage passage) {
        boolean open = OF_OLD_SEED.contains(inquiry.question())
                && (inquiry.topic() == null
                        || Set.of("normal", "recovery", "eating").contains(inquiry.topic()));
        return open && !passage.seeds().isEmpty()
                ? inquiry.asking(Question.OTHER).withTopic("seed-life")
                : inquiry;
    }

    /** Of a matter the kinds of a name differ little: whether "beans" are soaked need not wait for which beans. */
    private static Inquiry likeliest(Inquiry inquiry, CropSaid said) {
        boolean matter = ALIKE_IN_KIND.contains(inquiry.question()) && inquiry.topic() != null;
        boolean open = inquiry.crop() == null && inquiry.plantings().isEmpty();
        return matter && open && said != null && !said.thing() ? inquiry.ofCrop(said.crop()) : inquiry;
    }

    /** "Why do peppers need heat" asks of peppers; "why?", "why is that" and "why do you say so" ask of the last advice. */
    private boolean ownSubject(Passage passage, int begins, int[] sentence) {
        boolean named = !Passage.within(passage.crops(), begins, sentence[1]).isEmpty();
        boolean thing = questions.topic(passage, begins, sentence[1]) != null
                || OF_THE_GARDEN.stream().anyMatch(word -> says(passage, new int[] {begins, sentence[1]}, word));
        return (named || thing && !ReasonsAsked.points(passage, begins, sentence[1]))
                && !ReasonsAsked.ofWhatWasSaid(passage, begins, sentence[1]);
    }

    /** "One looks like trousers, why does that happen?" asks of what was told with it, not of the last advice. */
    private static boolean ofWhatHappened(Passage passage, int begins, int[] sentence) {
        return begins > 1
                && HAPPENED.stream().anyMatch(word -> says(passage, new int[] {begins, sentence[1]}, word))
                && !says(passage, new int[] {begins, sentence[1]}, "you");
    }

    /** "Bed 2 m long 1 m wide, how many lettuce fit": sizes told before the question belong to it where nothing was done. */
    private static int sized(Passage passage, int[] sentence, int begins, Question question) {
        boolean asks = SIZED.contains(question);
        boolean done =
                passage.actions().stream().anyMatch(action -> action.start() >= sentence[0] && action.end() <= begins);
        boolean stores = question == Question.HOW_STORE;
        boolean inside = Passage.within(passage.quantities(), begins, sentence[1]).stream()
                .anyMatch(quantity ->
                        stores ? quantity.degrees() : quantity.unit().startsWith("m"));
        return (asks && !done || stores) && !inside ? sentence[0] : begins;
    }

    /** A label read out: what it comes to for the can. */
    Inquiry ofLabel(Passage passage, int[] sentence) {
        CropSaid said = crop(passage, sentence, sentence[0]);
        List<Planting> plantings = said == null ? List.of() : plantings(passage, sentence, said, Question.FEED_DOSE);
        return NumbersAsked.feed(
                Inquiry.of(Question.FEED_DOSE, name(said, plantings), PlantingsMeant.ids(plantings)), passage);
    }

    static CropSaid crop(Passage passage, int[] sentence, int begins) {
        List<CropSaid> inside = Passage.within(passage.crops(), begins, sentence[1]);
        if (!inside.isEmpty()) {
            // "Tomato feed on courgettes" is about courgettes.
            return inside.stream().filter(crop -> !crop.thing()).findFirst().orElse(inside.get(0));
        }
        List<CropSaid> before = Passage.within(passage.crops(), 0, begins);
        return before.isEmpty() ? null : before.get(before.size() - 1);
    }

    static List<Planting> plantings(Passage passage, int[] sentence, CropSaid said, Question question) {
        if (said != null) {
            return PlantingsMeant.of(said, passage, sentence[0], sentence[1], true);
        }
        List<Planting> there = OF_A_PLACE.contains(question)
                ? PlantingsMeant.standingIn(passage, sentence[0], sentence[1])
                : List.of();
        if (!there.isEmpty()) {
            return there;
        }
        boolean points = Set.of("they", "them", "it", "these", "those", "ones", "one", "both").stream()
                .anyMatch(word -> says(passage, sentence, word));
        if (WHOLE_PLOT.contains(question) || (!points && question == Question.STATUS)) {
            return List.of();
        }
        List<Planting> mentioned = PlantingsMeant.mentioned(passage.situation());
        return points || question == Question.NEXT ? mentioned : List.of();
    }

    private static boolean says(Passage passage, int[] sentence, String word) {
        for (int at = sentence[0]; at < sentence[1]; at++) {
            if (passage.word(at).equals(word) && !WEATHER.contains(passage.word(at + 1))) {
                return true;
            }
        }
        return false;
    }

    static String name(CropSaid said, List<Planting> plantings) {
        List<String> grown = plantings.stream().map(Planting::crop).distinct().toList();
        if (grown.size() == 1) {
            return grown.get(0);
        }
        return said != null && (said.single() || said.certain()) ? said.crop() : null;
    }

    /** "Is it too late" is answered with a no where "is there still time" is answered with a yes. */
    private static boolean asksWhetherTooLate(Passage passage, int[] sentence) {
        for (int at = sentence[0]; at + 1 < sentence[1]; at++) {
            if (Set.of("too", "to").contains(passage.word(at))
                    && passage.word(at + 1).equals("late")) {
                return true;
            }
        }
        return false;
    }

    private static LocalDate day(Passage passage, int from, int to) {
        return Passage.within(passage.days(), from, to).stream()
                .filter(DaySaid::known)
                .map(DaySaid::future)
                .findFirst()
                .orElse(null);
    }
}
