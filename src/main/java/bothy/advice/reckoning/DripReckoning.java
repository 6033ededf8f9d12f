package bothy.advice.reckoning;

import bothy.advice.reckoned.DripTime;
import bothy.almanac.Range;
import bothy.garden.Inquiry;
import java.util.Optional;

/** The minutes that drippers run: the litres a plant wants at a time by what they give in an hour. */
final class DripReckoning {
    private static final double MINUTES = 60;
    /** As finely as a timer is set. */
    private static final double STEP = 5;
    /** From a sparing dripper to an open hose. */
    private static final double LEAST = 0.5;

    private static final double MOST = 200;

    private DripReckoning() {}

    static Optional<DripTime> of(Subject subject) {
        Range each = subject.sheet().watering() == null
                ? null
                : subject.sheet().watering().litresPerPlant();
        return each == null
                ? Optional.empty()
                : subject.inquiries().stream()
                        .filter(inquiry -> Inquiry.LITRES_AN_HOUR.equals(inquiry.unit()) && inquiry.amount() != null)
                        .map(Inquiry::amount)
                        .filter(rate -> rate >= LEAST && rate <= MOST)
                        .findFirst()
                        .map(rate -> new DripTime(
                                subject.id(),
                                new Range(minutes(each.low(), rate), minutes(each.high(), rate)),
                                each,
                                rate));
    }

    private static double minutes(double litres, double rate) {
        return Math.max(STEP, STEP * Math.round(MINUTES * litres / rate / STEP));
    }
}
