package bothy.reading;

import bothy.garden.What;
import bothy.reading.said.ActionSaid;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

/** Words of a doing that mean something else where they stand: the blossom end of a fruit, "14 kg all up". */
final class OtherSenses {
    private static final List<BiPredicate<Passage, ActionSaid>> SENSES = List.of(
            OtherSenses::putUp,
            OtherSenses::inAll,
            OtherSenses::straightAway,
            OtherSenses::blossomEnd,
            OtherSenses::onLeaves,
            OtherSenses::driedEnough,
            OtherSenses::seedSoaked,
            OtherSenses::headsShowing,
            OtherSenses::fruitTaken,
            OtherSenses::inThePlant,
            OtherSenses::inStore,
            OtherSenses::lyingInStore,
            OtherSenses::sizeOfACrop,
            OtherSenses::utterly,
            OtherSenses::thinToLookAt,
            OtherSenses::ownDoing,
            NotThePlants::passedThrough,
            NotThePlants::firstPicked,
            NotThePlants::seedKept);
    private static final Set<String> FRUIT = Set.of("fruit", "fruits", "cobs", "ears", "pods", "berries");
    private static final Set<String> COLOURS = Set.of("green", "red", "ripe", "unripe", "yellow", "orange");
    /** So many words lie between a number and the fruit that it counts. */
    private static final int FRUIT_REACH = 3;

    private static final Set<String> HEADS =
            Set.of("heads", "head", "curds", "curd", "buds", "tassels", "silks", "florets", "hearts");
    /** So many words lie between the soaking and how long it was. */
    private static final int SOAK_REACH = 4;
    /** So many words lie between a leaf and what shows on it. */
    private static final int LEAF_REACH = 4;

    private static final Set<String> EARTHED = Set.of(
            "earthed", "hilled", "mounded", "ridged", "banked", "tied", "propped", "staked", "strung", "potted", "dug");

    private static final Set<String> OF_RAIN = Set.of(
            "rain", "rained", "rainfall", "fell", "gauge", "had", "got", "have", "storm", "overnight", "last", "total");

    private static final Set<String> LOOK =
            Set.of("are", "look", "looks", "keep", "feel", "feels", "smell", "smells", "seem", "started", "starting");

    private static final Set<String> STORES =
            Set.of("cupboard", "bag", "bags", "sack", "sacks", "cellar", "larder", "pantry", "fridge", "net", "drawer");
    /** So many words lie between what sprouts and where it is kept. */
    private static final int STORE_REACH = 6;

    private static final Set<String> DEAD_SURE = Set.of(
            "bitter",
            "sweet",
            "sour",
            "tough",
            "tasty",
            "nice",
            "good",
            "lovely",
            "easy",
            "simple",
            "quick",
            "slow",
            "keen",
            "chuffed",
            "pleased",
            "proud",
            "happy",
            "sure",
            "certain",
            "set",
            "straight",
            "level",
            "hot",
            "cold",
            "dry",
            "wet",
            "big",
            "small",
            "tall",
            "long",
            "cheap",
            "healthy");

    private static final Set<String> SETTING = Set.of("sown", "planted", "planted-out");
    private static final Set<String> ARTICLES = Set.of("the", "its", "their", "each", "every", "a", "one");
    private static final Set<String> PARTS = Set.of(
            "stem", "stems", "stalk", "stalks", "leaf", "leaves", "bud", "buds", "pod", "pods", "fruit", "fruits",
            "skin", "shell", "husk", "husks", "heart", "bulb", "bulbs", "neck", "flower", "flowers", "core", "flesh");

    private static final Set<String> SHAPES = Set.of(
            "tall",
            "long",
            "pale",
            "leggy",
            "spindly",
            "lanky",
            "weak",
            "stretched",
            "floppy",
            "weedy",
            "straggly",
            "bendy",
            "skinny",
            "scraggly",
            "drawn",
            "feeble");
    private static final Set<String> LOOKING = Set.of(
            "very",
            "so",
            "too",
            "terribly",
            "awfully",
            "really",
            "rather",
            "quite",
            "pretty",
            "dreadfully",
            "horribly",
            "gone",
            "going",
            "look",
            "looks",
            "looking",
            "grown",
            "grew",
            "turned",
            "are",
            "is",
            "all",
            "bit",
            "stems",
            "stalks");

    private OtherSenses() {}

