package bothy.reading;

import bothy.garden.SignSeen;
import bothy.reading.said.ActionSaid;
import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import bothy.reading.text.PhraseBook.Found;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Words that tell a sign of trouble and a doing at once: which of the two they are. */
final class TroubleOrDoing {
    /** Doings that a sign may use the words of: "covered in greenfly", "flowers dropping". */
    private static final Set<String> SEEN = Set.of("fruit-set", "emerged", "colour-turned", "protected", "note");

    private static final int FRUIT_REACH = 10;
    /** "Ate 4 of my melons clean down to nothing on Sunday, they won't come back". */
    private static final int LOSS_REACH = 12;
    /** "The soil over them is cracking". */
    private static final int GROUND_REACH = 6;
    /** "Covered with a fine white powder". */
    private static final int COVER_REACH = 4;
    /** "Have flowers, but still no pods". */
    private static final int WORDS_TO_NO = 4;

    /** "Frost, hard one, on Monday". */
    private static final int DAY_REACH = 3;

    private TroubleOrDoing() {}

    /** "The soil is bone dry" tells of the soil, not of trouble. */
    static List<Found<String>> withoutSoil(Passage passage, List<Found<String>> troubles) {
        return troubles.stream()
                .filter(trouble -> !littleFruit(passage, trouble)
                        && !passage.word(trouble.end()).equals("free")) // "Blackfly free and in flower".
                .filter(trouble -> !PlantingHoles.are(passage, trouble)
                        && !Groundwork.cut(passage, trouble.start(), trouble.end())
                        && !culprit(passage, trouble)
                        && !eatenUp(passage, trouble)
                        && !wormCollar(passage, trouble)
                        && !onlyPlace(passage, trouble))
                .filter(trouble -> !Set.of("underwatering", "overwatering").contains(trouble.meaning())
                        || passage.actions().stream()
                                .noneMatch(action -> action.action().equals("soil-checked")
                                        && action.words()
                                                .intersects(trouble.place().words())))
                .toList();
    }

    /** "Six lettuces dead, slugs again": the pest only tells what killed them. */
    private static boolean culprit(Passage passage, Found<String> trouble) {
        boolean pest = trouble.place().words().stream()
                .allMatch(at -> Set.of("slug", "slugs", "snail", "snails", "again", "mice", "pigeons", "the")
                        .contains(passage.word(at)));
        return pest
                && passage.actions().stream()
                        .anyMatch(action -> action.action().equals("died")
                                && Math.min(
                                                Math.abs(trouble.start() - action.end()),
                                                Math.abs(action.start() - trouble.end()))
                                        <= 3);
    }

    /** "Slugs ate 6 of the kale": what is counted as lost is no sign to look into. */
    private static boolean eatenUp(Passage passage, Found<String> trouble) {
        return Set.of("holes-in-leaves", "seedlings-cut-off").contains(trouble.meaning())
                && !partTold(passage, trouble)
                && passage.actions().stream()
                        .anyMatch(action -> action.action().equals("died")
                                && !passage.counts(action.start(), action.end()).isEmpty()
                                && trouble.start() >= action.start()
                                && trouble.start() - action.end() <= LOSS_REACH);
    }

    /** "Lost 4 to cutworm, stems bitten through at the ground": what is told of a part of the plant is more than the loss. */
    private static boolean partTold(Passage passage, Found<String> trouble) {
        return IntStream.rangeClosed(trouble.start() - 1, trouble.end())
                .anyMatch(at -> Set.of("stem", "stems", "stalk", "stalks").contains(passage.word(at)));
    }

    /** "Potted on in the tunnel, lovely roots", "it dried out enough to walk on": of the place, not of the plants. */
    private static boolean onlyPlace(Passage passage, Found<String> trouble) {
        boolean tunnel = trouble.meaning().equals("maggots-in-roots")
                && trouble.place().words().stream()
                        .anyMatch(at -> passage.word(at).equals("tunnel")
                                && passage.word(at - 1).equals("the"));
        boolean ground = trouble.meaning().equals("fruit-splitting")
                && trouble.place().words().stream()
                        .filter(at -> passage.word(at).startsWith("crack"))
                        .anyMatch(at -> IntStream.range(Math.max(0, at - GROUND_REACH), at)
                                .anyMatch(before -> Set.of("soil", "ground", "earth", "ridge", "mound", "bed")
                                        .contains(passage.word(before)))); // "I see the soil is cracking".
        return tunnel
                || ground
                || trouble.meaning().equals("underwatering")
                        && passage.word(trouble.end()).equals("enough");
    }

