package bothy.advice.reckoning;

import bothy.advice.facts.Latest;
import bothy.advice.reckoned.Keeps;
import bothy.agronomy.Keeping;
import bothy.agronomy.Window;
import bothy.almanac.Sheet;
import bothy.garden.Event;
import bothy.garden.Inquiry;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Until when a stored crop keeps, shorter where the store is warmer than it should be. */
final class KeepingReckoning {
    private static final int CHECKS_TOLD = 2;

    private KeepingReckoning() {}

    static Optional<Keeps> of(Subject subject) {
        Sheet.Storing storing = subject.sheet().storing();
        Optional<LocalDate> stored = subject.last(What.STORED).map(Latest::first);
        Optional<Double> storeC = storeC(subject);
        if (storing == null || storing.lifeDays() == null || stored.isEmpty() && storeC.isEmpty()) {
            return Optional.empty();
        }
        LocalDate from = stored.orElse(subject.today());
        double low = life(storing, storing.lifeDays().low(), storeC);
        double high = life(storing, storing.lifeDays().high(), storeC);
        Window end = Keeping.keepsUntil(from, low, high);
        return Optional.of(new Keeps(
                subject.id(),
                end.from(),
                end.to(),
                storeC.orElse(null),
                checks(subject, storing, from, high),
                storeC.isPresent()));
    }

    private static double life(Sheet.Storing storing, double days, Optional<Double> storeC) {
        double right = storing.tempC() == null ? Double.NaN : storing.tempC().high();
        boolean known = storeC.isPresent() && right >= -2 && right <= 25;
        return Math.max(1, known ? Keeping.lifeDaysAt(days, right, storeC.get()) : days);
    }

    private static List<LocalDate> checks(Subject subject, Sheet.Storing storing, LocalDate from, double high) {
        Double every = storing.checkEveryDays();
        if (every == null || every < 1 || every > 60) {
            return List.of();
        }
        return Keeping.checks(from, (int) Math.round(every), high).stream()
                .filter(day -> day.isAfter(subject.today()))
                .limit(CHECKS_TOLD)
                .toList();
    }

    /** Temperature of the store: asked about, or told when or after it was put away. */
    private static Optional<Double> storeC(Subject subject) {
        Stream<Double> asked = subject.inquiries().stream()
                .filter(inquiry -> "°C".equals(inquiry.unit()))
                .map(Inquiry::amount);
        Optional<LocalDate> stored = subject.last(What.STORED).map(Latest::first);
        Stream<Double> told = subject.events().stream()
                .filter(event -> "°C".equals(event.unit()) && event.amount() != null)
                .filter(event ->
                        stored.isPresent() && event.on() != null && !event.on().isBefore(stored.get()))
                .map(Event::amount);
        return Stream.concat(asked, told)
                .filter(tempC -> tempC >= -5 && tempC <= 40)
                .findFirst();
    }
}
