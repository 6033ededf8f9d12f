package bothy.advice.clinic;

import bothy.advice.reckoned.NothingUpChance;
import bothy.garden.Diagnosis;
import bothy.garden.SignSeen;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Seed that is not up: its reckoned chances shared out among the causes that the tables name, and gathered again. */
record Seedbed(NothingUpChance chance) {
    /** Questions whose answers the reckoning knows already. */
    static final Set<String> KNOWN = Set.of("window", "soil-warmth", "soil-moisture", "seed-age");

    static final String REASON = "Days, warmth, water and age of the seed are weighed together";
    static final String SOURCE = "own reckoning of the chances";
    private static final Set<String> SLOW = Set.of("not due yet");
    private static final Set<String> COLD = Set.of("soil too cold");
    private static final Set<String> DRY = Set.of("uneven moisture while sprouting", "surface dried or crusted");
    /** Nothing is ruled out altogether, so that a closer look can still find it. */
    private static final double LEAST = 0.002;

    static Optional<Seedbed> of(CaseFile file, List<NothingUpChance> reckoned) {
        return reckoned.stream()
                .filter(one -> one.planting().equals(file.planting())
                        && file.signs().stream().anyMatch(SignSeen::ofSeed))
                .findFirst()
                .map(Seedbed::new);
    }

    private enum Group {
        SLOW,
        COLD,
        DRY,
        DEAD
    }

    private static Group group(String cause) {
        return SLOW.contains(cause)
                ? Group.SLOW
                : COLD.contains(cause) ? Group.COLD : DRY.contains(cause) ? Group.DRY : Group.DEAD;
    }

    /** Too hot is none of the tables' causes; it is left to what else may be. */
    private double reckoned(Group group) {
        double percent =
                switch (group) {
                    case SLOW -> chance.slowPercent();
                    case COLD -> chance.coldPercent();
                    case DRY -> chance.dryPercent();
                    case DEAD -> chance.deadPercent() + chance.hotPercent();
                };
        return Math.max(LEAST, percent / 100);
    }

    /**
     * What to add to each cause's weight, so that the causes of each kind together come to the reckoned chance.
     *
     * @param causes the causes
     * @param chances as they are, "something else" last
     */
    double[] shifts(List<String> causes, double[] chances) {
        double[] sums = new double[Group.values().length];
        for (int i = 0; i < chances.length; i++) {
            sums[at(causes, i).ordinal()] += chances[i];
        }
        double[] shifts = new double[chances.length];
        for (int i = 0; i < chances.length; i++) {
            Group group = at(causes, i);
            shifts[i] = Math.log(reckoned(group) / Math.max(1e-9, sums[group.ordinal()]));
        }
        return shifts;
    }

    private static Group at(List<String> causes, int place) {
        return place < causes.size() ? group(causes.get(place)) : Group.DEAD;
    }

    /** The chances of the case after all that was found on a closer look, as those of the seed. */
    static NothingUpChance after(NothingUpChance before, Diagnosis diagnosis) {
        double[] sums = new double[Group.values().length];
        diagnosis.causes().forEach(likely -> sums[group(likely.cause()).ordinal()] += 100 * likely.chance());
        double rest = 100 - sums[Group.SLOW.ordinal()] - sums[Group.COLD.ordinal()] - sums[Group.DRY.ordinal()];
        double failed = Math.max(1e-9, before.hotPercent() + before.deadPercent());
        return before.with(
                sums[Group.SLOW.ordinal()],
                sums[Group.COLD.ordinal()],
                rest * before.hotPercent() / failed,
                sums[Group.DRY.ordinal()],
                rest * before.deadPercent() / failed);
    }
}
