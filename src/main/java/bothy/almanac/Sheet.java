package bothy.almanac;

import com.fasterxml.jackson.annotation.JsonAlias;
import java.util.List;
import java.util.Map;

/**
 * The sheet of one crop: every figure that the rules use. A group is {@code null} where it does not apply to the crop (no curing
 * for a lettuce); a figure is {@code null} where no source was found. Where sources disagree the range spans them.
 *
 * @param crop name of the sheet, lower case with hyphens ("winter-squash")
 * @param botanical botanical name
 * @param family botanical family ("Cucurbitaceae"), the rotation group
 * @param sources source of each figure, by its path in the sheet ("sowing.depthMm")
 */
public record Sheet(
        String crop,
        String botanical,
        String family,
        Growth growth,
        Germination germination,
        Sowing sowing,
        PlantingOut plantingOut,
        Watering watering,
        WaterUse waterUse,
        Feeding feeding,
        Flowering flowering,
        Harvest harvest,
        Curing curing,
        Storing storing,
        Map<String, Source> sources) {

    /** By its crop, since the rules hash a sheet with each look at it and all its figures take long. */
    @Override
    public int hashCode() {
        return crop.hashCode();
    }

    /** Whether it stands for years and bears at the same season of each. */
    public boolean perennial() {
        return harvest != null && harvest.weeksFromLastFrost() != null;
    }

    /** How a crop stands cold. */
    public enum Hardiness {
        HARDY,
        @JsonAlias("half-hardy")
        HALF_HARDY,
        TENDER
    }

    /** What is put into the ground. */
    public enum Start {
        SEED,
        SET,
        CLOVE,
        TUBER,
        /** A shoot of a root, set before or after it has roots of its own. */
        SLIP,
        /** A young plant with bare roots or from a pot, bought or rooted from a runner. */
        PLANT
    }

    /** Where it is sown as a rule. */
    public enum Where {
        INDOORS,
        OUTDOORS,
        EITHER
    }

    /**
     * @param hardiness how it stands cold
     * @param start what is put into the ground as a rule
     * @param largeSeed whether one seed a cell is sown (squash, bean); small seed is sown thicker and thinned
     * @param habit "climbing", "bush", "trailing", "upright", "root", "bulb", "leaf", "tuber"
     * @param harmedBelowC air temperature below which leaves are harmed, °C
     * @param picked part picked: "fruit", "pods", "cobs", "leaves", "stems", "roots", "bulbs", "tubers"
     * @param heightCm how tall it grows, cm; of what climbs, how high
     */
    public record Growth(
            Hardiness hardiness,
            Start start,
            boolean largeSeed,
            String habit,
            Double harmedBelowC,
            String picked,
            Range heightCm) {}

    /**
     * @param minSoilTempC lowest soil temperature for germination, °C
     * @param optimumSoilTempC best range, °C
     * @param maxSoilTempC highest, °C
     * @param emergenceDays days to emergence by soil temperature in °C
     * @param usualDays days to emergence usually met, for when the temperature is not known
     * @param minGerminationPercent legal least germination of seed on sale, %
     * @param seedLifeYears years that seed keeps in good store
     * @param seedsPerGram number of seeds in a gram
     */
    public record Germination(
            Double minSoilTempC,
            Range optimumSoilTempC,
            Double maxSoilTempC,
            Map<Double, Double> emergenceDays,
            Range usualDays,
            Double minGerminationPercent,
            Double seedLifeYears,
            Range seedsPerGram) {}

    /**
     * @param where where it is sown
     * @param depthMm covering, or depth of the set, clove or tuber where the crop is started from one, mm
     * @param seedsPerCell seeds in a cell or station
     * @param multisown whether the seedlings of a cell are left together and each makes a plant; {@code null} or false where the cell is
     *     thinned to one
     * @param onEdge whether flat seed is set on its edge
     * @param weeksBeforeLastFrostIndoors weeks before the last spring frost to sow under cover; low end is the latest
     * @param weeksFromLastFrostOutdoors weeks from the last spring frost to sow outdoors, the first to the last sowing worth
     *     making; negative is before it
     * @param weeksFromFirstFrostAutumn weeks from the first autumn frost to sow or set for next year; negative is before it
     * @param weeksToPlantingOut age of a seedling at planting out, weeks
     * @param seedDepthMm covering of seed where {@code depthMm} is that of a set, mm; {@code null} otherwise
     * @param againEveryDays days from one sowing to the next of a crop that is sown in succession, {@code null} for others
     */
    public record Sowing(
            Where where,
            Range depthMm,
            Range seedsPerCell,
            Boolean multisown,
            boolean onEdge,
            Range weeksBeforeLastFrostIndoors,
            Range weeksFromLastFrostOutdoors,
            Range weeksFromFirstFrostAutumn,
            Range weeksToPlantingOut,
            Range seedDepthMm,
            Range againEveryDays) {}

    /**
     * @param hardeningDays days of hardening off
     * @param weeksFromLastFrost weeks from the last spring frost; negative is before it
     * @param minSoilTempC least soil temperature, °C
     * @param minNightTempC least night temperature, °C
     * @param spacingCm between plants in the row, cm
     * @param rowSpacingCm between rows, cm
     * @param support "none", "canes", "netting", "trellis", "pea-sticks", "stake"
     * @param potLitres compost for one plant grown on in a pot, litres; {@code null} where several share one
     * @param potDepthCm least depth of its pot or box, cm
     */
    public record PlantingOut(
            Range hardeningDays,
            Range weeksFromLastFrost,
            Double minSoilTempC,
            Double minNightTempC,
            Range spacingCm,
            Range rowSpacingCm,
            String support,
            Range potLitres,
            Double potDepthCm) {}

    /**
     * @param critical when dryness does most harm: "flowering", "fruit-swelling", "bulbing", "tuber-forming", "hearting", "rooting", "always"
     * @param litresPerPlant water at one watering, L
     * @param mmPerWeek need in the season, mm a week, rain included
     * @param checkDailyWhileSwelling whether the soil is looked at daily while fruit swells
     * @param stopDaysBeforeHarvest days before harvest to stop watering, {@code null} to go on to the end
     * @param stopCue what shows that it is time to stop ("tops-fall", "leaves-yellow", "skins-hard"), {@code null} for none
     */
    public record Watering(
            String critical,
            Range litresPerPlant,
            Double mmPerWeek,
            boolean checkDailyWhileSwelling,
            Double stopDaysBeforeHarvest,
            String stopCue) {}

    /**
     * What the crop uses of water, as FAO Irrigation and Drainage Paper 56 has it; days count from sowing in place or planting out.
     *
     * @param kcInitial crop coefficient while the plants are small
     * @param kcMiddle from full cover to the first yellowing
     * @param kcEnd at the end
     * @param initialDays length of the initial stage, days
     * @param developmentDays of the development stage, days
     * @param middleDays of the middle stage, days
     * @param lateDays of the late stage, days
     * @param rootDepthM greatest depth of roots, m; the low end holds where water is given
     * @param freeShare share p of the available water that is taken freely
     */
    public record WaterUse(
            double kcInitial,
            double kcMiddle,
            double kcEnd,
            double initialDays,
            double developmentDays,
            double middleDays,
            double lateDays,
            Range rootDepthM,
            double freeShare) {}

    /**
     * @param from when liquid feed begins: "first-flower", "fruit-set", "none"
     * @param everyDays days between feeds
     * @param kind "high-potash", "balanced", "none"
     * @param topDressing id of when a hungry crop is dressed with nitrogen ("knee-high-and-tasselling"), {@code null} for one that wants none
     */
    public record Feeding(String from, Double everyDays, String kind, String topDressing) {}

    /**
     * @param pollination "insects", "self", "wind", "none"
     * @param separateSexes whether male and female flowers are apart
     * @param daysFromSowing days from sowing to first flower
     * @param daysToRipe days from flower to ripe fruit
     * @param setNightFromC nights below this keep fruit from setting, °C, {@code null} where no limit is published
     * @param setNightToC nights above this do, °C, {@code null} likewise
     * @param setDayToC days above this do, °C, {@code null} likewise
     */
    public record Flowering(
            String pollination,
            boolean separateSexes,
            Range daysFromSowing,
            Range daysToRipe,
            Double setNightFromC,
            Double setNightToC,
            Double setDayToC) {}

    /**
     * @param daysFromSowing days from sowing (or setting) to first harvest
     * @param daysFromOtherSeason the same where it is begun in its other season: in spring a crop that is usually set in autumn, in autumn
     *     one that is usually sown in spring; {@code null} for a crop with one season
     * @param daysFromSowingCool the same where summers are cool, {@code null} where it makes no odds
     * @param earlyKinds varieties and kinds that are ready much sooner, in lower case; {@code null} for a crop with one time
     * @param earlyDays days from sowing (or setting) to first harvest of those
     * @param daysFromPlantingOut days from planting out to first harvest
     * @param weeksFromLastFrost weeks from the last spring frost to the harvest, first to last, of a crop that stands for years and bears
     *     in each; {@code null} for a crop of one season
     * @param weeksFromLastFrostOverWinter weeks from the last spring frost to the first harvest of what stood over the winter, begun before
     *     it: however long it stood, it is not ready sooner; {@code null} where winter does not hold it
     * @param cues ids of the cues that it is ready, the colour first where it turns ("colour-turned", "stalk-corky", "tops-fallen")
     * @param cut id of how it is taken ("cut-with-stalk", "twist-off", "lift-with-fork", "pull", "cut-and-come-again")
     * @param sizeCm size at which it is taken, cm, {@code null} where size tells nothing
     * @param sizeOf id of what is measured ("long", "across", "across-the-head", "to-a-leaf", "thick", "tall")
     * @param pickEveryDays days between pickings, {@code null} for a crop taken at once
     * @param fruitOnGround whether fruit lies on the ground and is lifted on a tile or straw
     * @param kgPerMetre yield of a metre of row, kg, {@code null} where none is published
     * @param kgPerPlant yield of a plant, kg, where it is published by the plant
     * @param plantsPerPerson plants that are grown for each person of a household, a sowing of a crop sown in succession
     * @param degreeDayBaseC base of its degree days, °C, {@code null} where it does not go by them
     * @param degreeDays degree days from sowing to the first harvest, °C·d, where they are published
     */
    public record Harvest(
            Range daysFromSowing,
            Range daysFromOtherSeason,
            Range daysFromSowingCool,
            List<String> earlyKinds,
            Range earlyDays,
            Range daysFromPlantingOut,
            Range weeksFromLastFrost,
            Range weeksFromLastFrostOverWinter,
            List<String> cues,
            String cut,
            Range sizeCm,
            String sizeOf,
            Double pickEveryDays,
            boolean fruitOnGround,
            Range kgPerMetre,
            Range kgPerPlant,
            Range plantsPerPerson,
            Double degreeDayBaseC,
            Double degreeDays) {}

    /**
     * @param tempC °C
     * @param humidityPercent relative humidity, %
     * @param days days
     */
    public record Curing(Range tempC, Range humidityPercent, Range days) {}

    /**
     * @param tempC °C
     * @param humidityPercent relative humidity, %
     * @param lifeDays days that it keeps
     * @param checkEveryDays days between looks at the store
     * @param how id of how it is kept ("single-layer", "nets", "sacks-in-dark", "fridge", "blanch-and-freeze", "ripen-indoors",
     *     "boxes-of-sand", "leave-in-ground")
     * @param freezing id of how it goes into the freezer: "blanched", "raw", "cooked", "in-oil" (chopped leaves), "not"
     * @param blanchMinutes minutes in boiling water before it is frozen, {@code null} where it is not blanched
     */
    public record Storing(
            Range tempC,
            Range humidityPercent,
            Range lifeDays,
            Double checkEveryDays,
            String how,
            String freezing,
            Range blanchMinutes) {}
}
