package bothy.reading.told;

import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Counts told by the vessel or by what plants climb: "in 6 buckets, one in each", "2 chillies each in 3 tubs", "in 6 buckets one one",
 * "8 poles, 3 to a pole". Seeds in small pots that are to be thinned, "3 seeds each in 4 pots", are none of these.
 */
final class PerVessel {
    private static final Set<String> VESSELS = Set.of(
            "buckets",
            "bags",
            "growbags",
            "tubs",
            "pots",
            "containers",
            "planters",
            "troughs",
            "sacks",
            "crates",
            "holes",
            "hills",
            "mounds",
            "tyres",
            "tires",
            "barrels",
            "baskets",
            "poles",
            "canes",
            "strings",
            "stakes",
            "stations",
            "wigwams",
            "teepees",
            "tripods");
    private static final Set<String> ONE = Set.of(
            "bucket",
            "bag",
            "growbag",
            "tub",
            "pot",
            "container",
            "planter",
            "trough",
            "sack",
            "crate",
            "hole",
            "hill",
            "mound",
            "tyre",
            "tire",
            "barrel",
            "basket",
            "pole",
            "cane",
            "string",
            "stake",
            "station",
            "wigwam",
            "teepee",
            "tripod");
    private static final Set<String> COUNTED = Set.of(
            "plants", "seedlings", "sets", "plugs", "pieces", "pcs", "pc", "nos", "cloves", "tubers", "slips", "beans");

    private static final Set<String> SEEDS = Set.of("seed", "seeds");
    /** So many words may say how big the vessels are. */
    private static final int SIZES = 4;

    private static final Set<String> PACK = Set.of("pack", "cell");

    private PerVessel() {}

    /** Of several crops each has the numbers behind its name: "okra 6 bags 2 seeds each, gourds 2 buckets 3 seeds each". */
    static List<NumberSaid> own(Clause clause, CropSaid crop, List<NumberSaid> numbers) {
        int next = clause.crops().stream()
                .mapToInt(CropSaid::start)
                .filter(start -> start > crop.start())
                .min()
                .orElse(Integer.MAX_VALUE);
        return clause.crops().size() == 1
                ? numbers
                : numbers.stream()
                        .filter(number -> number.start() >= crop.end() && number.end() <= next)
                        .toList();
    }

    /** How many in all, {@code null} where it is not told so or where a number of the crop itself is told. */
    static Integer count(Passage passage, List<NumberSaid> numbers, CropSaid crop) {
        for (NumberSaid each : numbers) {
            NumberSaid vessels = ofEach(passage, each, crop) || again(passage, numbers, each)
                    ? numbers.stream()
                            .filter(number -> number != each
                                    && vessels(passage, number)
                                    && !(SEEDS.contains(passage.word(each.end())) && small(passage, number)))
                            .findFirst()
                            .orElse(null)
                    : null;
            boolean whole = numbers.stream()
                    .anyMatch(number -> number != each && number != vessels && !again(passage, numbers, number));
            if (vessels != null && !whole) {
                return (int) Math.min(vessels.value() * each.value(), 2_000_000_000);
            }
        }
        return null;
    }

    private static boolean vessels(Passage passage, NumberSaid number) {
        for (int at = number.end(); at < number.end() + SIZES; at++) {
            if (VESSELS.contains(passage.word(at))) {
                return true;
            }
            if (at >= passage.size() || passage.tokens().get(at).endsSentence()) {
                return false;
            }
        }
        return false;
    }

    /** Pots in which one seedling of several is kept. */
    private static boolean small(Passage passage, NumberSaid number) {
        return IntStream.range(number.end(), Math.min(passage.size(), number.end() + SIZES))
                .anyMatch(at -> passage.word(at).equals("pots"));
    }

    /** "One each", "2 seeds per hole", "one in each of", "2 chillies each". */
    private static boolean ofEach(Passage passage, NumberSaid number, CropSaid crop) {
        int at = crop.start() == number.end()
                ? crop.end()
                : COUNTED.contains(passage.word(number.end())) || SEEDS.contains(passage.word(number.end()))
                        ? number.end() + 1
                        : number.end();
        String next = passage.word(at);
        String behind = passage.word(at + 1);
        return next.equals("each") && !behind.equals("of")
                || next.equals("per") && ONE.contains(behind)
                || Set.of("to", "in").contains(next)
                        && (Set.of("each", "every").contains(behind)
                                || behind.equals("a") && ONE.contains(passage.word(at + 2)));
    }

    /** "In 6 buckets one one": said twice, it is of each. */
    private static boolean again(Passage passage, List<NumberSaid> numbers, NumberSaid number) {
        return numbers.stream()
                .anyMatch(other -> other != number
                        && other.value() == number.value()
                        && passage.word(other.start()).equals(passage.word(number.start()))
                        && (other.start() == number.end() || other.end() == number.start()));
    }

    /** "A 6 pack of lettuce plants", "a 6-pack": one pack, and so many in it. */
    static boolean pack(Passage passage, NumberSaid number) {
        int behind = hyphened(passage, number.end()) ? number.end() + 1 : number.end();
        return PACK.contains(passage.word(behind))
                && Set.of("a", "one", "another", "this", "the", "my").contains(passage.word(number.start() - 1));
    }

    static boolean hyphened(Passage passage, int at) {
        return passage.word(at).equals("-") && PACK.contains(passage.word(at + 1)) && passage.end("n", at - 1) == at;
    }
}