    static boolean meant(Passage passage, ActionSaid action) {
        return SENSES.stream().anyMatch(sense -> sense.test(passage, action));
    }

    /** "The netting I put up last weekend": nothing came up. */
    private static boolean putUp(Passage passage, ActionSaid action) {
        if (!action.action().equals("emerged") || !action.state()) {
            return false;
        }
        int at = action.start();
        if (passage.cropAt(at).isPresent() && passage.word(action.start() + 1).equals("up")) {
            at--;
            while (at > 0 && Set.of("the", "my", "our", "all").contains(passage.word(at))) {
                at--;
            }
            return EARTHED.contains(passage.word(at)); // "Earthed the spuds up and …".
        }
        String before = passage.word(at - 1);
        return passage.word(at).equals("up")
                && passage.cropAt(at - 1).isEmpty()
                && (before.length() > 4 && before.endsWith("ed")
                        || Set.of(
                                        "put", "set", "got", "gave", "took", "held", "hung", "dug", "cut", "made",
                                        "woke", "stood")
                                .contains(before));
    }

    /** "14 kg all up" counts together; nothing has come up. */
    private static boolean inAll(Passage passage, ActionSaid action) {
        return action.action().equals("emerged")
                && passage.word(action.lastWord()).equals("up")
                && passage.word(action.lastWord() - 1).equals("all")
                && passage.quantities().stream().anyMatch(amount -> amount.end() == action.lastWord() - 1);
    }

    /** "Put cloches over them straight away" puts nothing away. */
    private static boolean straightAway(Passage passage, ActionSaid action) {
        return action.action().equals("stored")
                && passage.word(action.lastWord()).equals("away")
                && Set.of("straight", "right").contains(passage.word(action.lastWord() - 1));
    }

    /** "Dark patches on the blossom end" are no blossom. */
    private static boolean blossomEnd(Passage passage, ActionSaid action) {
        return action.action().equals("flowering")
                && Set.of("end", "ends").contains(passage.word(action.lastWord() + 1))
                && passage.word(action.lastWord()).equals("blossom");
    }

    /** "On the leaves appeared a white coating": no seedlings. */
    private static boolean onLeaves(Passage passage, ActionSaid action) {
        boolean appears = action.action().equals("emerged")
                && Set.of("appeared", "appearing", "appear", "appears").contains(passage.word(action.lastWord()));
        for (int at = Math.max(0, action.start() - LEAF_REACH); appears && at < action.start(); at++) {
            if (Set.of("leaves", "leaf", "stems", "stem", "fruit").contains(passage.word(at))
                    && !Set.of("true", "new", "first", "seed").contains(passage.word(at - 1))) {
                return true;
            }
        }
        return false;
    }

    /** "One tasted dead bitter": very bitter, and nothing died. */
    private static boolean utterly(Passage passage, ActionSaid action) {
        return action.action().equals("died")
                && passage.word(action.lastWord()).equals("dead")
                && DEAD_SURE.contains(passage.word(action.lastWord() + 1));
    }

    /** "It dried out enough to walk on" cures nothing. */
    private static boolean driedEnough(Passage passage, ActionSaid action) {
        return action.action().equals("cured")
                && IntStream.rangeClosed(action.lastWord(), action.lastWord() + 2)
                        .anyMatch(at -> passage.word(at).equals("enough"));
    }

    /** "12 in 3 buckets, soaked overnight before": seed lies in water, nothing is watered. */
    private static boolean seedSoaked(Passage passage, ActionSaid action) {
        int verb = action.words().nextSetBit(0);
        return action.action().equals("watered")
                && Set.of("soaked", "soaking", "soak").contains(passage.word(verb))
                && IntStream.rangeClosed(verb + 1, verb + SOAK_REACH)
                        .anyMatch(at -> Set.of("overnight", "night", "hours", "hrs", "beforehand", "first")
                                .contains(passage.word(at)))
                && passage.actions().stream()
                        .anyMatch(other -> Set.of("sown", "planted").contains(other.action()));
    }

    /** "The cauliflower heads are showing": what shows there has long been up. */
    private static boolean headsShowing(Passage passage, ActionSaid action) {
        return action.action().equals("emerged")
                && passage.word(action.lastWord()).startsWith("show")
                && IntStream.range(Math.max(0, action.start() - 1), action.lastWord())
                        .anyMatch(at -> HEADS.contains(passage.word(at)));
    }

