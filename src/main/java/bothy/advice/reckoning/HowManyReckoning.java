package bothy.advice.reckoning;

import bothy.advice.reckoned.CompostNeeded;
import bothy.advice.reckoned.HouseholdPlants;
import bothy.advice.reckoned.NotReckoned;
import bothy.advice.reckoned.PlantsInARow;
import bothy.advice.reckoned.PlantsThatFit;
import bothy.advice.reckoned.PlantsToAPot;
import bothy.advice.reckoned.RowNeeded;
import bothy.advice.reckoned.SeedsNeeded;
import bothy.advice.reckoned.SetsNeeded;
import bothy.advice.reckoned.YieldExpected;
import bothy.agronomy.Bed;
import bothy.agronomy.Filling;
import bothy.agronomy.SeedAge;
import bothy.agronomy.SeedNumbers;
import bothy.agronomy.Spacing;
import bothy.agronomy.Yield;
import bothy.almanac.Range;
import bothy.almanac.Sheet;
import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.garden.Units;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Numbers asked for: plants in a bed, seeds for plants, cells, trays, compost, yield. */
public final class HowManyReckoning {
    private static final double CERTAINTY = 0.95;
    /** Fewer than one in twenty is not worth counting on. */
    private static final double LEAST_SHARE = 0.05;

    private static final int CELLS_IN_A_TRAY = 24;
    private static final int MOST_CELLS = 1000;
    /** More eat at no household's table; a greater number told counts something else. */
    private static final int MOST_PEOPLE = 30;

    private static final double CM_PER_M = 100;
    /** Nearer than a centimetre stands only cress. */
    private static final double LEAST_APART_M = 0.01;

    private static final double MOST_POT_LITRES = 1000;
    private static final double LONGEST_ROW_M = 1000;
    /** Fifty feet of feet are fifty, however feet are written in metres. */
    private static final double ROUNDING = 1e-3;

    /** A round pot as usually moulded: base seven tenths of the rim, filled to nine tenths of the rim's width (common practice). */
    private static final double BASE_OF_RIM = 0.7;

    private static final double HEIGHT_OF_RIM = 0.9;

    private HowManyReckoning() {}

    static Stream<?> of(Subject subject) {
        try {
            return subject.inquiries().stream().flatMap(inquiry -> answer(subject, inquiry)).toList().stream();
        } catch (IllegalArgumentException outOfRange) {
            return Stream.of(new NotReckoned(subject.id()));
        }
    }

    private static Stream<?> answer(Subject subject, Inquiry inquiry) {
        boolean fits = inquiry.question() == Question.HOW_MANY_FIT || inquiry.question() == Question.SPACING;
        if (!fits) {
            return Stream.empty();
        }
        boolean apart = "m apart".equals(inquiry.unit()) && inquiry.length() != null;
        if (apart && inquiry.amount() >= LEAST_APART_M && inquiry.length() <= LONGEST_ROW_M) {
            return Stream.of(spacedByGrower(subject, inquiry));
        }
        if ("L".equals(inquiry.unit()) && inquiry.topic() == null && inquiry.amount() != null) {
            return pot(subject, inquiry.amount()).stream();
        }
        return switch (String.valueOf(inquiry.topic())) {
            case "yield" -> harvest(subject, inquiry);
            case "household" -> household(subject, inquiry);
            case "compost" -> compost(subject.id(), inquiry, subject.grower().units());
            case "row" -> row(subject, inquiry);
            case "seeds", "cells" -> seeds(subject, inquiry);
            default -> bed(subject, inquiry);
        };
    }

    private static Optional<PlantsToAPot> pot(Subject subject, double bagLitres) {
        Sheet.PlantingOut out = subject.sheet().plantingOut();
        Range each = out == null ? null : out.potLitres();
        if (each == null || bagLitres <= 0 || bagLitres > MOST_POT_LITRES) {
            return Optional.empty();
        }
        double most = Math.floor(bagLitres / each.low());
        double least = Math.max(1, Math.floor(bagLitres / each.high()));
        return Optional.of(new PlantsToAPot(subject.id(), most < 1 ? null : new Range(least, most), bagLitres, each));
    }

    private static Stream<?> row(Subject subject, Inquiry inquiry) {
        Sheet.PlantingOut out = subject.sheet().plantingOut();
        boolean told = "m apart".equals(inquiry.unit()) && inquiry.amount() >= LEAST_APART_M;
        Range apart = told
                ? new Range(inquiry.amount() * CM_PER_M, inquiry.amount() * CM_PER_M)
                : out == null ? null : out.spacingCm();
        return inquiry.count() == null || apart == null
                ? Stream.empty()
                : Stream.of(new RowNeeded(
                        subject.id(),
                        inquiry.count(),
                        new Range(inquiry.count() * apart.low() / CM_PER_M, inquiry.count() * apart.high() / CM_PER_M),
                        apart));
    }

