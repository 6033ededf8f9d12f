package bothy.advice.reckoning;

import bothy.garden.WeatherDay;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The air of the last days as a weather source told it. */
final class Air {
    private Air() {}

    /** Whether both temperatures of a day are known and can be. */
    static boolean known(WeatherDay day) {
        return day.tmin() != null
                && day.tmax() != null
                && day.tmin() <= day.tmax()
                && day.tmin() >= -60
                && day.tmax() <= 60;
    }

    /** Mean of each of the last so many days, today left out; empty when one of them is not known. */
    static Optional<List<Double>> means(Subject subject, int days) {
        Map<LocalDate, Double> known = new HashMap<>();
        subject.weather().stream()
                .filter(Air::known)
                .forEach(day -> known.put(day.date(), (day.tmin() + day.tmax()) / 2));
        List<Double> means = new ArrayList<>();
        for (int ago = days; ago >= 1; ago--) {
            Double mean = known.get(subject.today().minusDays(ago));
            if (mean == null) {
                return Optional.empty();
            }
            means.add(mean);
        }
        return Optional.of(means);
    }
}
