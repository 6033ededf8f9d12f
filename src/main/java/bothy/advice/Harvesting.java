package bothy.advice;

import bothy.advice.facts.Frosts;
import bothy.advice.facts.Latest;
import bothy.advice.facts.Outlook;
import bothy.agronomy.Season;
import bothy.almanac.Range;
import bothy.almanac.Sheet;
import bothy.garden.Planting;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** When one planting may be harvested, and until when a sowing still ripens: by degree days where the warmth is known, else by days. */
final class Harvesting {
    /** A last day of sowing further ahead than this is next season's: this season's is past. */
    private static final int SEASON_AHEAD_DAYS = 200;
    /** What takes longer than this from sowing to harvest is not hurried by the frost. Common practice. */
    private static final int OVER_WINTER_DAYS = 180;

    /** Raised from seed, what stands for years bears in its second season. Common practice. */
    private static final int FROM_SEED_DAYS = 300;

    private static final int HARDY_WEEKS = 4;
    private static final int HALF_HARDY_WEEKS = 2;
    /** A frost down to here is light: what the sheets give as harmed only below -2.2 °C (28 °F) stands it. Common practice. */
    private static final double LIGHT_FROST_C = -2;

    private static final int SPRING_BEGINS_WEEKS = 14;
    private static final int SPRING_ENDS_MONTHS = 3;

    private final Planting planting;
    private final Sheet sheet;
    private final Map<What, Latest> latest;
    private final Frosts frosts;
    private final Frosts season;
    private final LocalDate today;
    private final Ripening ripening;
    private final Range overMildWinter;
    private final boolean cool;

    /**
     * @param frosts frosts around today
     * @param season frosts around the planting's beginning
     * @param ripening how the crop ripens by warmth, {@code null} to go by days
     * @param overMildWinter days to the first picking of a crop that grows through a mild winter, {@code null} where the sheet's days hold
     * @param cool whether the summers of the place are cool
     */
    Harvesting(
            Planting planting,
            Sheet sheet,
            Map<What, Latest> latest,
            Frosts frosts,
            Frosts season,
            LocalDate today,
            Ripening ripening,
            Range overMildWinter,
            boolean cool) {
        this.cool = cool;
        this.planting = planting;
        this.sheet = sheet;
        this.latest = latest;
        this.frosts = frosts;
        this.season = season;
        this.today = today;
        this.ripening = ripening;
        this.overMildWinter = overMildWinter;
    }

    /**
     * Whether it was begun in the season that its days to harvest are not about: a crop of spring that stands over winter, one of autumn
     * set in spring. Over winter stands what is begun from three months after the last frost to fourteen weeks before the next (common
     * practice: cloves set by January still get their cold).
     */
    boolean inOtherSeason() {
        Sheet.Harvest harvest = sheet.harvest();
        if (harvest == null || harvest.daysFromOtherSeason() == null || planting.begun() == null) {
            return false;
        }
        if (overMildWinter != null) {
            return true;
        }
        return begunInSpring() == ofAutumn(harvest);
    }

    private boolean begunInSpring() {
        LocalDate frost = season.lastSpring();
        return !planting.begun().isBefore(frost.minusWeeks(SPRING_BEGINS_WEEKS))
                && planting.begun().isBefore(frost.plusMonths(SPRING_ENDS_MONTHS));
    }

    private Range otherSeason(Sheet.Harvest harvest) {
        return overMildWinter != null ? overMildWinter : harvest.daysFromOtherSeason();
    }

    private boolean ofAutumn(Sheet.Harvest harvest) {
        return fromSowing(harvest).middle() > OVER_WINTER_DAYS;
    }

    /** Days to the first flower in the other season: those to the harvest less those to ripen. */
    Range toFlowerInOtherSeason() {
        Range whole = otherSeason(sheet.harvest());
        Range ripe = sheet.flowering().daysToRipe();
        return new Range(whole.low() - ripe.low(), whole.high() - ripe.high());
    }

    /** The last day on which a sowing can still ripen before the first autumn frost. */
    Optional<Outlook> latestSowing() {
        Sheet.Harvest harvest = sheet.harvest();
        if (harvest == null || fromSowing(harvest) == null) {
            return Optional.empty();
        }
        if (sheet.perennial()) {
            return latestPlanting();
        }
        Range spring = sheet.sowing() == null ? null : sheet.sowing().weeksFromLastFrostOutdoors();
        boolean bulbs = ofAutumn(harvest) && harvest.daysFromOtherSeason() != null || onlyOfSets();
        if (bulbs && spring != null) {
            // Days too long make bulbs before the plant has leaves: its spring window ends it, not the frost.
            LocalDate end = frosts.lastSpring().plusDays(Math.round(7 * spring.high()));
            return Optional.of(new Outlook(
                    planting.id(),
                    What.SOWN,
                    "latest",
                    frosts.lastSpring().plusDays(Math.round(7 * spring.low())),
                    end,
                    frosts.told()));
        }
        LocalDate end = frosts.firstAutumn().plusWeeks(weeksAfterTheFirstFrost());
        // Just before the end, so that the order of the frosts, which a grower may tell oddly, does not matter here.
        LocalDate byDays = new Season(end.minusDays(1), end)
                .lastSowing(days(fromSowing(harvest).middle()), 0, slack(harvest));
        LocalDate last = byWarmth(harvest, end).orElse(byDays);
        if (last.isAfter(today.plusDays(SEASON_AHEAD_DAYS))) {
            last = last.minusYears(1);
        }
        return Optional.of(new Outlook(planting.id(), What.SOWN, "latest", last.minusDays(14), last, frosts.told()));
    }

