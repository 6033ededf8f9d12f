package bothy.almanac;

import bothy.almanac.Sheet.Germination;
import bothy.almanac.Sheet.Hardiness;
import bothy.almanac.Sheet.Sowing;
import bothy.almanac.Sheet.Start;
import bothy.almanac.Sheet.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Figures of one sheet that cannot be true together, or that another figure calls for. */
final class Contradictions {
    /** The published table steps by 5 °C and the published limits are round figures in °F, so its ends stand a little apart. */
    private static final double TABLE_STEPS_OVER_C = 2;

    private static final Set<String> FROM_FLOWERS = Set.of("fruit", "pods", "cobs");
    private final Sheet sheet;
    private final YamlFile file;
    private final List<Problem> found = new ArrayList<>();

    Contradictions(Sheet sheet, YamlFile file) {
        this.sheet = sheet;
        this.file = file;
    }

    List<Problem> found() {
        seedHasTemperatures();
        temperaturesRise();
        tableLiesWithinLimits();
        sowingHasItsTime();
        raisedPlantsAreHardened();
        seedlingAgeFitsTheDates();
        tenderCropsWaitForTheFrost();
        feedingAgrees();
        fruitComesFromFlowers();
        harvestFollowsFlowering();
        settingLimitsRise();
        plantingOutShortensTheWait();
        storeIsCheckedInTime();
        return found;
    }

    private void seedHasTemperatures() {
        if (sheet.growth().start() != Start.SEED) {
            return;
        }
        Germination seed = sheet.germination();
        if (seed == null
                || seed.minSoilTempC() == null
                || seed.optimumSoilTempC() == null
                || seed.maxSoilTempC() == null) {
            report(
                    "/germination",
                    "a crop started from seed needs germination with minSoilTempC, optimumSoilTempC and maxSoilTempC. "
                            + "Add them.");
        }
    }

    private void temperaturesRise() {
        Germination seed = sheet.germination();
        if (seed == null || seed.optimumSoilTempC() == null) {
            return;
        }
        Range best = seed.optimumSoilTempC();
        if (seed.minSoilTempC() != null && seed.minSoilTempC() > best.low()) {
            report(
                    "/germination/minSoilTempC",
                    "minSoilTempC " + number(seed.minSoilTempC()) + " is above the low end of optimumSoilTempC "
                            + number(best.low()) + "; the least cannot be warmer than the best. Correct one of them.");
        }
        if (seed.maxSoilTempC() != null && seed.maxSoilTempC() < best.high()) {
            report(
                    "/germination/maxSoilTempC",
                    "maxSoilTempC " + number(seed.maxSoilTempC()) + " is below the high end of optimumSoilTempC "
                            + number(best.high()) + "; the most cannot be colder than the best. Correct one of them.");
        }
    }

    private void tableLiesWithinLimits() {
        Germination seed = sheet.germination();
        if (seed == null
                || seed.emergenceDays() == null
                || seed.minSoilTempC() == null
                || seed.maxSoilTempC() == null) {
            return;
        }
        Range limits = new Range(seed.minSoilTempC() - TABLE_STEPS_OVER_C, seed.maxSoilTempC() + TABLE_STEPS_OVER_C);
        seed.emergenceDays().keySet().stream()
                .filter(temperature -> !limits.contains(temperature))
                .forEach(temperature -> report(
                        "/germination/emergenceDays",
                        "emergenceDays has a figure at " + number(temperature)
                                + " °C, but nothing comes up outside minSoilTempC " + number(seed.minSoilTempC())
                                + " to maxSoilTempC " + number(seed.maxSoilTempC())
                                + ". Remove that figure or correct the limits."));
    }

    private void sowingHasItsTime() {
        Sowing sowing = sheet.sowing();
        if (sowing.where() != Where.OUTDOORS && sowing.weeksBeforeLastFrostIndoors() == null) {
            report("/sowing", where() + ", so weeksBeforeLastFrostIndoors is needed. Add it.");
        }
        if (sowing.where() != Where.INDOORS
                && sowing.weeksFromLastFrostOutdoors() == null
                && sowing.weeksFromFirstFrostAutumn() == null) {
            report(
                    "/sowing",
                    where() + ", so weeksFromLastFrostOutdoors or weeksFromFirstFrostAutumn is needed. Add one.");
        }
    }

    private void raisedPlantsAreHardened() {
        boolean raised = sheet.sowing().where() != Where.OUTDOORS;
        if (raised && sheet.sowing().weeksToPlantingOut() == null) {
            report("/sowing", where() + ", so weeksToPlantingOut is needed. Add it.");
        }
        if (raised && sheet.plantingOut().hardeningDays() == null) {
            report("/plantingOut", where() + ", so hardeningDays is needed. Add it.");
        }
        if (raised && sheet.plantingOut().weeksFromLastFrost() == null) {
            report("/plantingOut", where() + ", so weeksFromLastFrost is needed. Add it.");
        }
    }

