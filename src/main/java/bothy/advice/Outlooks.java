package bothy.advice;

import bothy.advice.facts.Frosts;
import bothy.advice.facts.Latest;
import bothy.advice.facts.Outlook;
import bothy.advice.facts.Warmth;
import bothy.agronomy.Emergence;
import bothy.almanac.Range;
import bothy.almanac.Sheet;
import bothy.almanac.SowingCalendars;
import bothy.garden.Planting;
import bothy.garden.What;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Works out when something may be expected of one planting, or is best done, from its sheet, its diary and the frost dates. */
final class Outlooks {
    /** So many days after its usual date the first frost has come nearly every year. Common practice. */
    private static final int DAYS_AFTER_FROST = 28;
    /** Seed is moved to more warmth within so many days of sowing. Common practice. */
    private static final int MOVED_AS_SEED_DAYS = 35;
    /** Frost so near its usual date may end what is tender. Common practice. */
    private static final int DAYS_BEFORE_FROST = 21;
    /** What sets later than this before the first frost seldom ripens out of doors. Common practice. */
    private static final int LAST_WEEKS_DAYS = 28;
    /** Under glass tender plants go on so much longer. Common practice. */
    private static final int LONGER_UNDER_GLASS = 56;
    /** Tender plants go into an unheated greenhouse so many weeks before the last frost. Common practice. */
    private static final int WEEKS_INTO_GLASS = 4;

    private final Planting planting;
    private final Sheet sheet;
    private final Map<What, Latest> latest;
    private final LocalDate lifted;
    private final Frosts season;
    private final LocalDate today;
    private final SowingCalendars.Calendar calendar;
    private final boolean south;
    private final Harvesting harvesting;
    private final List<Outlook> found = new ArrayList<>();

    /**
     * @param lifted when the most of it was harvested, {@code null} before that
     * @param frosts frosts around today
     * @param season frosts around the planting's beginning
     * @param ripening how the crop ripens by warmth where that is known and it stands outdoors, {@code null} to go by days
     * @param calendar when the crop is sown where the grower is, {@code null} where that goes by frost
     * @param south whether the calendar is half a year later
     * @param cool whether the summers of the place are cool
     */
    Outlooks(
            Planting planting,
            Sheet sheet,
            Map<What, Latest> latest,
            LocalDate lifted,
            Frosts frosts,
            Frosts season,
            LocalDate today,
            Ripening ripening,
            SowingCalendars.Calendar calendar,
            boolean south,
            boolean cool) {
        this.planting = planting;
        this.sheet = sheet;
        this.latest = latest;
        this.lifted = lifted;
        this.season = season;
        this.today = today;
        this.calendar = calendar;
        this.south = south;
        this.harvesting = new Harvesting(
                planting,
                sheet,
                latest,
                frosts,
                season,
                today,
                ripening,
                calendar == null ? null : calendar.overWinterDays(),
                cool);
    }

    List<Outlook> all(SeasonDates seasons, Warmth warmth, List<Double> soilC) {
        SowingOutlooks sowing = new SowingOutlooks(planting, sheet, season, today, calendar, south);
        Optional<Outlook> lastSowing = calendar == null ? harvesting.latestSowing() : sowing.latestByCalendar();
        if (planting.begunAtAll()) {
            thisSeasonsSowing();
        } else {
            found.addAll(sowing.ahead(seasons, lastSowing.map(Outlook::to).orElse(null)));
        }
        lastSowing.ifPresent(found::add);
        emergence(warmth, soilC);
        plantingOut();
        flowering();
        feeding();
        found.addAll(harvesting.harvest());
        stopWatering();
        curingAndStore();
        endByFrost();
        return found;
    }

    /** Tender plants seldom outlive the first frosts by long; nobody tells that they are gone. */
    private void endByFrost() {
        boolean tender = sheet.growth() != null && sheet.growth().hardiness() == Sheet.Hardiness.TENDER;
        if (tender && planting.begun() != null) {
            LocalDate frost = season.firstAutumn();
            ends("frost", frost, frost.plusDays(DAYS_AFTER_FROST));
            ends("hard-frost", frost.minusDays(DAYS_BEFORE_FROST), frost);
            ends("last-weeks", frost.minusDays(LAST_WEEKS_DAYS), frost);
            ends("under-glass", frost, frost.plusDays(LONGER_UNDER_GLASS));
        }
    }

    private void ends(String how, LocalDate from, LocalDate to) {
        found.add(new Outlook(planting.id(), What.DIED, how, from, to, season.told()));
    }