    /** The grower's own spacing counts, whatever the sheet's is. */
    private static PlantsInARow spacedByGrower(Subject subject, Inquiry inquiry) {
        double apart = inquiry.amount();
        boolean row = inquiry.width() == null;
        int plants = row
                ? (int) Math.floor(inquiry.length() / apart + ROUNDING)
                : Spacing.square(apart).plantsIn(new Bed.Rectangle(inquiry.length(), inquiry.width()));
        boolean whole =
                subject.sheet().growth() != null && subject.sheet().growth().start() != Sheet.Start.SEED;
        return new PlantsInARow(
                subject.id(),
                plants,
                row ? inquiry.length() : null,
                row ? null : Double.valueOf(inquiry.length() * inquiry.width()),
                apart * CM_PER_M,
                whole && plants > 0 ? Integer.valueOf(Filling.spare(plants)) : null);
    }

    private static Stream<?> bed(Subject subject, Inquiry inquiry) {
        Sheet.PlantingOut out = subject.sheet().plantingOut();
        boolean area = "m²".equals(inquiry.unit()) && inquiry.amount() != null;
        if (out == null || out.spacingCm() == null || out.rowSpacingCm() == null || inquiry.length() == null && !area) {
            return Stream.empty();
        }
        // The closest that the sheet allows: how many fit, not how many would like to stand there.
        double along = out.spacingCm().low() / CM_PER_M;
        double across = out.rowSpacingCm().low() / CM_PER_M;
        boolean round = "round-bed".equals(inquiry.topic());
        boolean corner = "corner-bed".equals(inquiry.topic()) && inquiry.length() != null && inquiry.width() != null;
        Bed bed = corner
                ? new Bed.Corner(inquiry.length(), inquiry.width())
                : round && inquiry.length() != null
                        ? new Bed.Round(inquiry.length())
                        : area && inquiry.length() == null
                                ? new Bed.Rectangle(Math.sqrt(inquiry.amount()), Math.sqrt(inquiry.amount()))
                                : new Bed.Rectangle(
                                        inquiry.length(), inquiry.width() == null ? across : inquiry.width());
        // Out of rows each plant keeps the ground that it has in them. Own choice.
        double even = Math.sqrt(along * across);
        boolean oneRow = !area && !round && inquiry.width() == null;
        return Stream.of(new PlantsThatFit(
                subject.id(),
                Spacing.rows(along, across).plantsIn(bed),
                oneRow ? null : Integer.valueOf(Spacing.square(even).plantsIn(bed)),
                oneRow ? null : Integer.valueOf(Spacing.offset(even).plantsIn(bed)),
                bed.areaM2(),
                out.spacingCm().low(),
                out.rowSpacingCm().low(),
                even * CM_PER_M));
    }

    private static Stream<?> seeds(Subject subject, Inquiry inquiry) {
        Sheet.Start start = subject.sheet().growth().start();
        if (start != Sheet.Start.SEED) {
            return inquiry.length() != null ? bed(subject, inquiry) : sets(subject.id(), inquiry, start);
        }
        Sheet.Germination seed = subject.sheet().germination();
        if (inquiry.count() == null || seed == null || seed.minGerminationPercent() == null) {
            return Stream.empty();
        }
        double onSale = seed.minGerminationPercent();
        Double promised = promisedPercent(inquiry);
        double percent = promised != null ? promised : Math.min(onSale, byAgePercent(subject, inquiry, seed));
        int seeds = SeedNumbers.toSow(inquiry.count(), percent / 100, CERTAINTY);
        Range each = subject.sheet().sowing().seedsPerCell();
        int perCell = each == null ? 1 : (int) Math.max(1, Math.round(each.low()));
        boolean clumps = Boolean.TRUE.equals(subject.sheet().sowing().multisown());
        int cells = clumps
                ? Filling.cells(seeds, perCell)
                : SeedNumbers.toSow(inquiry.count(), SeedNumbers.cellFilled(percent / 100, perCell), CERTAINTY);
        int perTray = cellsTold(inquiry);
        return Stream.of(new SeedsNeeded(
                subject.id(),
                inquiry.count(),
                seeds,
                percent,
                promised != null ? "seed-as-told" : percent < onSale ? "seed-by-age" : "seed-on-sale",
                cells,
                clumps ? seeds : cells * perCell,
                clumps || perCell == 1 ? null : Integer.valueOf(perCell),
                clumps ? Integer.valueOf(perCell) : null,
                Filling.trays(cells, perTray),
                perTray));
    }

    /** Cells of the grower's own tray where they were told. */
    private static int cellsTold(Inquiry inquiry) {
        boolean told = "cells".equals(inquiry.unit()) && inquiry.amount() != null && inquiry.amount() >= 1;
        return told ? (int) Math.min(MOST_CELLS, Math.round(inquiry.amount())) : CELLS_IN_A_TRAY;
    }

