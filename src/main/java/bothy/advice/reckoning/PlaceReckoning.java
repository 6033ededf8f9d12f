package bothy.advice.reckoning;

import bothy.advice.facts.Frosts;
import bothy.advice.reckoned.FrostChance;
import bothy.advice.reckoned.FrostOdds;
import bothy.advice.reckoned.SeasonLength;
import bothy.advice.reckoned.UsualMonth;
import bothy.agronomy.Season;
import bothy.agronomy.climate.FrostCurve;
import bothy.garden.Grower;
import bothy.garden.Inquiry;
import bothy.garden.Normals;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What is usual at the grower's place, when it is asked about: frosts with their chances, rain and warmth by month. */
public final class PlaceReckoning {
    private static final String RECORD = "frost-by-record";
    private static final String TOLD = "frost-as-told";
    private static final String LATITUDE = "frost-by-latitude";
    /** Base of the degree days told, °C: that of beans and peppers. */
    private static final int BASE_C = 10;

    private static final Set<String> OF_FROST = Set.of("last-frost", "first-frost", "frost-odds", "frost-free");

    private PlaceReckoning() {}

    /**
     * @param normals {@code null} when no station's record was taken in
     */
    public static List<Object> of(Inquiry asked, Grower grower, Frosts frosts, Normals normals, LocalDate today) {
        List<Object> facts = new ArrayList<>();
        if (frosts.none() && OF_FROST.contains(String.valueOf(asked.topic()))) {
            return facts;
        }
        switch (String.valueOf(asked.topic())) {
            case "last-frost" -> facts.add(last(grower, frosts, normals));
            case "first-frost" -> facts.add(first(grower, frosts, normals));
            case "frost-odds" ->
                facts.add(
                        asked.on() == null
                                ? last(grower, frosts, normals)
                                : chance(asked.on(), grower, frosts, normals));
            case "frost-free" -> facts.add(length(grower, frosts, normals));
            case "rain", "warmth" -> month(asked, normals, today).ifPresent(facts::add);
            default -> {}
        }
        return facts;
    }

    private static FrostOdds last(Grower grower, Frosts frosts, Normals normals) {
        return odds(
                "last",
                frosts.lastSpring(),
                basis(grower.lastSpringFrost(), normals == null ? null : normals.lastSpring()),
                normals == null ? null : normals.lastSpring());
    }

    private static FrostOdds first(Grower grower, Frosts frosts, Normals normals) {
        return odds(
                "first",
                frosts.firstAutumn(),
                basis(grower.firstAutumnFrost(), normals == null ? null : normals.firstAutumn()),
                normals == null ? null : normals.firstAutumn());
    }

    /** Around the date that is gone by, with the spread of the record where there is one. */
    private static FrostOdds odds(String which, LocalDate even, String basis, Normals.Frost record) {
        long spread = Math.round(curve(even, record).spreadDays() * TENTH);
        return new FrostOdds(
                which, even.minusDays(spread), even, even.plusDays(spread), basis, !basis.equals(LATITUDE));
    }

    private static FrostChance chance(LocalDate on, Grower grower, Frosts frosts, Normals normals) {
        FrostOdds last = last(grower, frosts, normals);
        FrostOdds first = first(grower, frosts, normals);
        boolean spring = away(on, last) <= away(on, first);
        FrostOdds nearer = spring ? last : first;
        Normals.Frost record = normals == null ? null : spring ? normals.lastSpring() : normals.firstAutumn();
        double after = curve(nearer.evenFrost(), record).chanceAfter(MonthDay.from(on));
        return new FrostChance(on, nearer.which(), 100 * (spring ? after : 1 - after), nearer.basis(), nearer.told());
    }

    /** Days between dates of the year, by the shorter way round. */
    private static long away(LocalDate on, FrostOdds frost) {
        long days = Math.floorMod(ChronoUnit.DAYS.between(frost.evenFrost(), on), 365L);
        return Math.min(days, 365 - days);
    }

    private static FrostCurve curve(LocalDate even, Normals.Frost record) {
        return record == null
                ? FrostCurve.around(MonthDay.from(even))
                : new FrostCurve(MonthDay.from(even), record.spreadDays());
    }

    /** One in ten lies beyond so many standard deviations of a normal curve. */
    private static final double TENTH = 1.2816;

    private static String basis(MonthDay told, Normals.Frost record) {
        boolean byRecord = record != null && (told == null || record.evenOdds().equals(told));
        return byRecord ? RECORD : told == null ? LATITUDE : TOLD;
    }

    private static SeasonLength length(Grower grower, Frosts frosts, Normals normals) {
        FrostOdds last = last(grower, frosts, normals);
        FrostOdds first = first(grower, frosts, normals);
        LocalDate begins = last.evenFrost();
        LocalDate ends = first.evenFrost().isAfter(begins)
                ? first.evenFrost()
                : first.evenFrost().plusYears(1);
        String basis = last.basis().equals(first.basis()) ? last.basis() : LATITUDE;
        return new SeasonLength(new Season(begins, ends).frostFreeDays(), basis, last.told() && first.told());
    }

    private static Optional<UsualMonth> month(Inquiry asked, Normals normals, LocalDate today) {
        Month month = (asked.on() == null ? today : asked.on()).getMonth();
        if (normals == null || !normals.wholeYear()) {
            return Optional.empty();
        }
        double year =
                normals.months().stream().mapToDouble(Normals.OfMonth::rainMm).sum();
        return normals.of(month)
                .map(one -> new UsualMonth(
                        month.getDisplayName(TextStyle.FULL, Locale.UK),
                        one.rainMm(),
                        year,
                        one.tminC(),
                        one.tmaxC(),
                        Math.round(one.degreeDays().get(BASE_C / Normals.BASE_STEP_C)),
                        one.years()));
    }
}