    /** When it is sown in the season in which it was begun, from the first day under cover to the last outdoors. */
    private void thisSeasonsSowing() {
        Sheet.Sowing sowing = sheet.sowing();
        if (sowing == null || planting.begun() == null || planting.start() == Planting.Start.PLANT) {
            return;
        }
        Range indoors = planting.place() == null && planting.container() == null
                ? null
                : SowingOutlooks.negated(sowing.weeksBeforeLastFrostIndoors());
        Range outdoors = sowing.weeksFromLastFrostOutdoors();
        Range first = indoors == null ? outdoors : indoors;
        Range last = outdoors == null ? indoors : outdoors;
        if (first != null && last != null) {
            found.add(new Outlook(
                    planting.id(),
                    What.SOWN,
                    "this-season",
                    season.lastSpring().plusDays(Math.round(first.low() * 7)),
                    season.lastSpring().plusDays(Math.round(last.high() * 7)),
                    season.told()));
        }
    }

    /** The next feed, an interval after the last. */
    private void feeding() {
        Latest fed = latest.get(What.FED);
        if (fed != null && sheet.feeding() != null && sheet.feeding().everyDays() != null) {
            LocalDate next = fed.on().plusDays(Math.round(sheet.feeding().everyDays()));
            found.add(new Outlook(planting.id(), What.FED, "again", next, next.plusDays(3), true));
        }
    }

    private void emergence(Warmth warmth, List<Double> soilC) {
        Sheet.Germination germination = sheet.germination();
        // Seed that was too cold starts anew where it was moved to.
        LocalDate sown = movedAsSeed() ? latest.get(What.MOVED).on() : planting.begun();
        if (germination == null || sown == null || planting.start() == Planting.Start.PLANT) {
            return;
        }
        // The table is for seed: sets, cloves and tubers keep their own time.
        Optional<Emergence.Dates> dates = planting.start() == Planting.Start.SEED
                ? byTemperature(germination, sown, warmth, soilC)
                : Optional.empty();
        if (dates.isPresent()) {
            LocalDate first = dates.get().oneInTenBy();
            LocalDate late = dates.get().nineInTenBy();
            found.add(new Outlook(planting.id(), What.EMERGED, "temperature", first, late, warmth.told()));
        } else if (germination.usualDays() != null) {
            found.add(after(What.EMERGED, "usual", sown, germination.usualDays(), true));
        }
    }

    /** What is moved weeks after it was sown is moved as a plant. */
    private boolean movedAsSeed() {
        Latest moved = latest.get(What.MOVED);
        return moved != null
                && planting.begun() != null
                && !moved.on().isAfter(planting.begun().plusDays(MOVED_AS_SEED_DAYS));
    }

    private static Optional<Emergence.Dates> byTemperature(
            Sheet.Germination germination, LocalDate sown, Warmth warmth, List<Double> soilC) {
        if (germination.emergenceDays() == null || germination.emergenceDays().size() < 2 || warmth == null) {
            return Optional.empty();
        }
        return Emergence.table(germination.emergenceDays()).dates(sown, soilC, warmth.tempC());
    }

    private void plantingOut() {
        Sheet.PlantingOut out = sheet.plantingOut();
        if (out == null || out.weeksFromLastFrost() == null) {
            return;
        }
        LocalDate underGlass = season.lastSpring().minusWeeks(WEEKS_INTO_GLASS);
        found.add(
                new Outlook(planting.id(), What.MOVED, "under-glass", underGlass, season.lastSpring(), season.told()));
        LocalDate grown = oldEnough();
        LocalDate from =
                season.lastSpring().plusDays(Math.round(out.weeksFromLastFrost().low() * 7));
        LocalDate to =
                season.lastSpring().plusDays(Math.round(out.weeksFromLastFrost().high() * 7));
        String how = "frost";
        if (calendar != null) {
            LocalDate begun = planting.begun() == null ? today : planting.begun();
            Optional<SowingCalendars.Time> time = SowingCalendars.atOrAfter(
                    calendar.out().isEmpty() ? calendar.inPlace() : calendar.out(),
                    grown == null ? begun : grown,
                    south);
            if (time.isEmpty()) {
                return;
            }
            from = time.get().from();
            to = time.get().to();
            how = "season";
        }
        if (grown != null && grown.isAfter(from)) {
            from = grown;
            how = "age";
        }
        Latest hardening = latest.get(What.HARDENING_STARTED);
        if (hardening != null && out.hardeningDays() != null) {
            hardened(hardening.first(), out.hardeningDays(), from, season.told());
            return;
        }
        found.add(
                new Outlook(planting.id(), What.PLANTED_OUT, how, from, to.isBefore(from) ? from : to, season.told()));
        if (out.hardeningDays() != null && planting.start() == Planting.Start.SEED) {
            beginHardening(from.minusDays(Math.round(out.hardeningDays().low())), from, season.told());
        }
    }