    /** "Squirrels got 3 green ones off the plants" kills no plant; "slugs ate 3 of the small ones" does. */
    private static boolean fruitTaken(Passage passage, ActionSaid action) {
        if (!action.action().equals("died") || action.form() != null) {
            return false;
        }
        return IntStream.rangeClosed(action.start(), action.lastWord() + FRUIT_REACH)
                .anyMatch(at -> FRUIT.contains(passage.word(at))
                        || passage.word(at).equals("ones") && COLOURS.contains(passage.word(at - 1)));
    }

    /** "Potatoes sprouting already in the kitchen cupboard": no seedlings. */
    private static boolean inStore(Passage passage, ActionSaid action) {
        boolean sprouts = action.words().stream()
                .mapToObj(passage::word)
                .anyMatch(word -> word.startsWith("sprout") || word.equals("shooting"));
        boolean awaited = passage.situation().plantings().stream()
                .filter(planting -> !planting.over() && planting.begunAtAll())
                .filter(planting -> !passage.situation().has(planting, Set.of(What.EMERGED)))
                .anyMatch(planting -> passage.crops().stream().anyMatch(crop -> crop.canMean(planting.crop())));
        if (!action.action().equals("emerged") || !sprouts || awaited) {
            return false; // "The potatoes are sprouting in their bags".
        }
        int last = Math.min(action.lastWord() + STORE_REACH, passage.size() - 1);
        boolean inside = false;
        for (int at = action.lastWord() + 1;
                at <= last && !passage.tokens().get(at).mark();
                at++) {
            inside |= Set.of("in", "inside").contains(passage.word(at));
            if (inside && STORES.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    /** "First cucumber today 6in!!": inches by themselves are no rain where a crop stands beside them. */
    private static boolean sizeOfACrop(Passage passage, ActionSaid action) {
        boolean bare = action.action().equals("rain")
                && passage.quantities().stream()
                        .anyMatch(depth -> depth.start() >= action.start()
                                && depth.start() <= action.end()
                                && depth.unit().equals("m"))
                && action.words().stream().noneMatch(at -> OF_RAIN.contains(passage.word(at)));
        return bare
                && passage.sentences().stream()
                        .filter(sentence -> sentence[0] <= action.start() && action.start() < sentence[1])
                        .anyMatch(sentence -> passage.crops().stream()
                                .anyMatch(crop ->
                                        crop.start() >= sentence[0] && crop.end() <= sentence[1] && !crop.thing()));
    }

    /** "Stored onions in the shed are going soft": how those look that lie there; nothing is put there now. */
    private static boolean lyingInStore(Passage passage, ActionSaid action) {
        if (!Set.of("stored", "cured").contains(action.action())
                || passage.cropAt(action.start() + 1).isEmpty()) {
            return false;
        }
        for (int at = action.start() + 2;
                at < passage.size() && !passage.tokens().get(at).mark();
                at++) {
            if (LOOK.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    /** "Tiny cloves packed in the stem" are set nowhere. */
    private static boolean inThePlant(Passage passage, ActionSaid action) {
        int at = action.lastWord();
        boolean into = Set.of("in", "into", "inside").contains(passage.word(at));
        int part = ARTICLES.contains(passage.word(at + 1)) ? at + 2 : at + 1;
        return SETTING.contains(action.action()) && into && PARTS.contains(passage.word(part));
    }

    /** "Gone terribly tall and thin", "long, thin and pale": how plants look, where nothing says whose seedlings were thinned. */
    private static boolean thinToLookAt(Passage passage, ActionSaid action) {
        int at = action.start();
        if (!action.action().equals("thinned") || !passage.word(at).equals("thin")) {
            return false;
        }
        int before = Set.of("and", ",", "&").contains(passage.word(at - 1)) ? at - 2 : at - 1;
        int behind = Set.of("and", ",", "&").contains(passage.word(at + 1)) ? at + 2 : at + 1;
        return SHAPES.contains(passage.word(before))
                || SHAPES.contains(passage.word(behind))
                        && passage.cropAt(behind + 1).isEmpty()
                || LOOKING.contains(passage.word(at - 1));
    }

    /** "The dog got out and I picked 3" is no animal's doing. */
    private static boolean ownDoing(Passage passage, ActionSaid action) {
        return action.action().equals("died")
                && action.form() == null
                && IntStream.range(action.start() + 1, action.lastWord())
                        .anyMatch(at -> Set.of("i", "we").contains(passage.word(at)));
    }
}
