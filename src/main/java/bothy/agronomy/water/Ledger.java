package bothy.agronomy.water;

import static bothy.agronomy.Stated.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The water of one planting from sowing or planting out to today and on into the forecast: demand by weather, Kc and roots by stage, rain,
 * what was watered, and what a finger found, day by day.
 *
 * @param start day of sowing or planting out; the soil counts as full then, since it is watered in
 * @param crop the crop's figures
 * @param ground what it stands in
 * @param demand what the weather asks
 */
public record Ledger(LocalDate start, Crop crop, Ground ground, Demand demand) {

    /**
     * @param kc FAO-56 Table 12
     * @param stages FAO-56 Table 11, or as the diary has them
     * @param roots FAO-56 Table 22 for the depth
     * @param freeShare p of FAO-56 Table 22, 0.1 to 0.8
     */
    public record Crop(CropCoefficient kc, Stages stages, Roots roots, double freeShare) {
        public Crop {
            within("freeShare", freeShare, 0.1, 0.8, "");
        }
    }

    /**
     * What is known of a day; {@code null} where nothing is. Unknown rain counts as none.
     *
     * @param tminC −60 to 60 °C
     * @param tmaxC not below {@code tminC}, to 60 °C
     * @param rainMm 0 to 1000 mm
     * @param wateringLitres L given to the planting, 0 to 1000
     * @param felt what a finger found before that watering
     */
    public record Told(
            LocalDate date, Double tminC, Double tmaxC, Double rainMm, double wateringLitres, SoilWater.Finger felt) {}

    /**
     * A day in the ledger.
     *
     * @param referenceMm ET₀
     * @param day what came and what could be used
     * @param done what it did
     * @param guessed whether temperatures or rain were not known
     */
    public record Line(
            LocalDate date, double referenceMm, SoilWater.Day day, SoilWater.DayDone done, boolean guessed) {}

    /**
     * The days in order; days before the start are passed over.
     *
     * @param days rising in date without a gap
     * @throws IllegalArgumentException when a day is missing or stands twice
     */
    public List<Line> lines(List<Told> days) {
        List<Line> lines = new ArrayList<>();
        SoilWater soil = SoilWater.FULL;
        for (Told told : days) {
            if (told.date().isBefore(start)) {
                continue;
            }
            LocalDate due = lines.isEmpty()
                    ? told.date()
                    : lines.get(lines.size() - 1).date().plusDays(1);
            if (!told.date().equals(due)) {
                throw new IllegalArgumentException("the ledger needs " + due + " next, not " + told.date());
            }
            Line line = line(told, soil);
            lines.add(line);
            soil = line.done().after();
        }
        return lines;
    }

    private Line line(Told told, SoilWater before) {
        double reference = demand.referenceMm(told.date(), told.tminC(), told.tmaxC());
        double age = Math.min(1000, ChronoUnit.DAYS.between(start, told.date()));
        double rain = told.rainMm() == null ? 0 : SoilWater.countingRainMm(told.rainMm(), reference);
        double deepest = Math.max(1, crop.stages().initialDays() + crop.stages().developmentDays());
        SoilWater.Day day = ground.day(
                rain,
                told.wateringLitres(),
                Math.min(25, crop.kc().on(age, crop.stages()) * reference),
                crop.roots().depthM(age, Math.min(400, deepest)),
                crop.freeShare());
        SoilWater felt = told.felt() == null ? before : before.felt(told.felt(), day);
        boolean guessed = told.tminC() == null || told.tmaxC() == null || told.rainMm() == null;
        return new Line(told.date(), reference, day, felt.after(day), guessed);
    }

    /**
     * The next watering.
     *
     * @param date morning on which to water
     * @param litres for the whole planting or container
     */
    public record Next(LocalDate date, double litres) {}

    /**
     * The next watering after the days of the ledger, under the days ahead taken without watering.
     *
     * @param past days up to now
     * @param ahead days from the next on, without a gap
     * @return empty when none of the days ahead needs it
     */
    public Optional<Next> next(List<Told> past, List<Told> ahead) {
        return course(past, ahead).next();
    }

    /**
     * The days up to now and the next watering after them.
     *
     * @param lines days up to now
     * @param next empty when none of the days ahead needs water
     */
    public record Course(List<Line> lines, Optional<Next> next) {}

    /** As {@link #lines} and {@link #next}, each day worked once. */
    public Course course(List<Told> past, List<Told> ahead) {
        List<Told> all = new ArrayList<>(past);
        ahead.stream()
                .map(day -> new Told(day.date(), day.tminC(), day.tmaxC(), day.rainMm(), 0, null))
                .forEach(all::add);
        List<Line> lines = lines(all);
        int known = Math.max(0, lines.size() - ahead.size());
        SoilWater now =
                known == 0 ? SoilWater.FULL : lines.get(known - 1).done().after();
        List<Watering.Ahead> days = lines.subList(known, lines.size()).stream()
                .map(line -> new Watering.Ahead(line.date(), line.day()))
                .toList();
        Optional<Next> next = Watering.next(now, days)
                .map(found -> new Next(found.date(), ground.litresMissing(new SoilWater(found.depthMm()))));
        return new Course(lines.subList(0, known), next);
    }
}
