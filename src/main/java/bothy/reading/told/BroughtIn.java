package bothy.reading.told;

import bothy.garden.Planting;
import bothy.garden.What;
import bothy.reading.grammar.CropNames;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.PlaceSaid;
import java.util.List;
import java.util.Set;

/** What is put indoors: the crop that was borne, or the plants in their pots. */
final class BroughtIn {
    private static final Set<String> UNDER_A_ROOF = Set.of(
            "indoors",
            "windowsill",
            "airing cupboard",
            "propagator",
            "grow lights",
            "shed",
            "loft",
            "cellar",
            "larder");
    private static final Set<String> PLANTS = YoungPlants.and("out", "pot", "pots", "tray", "trays");

    private static final Set<String> GATHERED = Set.of("harvested", "cured", "stored");
    private static final Set<String> HANDLED = Set.of(
            "sown", "planted", "planted-out", "pricked-out", "potted-on", "emerged", "harvested", "cured", "stored");

    private static final Set<String> COLD =
            Set.of("cold", "colder", "frost", "frosts", "chilly", "freezing", "winter", "warm", "warmth");

    /** "Planted them by the shed": not in it. */
    private static final Set<String> BESIDE =
            Set.of("by", "near", "beside", "behind", "against", "outside", "round", "along", "alongside", "past", "to");

    private final CropNames cropNames;

    BroughtIn(CropNames cropNames) {
        this.cropNames = cropNames;
    }

    /** What is put indoors was never planted out: it is the crop when one was borne, else the plants in their pots. */
    What what(Passage passage, Clause clause, CropSaid crop, What what) {
        List<Planting> fitting = crop == null
                ? PlantingsMeant.mentioned(passage.situation())
                : PlantingsMeant.of(crop, passage, clause, false);
        boolean crops = !fitting.isEmpty()
                && fitting.stream().allMatch(planting -> Sequence.borne(planting, passage.situation()));
        if (crops && !Cropless.names(passage, clause, PLANTS) && !growing(passage, clause, crop, fitting)) {
            return What.STORED;
        }
        return what == What.PLANTED_OUT && fitting.isEmpty() ? What.SOWN : What.MOVED;
    }

    /** "Cured the squash for ten days, put them in the spare room": what was just gathered is put there to keep. */
    static boolean gatheredBefore(Passage passage, Clause clause) {
        return passage.actions().stream()
                .filter(action -> action.start() >= clause.sentence()[0]
                        && action.end() <= clause.action().start()
                        && HANDLED.contains(action.action()))
                .reduce((first, second) -> second)
                .filter(action -> GATHERED.contains(action.action()))
                .isPresent();
    }

    /** "Brought the chillies back indoors", or those in pots out of the cold: what is carried in goes on growing. */
    private boolean growing(Passage passage, Clause clause, CropSaid crop, List<Planting> fitting) {
        boolean back = Cropless.names(passage, clause, Set.of("back"));
        boolean potted = fitting.stream().allMatch(planting -> planting.container() != null)
                && Cropless.names(passage, clause, COLD);
        return (back || potted) && crop != null && !cropNames.dug(crop.crop());
    }

    /** "Sowed 6 tomatoes, they are in the shed now": young plants stand there, nothing is stored. */
    static boolean justBegun(Passage passage, Clause clause) {
        return passage.actions().stream()
                .filter(action -> action.end() <= clause.action().start() && HANDLED.contains(action.action()))
                // "Garlic is in. And put 35 lb of carrots away": of another crop.
                .filter(action -> action.start() >= clause.sentence()[0]
                        || clause.crops().stream().allMatch(crop -> crop.start() < clause.sentence()[0]))
                .reduce((first, second) -> second)
                .filter(action -> !GATHERED.contains(action.action()))
                .isPresent();
    }

    /** "It is in the shed now", where nothing was told that it could be: the mower, for all we know. */
    static boolean ofNothingNamed(Passage passage, Clause clause, List<Told> before) {
        boolean stands = clause.action().form() == null
                && Set.of("stored", "planted-out").contains(clause.action().action())
                && Set.of("they", "it", "these", "both", "all")
                        .contains(passage.word(clause.action().start()));
        boolean justNamed =
                !before.isEmpty() && before.get(before.size() - 1).event().crop() != null;
        boolean named = passage.crops().stream()
                .anyMatch(crop -> !crop.thing() && crop.end() <= clause.action().start());
        return stands && clause.crops().isEmpty() && !justNamed && (!named || !before.isEmpty());
    }

    /** The word before a place, its article left out; "to" tells a place apart only in "next to". */
    private static String nearest(Passage passage, int place) {
        int at = place - 1;
        while (Set.of("the", "my", "our", "a", "old").contains(passage.word(at))) {
            at--;
        }
        return passage.word(at).equals("to") && !passage.word(at - 1).equals("next") ? "" : passage.word(at);
    }

    /** Whether a clause tells of no place but one under a roof. */
    static boolean indoors(Passage passage, Clause clause) {
        List<PlaceSaid> places = Passage.within(passage.places(), clause.from(), clause.to()).stream()
                .filter(place -> !place.container())
                .toList();
        return !places.isEmpty()
                && places.stream()
                        .allMatch(place -> UNDER_A_ROOF.stream().anyMatch(place.name()::endsWith)
                                && !BESIDE.contains(nearest(passage, place.start())));
    }
}
