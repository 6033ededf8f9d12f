package bothy.weather;

import bothy.garden.Grower;
import bothy.garden.WeatherDay;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Where weather comes from. */
public interface WeatherSource {

    /**
     * The days known around a day, observed ones up to it and forecast ones after it, in order; empty when nothing is known. Never
     * throws: a source that is down knows nothing.
     */
    List<WeatherDay> around(Grower grower, LocalDate today);

    /** What is wrong with the source for this grower just now, as a sentence for the grower; empty when nothing is. */
    default Optional<String> trouble(Grower grower) {
        return Optional.empty();
    }

    /** Whom its licence asks to credit where its forecast is shown; empty for none. */
    default Optional<String> credit() {
        return Optional.empty();
    }

    /** Whether asking it may take long, so that it is asked before a diary is opened; asked again at once it answers from memory. */
    default boolean slow() {
        return false;
    }

    /** No weather at all. */
    static WeatherSource none() {
        return (grower, today) -> List.of();
    }
}
