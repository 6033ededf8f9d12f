package bothy.conversation;

import bothy.diary.Replay;
import bothy.garden.Amendment;
import bothy.garden.Entry;
import bothy.garden.Logged;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** When the last thing said was a correction, "scrap that" takes back the correction, not the entry that it corrected. */
final class Undoing {
    private final List<Logged> lines;

    Undoing(List<Logged> lines) {
        this.lines = lines;
    }

    List<Entry> retarget(List<Entry> entries) {
        List<Long> takenBack = entries.stream()
                .filter(entry -> entry instanceof Amendment amendment && amendment.instead() == null)
                .map(entry -> ((Amendment) entry).entry())
                .toList();
        if (takenBack.isEmpty() || takenBack.size() < entries.size()) {
            return entries;
        }
        Set<Long> lately = Replay.lately(lines).stream().map(Logged::number).collect(Collectors.toSet());
        List<Logged> last = Replay.last(lines);
        boolean corrected = last.stream().anyMatch(line -> line.entry() instanceof Amendment);
        return lately.containsAll(takenBack) && corrected
                ? last.stream()
                        .map(line -> (Entry) new Amendment(line.number(), null))
                        .toList()
                : entries;
    }
}
