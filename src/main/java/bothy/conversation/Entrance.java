package bothy.conversation;

import bothy.diary.Page;
import bothy.garden.Entry;
import bothy.garden.Message;
import bothy.garden.Reply;
import bothy.garden.SettingChange;
import bothy.replying.Replier;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Stops at the door who is not let in, and who writes too fast. Safe for use by many threads. */
final class Entrance {
    private static final String ADMITTED = "admitted";
    private static final int CHATS_REMEMBERED = 10_000;

    private final Door door;
    private final Map<String, Pace> paces = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Pace> eldest) {
            return size() > CHATS_REMEMBERED;
        }
    };

    /** How fast one chat writes: what is left of its messages, and since when. */
    private static final class Pace {
        private double left;
        private Instant at;
        private boolean told;
    }

    Entrance(Door door) {
        this.door = door;
    }

    /** What a message that goes no further is answered; an empty text for nothing. Empty when it may come in. */
    Optional<Reply> stopped(Page page, Message message, Replier replier) {
        Optional<Reply> tooFast = tooFast(message, replier);
        if (tooFast.isPresent() || door.knows(message.grower()) || admitted(page)) {
            return tooFast;
        }
        if (door.mode() == Door.Mode.INVITED && door.opensWith(message.text())) {
            List<Entry> admission = List.of(new SettingChange(ADMITTED, "invited"));
            page.append(message.id(), message.at(), admission);
            return said("door-welcome", replier);
        }
        return said(door.mode() == Door.Mode.INVITED ? "door-code" : "door-closed", replier);
    }

    /** A command of operators; for all others it is none that is known. */
    boolean asksForStatus(Message message) {
        return door.operators().contains(message.grower())
                && message.text().strip().equals("/status");
    }

    private static boolean admitted(Page page) {
        return page.lines().stream()
                .anyMatch(line -> line.entry() instanceof SettingChange change
                        && change.setting().equals(ADMITTED));
    }

    private static Optional<Reply> said(String talk, Replier replier) {
        return Optional.of(new Reply(replier.talk(talk), List.of()));
    }

    private synchronized Optional<Reply> tooFast(Message message, Replier replier) {
        if (door.perMinute() <= 0) {
            return Optional.empty();
        }
        Pace pace = paces.computeIfAbsent(message.grower(), grower -> new Pace());
        fill(pace, message.at());
        if (pace.left >= 1) {
            pace.left--;
            pace.told = false;
            return Optional.empty();
        }
        boolean first = !pace.told;
        pace.told = true;
        return first ? said("too-fast", replier) : Optional.of(new Reply("", List.of()));
    }

    private void fill(Pace pace, Instant now) {
        if (pace.at == null) {
            pace.left = door.perMinute();
        } else if (now.isAfter(pace.at)) {
            double minutes = Duration.between(pace.at, now).toMillis() / 60_000.0;
            pace.left = Math.min(door.perMinute(), pace.left + minutes * door.perMinute());
        }
        pace.at = now;
    }
}