    /** "A cutworm collar on each" is put there against them. */
    private static boolean wormCollar(Passage passage, Found<String> trouble) {
        return Set.of("collar", "collars").contains(passage.word(trouble.end()))
                && trouble.place().length() == 1;
    }

    /** "The first tomatoes have set, no bigger than a pea": fruit, no seedlings that stand still. */
    private static boolean littleFruit(Passage passage, Found<String> trouble) {
        return trouble.meaning().equals("seedlings-stalled")
                && passage.actions().stream()
                        .anyMatch(action -> action.action().equals("fruit-set")
                                && Math.abs(trouble.start() - action.end()) < FRUIT_REACH);
    }

    /** "Slugs have eaten holes in all the chard" kills none. */
    private static boolean eatenInto(Passage passage, ActionSaid action) {
        boolean holes = false;
        for (int at = action.start(); at <= action.lastWord(); at++) {
            holes |= Set.of("hole", "holes", "chunks", "bits", "edges", "tips").contains(passage.word(at));
        }
        return action.action().equals("died")
                && holes
                && passage.counts(action.start(), action.end()).isEmpty();
    }

    /** "The leaves are covered with white powder". */
    private static boolean coveredBy(Passage passage, ActionSaid action, List<Found<String>> troubles) {
        boolean covered = action.action().equals("protected")
                && (passage.word(action.lastWord()).equals("covered")
                        || passage.word(action.lastWord() - 1).equals("covered"));
        return covered
                && troubles.stream()
                        .anyMatch(trouble ->
                                trouble.start() <= action.end() + COVER_REACH && trouble.end() > action.lastWord());
    }

    /** "Sowed 20 carrots 3 weeks ago, nothing up": who tells how many tells of a sowing, up or not. */
    private static boolean begunUnseen(Passage passage, ActionSaid action, List<Found<String>> troubles) {
        return action.action().equals("sown")
                && action.form() == Form.PAST
                && troubles.stream().anyMatch(trouble -> SignSeen.ofSeed(trouble.meaning()))
                && passage.crops().stream()
                        .anyMatch(crop -> crop.start() > action.start()
                                && !passage.counts(action.start(), crop.start()).isEmpty());
    }

    /** What a sign's words tell is no doing; of plants that died both are true unless the sign has all the words. */
    static boolean troubled(Passage passage, ActionSaid action, List<Found<String>> troubles) {
        boolean came = action.action().equals("frost") && struck(passage, action);
        if (came || counted(passage, action, troubles) || begunUnseen(passage, action, troubles)) {
            return false;
        }
        if (!troubles.isEmpty() && action.form() == Form.PLAIN && action.words().cardinality() == 1) {
            // "Thin brown stems": who tells of trouble gives no orders.
            return true;
        }
        boolean put = action.action().equals("stored")
                && action.form() == Form.PAST
                && passage.crops().stream()
                        .anyMatch(crop -> crop.end() == action.start()
                                && passage.word(action.end()).equals(","));
        if (put) {
            return false; // "30 onions stored, 5 gone soft".
        }
        if (flowersWithoutFruit(passage, action, troubles)) {
            return false;
        }
        boolean frost = action.action().equals("frost")
                // "Had a frost", "a hard frost, and the tops are black": both are told.
                && !Set.of("had", "got", "woke", "was", "hard", "sharp", "heavy", "ground", "air", "killing", "severe")
                        .contains(passage.word(action.start()))
                && troubles.stream().anyMatch(trouble -> trouble.meaning().equals("frost-damage"));
        boolean seen = SEEN.contains(action.action());
        boolean fallen = action.action().equals("flowering")
                && troubles.stream()
                        .anyMatch(trouble -> Set.of("flowers-dropping", "only-male-flowers", "bolting")
                                        .contains(trouble.meaning())
                                && action.words().intersects(trouble.place().words()));
        boolean felled = action.action().equals("died")
                && troubles.stream().anyMatch(trouble -> trouble.meaning().equals("damping-off"))
                && passage.counts(action.start(), action.end()).isEmpty()
                && passage.word(action.lastWord()).equals("over");
        boolean eaten = action.action().equals("harvested")
                && troubles.stream()
                        .anyMatch(trouble -> Set.of("holes-in-leaves", "seedlings-cut-off")
                                        .contains(trouble.meaning())
                                && action.words().intersects(trouble.place().words())
                                && byPest(passage, trouble));
        boolean sprouted = action.action().equals("emerged")
                && troubles.stream().anyMatch(trouble -> trouble.meaning().equals("rot-in-storage"));
        return frost
                || eaten
                || coveredBy(passage, action, troubles)
                || eatenInto(passage, action)
                || sprouted
                || fallen
                || felled
                || troubles.stream()
                        .anyMatch(trouble -> seen
                                ? action.words().intersects(trouble.place().words())
                                : action.words().stream()
                                        .allMatch(trouble.place().words()::get));
    }

