package bothy.reading;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import bothy.reading.text.PhraseBook.Found;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Words of a sign that tell of no trouble where they stand: holes made to plant in, last year's crop, a name of a variety. */
final class NoTrouble {
    /** Words between a crop and a doing behind it that is told of it. */
    private static final int NEAR = 3;
    /** Words between a doing and the crop behind it: "pulled a bunch of nice fat beetroot". */
    private static final int BEFORE_THE_CROP = 6;

    private static final Set<String> INTO = Set.of("in", "into");
    /** What also tells of plants too long to stand. */
    private static final Set<String> OF_LENGTH = Set.of("wilting", "damping-off");

    private static final Set<String> FLOPPING = Set.of(
            "flopping",
            "flop",
            "flops",
            "flopped",
            "floppy",
            "falling",
            "fall",
            "fallen",
            "over",
            "keeling",
            "leaning",
            "drooping",
            "droopy",
            "seedlings",
            "seedling",
            "plants",
            "starts");

    private static final Set<String> GROUND =
            Set.of("soil", "ground", "earth", "clay", "mud", "dirt", "loam", "compost", "turf");
    private static final Set<String> INSECTS = Set.of(
            "bug",
            "bugs",
            "insect",
            "insects",
            "beetle",
            "beetles",
            "grub",
            "grubs",
            "larva",
            "larvae",
            "critter",
            "critters",
            "caterpillar",
            "caterpillars",
            "beasties",
            "eggs",
            "worms",
            "traps",
            "trap");
    /** So many words may stand between a colour and the insect that has it. */
    private static final int OF_THAT_COLOUR = 3;

    private NoTrouble() {}

    /** "The soil is still cold and sticky": clings to the boots, and no insect sits on a leaf. */
    static boolean ofTheGround(Passage passage, int[] sentence, Found<String> found) {
        return found.meaning().equals("sticky-leaves")
                && passage.word(found.start()).equals("sticky")
                && IntStream.range(sentence[0], Math.min(sentence[1], found.end() + 2))
                        .anyMatch(at -> GROUND.contains(passage.word(at))
                                && Passage.within(passage.crops(), Math.min(at, found.start()), found.start())
                                        .isEmpty());
    }

    /** "The carrots have gone green on top": green tubers are those of potatoes. */
    static boolean noTubers(Passage passage, Found<String> found) {
        return found.meaning().equals("green-tubers")
                && !passage.crops().isEmpty()
                && passage.crops().stream().noneMatch(crop -> crop.canMean("potato"));
    }

    /** "The two bean plants I pulled out": no bird did. */
    static boolean byOneself(Passage passage, Found<String> found) {
        return found.meaning().equals("seedlings-cut-off")
                && found.place().words().stream()
                        .anyMatch(at -> Set.of("pulled", "plucked", "uprooted", "cut", "snipped")
                                        .contains(passage.word(at))
                                && Set.of("i", "we").contains(passage.word(at - 1)));
    }

    /** "Holes in the leaves, and there are yellow fuzzy bugs": the bugs are yellow, not the leaves. */
    static boolean ofInsects(Passage passage, int[] sentence, Found<String> found) {
        if (!found.meaning().startsWith("yellow-leaves")) {
            return false;
        }
        int yellow = found.place().words().stream()
                .filter(at -> passage.word(at).startsWith("yellow"))
                .max()
                .orElse(sentence[1]);
        return IntStream.rangeClosed(yellow + 1, Math.min(sentence[1] - 1, yellow + OF_THAT_COLOUR))
                .takeWhile(at ->
                        !passage.tokens().get(at).mark() && !passage.word(at).equals("and"))
                .anyMatch(at -> INSECTS.contains(passage.word(at)));
    }

    /** "Watered the onions, tomatoes are in flower": no onion flowers, something else was told of them. */
    static boolean overAnother(Passage passage, int[] sentence, Found<String> found) {
        CropSaid first = passage.cropAt(found.start()).orElse(null);
        boolean done = first != null
                && Passage.within(passage.actions(), sentence[0], found.end()).stream()
                        .anyMatch(action -> action.form() == Form.PAST
                                && !action.words().intersects(found.place().words())
                                && nextTo(passage, action, first)
                                && action.start() <= first.end() + NEAR);
        return done
                && Passage.within(passage.crops(), first.end(), found.end()).stream()
                        .filter(crop -> !crop.thing() && !crop.crops().equals(first.crops()))
                        .anyMatch(crop -> found.place().words().nextSetBit(first.end()) >= crop.end());
    }

    /** "Pulled a good bunch of beetroot": told of this crop and of none between. */
    private static boolean nextTo(Passage passage, ActionSaid action, CropSaid crop) {
        return action.lastWord() >= crop.start() - BEFORE_THE_CROP
                && Passage.within(passage.crops(), action.lastWord() + 1, crop.start())
                        .isEmpty();
    }

