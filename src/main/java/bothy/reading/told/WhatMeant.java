package bothy.reading.told;

import bothy.garden.Planting;
import bothy.garden.What;
import bothy.reading.grammar.CropNames;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.PlaceSaid;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Which kind of entry an action makes; "planted" may be sowing or planting out, by crop, words and place. */
final class WhatMeant {
    private static final Set<String> SEED =
            Set.of("seed", "seeds", "cloves", "clove", "tubers", "sets", "chitted", "bulbs", "pips");
    private static final Set<String> PLANTS = YoungPlants.and("out");
    private static final Set<String> INDOORS = Set.of(
            "windowsill",
            "propagator",
            "airing cupboard",
            "indoors",
            "grow lights",
            "modules",
            "seed tray",
            "root trainers",
            "soil blocks");
    private static final Set<What> SCATTERED = EnumSet.of(What.WATERED, What.MOVED, What.PROTECTED, What.FED);
    static final Set<String> HANGING = Set.of("strung", "string", "hung", "hang", "tied", "tie", "stringing", "tying");
    private static final Set<String> UPRIGHT =
            Set.of("stick", "sticks", "stake", "stakes", "cane", "canes", "pole", "poles", "trellis", "cage", "cages");
    private static final Set<String> INTO = Set.of("into", "to");
    private static final Set<String> COVERED = Set.of(
            "greenhouse",
            "polytunnel",
            "porch",
            "conservatory",
            "cold frame",
            "windowsill",
            "propagator",
            "shed",
            "patio",
            "balcony");
    private static final Set<What> KEPT = EnumSet.of(What.STORED, What.MOVED, What.SUPPORTED);
    private final CropNames cropNames;
    private final Animals animals;
    private final BroughtIn broughtIn;

    WhatMeant(CropNames cropNames, Animals animals) {
        this.cropNames = cropNames;
        this.animals = animals;
        this.broughtIn = new BroughtIn(cropNames);
    }

    What of(Passage passage, Clause clause, CropSaid crop) {
        What what = byVerb(passage, clause, crop);
        boolean placed = what == What.PLANTED_OUT || what == What.MOVED;
        return placed && BroughtIn.indoors(passage, clause) ? broughtIn.what(passage, clause, crop, what) : what;
    }

    private What byVerb(Passage passage, Clause clause, CropSaid crop) {
        String action = clause.action().action();
        if (!action.equals("planted")) {
            What what = What.of(action).orElse(What.NOTE);
            if (what == What.FED && says(passage, clause, Set.of("kitchen", "dinner", "table", "supper"))) {
                return What.HARVESTED; // "First feed of beans, 700 g to the kitchen".
            }
            if (what == What.STORED && clause.action().state() && BroughtIn.justBegun(passage, clause)) {
                return What.MOVED;
            }
            if (what == What.HARVESTED && carriedIn(passage, clause, crop)) {
                return What.MOVED;
            }
            if (what == What.MOVED && liftedOut(passage, clause, crop)) {
                return What.HARVESTED;
            }
            if (what == What.HARVESTED && CameOut.emerged(passage, clause, crop)) {
                return What.EMERGED;
            }
            if (what == What.EMERGED && CameOut.gathered(passage, clause)) {
                return What.HARVESTED; // "Potatoes came up today, 6 kg".
            }
            if (what == What.HARVESTED && animals.by(passage, clause)) {
                return What.DIED; // "2 leeks pulled by birds".
            }
            if (what == What.DIED && eatenByPeople(passage, clause)) {
                return What.HARVESTED;
            }
            if (what == What.PLANTED_OUT && begunSo(passage, clause, crop)) {
                return What.SOWN;
            }
            if (SCATTERED.contains(what) && PutThere.seed(passage, clause, crop)) {
                return What.SOWN;
            }
            if (what == What.STORED && PutThere.inForTheWinter(passage, clause, crop)) {
                return What.SOWN;
            }
            if (KEPT.contains(what) && Around.toCure(passage, clause)) {
                return What.CURED;
            }
            if (what == What.SUPPORTED && hungUp(passage, clause, crop)) {
                return asLifted(passage, clause) ? What.CURED : What.STORED;
            }
            if (what == What.STORED && crop != null && PutThere.plants(passage, clause, crop)) {
                return What.MOVED;
            }
            boolean strung = what == What.STORED
                    && Set.of("strung", "string", "stringing")
                            .contains(passage.word(clause.action().words().nextSetBit(0)));
            if (strung && crop != null && !cropNames.hung(crop.crop()) && !BroughtIn.indoors(passage, clause)) {
                return What.SUPPORTED; // "Strung the pole beans up to the top wire".
            }
            boolean hung = HANGING.contains(passage.word(clause.action().words().nextSetBit(0)));
            if (what == What.STORED && hung && asLifted(passage, clause)) {
                return What.CURED;
            }
            if (what == What.HARVESTED && gotOut(passage, clause) && !(crop != null && cropNames.dug(crop.crop()))) {
                return What.PLANTED_OUT;
            }
            if (what == What.HARVESTED && (animals.did(passage, clause) || takenOut(passage, clause, crop))) {
                return What.DIED;
            }
            boolean put = what == What.MOVED
                    && passage.word(clause.action().words().nextSetBit(0)).equals("put");
            if (put && says(passage, clause, Set.of("slips", "plants", "seedlings", "plugs", "transplants"))) {
                return What.PLANTED_OUT;
            }
            if (put && intoTheSoil(passage, clause)) {
                return What.PLANTED_OUT;
            }
            if (put && PutThere.begunInPots(passage, clause, crop)) {
                return What.SOWN;
            }
            if (what == What.MOVED && PutThere.intoGrowbags(passage, clause)) {
                return What.PLANTED_OUT;
            }
            if (what == What.MOVED && intoPots(passage, clause)) {
                return What.POTTED_ON;
            }
            boolean seed = says(passage, clause, SEED) && !says(passage, clause, PLANTS);
            return what == What.PLANTED_OUT ? seed ? What.SOWN : transplanted(passage, clause) : what;
        }
        What what = planted(passage, clause, crop);
        return what == What.PLANTED_OUT && ownPots(passage, clause, crop) ? What.POTTED_ON : what;
    }

