package bothy.advice;

import bothy.advice.facts.Frosts;
import bothy.advice.facts.Outlook;
import bothy.almanac.Range;
import bothy.almanac.Sheet;
import bothy.almanac.SowingCalendars;
import bothy.garden.Planting;
import bothy.garden.What;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** When a crop that is not begun yet may be sown, from its sheet and the frost dates or the calendar of the place. */
final class SowingOutlooks {
    /** A sowing under cover so long after its weeks is late and not lost. By judgement. */
    private static final int LATE_SOWING_DAYS = 28;

    /** No sowing later than this after the spring window belongs to it. Own choice. */
    private static final int SEASON_DAYS = 150;

    private final Planting planting;
    private final Sheet sheet;
    private final Frosts season;
    private final LocalDate today;
    private final SowingCalendars.Calendar calendar;
    private final boolean south;
    private final List<Outlook> found = new ArrayList<>();

    /**
     * @param calendar when the crop is sown where the grower is, {@code null} where that goes by frost
     * @param south whether the calendar is half a year later
     */
    SowingOutlooks(
            Planting planting,
            Sheet sheet,
            Frosts season,
            LocalDate today,
            SowingCalendars.Calendar calendar,
            boolean south) {
        this.planting = planting;
        this.sheet = sheet;
        this.season = season;
        this.today = today;
        this.calendar = calendar;
        this.south = south;
    }

    /**
     * The windows that are open or the next to come.
     *
     * @param ripensUntil the last day on which a sowing still ripens, {@code null} where that is not known
     */
    List<Outlook> ahead(SeasonDates seasons, LocalDate ripensUntil) {
        Sheet.Sowing sowing = sheet.sowing();
        if (sowing == null) {
            return found;
        }
        if (calendar != null) {
            boolean clove = sheet.growth() != null && sheet.growth().start() == Sheet.Start.CLOVE;
            byCalendar("indoors", calendar.underCover());
            byCalendar(clove ? "autumn" : "outdoors", calendar.inPlace());
            return found;
        }
        weeks("indoors", negated(sowing.weeksBeforeLastFrostIndoors()), seasons, true, null);
        lateIndoors(negated(sowing.weeksBeforeLastFrostIndoors()), seasons, ripensUntil);
        weeks("outdoors", sowing.weeksFromLastFrostOutdoors(), seasons, true, ripensUntil);
        weeks("autumn", sowing.weeksFromFirstFrostAutumn(), seasons, false, null);
        return found;
    }

    private void byCalendar(String how, List<SowingCalendars.Span> spans) {
        SowingCalendars.atOrAfter(spans, today, south)
                .ifPresent(time ->
                        found.add(new Outlook(planting.id(), What.SOWN, how, time.from(), time.to(), season.told())));
    }

    /** The time that is running, else the nearer of the one that is over and the next. */
    Optional<Outlook> latestByCalendar() {
        Optional<SowingCalendars.Time> next = SowingCalendars.atOrAfter(calendar.all(), today, south);
        Optional<SowingCalendars.Time> over = SowingCalendars.before(calendar.all(), today, south);
        if (next.isEmpty() || over.isEmpty()) {
            return Optional.empty();
        }
        boolean past = next.get().from().isAfter(today)
                && ChronoUnit.DAYS.between(over.get().to(), today)
                        <= ChronoUnit.DAYS.between(today, next.get().from());
        SowingCalendars.Time time = past ? over.get() : next.get();
        return Optional.of(new Outlook(planting.id(), What.SOWN, "latest", time.from(), time.to(), season.told()));
    }

    static Range negated(Range weeks) {
        return weeks == null ? null : new Range(-weeks.high(), -weeks.low());
    }

    /** The next window that is not past yet; it ends no later than the last day on which a sowing still ripens. */
    private void weeks(String how, Range weeks, SeasonDates seasons, boolean fromSpring, LocalDate ripensUntil) {
        if (weeks == null) {
            return;
        }
        for (int year = -1; year <= 1; year++) {
            Frosts one = seasons.around(today.plusYears(year));
            LocalDate frost = fromSpring ? one.lastSpring() : one.firstAutumn();
            LocalDate from = frost.plusDays(Math.round(weeks.low() * 7));
            LocalDate to = endOf(from, frost.plusDays(Math.round(weeks.high() * 7)), ripensUntil);
            if (!to.isBefore(today)) {
                found.add(new Outlook(planting.id(), What.SOWN, how, from, to, one.told()));
                return;
            }
        }
    }

    /** Just after its weeks under cover a crop is still sown, as long as it ripens. */
    private void lateIndoors(Range weeks, SeasonDates seasons, LocalDate ripensUntil) {
        if (weeks != null) {
            Frosts one = seasons.around(today);
            LocalDate over = one.lastSpring().plusDays(Math.round(weeks.high() * 7));
            LocalDate late = over.plusDays(LATE_SOWING_DAYS);
            LocalDate to = ripensUntil != null && ripensUntil.isBefore(late) ? ripensUntil : late;
            if (over.isBefore(today) && !to.isBefore(today)) {
                found.add(new Outlook(planting.id(), What.SOWN, "indoors-late", over, to, one.told()));
            }
        }
    }

    /** What is sown again and again goes on to the last sowing that ripens, other crops no further than their weeks. */
    private LocalDate endOf(LocalDate from, LocalDate byWeeks, LocalDate ripensUntil) {
        boolean ofThisSeason = ripensUntil != null
                && !ripensUntil.isBefore(from)
                && ripensUntil.isBefore(byWeeks.plusDays(SEASON_DAYS));
        boolean again = sheet.sowing().againEveryDays() != null;
        return ofThisSeason && (again || ripensUntil.isBefore(byWeeks)) ? ripensUntil : byWeeks;
    }
}
