package bothy.advice.reckoning;

import bothy.advice.facts.Latest;
import bothy.advice.facts.Outlook;
import bothy.advice.reckoned.HardeningPlan;
import bothy.agronomy.HardeningOff;
import bothy.almanac.Range;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The calendar of hardening off, from the day it began or so many days before planting out. */
final class HardeningReckoning {
    private HardeningReckoning() {}

    static Optional<HardeningPlan> of(Subject subject) {
        Range days = subject.sheet().plantingOut() == null
                ? null
                : subject.sheet().plantingOut().hardeningDays();
        Optional<Outlook> out = subject.outlook(What.PLANTED_OUT, "frost", "age");
        boolean askedOrTold = subject.last(What.HARDENING_STARTED).isPresent()
                || subject.inquiries().stream().anyMatch(inquiry -> "hardening-off".equals(inquiry.topic()));
        return days == null || out.isEmpty() || !askedOrTold
                ? Optional.empty()
                : Optional.of(plan(subject, (int) Math.max(4, Math.round(days.middle())), out.get()));
    }

    private static HardeningPlan plan(Subject subject, int days, Outlook out) {
        LocalDate start = subject.last(What.HARDENING_STARTED)
                .map(Latest::first)
                .orElseGet(() -> {
                    LocalDate before = out.from().minusDays(days);
                    return before.isBefore(subject.today()) ? subject.today() : before;
                });
        List<HardeningOff.Day> calendar = HardeningOff.calendar(start, days);
        List<HardeningOff.Day> in =
                calendar.stream().filter(day -> !day.nightOutside()).toList();
        HardeningOff.Day lastIn = in.get(in.size() - 1);
        LocalDate hardened = start.plusDays(days);
        return new HardeningPlan(
                subject.id(),
                start,
                in.get(0).hoursOutside(),
                lastIn.hoursOutside(),
                lastIn.date(),
                lastIn.date().plusDays(1),
                hardened.isBefore(out.from()) ? out.from() : hardened,
                out.told());
    }
}