    /** "Carried in 5 tomato plants": the plants, not what they bear. */
    private static boolean carriedIn(Passage passage, Clause clause, CropSaid crop) {
        return crop != null
                && Set.of("carried", "brought", "lugged", "hauled", "fetched", "bring", "carry")
                        .contains(passage.word(clause.action().words().nextSetBit(0)))
                && clause.action().words().stream()
                        .anyMatch(at -> passage.word(at).equals("in"))
                && says(passage, crop.start(), crop.end() + 1, PLANTS);
    }

    /** "Took out all the beetroot, 5 kg": nobody weighs what goes on growing. */
    private boolean liftedOut(Passage passage, Clause clause, CropSaid crop) {
        return crop != null
                && cropNames.dug(crop.crop())
                && Set.of("took", "taken", "taking")
                        .contains(passage.word(clause.action().words().nextSetBit(0)))
                && says(passage, clause, Set.of("out"))
                && Passage.within(passage.quantities(), clause.from(), clause.to()).stream()
                        .anyMatch(quantity -> quantity.unit().equals("kg"));
    }

    /** "3 lettuces eaten by us" were had, not lost. */
    private static boolean eatenByPeople(Passage passage, Clause clause) {
        return clause.action().words().stream().anyMatch(at -> passage.word(at).equals("eaten"))
                && IntStream.range(clause.action().start(), clause.to())
                        .anyMatch(at -> passage.word(at).equals("by")
                                && Set.of("us", "me", "ourselves", "myself", "yours")
                                        .contains(passage.word(at + 1)));
    }

    /** "Put 5 cucumbers in the greenhouse border": under glass, and planted all the same. */
    private static boolean intoTheSoil(Passage passage, Clause clause) {
        return Passage.within(passage.places(), clause.from(), clause.to()).stream()
                .anyMatch(place -> COVERED.contains(place.name())
                        && Set.of("border", "bed", "beds", "borders", "soil", "ground")
                                .contains(passage.word(place.end())));
    }

    /** "The tomatoes in the border, the chillies in 5 litre pots": each has its own. */
    private static boolean ownPots(Passage passage, Clause clause, CropSaid crop) {
        if (crop == null || clause.crops().size() < 2) {
            return false;
        }
        int next = clause.crops().stream()
                .mapToInt(CropSaid::start)
                .filter(start -> start > crop.start())
                .min()
                .orElse(clause.to());
        List<PlaceSaid> own = Passage.within(passage.places(), crop.end(), next);
        List<PlaceSaid> all = Passage.within(passage.places(), clause.from(), clause.to());
        return own.size() == 1
                && all.size() > 1
                && own.get(0).container()
                && own.get(0).name().endsWith("pots");
    }

    /** "Got the garlic out" lifts it; "got the tomatoes out" plants them. */
    private static boolean gotOut(Passage passage, Clause clause) {
        return passage.word(clause.action().lastWord()).equals("out")
                && Set.of("got", "get", "getting")
                        .contains(passage.word(clause.action().words().nextSetBit(0)));
    }

