package bothy.reading;

import bothy.garden.Inquiry;
import bothy.reading.said.ActionSaid;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.DaySaid;
import bothy.reading.said.Mood;
import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;
import bothy.reading.said.Span;
import bothy.reading.text.Conjugation.Form;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A sentence of nothing but weights and crops is a picking: "two pounds of tomatoes today, 400 g of beans". */
final class Weighed {
    private static final Set<String> BESIDE = Set.of(
            "of",
            "the",
            "my",
            "our",
            "ripe",
            "fresh",
            "nice",
            "lovely",
            "big",
            "small",
            "more",
            "another",
            "from",
            "off",
            "plot",
            "garden",
            "plants",
            "plus",
            "and",
            ",",
            ":",
            "-",
            "(",
            ")",
            "total",
            "in",
            "all",
            "already",
            "about",
            "nearly",
            "over",
            "just",
            "some",
            "good",
            "first",
            "last",
            "next",
            "lot",
            "then",
            "also",
            "too",
            "so",
            "far",
            "altogether",
            "bag",
            "bowl",
            "basket",
            "bucket",
            "maybe",
            "roughly",
            "around",
            "pod",
            "pods",
            "shell",
            "row",
            "rows",
            "plant",
            "one",
            "little",
            "few",
            "a",
            "came",
            "to",
            "is",
            "was",
            "were",
            "tonight's",
            "today's",
            "haul",
            "yield",
            "picking",
            "harvest",
            "weighed",
            "weighing",
            "at",
            "on",
            "yet",
            "lol",
            "haha",
            "wow",
            "whoa",
            "yum",
            "yippee",
            "hooray",
            "yay",
            "woohoo");

    private static final Set<String> EXCLAIMED =
            Set.of("omg", "lol", "haha", "wow", "whoa", "yum", "yippee", "hooray", "yay", "woohoo", "wahey");
    /** With these a crop and a weight are a picking, whatever else is remarked of it. */
    private static final Set<String> OPENING = Set.of("first", "another", "more", "second", "last");

    private static final Set<String> NO_PICKING = Set.of(
            "bought",
            "buy",
            "shop",
            "shops",
            "market",
            "need",
            "needs",
            "want",
            "wants",
            "seed",
            "seeds",
            "cost",
            "costs",
            "price",
            "paid",
            "ordered",
            "order",
            "expect",
            "expecting",
            "hope",
            "hoping",
            "bag",
            "sack",
            "feed",
            "compost",
            "not",
            "no",
            "never",
            "should",
            "would",
            "could",
            "will",
            "planted",
            "if",
            "recipe",
            "ate",
            "eaten");

    private static final int LONGEST_CUT_SHORT = 4;

    private Weighed() {}

    /** The clauses of a sentence with what was weighed in it: alone, or ahead of a remark that some were given away. */
    static List<Clause> with(Passage passage, int[] sentence, List<Clause> own) {
        if (own.isEmpty()) {
            List<Clause> behind = behindItsCrop(passage, sentence);
            List<Clause> all = behind.isEmpty() ? picked(passage, sentence) : behind;
            return all.isEmpty() ? picked(passage, new int[] {sentence[0], remark(passage, sentence)}) : all;
        }
        int remark = own.get(0).action().start() - 1;
        boolean givenAway = own.stream().allMatch(Chores::is)
                && remark > sentence[0]
                && Set.of(",", "-", "(", "and", ";").contains(passage.word(remark));
        List<Clause> picked = givenAway ? picked(passage, new int[] {sentence[0], remark}) : List.of();
        return picked.isEmpty()
                ? own
                : Stream.concat(picked.stream(), own.stream()).toList();
    }

    /** "Another 4 pounds of beans, how many is that now": weighed ahead of asking what it all comes to. */
    static List<Clause> beforeTheTotal(
            Passage passage, int[] sentence, int begins, List<Inquiry> asked, List<Clause> own) {
        boolean total = own.isEmpty()
                && begins > sentence[0]
                && asked.stream().anyMatch(one -> MattersAsked.PICKED.equals(one.topic()));
        return total ? picked(passage, new int[] {sentence[0], begins}) : own;
    }