    /** The first frosts of autumn are light: what they do not harm goes on ripening. Common practice: a hardy crop for four weeks, a half-hardy one for two. */
    private int weeksAfterTheFirstFrost() {
        Sheet.Growth growth = sheet.growth();
        if (growth == null || growth.hardiness() == Sheet.Hardiness.TENDER) {
            return 0;
        }
        if (growth.hardiness() == Sheet.Hardiness.HARDY) {
            return HARDY_WEEKS;
        }
        boolean standsLightFrost = growth.harmedBelowC() != null && growth.harmedBelowC() <= LIGHT_FROST_C;
        return standsLightFrost ? HALF_HARDY_WEEKS : 0;
    }

    /** What stands for years has to root before the winter, not to ripen. */
    private Optional<Outlook> latestPlanting() {
        Range autumn = sheet.sowing() == null ? null : sheet.sowing().weeksFromFirstFrostAutumn();
        return Optional.ofNullable(autumn).map(weeks -> {
            LocalDate ahead = frosts.firstAutumn().plusDays(Math.round(7 * weeks.high()));
            LocalDate end = ahead.isAfter(today.plusDays(SEASON_AHEAD_DAYS)) ? ahead.minusYears(1) : ahead;
            return new Outlook(planting.id(), What.SOWN, "latest", end.minusDays(14), end, frosts.told());
        });
    }

    /** Shallots; onions may also be sown, and then the frost ends them. */
    private boolean onlyOfSets() {
        return sheet.growth() != null
                && sheet.growth().start() == Sheet.Start.SET
                && sheet.sowing() != null
                && sheet.sowing().where() == Sheet.Where.OUTDOORS;
    }

    /** By degree days, which slow down in autumn by themselves; what is raised under cover has its weeks there before. */
    private Optional<LocalDate> byWarmth(Sheet.Harvest harvest, LocalDate end) {
        if (ripening == null || fromSowing(harvest).middle() > OVER_WINTER_DAYS) {
            return Optional.empty();
        }
        boolean raised = fromPlantingOut(harvest) != null
                && sheet.sowing() != null
                && sheet.sowing().where() == Sheet.Where.INDOORS
                && sheet.sowing().weeksToPlantingOut() != null;
        Range days = raised ? fromPlantingOut(harvest) : fromSowing(harvest);
        long indoors =
                raised ? Math.round(7 * sheet.sowing().weeksToPlantingOut().middle()) : 0;
        return ripening.lastBeginning(end, ripening.needed(days.middle(), days, !raised))
                .map(day -> day.minusDays(indoors));
    }

    /** Days shorten for what would ripen in autumn; a crop that stands over winter has its own time. */
    private int slack(Sheet.Harvest harvest) {
        return fromSowing(harvest).middle() > OVER_WINTER_DAYS ? 0 : Season.AUTUMN_SLACK_DAYS;
    }

    private static int days(double days) {
        return (int) Math.max(10, Math.min(400, Math.round(days)));
    }

    /** When the first may be picked, and when again. */
    List<Outlook> harvest() {
        List<Outlook> found = new ArrayList<>();
        Latest flower = latest.getOrDefault(What.FRUIT_SET, latest.get(What.FLOWERING));
        Range ripe = sheet.flowering() == null ? null : sheet.flowering().daysToRipe();
        Latest out = latest.get(What.PLANTED_OUT);
        Sheet.Harvest harvest = sheet.harvest();
        if (flower != null && ripe != null) {
            found.add(after(What.HARVESTED, "flower", flower.first(), ripe, true));
        } else if (sheet.perennial()) {
            inItsSeason(harvest).ifPresent(found::add);
        } else if (harvest != null && fromSowing(harvest) != null && planting.begun() != null && notBought()) {
            boolean inPlace = out == null;
            if (earlyKind()) {
                found.add(after(What.HARVESTED, "early", planting.begun(), harvest.earlyDays(), true));
                return withPicking(found, harvest);
            }
            if (inOtherSeason()) {
                found.add(afterWinter(
                        after(What.HARVESTED, "other-season", planting.begun(), otherSeason(harvest), true)));
                return withPicking(found, harvest);
            }
            Range days = inPlace ? warmed(planting.begun(), fromSowing(harvest), true) : fromSowing(harvest);
            if (!inPlace && fromPlantingOut(harvest) != null && ripening != null) {
                found.add(after(
                        What.HARVESTED,
                        "sowing",
                        out.first(),
                        warmed(out.first(), fromPlantingOut(harvest), false),
                        true));
            } else {
                found.add(afterWinter(
                        notBefore(after(What.HARVESTED, "sowing", planting.begun(), days, true), out, harvest)));
            }
        } else if (harvest != null && fromPlantingOut(harvest) != null && out != null) {
            found.add(after(
                    What.HARVESTED,
                    "planting-out",
                    out.first(),
                    warmed(out.first(), fromPlantingOut(harvest), false),
                    true));
        }
        return withPicking(found, harvest);
    }

