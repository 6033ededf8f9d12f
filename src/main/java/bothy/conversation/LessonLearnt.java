package bothy.conversation;

import bothy.advice.Advised;
import bothy.diary.Page;
import bothy.garden.Diagnosis;
import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Finding;
import bothy.garden.Garden;
import bothy.garden.Logged;
import bothy.garden.Message;
import bothy.garden.What;
import bothy.replying.Replier;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * What a trouble teaches for next year: when a grower tells what became of it, its likeliest cause, the outcome and the prevention go
 * into the diary as a note, which comes back when the crop is sown again.
 */
final class LessonLearnt {
    /** Below this chance nothing was learnt of the cause. By judgement. */
    private static final double LEARNT = 0.35;
    /** "The same" is no end. */
    private static final Set<String> ENDS = Set.of("better", "worse");

    private final Replier replier;
    private final Garden garden;
    private final LocalDate today;

    LessonLearnt(Replier replier, Garden garden, LocalDate today) {
        this.replier = replier;
        this.garden = garden;
        this.today = today;
    }

    /**
     * Keeps the notes that a message leads to.
     *
     * @param written what the message told
     * @param advised the cases as they stand with it
     * @return what was written, with the notes
     */
    List<Logged> kept(Page page, Message message, List<Logged> written, Advised advised) {
        List<Entry> notes = notes(written, advised.diagnoses());
        if (notes.isEmpty()) {
            return written;
        }
        List<Logged> all = new ArrayList<>(written);
        all.addAll(page.append(message.id(), message.at(), notes));
        return all;
    }

    private List<Entry> notes(List<Logged> written, List<Diagnosis> diagnoses) {
        List<Entry> notes = new ArrayList<>();
        for (Logged line : written) {
            if (line.entry() instanceof Finding finding
                    && finding.about().equals(Finding.OUTCOME)
                    && ENDS.contains(finding.found())) {
                note(finding.planting(), finding.crop(), finding.found(), of(finding, diagnoses))
                        .ifPresent(notes::add);
            } else if (line.entry() instanceof Event event && event.what() == What.DIED) {
                note(event.planting(), event.crop(), "died", diagnoses).ifPresent(notes::add);
            }
        }
        return notes;
    }

    private static List<Diagnosis> of(Finding outcome, List<Diagnosis> diagnoses) {
        return diagnoses.stream()
                .filter(diagnosis ->
                        outcome.trouble() == null || diagnosis.signs().contains(outcome.trouble()))
                .toList();
    }

    private Optional<Entry> note(String planting, String crop, String outcome, List<Diagnosis> diagnoses) {
        return diagnoses.stream()
                .filter(diagnosis -> planting != null
                        ? planting.equals(diagnosis.planting())
                        : crop != null && crop.equals(diagnosis.crop()))
                .filter(diagnosis -> diagnosis.causes().get(0).chance() >= LEARNT)
                .findFirst()
                .flatMap(diagnosis -> replier.lesson(diagnosis, outcome, garden)
                        .filter(text -> !known(text))
                        .map(text -> Event.of(What.NOTE, diagnosis.planting(), diagnosis.crop(), today)
                                .withDetail(text)));
    }

    private boolean known(String text) {
        return garden.events().stream()
                .anyMatch(event -> Objects.equals(event.detail(), text) && today.equals(event.on()));
    }
}