    /** "2.3 kg of toms today, the neighbours are hiding": where a remark begins that weighs, counts and names nothing. */
    private static int remark(Passage passage, int[] sentence) {
        int told = Stream.of(passage.crops(), passage.quantities(), passage.numbers(), passage.days())
                .flatMap(List::stream)
                .filter(span -> span.start() >= sentence[0] && span.end() <= sentence[1])
                .mapToInt(Span::end)
                .max()
                .orElse(sentence[1]);
        boolean cutShort = passage.word(told - 1).length() <= LONGEST_CUT_SHORT
                && passage.days().stream().anyMatch(day -> day.end() == told); // "900 g Mon. Sick of them".
        int mark = told;
        while (mark < sentence[1] && EXCLAIMED.contains(passage.word(mark))) {
            mark++;
        }
        boolean parted = mark < sentence[1] && passage.tokens().get(mark).mark();
        return parted || cutShort ? told : sentence[0];
    }

    private static List<Clause> picked(Passage passage, int[] sentence) {
        List<CropSaid> crops = Passage.within(passage.crops(), sentence[0], sentence[1]);
        List<Quantity> weights = Passage.within(passage.quantities(), sentence[0], sentence[1]);
        List<DaySaid> days = Passage.within(passage.days(), sentence[0], sentence[1]);
        boolean fits = !crops.isEmpty()
                && !weights.isEmpty()
                && crops.stream().noneMatch(crop -> crop.thing() && !gathered(passage, crop))
                && weights.stream().allMatch(weight -> weight.unit().equals("kg"))
                && days.stream()
                        .allMatch(day -> !day.known()
                                || !day.past().isAfter(passage.situation().today()))
                && (nothingElse(passage, sentence) || opens(passage, sentence, crops.get(0)));
        if (!fits) {
            return List.of();
        }
        int at = sentence[0];
        ActionSaid picking = new ActionSaid(at, at, "harvested", Form.PAST, false, null, new BitSet());
        return List.of(new Clause(picking, at, sentence[1], sentence, crops, Mood.DONE, -1));
    }

    /** "First methi cutting". */
    private static boolean gathered(Passage passage, CropSaid crop) {
        return Set.of("cutting", "picking", "harvest", "cut", "pick", "pickings", "haul")
                .contains(passage.word(crop.end()));
    }

    /** "First snow peas!! 200 g": a weight by itself is of the crop that was cried out before it. */
    private static List<Clause> behindItsCrop(Passage passage, int[] sentence) {
        int[] before = passage.sentenceBefore(sentence);
        boolean bare = before != null
                && Passage.within(passage.crops(), sentence[0], sentence[1]).isEmpty()
                && Passage.within(passage.actions(), before[0], before[1]).isEmpty()
                && OPENING.contains(passage.word(before[0]))
                && nothingElse(passage, before)
                && nothingElse(passage, sentence);
        return bare ? picked(passage, new int[] {before[0], sentence[1]}) : List.of();
    }

    /** "First methi cutting 180 g, made thepla", "peas again, 4.5 kg". */
    private static boolean opens(Passage passage, int[] sentence, CropSaid crop) {
        boolean again = passage.word(crop.end()).equals("again") && crop.start() - sentence[0] <= 1;
        boolean first = OPENING.contains(passage.word(sentence[0])) && crop.start() - sentence[0] <= 2;
        return (again || first)
                && Passage.within(passage.actions(), sentence[0], sentence[1]).stream()
                        .allMatch(action -> action.action().equals("harvested"))
                && passage.tokens().subList(sentence[0], sentence[1]).stream()
                        .noneMatch(token -> NO_PICKING.contains(token.word()));
    }

    private static boolean nothingElse(Passage passage, int[] sentence) {
        for (int at = sentence[0]; at < sentence[1]; at++) {
            int token = at;
            boolean told = passage.crops().stream().anyMatch(crop -> crop.covers(token))
                    || passage.quantities().stream().anyMatch(weight -> weight.covers(token))
                    || passage.numbers().stream().anyMatch(number -> number.covers(token))
                    || passage.days().stream().anyMatch(day -> day.covers(token));
            if (!told
                    && !BESIDE.contains(passage.word(at))
                    && !passage.tokens().get(at).mark()) {
                return false;
            }
        }
        return true;
    }
}