    /** "Frost got the potatoes", "the frost on Monday blackened them": it came, besides what it did. */
    private static boolean struck(Passage passage, ActionSaid action) {
        boolean frostDid = Set.of("frost", "the").contains(passage.word(action.start()));
        return frostDid
                        && action.words().stream().anyMatch(at -> Set.of(
                                        "got",
                                        "caught",
                                        "hit",
                                        "nipped",
                                        "killed",
                                        "took",
                                        "zapped",
                                        "blackened",
                                        "finished")
                                .contains(passage.word(at)))
                || passage.days().stream()
                        .anyMatch(day -> day.known()
                                && day.start() <= action.end() + DAY_REACH
                                && day.end() >= action.start() - 1);
    }

    /** "Slugs are having my lettuces", "birds keep pulling up the peas": not the grower. */
    private static boolean byPest(Passage passage, Found<String> trouble) {
        return trouble.place().words().stream().anyMatch(at -> Set.of(
                        "slugs",
                        "slug",
                        "snails",
                        "snail",
                        "birds",
                        "pigeons",
                        "crows",
                        "rabbits",
                        "deer",
                        "mice",
                        "caterpillars",
                        "beetles",
                        "blackbirds",
                        "sparrows",
                        "pheasants",
                        "something")
                .contains(passage.word(at)));
    }

    /** "The beans have flowers but no pods": they are in flower, and no pods is the trouble. */
    private static boolean flowersWithoutFruit(Passage passage, ActionSaid action, List<Found<String>> troubles) {
        return action.action().equals("flowering")
                && troubles.stream()
                        .anyMatch(trouble ->
                                Set.of("flowers-dropping", "leafy-no-fruit").contains(trouble.meaning())
                                        && IntStream.range(action.end(), trouble.end())
                                                .limit(WORDS_TO_NO)
                                                .anyMatch(at -> Set.of("no", "without", "not")
                                                        .contains(passage.word(at))));
    }

    /** "Only 9 of 24 came up" is patchy, and nine came up all the same. */
    private static boolean counted(Passage passage, ActionSaid action, List<Found<String>> troubles) {
        boolean lost = action.action().equals("died")
                && !passage.counts(action.start(), action.end()).isEmpty();
        // "The last 2 had been eaten by mice".
        return lost
                        && action.form() == null
                        && action.words()
                                .get(passage.counts(action.start(), action.end())
                                        .get(0)
                                        .start())
                || action.action().equals("emerged")
                        && troubles.stream()
                                .anyMatch(trouble -> trouble.meaning().equals("patchy-emergence")
                                        && !passage.counts(trouble.start(), trouble.end())
                                                .isEmpty());
    }

    /** "Stems thin and brown at the base. Compost very wet.": a circumstance of the trouble; who looked says so. */
    static boolean beside(Passage passage, Clause clause) {
        boolean soil = clause.action().action().equals("soil-checked")
                && clause.crops().isEmpty();
        for (int at = clause.sentence()[0]; soil && at < clause.sentence()[1]; at++) {
            if (Set.of("checked", "felt", "feel", "finger", "poked", "dug", "stuck", "tested", "soil", "looked")
                    .contains(passage.word(at))) {
                return false;
            }
        }
        return soil;
    }
}