    /** What stands over winter hardly grows in it: the longer the cold lasts, the later it is ready. */
    private Outlook afterWinter(Outlook byDays) {
        Range weeks = sheet.harvest().weeksFromLastFrostOverWinter();
        if (weeks == null || overMildWinter != null || season.none() || begunInSpring()) {
            return byDays;
        }
        LocalDate frost = season.lastSpring();
        while (frost.isBefore(planting.begun())) {
            frost = frost.plusYears(1);
        }
        LocalDate first = frost.plusDays(Math.round(7 * weeks.low()));
        LocalDate last = frost.plusDays(Math.round(7 * weeks.high()));
        return new Outlook(
                byDays.planting(),
                byDays.what(),
                byDays.how(),
                byDays.from().isBefore(first) ? first : byDays.from(),
                byDays.to().isBefore(last) ? last : byDays.to(),
                byDays.told());
    }

    /** Plants that went out late are not ready for having been sown early. */
    private Outlook notBefore(Outlook bySowing, Latest out, Sheet.Harvest harvest) {
        if (out == null || fromPlantingOut(harvest) == null) {
            return bySowing;
        }
        LocalDate least =
                out.first().plusDays(Math.round(fromPlantingOut(harvest).low()));
        LocalDate from = bySowing.from().isBefore(least) ? least : bySowing.from();
        LocalDate to = bySowing.to().isBefore(from) ? from : bySowing.to();
        return new Outlook(bySowing.planting(), bySowing.what(), bySowing.how(), from, to, bySowing.told());
    }

    private boolean earlyKind() {
        List<String> early = sheet.harvest().earlyKinds();
        return early != null
                && planting.variety() != null
                && early.contains(planting.variety().toLowerCase(Locale.ROOT));
    }

    /** Days from sowing as the place makes them; the warmth of a station's record says more. */
    private Range fromSowing(Sheet.Harvest harvest) {
        return cool && ripening == null && harvest.daysFromSowingCool() != null
                ? harvest.daysFromSowingCool()
                : harvest.daysFromSowing();
    }

    /** Days from planting out, so much longer as those from sowing are where summers are cool. */
    private Range fromPlantingOut(Sheet.Harvest harvest) {
        Range out = harvest.daysFromPlantingOut();
        Range longer = fromSowing(harvest);
        Range usual = harvest.daysFromSowing();
        return out == null || longer == null
                ? out
                : new Range(out.low() + longer.low() - usual.low(), out.high() + longer.high() - usual.high());
    }

    private List<Outlook> withPicking(List<Outlook> found, Sheet.Harvest harvest) {
        Latest picked = latest.get(What.HARVESTED);
        if (picked != null && harvest != null && harvest.pickEveryDays() != null) {
            LocalDate next = picked.on().plusDays(Math.round(harvest.pickEveryDays()));
            found.add(new Outlook(planting.id(), What.HARVESTED, "again", next, next.plusDays(2), true));
        }
        return found;
    }

    /** The days of the sheet as the warmth of this year and place makes them. */
    private Range warmed(LocalDate begun, Range days, boolean fromSowing) {
        return ripening == null || days.middle() > OVER_WINTER_DAYS
                ? days
                : ripening.daysFrom(begun, days, fromSowing).orElse(days);
    }

    /** The season of the year at which a crop that stands for years bears next, old enough to bear. */
    private Optional<Outlook> inItsSeason(Sheet.Harvest harvest) {
        long oldEnough = planting.start() == Planting.Start.SEED
                ? FROM_SEED_DAYS
                : Math.round(harvest.daysFromSowing().low());
        LocalDate rooted = planting.begun() == null ? today : planting.begun().plusDays(oldEnough);
        for (int year = -1; year <= 2; year++) {
            LocalDate frost = frosts.lastSpring().plusYears(year);
            LocalDate from =
                    frost.plusDays(Math.round(7 * harvest.weeksFromLastFrost().low()));
            LocalDate to =
                    frost.plusDays(Math.round(7 * harvest.weeksFromLastFrost().high()));
            if (!to.isBefore(today) && !to.isBefore(rooted)) {
                LocalDate first = from.isBefore(rooted) && planting.begun() != null ? rooted : from;
                return Optional.of(new Outlook(planting.id(), What.HARVESTED, "season", first, to, frosts.told()));
            }
        }
        return Optional.empty();
    }

    /** A plant that was bought is of no known age; a slip or a runner begins when it is set. */
    private boolean notBought() {
        Sheet.Start start = sheet.growth() == null ? null : sheet.growth().start();
        return planting.start() != Planting.Start.PLANT || start == Sheet.Start.SLIP || start == Sheet.Start.PLANT;
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
