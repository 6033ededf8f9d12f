package bothy.conversation;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What was raised unasked, and what is to be.
 *
 * @param rests until when each advice rests, by advice and planting
 * @param times how often each was raised while it stood
 * @param checks the day on which to look again that a reply named, by planting; empty text for the whole plot
 * @param again the advice to say again on the day that the grower asked for
 * @param lookedOn the last day on which it was looked what to raise, {@code null} for never
 * @param listedOn the last day of the weekly list, {@code null} for never
 * @param eveningOn the last day on which the weather was looked at in the evening, {@code null} for never
 * @param reminded the day for which each reminder that the grower asked for was given last, by its line in the diary
 */
public record Raised(
        Map<String, LocalDate> rests,
        Map<String, Integer> times,
        Map<String, LocalDate> checks,
        Set<String> again,
        LocalDate lookedOn,
        LocalDate listedOn,
        LocalDate eveningOn,
        Map<Long, LocalDate> reminded) {

    /** Raised twice in vain, or left out by the grower, an advice rests for a month; the weekly list still names it. */
    private static final int LET_REST_DAYS = 30;

    private static final int LEAST_REST_DAYS = 3;
    private static final int NOT_YET_DAYS = 2;
    private static final int MOST_TIMES = 2;

    public Raised {
        rests = rests == null ? Map.of() : Map.copyOf(rests);
        times = times == null ? Map.of() : Map.copyOf(times);
        checks = checks == null ? Map.of() : Map.copyOf(checks);
        again = again == null ? Set.of() : Set.copyOf(again);
        reminded = reminded == null ? Map.of() : Map.copyOf(reminded);
    }

    static Raised nothing() {
        return new Raised(null, null, null, null, null, null, null, null);
    }

    boolean rests(String key, LocalDate day) {
        return day.isBefore(rests.getOrDefault(key, day));
    }

    /** Lets an advice rest after it was raised: until its next check, three days at least, a month after the second time. */
    Raised raised(String key, LocalDate today, LocalDate nextCheck, boolean byWeather) {
        int count = times.getOrDefault(key, 0) + 1;
        LocalDate rest = today.plusDays(count >= MOST_TIMES && !byWeather ? LET_REST_DAYS : LEAST_REST_DAYS);
        boolean later = nextCheck != null && nextCheck.isAfter(rest);
        return resting(key, later ? nextCheck : rest, count);
    }

    Raised notYet(String key, LocalDate today) {
        return resting(key, today.plusDays(NOT_YET_DAYS), times.getOrDefault(key, 0));
    }

    Raised leftOut(String key, LocalDate today) {
        return resting(key, today.plusDays(LET_REST_DAYS), times.getOrDefault(key, 0));
    }

    /** Done: when it stands again it is raised as if for the first time. */
    Raised done(String key) {
        Map<String, Integer> newTimes = new HashMap<>(times);
        newTimes.remove(key);
        return new Raised(rests, newTimes, checks, again, lookedOn, listedOn, eveningOn, reminded);
    }

    private Raised resting(String key, LocalDate until, int count) {
        Map<String, LocalDate> newRests = new HashMap<>(rests);
        newRests.put(key, until);
        Map<String, Integer> newTimes = new HashMap<>(times);
        newTimes.put(key, count);
        return new Raised(newRests, newTimes, checks, again, lookedOn, listedOn, eveningOn, reminded);
    }

    /** Forgets the rests that are over of advice that no longer stands: when it stands again it is new. */
    Raised cleared(LocalDate today, Predicate<String> stands) {
        Map<String, LocalDate> newRests = new HashMap<>(rests);
        newRests.entrySet().removeIf(rest -> !rest.getValue().isAfter(today) && !stands.test(rest.getKey()));
        Map<String, Integer> newTimes = new HashMap<>(times);
        newTimes.keySet().retainAll(newRests.keySet());
        Map<String, LocalDate> newChecks = new HashMap<>(checks);
        newChecks.values().removeIf(day -> !day.isAfter(today));
        return new Raised(newRests, newTimes, newChecks, again, lookedOn, listedOn, eveningOn, reminded);
    }

    Raised toCheck(String planting, LocalDate day) {
        Map<String, LocalDate> newChecks = new HashMap<>(checks);
        newChecks.put(planting, day);
        return new Raised(rests, times, newChecks, again, lookedOn, listedOn, eveningOn, reminded);
    }

    Raised toSayAgain(Set<String> keys) {
        return new Raised(rests, times, checks, keys, lookedOn, listedOn, eveningOn, reminded);
    }

    Raised looked(LocalDate day) {
        return new Raised(rests, times, checks, again, day, listedOn, eveningOn, reminded);
    }

    Raised listed(LocalDate day) {
        return new Raised(rests, times, checks, again, lookedOn, day, eveningOn, reminded);
    }

    Raised lookedInTheEvening(LocalDate day) {
        return new Raised(rests, times, checks, again, lookedOn, listedOn, day, reminded);
    }

    Raised reminded(Map<Long, LocalDate> given) {
        return new Raised(rests, times, checks, Set.of(), lookedOn, listedOn, eveningOn, given);
    }
}
