package bothy.advice.reckoning;

import bothy.advice.reckoned.BlightSpell;
import bothy.advice.reckoned.ColdForBolting;
import bothy.advice.reckoned.FruitSetHindered;
import bothy.advice.reckoned.NightRisk;
import bothy.agronomy.climate.BlightWeather;
import bothy.agronomy.climate.FruitSet;
import bothy.agronomy.climate.NightFrost;
import bothy.agronomy.climate.Spells;
import bothy.almanac.PlaceKind;
import bothy.almanac.Sheet;
import bothy.garden.WeatherDay;
import bothy.garden.What;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What the weather of the last and next days may do to one planting. */
final class RiskReckoning {
    private static final int NIGHTS_AHEAD = 5;
    private static final int DAYS_AHEAD = 3;
    private static final int HYRE_DAYS = 10;
    private static final Set<String> BLIGHTED = Set.of("potato", "tomato");
    /** Crops that flower in their first year after cold when young (Spells.vernalisingDays, L. Gilkeson). */
    private static final Set<String> BIENNIALS = Set.of(
            "beetroot",
            "chard",
            "onion",
            "leek",
            "cabbage",
            "kale",
            "celery",
            "celeriac",
            "turnip",
            "swede",
            "kohlrabi");

    private RiskReckoning() {}

    static Stream<?> of(Subject subject) {
        if (subject.weather().isEmpty() || !subject.planting().begunAtAll()) {
            return Stream.empty();
        }
        List<Optional<?>> found = new ArrayList<>();
        boolean outdoors = subject.stands().where() == PlaceKind.OUTDOORS;
        if (subject.stands().where() != PlaceKind.INDOORS) {
            found.add(night(subject));
            found.add(hindrance(subject));
        }
        if (outdoors && BLIGHTED.contains(subject.planting().crop())) {
            found.add(hutton(subject).or(() -> hyre(subject)));
        }
        if (outdoors && BIENNIALS.contains(subject.planting().crop())) {
            found.add(cold(subject));
        }
        return found.stream().flatMap(Optional::stream);
    }

    /** The coming night with the greatest chance of harm. */
    private static Optional<NightRisk> night(Subject subject) {
        Double harmed = subject.sheet().growth() == null
                ? null
                : subject.sheet().growth().harmedBelowC();
        if (harmed == null) {
            return Optional.empty();
        }
        return subject.weather().stream()
                .filter(day -> day.tmin() != null && day.tmin() >= -60 && day.tmin() <= 60)
                .filter(day -> ahead(subject, day.date()) >= 0 && ahead(subject, day.date()) <= NIGHTS_AHEAD)
                .map(day -> new NightRisk(subject.id(), day.date(), day.tmin(), harmed, (int) Math.round(
                        100 * NightFrost.chanceOfHarm(day.tmin(), harmed, (int) ahead(subject, day.date())))))
                .max(Comparator.comparingInt(NightRisk::chancePercent)
                        .thenComparing(NightRisk::coldOn, Comparator.reverseOrder()));
    }

    private static long ahead(Subject subject, LocalDate day) {
        return ChronoUnit.DAYS.between(subject.today(), day);
    }

    private static Optional<BlightSpell> hutton(Subject subject) {
        for (long day = -DAYS_AHEAD; day <= DAYS_AHEAD; day++) {
            LocalDate second = subject.today().plusDays(day);
            Optional<BlightWeather.HumidDay> one = humid(subject, second.minusDays(1));
            Optional<BlightWeather.HumidDay> two = humid(subject, second);
            if (one.isPresent() && two.isPresent() && BlightWeather.hutton(one.get(), two.get())) {
                return Optional.of(new BlightSpell(subject.id(), second, "hutton", 0, true));
            }
        }
        return Optional.empty();
    }

    private static Optional<BlightWeather.HumidDay> humid(Subject subject, LocalDate day) {
        return subject.weatherOn(day)
                .filter(one -> one.tmin() != null && one.humidHours() != null)
                .map(one -> new BlightWeather.HumidDay(one.tmin(), Math.min(24, one.humidHours())));
    }

    /** Where humid hours are known the better criterion has spoken. */
    private static Optional<BlightSpell> hyre(Subject subject) {
        if (humid(subject, subject.today()).isPresent()) {
            return Optional.empty();
        }
        for (long day = 0; day <= DAYS_AHEAD; day++) {
            LocalDate last = subject.today().plusDays(day);
            List<BlightWeather.RainDay> ten = last.minusDays(HYRE_DAYS - 1L)
                    .datesUntil(last.plusDays(1))
                    .map(subject::weatherOn)
                    .flatMap(Optional::stream)
                    .filter(one -> Air.known(one) && one.rain() != null && one.rain() >= 0)
                    .map(one -> new BlightWeather.RainDay(one.tmin(), one.tmax(), one.rain()))
                    .toList();
            if (ten.size() == HYRE_DAYS && BlightWeather.hyre(ten)) {
                double rain =
                        ten.stream().mapToDouble(BlightWeather.RainDay::rainMm).sum();
                return Optional.of(new BlightSpell(subject.id(), last, "hyre", rain, false));
            }
        }
        return Optional.empty();
    }

    private static Optional<FruitSetHindered> hindrance(Subject subject) {
        Sheet.Flowering flowering = subject.sheet().flowering();
        if (flowering == null || subject.last(What.FLOWERING).isEmpty()) {
            return Optional.empty();
        }
        FruitSet set = new FruitSet(flowering.setNightFromC(), flowering.setNightToC(), flowering.setDayToC());
        return subject.weather().stream()
                .filter(Air::known)
                .filter(day -> ahead(subject, day.date()) >= -1 && ahead(subject, day.date()) <= DAYS_AHEAD)
                .flatMap(day -> set.hindrances(day.tmin(), day.tmax()).stream()
                        .sorted()
                        .map(one -> hindered(subject, day, one, set)))
                .findFirst();
    }

    private static FruitSetHindered hindered(Subject subject, WeatherDay day, FruitSet.Hindrance what, FruitSet set) {
        double limit =
                switch (what) {
                    case COLD_NIGHT -> set.coldNightC();
                    case WARM_NIGHT -> set.warmNightC();
                    case HOT_DAY -> set.hotDayC();
                };
        double temp = what == FruitSet.Hindrance.HOT_DAY ? day.tmax() : day.tmin();
        String word = what.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        return new FruitSetHindered(subject.id(), word, day.date(), temp, limit);
    }

    private static Optional<ColdForBolting> cold(Subject subject) {
        Optional<LocalDate> up = subject.last(What.EMERGED)
                .or(() -> subject.last(What.PLANTED_OUT))
                .map(latest -> latest.first());
        if (up.isEmpty()) {
            return Optional.empty();
        }
        List<Double> means = subject.weather().stream()
                .filter(Air::known)
                .filter(day -> !day.date().isBefore(up.get()) && !day.date().isAfter(subject.today()))
                .map(day -> (day.tmin() + day.tmax()) / 2)
                .toList();
        int days = Spells.vernalisingDays(means);
        return days == 0 ? Optional.empty() : Optional.of(new ColdForBolting(subject.id(), days));
    }
}
