package bothy.advice.reckoning;

import bothy.agronomy.water.Ledger;
import bothy.agronomy.water.SoilWater;
import bothy.almanac.PlaceKind;
import bothy.almanac.Range;
import bothy.garden.Event;
import bothy.garden.WeatherDay;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What is known of each day of one planting's water: weather, rain told, waterings told, the finger. */
final class WaterDays {
    /** Rain told without an amount. Common practice: a good shower. */
    private static final double SHOWER_MM = 5;

    /** Detail of a watering told for each plant. */
    private static final String EACH = "each";

    private static final int UNWATCHED_DAYS = 14;
    private static final double MOST_RAIN_MM = 500;
    private static final double MOST_LITRES = 1000;
    private final Subject subject;
    private final Standing standing;
    private final Map<LocalDate, WeatherDay> weather = new HashMap<>();
    private final Map<LocalDate, Double> rain = new HashMap<>();
    private final Map<LocalDate, Double> litres = new HashMap<>();
    private final Map<LocalDate, SoilWater.Finger> felt = new HashMap<>();

    WaterDays(Subject subject, Standing standing) {
        this.subject = subject;
        this.standing = standing;
        subject.weather().forEach(day -> weather.put(day.date(), day));
        Stream.concat(
                        subject.plotEvents().stream()
                                .filter(event -> event.planting() == null && concerns(event, subject)),
                        subject.events().stream())
                .filter(event -> event.on() != null)
                .forEach(this::take);
    }

    /** Soil felt in another bed says nothing of this one. */
    private static boolean concerns(Event event, Subject subject) {
        return event.what() != What.SOIL_CHECKED
                || event.place() == null
                || event.place().equals(subject.planting().place());
    }

    private void take(Event event) {
        switch (event.what()) {
            case RAIN -> {
                double told = event.amount() == null ? SHOWER_MM : event.amount();
                if (told >= 0 && told <= MOST_RAIN_MM) {
                    rain.merge(event.on(), told, Math::max);
                }
            }
            case WATERED -> {
                double told = litres(event);
                if (told >= 0) {
                    litres.merge(event.on(), told, (a, b) -> Math.min(MOST_LITRES, a + b));
                }
            }
            case SOIL_CHECKED -> finger(event);
            default -> {}
        }
    }

    /** Litres for each count for every plant; what went to the whole plot, or to plants that nobody counted, is no more than usual. */
    private double litres(Event event) {
        if (event.amount() == null || !"L".equals(event.unit())) {
            return usualLitres();
        }
        if (EACH.equals(event.detail())) {
            return Math.min(MOST_LITRES, event.amount() * standing.plants());
        }
        boolean shared = event.planting() == null || !standing.counted();
        return shared ? Math.min(usualLitres(), event.amount()) : event.amount();
    }

    private void finger(Event event) {
        for (SoilWater.Finger finger : SoilWater.Finger.values()) {
            if (finger.name().equalsIgnoreCase(event.detail())) {
                felt.put(event.on(), finger);
            }
        }
    }

    /** A watering told without an amount: what the sheet gives a plant at a time. */
    private double usualLitres() {
        Range each = subject.sheet().watering() == null
                ? null
                : subject.sheet().watering().litresPerPlant();
        return Math.min(MOST_LITRES, (each == null ? 1 : each.middle()) * standing.plants());
    }

    SoilWater.Finger felt(LocalDate day) {
        return felt.get(day);
    }

    boolean watered(LocalDate day) {
        return litres.getOrDefault(day, 0.0) > 0;
    }

    /**
     * Whether something is known of the last fortnight's water: weather, rain, a watering, a finger test, or that it was only just set
     * out. Nobody tells of every shower, so without any word the balance would only drift.
     */
    boolean watched(LocalDate today) {
        LocalDate since = today.minusDays(UNWATCHED_DAYS);
        boolean fresh = !start(subject).isBefore(since);
        return fresh
                || Stream.of(rain.keySet(), litres.keySet(), felt.keySet())
                        .flatMap(java.util.Collection::stream)
                        .anyMatch(day -> !day.isBefore(since) && !day.isAfter(today))
                || since.datesUntil(today.plusDays(1)).anyMatch(this::weatherKnown);
    }

    double rainMm(LocalDate day) {
        Ledger.Told told = told(day);
        return told.rainMm() == null ? 0 : told.rainMm();
    }

    boolean weatherKnown(LocalDate day) {
        WeatherDay known = weather.get(day);
        return known != null && Air.known(known) && known.rain() != null;
    }

    /** Each day from the first to the last. */
    List<Ledger.Told> from(LocalDate first, LocalDate last) {
        List<Ledger.Told> days = new ArrayList<>();
        for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
            days.add(told(day));
        }
        return days;
    }

    /** A day as known; a temperature or rain that cannot be counts as not known, and what the grower told of rain comes first. */
    private Ledger.Told told(LocalDate date) {
        WeatherDay day = weather.get(date);
        boolean temperatures = day != null && Air.known(day);
        boolean rained = day != null && day.rain() != null && day.rain() >= 0 && day.rain() <= MOST_RAIN_MM;
        Double fallen = rain.containsKey(date) ? rain.get(date) : rained ? day.rain() : null;
        boolean open = subject.stands().where() == PlaceKind.OUTDOORS;
        return new Ledger.Told(
                date,
                temperatures ? day.tmin() : null,
                temperatures ? day.tmax() : null,
                open ? fallen : Double.valueOf(0),
                litres.getOrDefault(date, 0.0),
                felt.get(date));
    }

    /** What became of the first day in a season: sown in place, or planted out. */
    static LocalDate start(Subject subject) {
        return subject.last(What.PLANTED_OUT)
                .map(latest -> latest.first())
                .or(() -> subject.last(What.POTTED_ON).map(latest -> latest.first()))
                .orElse(subject.planting().begun());
    }
}
