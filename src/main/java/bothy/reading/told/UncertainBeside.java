package bothy.reading.told;

import bothy.garden.Doubt;
import java.util.List;

/**
 * "Water standing in the bags, what to do?", "freeze then. Peel first?": whoever asks or shows a trouble is not asked whether words that
 * name no plant were a doing.
 */
public final class UncertainBeside {
    private UncertainBeside() {}

    /** @param besides whether the message asks something or shows a trouble */
    public static List<Told> without(List<Told> told, boolean besides) {
        return told.stream()
                .filter(one -> !(besides
                        && one.open() == Doubt.About.REALLY_DONE
                        && one.event().crop() == null))
                .toList();
    }
}
