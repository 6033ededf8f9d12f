package bothy.conversation;

import bothy.diary.Replay;
import bothy.diary.Store;
import bothy.garden.Grower;
import bothy.garden.WeatherDay;
import bothy.weather.WeatherSource;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Asks for a garden's weather before its transaction begins: a forecast may take seconds, and others wait for the store. */
final class Forecasts {
    private final Store store;
    private final WeatherSource source;

    Forecasts(Store store, WeatherSource source) {
        this.store = store;
        this.source = source;
    }

    /** The weather of one garden, asked for by now; for another place than the diary's, none. */
    WeatherSource ahead(String grower, Instant moment, ZoneId zone) {
        if (!source.mayWait()) {
            return source;
        }
        LocalDate day = moment.atZone(zone).toLocalDate();
        Grower asked = Replay.garden(store.lines(grower), day, zone).grower();
        List<WeatherDay> days = source.around(asked, moment.atZone(asked.zone()).toLocalDate());
        Optional<String> trouble = source.trouble(asked);
        return new Known(asked, days, trouble);
    }

    /** Weather that was asked for already. */
    private record Known(Grower asked, List<WeatherDay> days, Optional<String> wrong) implements WeatherSource {
        @Override
        public List<WeatherDay> around(Grower grower, LocalDate today) {
            boolean samePlace = Objects.equals(grower.latitude(), asked.latitude())
                    && Objects.equals(grower.longitude(), asked.longitude());
            return samePlace ? days : List.of();
        }

        @Override
        public Optional<String> trouble(Grower grower) {
            return wrong;
        }
    }
}
