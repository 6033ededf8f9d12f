package bothy.advice;

import bothy.advice.facts.FollowOn;
import bothy.advice.facts.Frosts;
import bothy.advice.facts.Outlook;
import bothy.almanac.Sheet;
import bothy.garden.Planting;
import bothy.garden.SowWindow;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What can follow a crop in its bed on a day where frosts end the season: crops of other families that still ripen there, or stand over
 * winter.
 */
final class Following {
    /** More than a grower reads through. */
    private static final int MOST = 12;
    /** Cloves and the like are planned so many weeks ahead. */
    private static final int SOON_WEEKS = 6;

    /** What is raised or bought as a plant is not sown. */
    private static final Set<Sheet.Start> NOT_AT_HAND = EnumSet.of(Sheet.Start.SLIP, Sheet.Start.PLANT);

    private final Collection<Sheet> sheets;
    private final SeasonDates seasons;
    private final LocalDate today;
    private final boolean cool;

    /** @param cool whether the summers of the place are cool */
    Following(Collection<Sheet> sheets, SeasonDates seasons, LocalDate today, boolean cool) {
        this.sheets = sheets;
        this.seasons = seasons;
        this.today = today;
        this.cool = cool;
    }

    /**
     * @param planting the planting that comes out, {@code null} when none was told
     * @param left the sheet of its crop, {@code null} when it is not known
     */
    FollowOn after(String planting, Sheet left) {
        List<SowWindow> sown = new ArrayList<>();
        List<SowWindow> set = new ArrayList<>();
        for (Sheet sheet : sheets) {
            boolean kin = left != null && left.family().equals(sheet.family());
            if (!kin && !NOT_AT_HAND.contains(sheet.growth().start())) {
                List<Outlook> outlooks = outlooks(sheet);
                ripening(outlooks).ifPresent(until -> sown.add(new SowWindow(sheet.crop(), null, until)));
                overWinter(outlooks)
                        .ifPresent(one -> set.add(
                                new SowWindow(sheet.crop(), one.from().isAfter(today) ? one.from() : null, one.to())));
            }
        }
        return new FollowOn(planting, longest(sown), longest(set));
    }

    private static List<SowWindow> longest(List<SowWindow> all) {
        return all.stream()
                .sorted(Comparator.comparing(SowWindow::until).reversed().thenComparing(SowWindow::crop))
                .limit(MOST)
                .toList();
    }

    private List<Outlook> outlooks(Sheet sheet) {
        Planting packet = new Planting(
                sheet.crop(), sheet.crop(), null, null, null, Planting.Start.PACKET, null, null, null, null);
        Frosts frosts = seasons.around(today);
        return new Outlooks(packet, sheet, Map.of(), null, frosts, frosts, today, null, null, false, cool)
                .all(seasons, null, List.of());
    }

    /** The last day on which what is sown in place still ripens; none before its time and when that day is past. */
    private Optional<LocalDate> ripening(List<Outlook> outlooks) {
        Optional<Outlook> window = of(outlooks, "outdoors");
        Optional<LocalDate> latest = of(outlooks, "latest").map(Outlook::to).filter(day -> !day.isBefore(today));
        if (window.isEmpty() || latest.isEmpty()) {
            return Optional.empty();
        }
        // The window of a spring that is past lies behind the last sensible day of this one: it opened long ago.
        LocalDate opens = window.get().from();
        return opens.isAfter(today) && !opens.isAfter(latest.get()) ? Optional.empty() : latest;
    }

    private Optional<Outlook> overWinter(List<Outlook> outlooks) {
        return of(outlooks, "autumn").filter(one -> !one.from().isAfter(today.plusWeeks(SOON_WEEKS)));
    }

    private static Optional<Outlook> of(List<Outlook> outlooks, String how) {
        return outlooks.stream()
                .filter(one -> one.what() == What.SOWN && how.equals(one.how()))
                .findFirst();
    }
}
