package bothy.advice.reckoning;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** All figures of one planting. */
public final class Reckoning {
    private static final Logger LOG = LoggerFactory.getLogger(Reckoning.class);

    private static final List<Function<Subject, Stream<?>>> ALL = List.of(
            subject -> NothingUpReckoning.of(subject).stream(),
            subject -> NothingUpReckoning.byNow(subject).stream(),
            subject -> SuccessionReckoning.of(subject).stream(),
            subject -> HardeningReckoning.of(subject).stream(),
            subject -> PlantingOutReckoning.of(subject).stream(),
            WaterReckoning::of,
            HowManyReckoning::of,
            subject -> FeedReckoning.of(subject).stream(),
            subject -> DripReckoning.of(subject).stream(),
            subject -> KeepingReckoning.of(subject).stream(),
            RiskReckoning::of,
            subject -> HarvestReckoning.of(subject).stream());

    private Reckoning() {}

    /** The figures of a planting; one whose input is out of range is left out, the others stand. */
    public static List<Object> of(Subject subject) {
        List<Object> facts = new ArrayList<>();
        for (Function<Subject, Stream<?>> one : ALL) {
            try {
                one.apply(subject).forEach(facts::add);
            } catch (IllegalArgumentException outOfRange) {
                LOG.warn("A figure of {} is left out: {}", subject.id(), outOfRange.getMessage());
            }
        }
        return facts;
    }
}
