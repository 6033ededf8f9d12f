package bothy.reading.told;

import bothy.reading.said.CropSaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Counts told by how the plants stand: "a 5 by 5 block of sweetcorn", "broad beans, double row 40". */
final class InBlocks {
    private static final Set<String> BLOCK = Set.of("block", "blocks", "grid", "square");
    private static final Set<String> BY = Set.of("x", "by");
    /** What is so many long and wide is no block of so many plants. */
    private static final Set<String> MEASURED = Set.of(
            "ft",
            "feet",
            "foot",
            "m",
            "metre",
            "metres",
            "meter",
            "meters",
            "cm",
            "inch",
            "inches",
            "yards",
            "raised",
            "bed",
            "beds",
            "plot",
            "greenhouse",
            "patch");
    /** A block is spoken of so near its figures. */
    private static final int NEAR = 8;

    private InBlocks() {}

    /** How many stand there, {@code null} where it is not told so. */
    static Integer count(Passage passage, List<NumberSaid> numbers, CropSaid crop) {
        for (int at = 0; at < numbers.size(); at++) {
            NumberSaid number = numbers.get(at);
            if (at + 1 < numbers.size() && byEachOther(passage, number, numbers.get(at + 1))) {
                return (int) (number.value() * numbers.get(at + 1).value());
            }
            if (numbers.size() == 1 && behindRow(passage, number, crop)) {
                return (int) number.value();
            }
        }
        return null;
    }

    private static boolean byEachOther(Passage passage, NumberSaid one, NumberSaid next) {
        boolean block =
                IntStream.range(one.start() - NEAR, next.end() + NEAR).anyMatch(at -> BLOCK.contains(passage.word(at)));
        // "In a block, 4 by 4" may be so many feet.
        boolean plants = passage.word(one.end()).equals("x") || BLOCK.contains(passage.word(next.end()));
        return block
                && plants
                && next.start() == one.end() + 1
                && BY.contains(passage.word(one.end()))
                && !MEASURED.contains(passage.word(next.end()))
                && one.value() <= 100
                && next.value() <= 100;
    }

    /** "Double row 40": a row that is itself numbered is no double one. */
    private static boolean behindRow(Passage passage, NumberSaid number, CropSaid crop) {
        int row = number.start() - 1;
        boolean closes = number.end() >= passage.size()
                || passage.tokens().get(number.end()).mark()
                || Set.of("and", "in", "seeds", "plants", "altogether").contains(passage.word(number.end()));
        return crop.end() <= row
                && row - crop.end() <= NEAR
                && Set.of("row", "rows").contains(passage.word(row))
                && Set.of("double", "twin", "staggered", "single").contains(passage.word(row - 1))
                && closes
                && number.value() > 1
                && passage.tokens().subList(crop.end(), row).stream().noneMatch(token -> token.endsSentence());
    }
}
