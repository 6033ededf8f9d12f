package bothy.bench;

import bothy.advice.Advisor;
import bothy.advice.Day;
import bothy.advice.RuleBook;
import bothy.advice.facts.Frosts;
import bothy.advice.facts.Latest;
import bothy.advice.facts.Stands;
import bothy.advice.reckoning.Reckoning;
import bothy.advice.reckoning.Subject;
import bothy.agronomy.water.CropCoefficient;
import bothy.agronomy.water.Demand;
import bothy.agronomy.water.Ledger;
import bothy.agronomy.water.OpenGround;
import bothy.agronomy.water.Roots;
import bothy.agronomy.water.Soil;
import bothy.agronomy.water.Stages;
import bothy.agronomy.water.TypicalEvapotranspiration.Climate;
import bothy.almanac.Climates;
import bothy.almanac.CropSheets;
import bothy.almanac.PlaceKind;
import bothy.almanac.Places;
import bothy.almanac.RulesFolder;
import bothy.almanac.Sheet;
import bothy.diary.Replay;
import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Garden;
import bothy.garden.Inquiry;
import bothy.garden.Logged;
import bothy.garden.Planting;
import bothy.garden.Question;
import bothy.garden.SettingChange;
import bothy.garden.WeatherDay;
import bothy.garden.What;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/** Prints how long the figures take: one season of daily balance, a garden of twenty plantings over two hundred days. */
public final class FiguresBench {
    private static final int RUNS = 400;
    private static final int PLANTINGS = 20;
    private static final int DAYS = 200;
    private static final LocalDate START = LocalDate.of(2027, 4, 1);
    private static final LocalDate TODAY = START.plusDays(DAYS);
    private static final List<String> CROPS =
            List.of("tomato", "cucumber", "lettuce", "carrot", "french-bean", "courgette", "beetroot", "chard");

    private FiguresBench() {}

    /** @param arguments none */
    public static void main(String[] arguments) {
        print("one season of daily balance, 150 days", FiguresBench::season, 1);
        RulesFolder folder = RulesFolder.at(Path.of("rules"));
        Map<String, Sheet> sheets = CropSheets.load(folder);
        Garden garden = garden();
        print("figures of 20 plantings over 200 days", () -> figures(garden, sheets), 20);
        try (RuleBook rules = RuleBook.of(folder, null)) {
            Advisor advisor = new Advisor(rules, sheets, Places.in(folder));
            Day day = new Day(
                    TODAY,
                    garden,
                    List.of(),
                    List.of(Inquiry.of(Question.TO_DO, null, List.of())),
                    List.of(),
                    List.of(),
                    weather());
            print("figures and rules of 20 plantings over 200 days", () -> advisor.advise(day), 20);
        }
    }

    private static void print(String what, Runnable work, double wantedMillis) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        double[] millis = new double[RUNS];
        double[] processor = new double[RUNS];
        for (int run = -RUNS; run < RUNS; run++) {
            long begun = System.nanoTime();
            long used = threads.getCurrentThreadCpuTime();
            work.run();
            if (run >= 0) {
                millis[run] = (System.nanoTime() - begun) / 1e6;
                processor[run] = (threads.getCurrentThreadCpuTime() - used) / 1e6;
            }
        }
        Arrays.sort(millis);
        Arrays.sort(processor);
        System.out.printf(
                Locale.ROOT,
                "%s: median %.2f ms, p95 %.2f ms, of the processor %.2f and %.2f ms (wanted: %.0f ms)%n",
                what,
                millis[RUNS / 2],
                millis[RUNS * 95 / 100],
                processor[RUNS / 2],
                processor[RUNS * 95 / 100],
                wantedMillis);
    }

    private static void season() {
        Ledger.Crop crop = new Ledger.Crop(
                new CropCoefficient(0.6, 1.15, 0.8), new Stages(30, 40, 45, 30), new Roots(0.15, 0.7), 0.4);
        Demand demand = new Demand(52.4, Climate.TEMPERATE_HUMID, 15);
        Ledger ledger = new Ledger(START, crop, new OpenGround(Soil.LOAM, 2), demand);
        List<Ledger.Told> days = IntStream.range(0, 150)
                .mapToObj(day -> new Ledger.Told(START.plusDays(day), 9.0, 20.0, rain(day), 0, null))
                .toList();
        ledger.next(days.subList(0, 140), days.subList(140, 150));
    }

    private static double rain(int day) {
        return day % 5 == 0 ? 8 : 0;
    }

    private static List<WeatherDay> weather() {
        return IntStream.range(0, DAYS + 9)
                .mapToObj(day -> new WeatherDay(START.plusDays(day), 9.0, 20.0, rain(day), day <= DAYS, 4.0, 5.0))
                .toList();
    }

    private static Garden garden() {
        List<Entry> entries = new ArrayList<>();
        entries.add(new SettingChange("latitude", "52.4"));
        entries.add(new SettingChange("longitude", "-1.5"));
        entries.add(new SettingChange("soil", "loam"));
        for (int i = 0; i < PLANTINGS; i++) {
            String crop = CROPS.get(i % CROPS.size());
            String id = crop + "-" + (1 + i / CROPS.size());
            entries.add(Event.of(What.SOWN, id, crop, START).withCount(12));
            entries.add(Event.of(What.EMERGED, id, crop, START.plusDays(12)).withCount(10));
            entries.add(Event.of(What.PLANTED_OUT, id, crop, START.plusDays(40)).withCount(8));
            for (int day = 45; day < DAYS; day += 7) {
                entries.add(
                        Event.of(What.WATERED, id, crop, START.plusDays(day)).withAmount(20.0, "L"));
            }
        }
        List<Logged> lines = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            lines.add(new Logged(i + 1, "m" + i, Instant.parse("2027-04-01T08:00:00Z"), entries.get(i)));
        }
        return Replay.garden(lines, TODAY, ZoneOffset.UTC);
    }

    private static void figures(Garden garden, Map<String, Sheet> sheets) {
        List<WeatherDay> weather = weather();
        for (Planting planting : garden.growing()) {
            Reckoning.of(subject(garden, planting, sheets.get(planting.crop()), weather));
        }
    }

    private static Subject subject(Garden garden, Planting planting, Sheet sheet, List<WeatherDay> weather) {
        List<Event> events = garden.events().stream()
                .filter(event -> planting.id().equals(event.planting()))
                .toList();
        Map<What, Latest> latest = new EnumMap<>(What.class);
        events.forEach(event -> latest.merge(
                event.what(),
                new Latest(
                        planting.id(),
                        event.what(),
                        event.on(),
                        event.on(),
                        (int) ChronoUnit.DAYS.between(event.on(), TODAY),
                        1),
                (before, now) -> new Latest(
                        planting.id(), now.what(), before.first(), now.on(), now.daysAgo(), before.times())));
        return new Subject(
                TODAY,
                garden.grower(),
                planting,
                sheet,
                events,
                garden.events(),
                latest,
                List.of(),
                new Stands(planting.id(), PlaceKind.OUTDOORS, false),
                null,
                new Frosts(LocalDate.of(2027, 5, 10), LocalDate.of(2027, 10, 10), true),
                weather,
                List.of(),
                List.of(),
                Map.of(),
                null,
                Climates.ofNoPlace().at(garden.grower()));
    }
}
