package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Planting;
import bothy.garden.SignSeen;
import bothy.garden.What;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.told.PlantingsMeant;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** Of which sowings it is told that nothing or little is up, where no crop is named. */
final class SeedSeen {
    private static final String NOTHING_UP = "no-emergence";
    /** Of more sowings at once it is one trouble, not one of each. By judgement. */
    private static final int FEW = 3;

    private SeedSeen() {}

    /** "Nothing up yet" is seen of each sowing just spoken of that is not up, "only 6 of the 10" of the sowing of ten. */
    static List<SignSeen> each(Passage passage, int[] sentence, SignSeen seen) {
        if (!SignSeen.ofSeed(seen.sign()) || seen.crop() != null || seen.planting() != null) {
            return List.of(seen);
        }
        List<Planting> growing = passage.situation().plantings().stream()
                .filter(planting -> !planting.over())
                .toList();
        List<Planting> counted = growing.stream()
                .filter(planting -> outOf(passage, sentence, planting))
                .toList();
        if (counted.size() == 1) {
            return List.of(of(counted.get(0), seen));
        }
        List<Planting> spokenOf = PlantingsMeant.mentioned(passage.situation()).stream()
                .filter(planting -> !passage.situation().has(planting, Set.of(What.EMERGED)))
                .toList();
        return !seen.sign().equals(NOTHING_UP) || spokenOf.isEmpty() || spokenOf.size() > FEW
                ? List.of(seen)
                : spokenOf.stream().map(planting -> of(planting, seen)).toList();
    }

    /** "Only 6 of the 10 came up, should I sow more": the question is of the sowing that the sign is seen of. */
    static List<Inquiry> asked(Passage passage, List<SignSeen> seen, List<Inquiry> asked) {
        List<String> sowings = seen.stream()
                .map(SignSeen::planting)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
        boolean one = sowings.size() == 1
                && passage.crops().isEmpty()
                && seen.stream().allMatch(sign -> SignSeen.ofSeed(sign.sign()));
        return !one
                ? asked
                : asked.stream()
                        .map(inquiry -> inquiry.crop() == null ? inquiry.about(sowings) : inquiry)
                        .toList();
    }

    /** "6 of the 10", "6 out of 10". */
    private static boolean outOf(Passage passage, int[] sentence, Planting planting) {
        for (NumberSaid number : passage.counts(sentence[0], sentence[1])) {
            int before = number.start() - 1;
            boolean all = passage.word(before).equals("of")
                    || passage.word(before).equals("the")
                            && passage.word(before - 1).equals("of");
            int told = (int) number.value();
            if (all && (Objects.equals(planting.count(), told) || Objects.equals(planting.sown(), told))) {
                return true;
            }
        }
        return false;
    }

    private static SignSeen of(Planting planting, SignSeen seen) {
        return new SignSeen(
                seen.sign(), planting.id(), planting.crop(), seen.on(), seen.where(), seen.count(), seen.seedAge());
    }
}
