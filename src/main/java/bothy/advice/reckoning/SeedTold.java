package bothy.advice.reckoning;

import bothy.garden.Event;
import bothy.garden.SignSeen;
import bothy.garden.What;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** What the grower told of the age of a planting's seed. */
final class SeedTold {
    private static final int MOST_YEARS = 50;
    /** A closer look tells the age in spans only; their middles, and four years for seed older than two. Own choice. */
    private static final double FRESH_YEARS = 0.5;

    private static final double ONE_OR_TWO_YEARS = 1.5;
    private static final double OLDER_YEARS = 4;

    private SeedTold() {}

    /** Years, as told last with the sowing or with a sign, else as found on a closer look; empty when not told. */
    static Optional<Double> ageYears(Subject subject) {
        Stream<Integer> withSowing = subject.events().stream()
                .filter(event -> event.what() == What.SOWN)
                .map(Event::seedAge);
        Stream<Integer> withSign = subject.signs().stream().map(SignSeen::seedAge);
        Optional<Integer> told = Stream.concat(withSowing, withSign)
                .filter(Objects::nonNull)
                .filter(years -> years >= 0 && years <= MOST_YEARS)
                .reduce((earlier, later) -> later);
        return told.map(Integer::doubleValue).or(() -> found(subject));
    }

    private static Optional<Double> found(Subject subject) {
        return switch (String.valueOf(subject.findings().get("seed-age"))) {
            case "fresh" -> Optional.of(FRESH_YEARS);
            case "one-or-two" -> Optional.of(ONE_OR_TWO_YEARS);
            case "older" -> Optional.of(OLDER_YEARS);
            default -> Optional.empty();
        };
    }
}