    /** Plants go out when the days of hardening off are over and the season has come, whichever is later. */
    private void hardened(LocalDate begun, Range days, LocalDate outFrom, boolean told) {
        LocalDate done = begun.plusDays(Math.round(days.low()));
        LocalDate from = done.isBefore(outFrom) ? outFrom : done;
        LocalDate to = begun.plusDays(Math.round(days.high()));
        found.add(new Outlook(planting.id(), What.PLANTED_OUT, "hardened", from, to.isBefore(from) ? from : to, told));
    }

    /** Hardening off begins so many days before the plants may go out; where that day is past, today. */
    private void beginHardening(LocalDate best, LocalDate outFrom, boolean told) {
        LocalDate from = best.isBefore(today) ? today : best;
        LocalDate to = outFrom.isBefore(from) ? from : outFrom;
        found.add(new Outlook(planting.id(), What.HARDENING_STARTED, "usual", from, to, told));
    }

    private LocalDate oldEnough() {
        Range weeks = sheet.sowing() == null ? null : sheet.sowing().weeksToPlantingOut();
        boolean seedling = planting.start() == Planting.Start.SEED;
        return weeks == null || planting.begun() == null || !seedling
                ? null
                : planting.begun().plusDays(Math.round(weeks.low() * 7));
    }

    private void flowering() {
        Range days = sheet.flowering() == null ? null : sheet.flowering().daysFromSowing();
        if (days != null && planting.begun() != null && planting.start() != Planting.Start.PLANT) {
            Range used = harvesting.inOtherSeason() ? harvesting.toFlowerInOtherSeason() : days;
            found.add(after(What.FLOWERING, "usual", planting.begun(), used, true));
        }
    }

    private void stopWatering() {
        Double before = sheet.watering() == null ? null : sheet.watering().stopDaysBeforeHarvest();
        if (before == null) {
            return;
        }
        found.stream()
                .filter(outlook ->
                        outlook.what() == What.HARVESTED && !outlook.how().equals("again"))
                .findFirst()
                .ifPresent(harvest -> {
                    // From the middle: dried off for the earliest day, most would stand dry for weeks.
                    long span = ChronoUnit.DAYS.between(harvest.from(), harvest.to());
                    LocalDate middle = harvest.from().plusDays(span / 2);
                    LocalDate stop = middle.minusDays(Math.round(before));
                    found.add(new Outlook(planting.id(), What.WATERED, "stop", stop, middle, harvest.told()));
                });
    }

    private void curingAndStore() {
        if (sheet.curing() != null && sheet.curing().days() != null && lifted != null) {
            found.add(after(What.CURED, "usual", lifted, sheet.curing().days(), true));
        }
        Latest stored = first(What.STORED, What.CURED);
        if (sheet.storing() != null && sheet.storing().lifeDays() != null && stored != null) {
            found.add(after(What.STORED, "life", stored.first(), sheet.storing().lifeDays(), true));
        }
        storeCheck();
    }

    /** The next look at the store: intervals from the day it was put away or last looked at; the one at hand and the one after. */
    private void storeCheck() {
        Latest stored = latest.get(What.STORED);
        Double every = sheet.storing() == null ? null : sheet.storing().checkEveryDays();
        if (stored == null || every == null) {
            return;
        }
        LocalDate looked = stored.on();
        Latest note = latest.get(What.NOTE);
        if (note != null && note.on().isAfter(looked)) {
            looked = note.on();
        }
        LocalDate next = looked.plusDays(Math.round(every));
        LocalDate after = next.plusDays(Math.round(every));
        while (!after.isAfter(today)) {
            next = after;
            after = after.plusDays(Math.round(every));
        }
        found.add(new Outlook(planting.id(), What.STORED, "check", next, after, true));
    }

    private Latest first(What... kinds) {
        for (What kind : kinds) {
            if (latest.containsKey(kind)) {
                return latest.get(kind);
            }
        }
        return null;
    }

    private Outlook after(What what, String how, LocalDate start, Range days, boolean told) {
        return new Outlook(
                planting.id(),
                what,
                how,
                start.plusDays(Math.round(days.low())),
                start.plusDays(Math.round(days.high())),
                told);
    }
}