    /** "Strung the onions up in the shed": not the plants but what they bore. */
    private boolean hungUp(Passage passage, Clause clause, CropSaid crop) {
        return crop != null
                && cropNames.hung(crop.crop())
                && clause.action().words().stream().anyMatch(at -> HANGING.contains(passage.word(at)))
                && !says(passage, clause, UPRIGHT); // "Tied the chillies to the stick".
    }

    /** "Dug the garlic, hung it in the shed": what is hung up as it comes out of the ground dries first. */
    static boolean asLifted(Passage passage, Clause clause) {
        return passage.actions().stream()
                .anyMatch(action -> action.action().equals("harvested")
                        && action.start() < clause.action().start()
                        && action.start() >= clause.sentence()[0]);
    }

    /** "Baby cabbages": young plants, for they bear no fruit that could set. */
    boolean young(Clause clause, CropSaid crop) {
        return clause.action().action().equals("fruit-set") && crop.single() && !cropNames.bears(crop.crop());
    }

    /** "Pulled up the courgettes", "pulled up all the plants": who wants fruit pulls the plants when they are done. */
    boolean cleared(Passage passage, Clause clause, CropSaid crop) {
        String verb = passage.word(clause.action().words().nextSetBit(0));
        boolean up = Set.of("pulled", "pull", "pulling", "yanked", "dug", "ripped", "rip", "tore")
                        .contains(verb)
                && (clause.action().words().cardinality() > 1 || verb.startsWith("pull"));
        up |= verb.equals("cut")
                && says(passage, clause, Set.of("down"))
                && !says(passage, clause, Set.of("flower", "flowers", "haulms", "foliage"));
        int to = Math.min(clause.to(), clause.sentence()[1]);
        // "Peas done, pulled them, about 2 kilo all up": what is over was weighed as the last.
        boolean over = IntStream.range(clause.sentence()[0], clause.action().start())
                .anyMatch(at -> Set.of("done", "finished", "over").contains(passage.word(at)));
        boolean weighed = !over
                && Passage.within(passage.quantities(), clause.from(), to).stream()
                        .anyMatch(quantity -> quantity.unit().equals("kg"));
        // "Pulled everything": plants that are pulled up all at once bear no more.
        boolean plants = says(passage, clause, Set.of("plants", "vines", "haulms", "stumps", "everything"));
        return up && !weighed && (crop == null ? plants : cropNames.fruiting(crop.crop()));
    }

    /** "Pulled 1 courgette plant", "pulled up the cucumbers, all dead": plants of what bears fruit are taken out, not gathered. */
    private boolean takenOut(Passage passage, Clause clause, CropSaid crop) {
        boolean burnt = IntStream.range(clause.action().end(), clause.sentence()[1])
                .anyMatch(at -> Set.of("burnt", "burned", "binned", "bonfire").contains(passage.word(at)));
        return cleared(passage, clause, crop) && Endings.spoilt(passage, clause)
                || ThrownAway.pointedOut(passage, clause, crop)
                || ThrownAway.pulled(passage, clause, crop) && !cropNames.fruiting(crop.crop())
                || crop != null
                        && (cropNames.fruiting(crop.crop()) || burnt)
                        && Set.of("pulled", "pull", "dug", "ripped", "yanked", "removed", "took", "taken")
                                .contains(passage.word(clause.action().words().nextSetBit(0)))
                        && Set.of("plant", "plants", "vine", "vines").contains(passage.word(crop.end()))
                        && !passage.counts(clause.from(), crop.start()).isEmpty();
    }

    /** "Transplanted into pots" is potting on, not planting out. */
    private static What transplanted(Passage passage, Clause clause) {
        boolean verb = passage.word(clause.action().words().nextSetBit(0)).startsWith("transplant");
        List<PlaceSaid> places = Passage.within(passage.places(), clause.from(), clause.to());
        boolean ground = places.stream()
                .anyMatch(place -> !place.container() && !place.name().endsWith("greenhouse"));
        boolean pots = places.stream()
                .anyMatch(place -> place.container() && place.name().endsWith("pots"));
        return verb && pots && !ground ? What.POTTED_ON : What.PLANTED_OUT;
    }

    /** "Moved the tomatoes into cups", not "moved the pots to the patio". */
    private static boolean intoPots(Passage passage, Clause clause) {
        return Passage.within(passage.places(), clause.from(), clause.to()).stream()
                .filter(place -> place.container() && place.name().endsWith("pots"))
                .anyMatch(place -> says(passage, clause.action().start(), place.start(), INTO));
    }