    /** One clove, set or tuber makes one plant. */
    private static Stream<?> sets(String planting, Inquiry inquiry, Sheet.Start start) {
        Integer plants = inquiry.count();
        return plants == null
                ? Stream.empty()
                : Stream.of(new SetsNeeded(
                        planting,
                        plants,
                        Filling.spare(plants),
                        "piece-" + start.name().toLowerCase(Locale.ROOT)));
    }

    /** Germination that the grower told, 1 to 100 %; {@code null} where none was told or none can be so. */
    private static Double promisedPercent(Inquiry inquiry) {
        boolean told = "%".equals(inquiry.unit()) && inquiry.amount() != null;
        return told && inquiry.amount() >= 1 && inquiry.amount() <= 100 ? inquiry.amount() : null;
    }

    /** Germination of seed whose age was told, %; 100 where it was not. */
    private static double byAgePercent(Subject subject, Inquiry inquiry, Sheet.Germination seed) {
        boolean asked = "years".equals(inquiry.unit()) && inquiry.amount() != null;
        Optional<Double> years = asked ? Optional.of(inquiry.amount()) : SeedTold.ageYears(subject);
        if (seed.seedLifeYears() == null || years.isEmpty()) {
            return 100;
        }
        double share = SeedAge.viableShare(
                Math.min(50, Math.max(0, years.get())),
                seed.seedLifeYears(),
                Math.max(20, Math.min(98, seed.minGerminationPercent())));
        return 100 * Math.max(LEAST_SHARE, share);
    }

    private static Stream<?> harvest(Subject subject, Inquiry inquiry) {
        Sheet.Harvest harvest = subject.sheet().harvest();
        Integer standing = subject.planting().count() != null
                ? subject.planting().count()
                : subject.planting().sown(); // Until it is told how many came up, as many as were sown.
        Integer count = inquiry.count() != null ? inquiry.count() : standing;
        int plants = count == null ? 1 : count;
        if (harvest != null && harvest.kgPerPlant() != null) {
            Yield kg = Yield.ofPlants(
                    plants, harvest.kgPerPlant().low(), harvest.kgPerPlant().high());
            return Stream.of(new YieldExpected(
                    subject.id(), count, null, count == null ? "a-plant" : null, range(kg), count != null));
        }
        Sheet.PlantingOut out = subject.sheet().plantingOut();
        if (harvest == null
                || harvest.kgPerMetre() == null
                || out == null
                || count == null && inquiry.length() == null) {
            return Stream.empty();
        }
        double row = inquiry.length() != null
                ? inquiry.length()
                : plants * out.spacingCm().middle() / CM_PER_M;
        Yield kg = Yield.ofArea(
                row, harvest.kgPerMetre().low(), harvest.kgPerMetre().high());
        return Stream.of(new YieldExpected(
                subject.id(), inquiry.length() == null ? count : null, inquiry.length(), null, range(kg), true));
    }

    private static Stream<?> household(Subject subject, Inquiry inquiry) {
        Sheet.Harvest harvest = subject.sheet().harvest();
        Range each = harvest == null ? null : harvest.plantsPerPerson();
        if (each == null) {
            return Stream.empty();
        }
        Integer people = inquiry.count() != null && inquiry.count() <= MOST_PEOPLE ? inquiry.count() : null;
        Range all = people == null ? null : new Range(Math.ceil(people * each.low()), Math.ceil(people * each.high()));
        return Stream.of(new HouseholdPlants(subject.id(), each, people, all));
    }

    private static Range range(Yield kg) {
        return new Range(kg.lowKg(), kg.highKg());
    }

    /** Compost for pots or trays that no crop was named for. */
    public static Stream<?> compostOfNoCrop(Inquiry inquiry, Units units) {
        try {
            return compost(null, inquiry, units);
        } catch (IllegalArgumentException outOfRange) {
            return Stream.of(new NotReckoned(null));
        }
    }

    /** Compost for pots of a told rim (m) or volume (L), or for trays. */
    private static Stream<?> compost(String planting, Inquiry inquiry, Units units) {
        boolean trays = "cells".equals(inquiry.unit()) && inquiry.amount() != null;
        boolean litres = "L".equals(inquiry.unit()) && inquiry.amount() != null;
        if (litres && inquiry.count() == null) {
            return Stream.of(
                    new CompostNeeded(planting, null, null, inquiry.amount(), Filling.bedLitres(inquiry.amount())));
        }
        if (inquiry.count() == null || !trays && !litres && inquiry.length() == null) {
            return Stream.empty();
        }
        double each = trays
                ? Filling.trayLitres(inquiry.amount() > 0, units == Units.US)
                : litres ? inquiry.amount() : potLitres(inquiry.length() * CM_PER_M);
        return Stream.of(new CompostNeeded(
                planting,
                trays ? null : inquiry.count(),
                trays ? inquiry.count() : null,
                each,
                Filling.compostLitres(inquiry.count(), each)));
    }

    private static double potLitres(double rimCm) {
        return Filling.potLitres(rimCm, BASE_OF_RIM * rimCm, HEIGHT_OF_RIM * rimCm);
    }
}