    private void seedlingAgeFitsTheDates() {
        Range before = sheet.sowing().weeksBeforeLastFrostIndoors();
        Range out = sheet.plantingOut().weeksFromLastFrost();
        Range age = sheet.sowing().weeksToPlantingOut();
        if (before == null || out == null || age == null) {
            return;
        }
        double youngest = before.low() + out.low();
        double oldest = before.high() + out.high();
        if (youngest > age.high() || oldest < age.low()) {
            report(
                    "/sowing/weeksBeforeLastFrostIndoors",
                    "sown " + span(before) + " weeks before the last frost and planted out " + span(out)
                            + " weeks from it makes seedlings " + span(new Range(youngest, oldest))
                            + " weeks old, but weeksToPlantingOut is " + span(age) + ". Correct one of them.");
        }
    }

    private void tenderCropsWaitForTheFrost() {
        if (sheet.growth().hardiness() != Hardiness.TENDER) {
            return;
        }
        if (sheet.growth().harmedBelowC() == null) {
            report(
                    "/growth",
                    "a tender crop needs harmedBelowC, the temperature below which its leaves are harmed. Add it.");
        }
        Range out = sheet.plantingOut().weeksFromLastFrost();
        if (out != null && out.low() < 0) {
            report(
                    "/plantingOut/weeksFromLastFrost",
                    "a tender crop cannot be planted out " + number(-out.low())
                            + " weeks before the last frost; the least is 0. Correct weeksFromLastFrost or hardiness.");
        }
    }

    private void feedingAgrees() {
        boolean none = "none".equals(sheet.feeding().from());
        if (none != "none".equals(sheet.feeding().kind())) {
            report(
                    "/feeding",
                    "feeding is from \"" + sheet.feeding().from() + "\" with \""
                            + sheet.feeding().kind() + "\"; either both are none or neither is. Correct one of them.");
        }
        if (none != (sheet.feeding().everyDays() == null)) {
            report(
                    "/feeding",
                    none
                            ? "feeding is none, so everyDays means nothing. Remove it."
                            : "a crop that is fed needs everyDays, the days between feeds. Add it.");
        }
    }

    private void fruitComesFromFlowers() {
        if (FROM_FLOWERS.contains(sheet.growth().picked()) && sheet.flowering() == null) {
            report(
                    "/growth/picked",
                    sheet.growth().picked() + " come from flowers, so the group flowering is needed. Add it.");
        }
    }

    private void harvestFollowsFlowering() {
        if (sheet.flowering() == null) {
            return;
        }
        double soonest = sheet.flowering().daysFromSowing().low()
                + sheet.flowering().daysToRipe().low();
        double latest = sheet.harvest().daysFromSowing().high();
        if (latest < soonest) {
            report(
                    "/harvest/daysFromSowing",
                    "the harvest is over " + number(latest)
                            + " days from sowing, but flowering and ripening take at least " + number(soonest)
                            + ". Correct one of them.");
        }
    }

    private void settingLimitsRise() {
        if (sheet.flowering() == null || sheet.flowering().setNightFromC() == null) {
            return;
        }
        double coldest = sheet.flowering().setNightFromC();
        risesAbove(coldest, "setNightToC", sheet.flowering().setNightToC());
        risesAbove(coldest, "setDayToC", sheet.flowering().setDayToC());
    }

    private void risesAbove(double coldestNightC, String limit, Double tempC) {
        if (tempC != null && tempC <= coldestNightC) {
            report(
                    "/flowering/" + limit,
                    "fruit sets up to " + number(tempC) + " °C and from " + number(coldestNightC)
                            + " °C: at no temperature. Correct one of them.");
        }
    }

    private void plantingOutShortensTheWait() {
        Range fromPlantingOut = sheet.harvest().daysFromPlantingOut();
        Range fromSowing = sheet.harvest().daysFromSowing();
        if (fromPlantingOut != null && fromPlantingOut.high() >= fromSowing.high()) {
            report(
                    "/harvest/daysFromPlantingOut",
                    "the harvest is " + span(fromPlantingOut) + " days from planting out but " + span(fromSowing)
                            + " from sowing, which comes first. Correct one of them.");
        }
    }

    private void storeIsCheckedInTime() {
        if (sheet.storing().checkEveryDays() > sheet.storing().lifeDays().high()) {
            report(
                    "/storing/checkEveryDays",
                    "the store is checked every " + number(sheet.storing().checkEveryDays())
                            + " days, but nothing keeps beyond "
                            + number(sheet.storing().lifeDays().high()) + " days. Correct one of them.");
        }
    }

    private void report(String pointer, String text) {
        found.add(file.problem(pointer, text));
    }

    private String where() {
        return "where is " + sheet.sowing().where().name().toLowerCase(Locale.ROOT);
    }

    private static String span(Range range) {
        return number(range.low()) + " to " + number(range.high());
    }

    private static String number(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