    /** "By this date last year I had picked 20 kg. Nothing so far.": nothing of what was told of that year, and no seed that fails. */
    static boolean noneThisYear(Passage passage, int[] sentence, Found<String> found) {
        int[] before = passage.sentences().stream()
                .filter(one -> one[1] <= sentence[0])
                .reduce((first, last) -> last)
                .orElse(null);
        return found.meaning().equals(Signs.NO_EMERGENCE)
                && before != null
                && Passage.within(passage.crops(), sentence[0], sentence[1]).isEmpty()
                && passage.actions().stream().noneMatch(action -> Set.of("sown", "planted", "emerged")
                        .contains(action.action()))
                && IntStream.range(before[0], before[1])
                        .anyMatch(at -> passage.word(at).equals("last")
                                && Set.of("year", "season", "summer", "spring", "autumn", "fall")
                                        .contains(passage.word(at + 1)));
    }

    /** "Planted little gem and watered the garlic": the word is part of a variety's name. */
    static boolean named(Passage passage, Found<String> found) {
        return passage.crops().stream()
                .filter(crop -> crop.variety() != null && crop.end() - crop.start() > 1)
                .anyMatch(crop -> found.place().words().stream().anyMatch(crop::covers)
                        && !found.place().words().stream().allMatch(crop::covers)
                        && found.place().words().get(crop.start())
                        && !found.place().words().get(crop.end() - 1));
    }

    /** "Mine never come up that early": they do come up. */
    static boolean notSoEarly(Passage passage, Found<String> sign) {
        String next = passage.word(sign.end());
        boolean early = Set.of("that", "so", "this", "very", "too").contains(next)
                && Set.of("early", "soon", "quick", "quickly", "fast").contains(passage.word(sign.end() + 1));
        return sign.meaning().equals(Signs.NO_EMERGENCE)
                && (early || Set.of("before", "until", "till").contains(next));
    }

    /** "36 leeks dropped into their holes": those were made to plant in. */
    static boolean madeToPlantIn(Passage passage, int[] sentence, Found<String> sign) {
        boolean into = sign.place().words().stream()
                .filter(at -> Set.of("hole", "holes").contains(passage.word(at)))
                .anyMatch(at -> INTO.contains(passage.word(at - 1))
                        || Set.of("the", "their", "its").contains(passage.word(at - 1))
                                && INTO.contains(passage.word(at - 2)));
        return into
                && passage.actions().stream()
                        .anyMatch(action -> action.start() >= sentence[0]
                                && action.start() < sign.end()
                                && Set.of("planted", "planted-out", "sown").contains(action.action()));
    }

    /** "Tops on the onions are flopping over": that is how bulbs ripen. */
    static boolean bulbsRipening(Passage passage, int[] sentence, Found<String> sign) {
        return sign.meaning().equals("wilting")
                && sign.place().words().stream().anyMatch(at -> FLOPPING.contains(passage.word(at)))
                && IntStream.range(sentence[0], sentence[1])
                        .anyMatch(at -> Set.of("tops", "necks", "stalks").contains(passage.word(at)))
                && Passage.within(passage.crops(), sentence[0], sentence[1]).stream()
                        .anyMatch(crop -> Set.of("onion", "garlic", "shallot").contains(crop.crop()));
    }

    /** "A mulch of dead leaves", "give it a crack": a thing that was made use of, a way of speaking. */
    static boolean onlyCalledSo(Passage passage, Found<String> sign) {
        int before = sign.start() - 1;
        boolean layer = passage.word(before).equals("of")
                && Set.of(
                                "mulch",
                                "layer",
                                "pile",
                                "heap",
                                "bag",
                                "bags",
                                "blanket",
                                "load",
                                "barrow",
                                "bucket",
                                "covering",
                                "bed")
                        .contains(passage.word(before - 1));
        boolean crack = sign.place().words().stream()
                .anyMatch(at -> passage.word(at).equals("crack")
                        && Set.of("a", "another").contains(passage.word(at - 1))
                        && !Set.of("in", "down", "round", "around", "across", "along", "on", "from", "right")
                                .contains(passage.word(at + 1)));
        return layer || crack;
    }

    /** "Not growing any carrots this year": none that could stand still. */
    static boolean growsNone(Passage passage, int[] sentence, Found<String> sign) {
        return sign.meaning().equals("seedlings-stalled")
                && IntStream.range(sentence[0], sentence[1])
                        .anyMatch(at -> Set.of("growing", "grow").contains(passage.word(at))
                                && passage.word(at - 1).equals("not")
                                && passage.cropAt(passage.word(at + 1).equals("any") ? at + 2 : at + 1)
                                        .isPresent());
    }

    /** "Tall and skinny and flopping over": what has grown too long flops of its length, not of thirst or rot. */
    static boolean ofTheirLength(Passage passage, Found<String> found, List<Found<String>> all) {
        return OF_LENGTH.contains(found.meaning())
                && all.stream().anyMatch(one -> one.meaning().equals("leggy"))
                && found.place().words().stream()
                        .allMatch(at -> FLOPPING.contains(passage.word(at))
                                || passage.crops().stream().anyMatch(crop -> crop.covers(at)));
    }
}