    /** "The chillies are in the polytunnel now" tells where they stand, not that they were planted. */
    private static boolean standsIn(Passage passage, Clause clause) {
        List<PlaceSaid> places = Passage.within(passage.places(), clause.from(), clause.to());
        int last = clause.action().lastWord();
        return clause.action().form() == null
                && passage.word(last).equals("in")
                && Set.of("are", "is", "now", "be").contains(passage.word(last - 1))
                && !places.isEmpty()
                && places.stream()
                        .allMatch(place -> !place.container()
                                && COVERED.contains(place.name())
                                && !Set.of("border", "bed", "soil", "ground").contains(passage.word(place.end())));
    }

    private What planted(Passage passage, Clause clause, CropSaid crop) {
        if (standsIn(passage, clause)) {
            return What.MOVED;
        }
        if (crop == null && BroughtIn.indoors(passage, clause) && BroughtIn.gatheredBefore(passage, clause)) {
            return What.STORED;
        }
        if (saysSeed(passage, clause, crop) || crop != null && crop.canMean("garlic")) {
            return What.SOWN;
        }
        if (Around.toCure(passage, clause)) {
            return What.CURED;
        }
        // "Lambing flat out but got 40 shallots in": no plants set out.
        boolean young = IntStream.range(clause.from(), clause.to())
                .anyMatch(at -> PLANTS.contains(passage.word(at))
                        && !(passage.word(at).equals("out")
                                && passage.word(at - 1).equals("flat")));
        boolean nursery = Passage.within(passage.places(), clause.from(), clause.to()).stream()
                .map(PlaceSaid::name)
                .anyMatch(name -> INDOORS.stream().anyMatch(name::contains) || smallPot(name));
        boolean growing = crop == null
                || PlantingsMeant.growing(passage.situation()).stream()
                        .map(Planting::crop)
                        .anyMatch(crop.crops()::contains);
        if (nursery && !young && !YoungPlants.intoGrowbag(passage, clause) && !(growing && crop != null)) {
            return What.SOWN;
        }
        if (young || (growing && !(crop != null && rootedAtOnce(crop.crops())))) {
            return What.PLANTED_OUT;
        }
        return crop != null && cropNames.plantedIsSown(crop.crop()) ? What.SOWN : What.PLANTED_OUT;
    }

    /** "The onion plants and four rows of seed potatoes": the seed is of the other crop where this one's plants are told. */
    private static boolean saysSeed(Passage passage, Clause clause, CropSaid crop) {
        boolean plants = crop != null
                && (YoungPlants.WORDS.contains(passage.word(crop.end()))
                        || YoungPlants.WORDS.contains(passage.word(crop.end() - 1)));
        return IntStream.range(clause.from(), clause.to())
                .filter(at -> SEED.contains(passage.word(at)))
                .anyMatch(at -> !plants
                        || clause.crops().stream()
                                .noneMatch(other -> other != crop
                                        && (other.covers(at) || other.start() == at + 1 || other.end() == at)));
    }

    /** "Planted 20 potatoes outside", "planted out the onion sets": so they are begun, unless plants of them stand somewhere already. */
    private static boolean begunSo(Passage passage, Clause clause, CropSaid crop) {
        boolean sets = crop != null
                && (crop.canMean("garlic")
                        || crop.canMean("potato")
                        || crop.canMean("shallot")
                        || says(passage, crop.start(), crop.end() + 1, Set.of("sets", "cloves", "tubers")));
        return sets
                && !says(
                        passage,
                        crop.start(),
                        crop.end() + 1,
                        Set.of("plant", "plants", "plug", "plugs", "seedling", "seedlings", "transplants", "slips"))
                && PlantingsMeant.growing(passage.situation()).stream()
                        .noneMatch(planting -> crop.crops().contains(planting.crop()));
    }

    /** Pots of seedlings, not those that a plant ends in. */
    private static boolean smallPot(String name) {
        return name.equals("pots") || name.matches("(7|8|9|10) cm pots|[345] inch pots");
    }

    /** Crops that are never raised in a pot first. */
    private static boolean rootedAtOnce(List<String> crops) {
        return Set.of("garlic", "potato", "carrot", "radish", "parsnip").contains(crops.get(0));
    }

    private static boolean says(Passage passage, Clause clause, Set<String> words) {
        return says(passage, clause.from(), clause.to(), words);
    }

    private static boolean says(Passage passage, int from, int to, Set<String> words) {
        for (int at = from; at < to; at++) {
            if (words.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }
}
