package bothy.channel.telegram;

import java.time.Duration;

/** How long to wait after the n-th failure in a row: twice as long each time, up to a limit. */
record BackOff(Duration first, Duration longest) {

    /** @param failures how many there were so far, at least 1 */
    Duration after(int failures) {
        Duration wait = first.multipliedBy(1L << Math.min(failures - 1, 20));
        return wait.compareTo(longest) > 0 ? longest : wait;
    }
}
