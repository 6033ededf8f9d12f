package bothy.conversation;

import bothy.garden.Diagnosis;
import bothy.garden.Event;
import bothy.garden.Finding;
import bothy.garden.Given;
import bothy.garden.Heard;
import bothy.garden.Inquiry;
import bothy.garden.Kind;
import bothy.garden.Logged;
import bothy.garden.SettingChange;
import bothy.garden.SignSeen;
import bothy.replying.Answer;
import bothy.replying.Replier;
import bothy.replying.Turn;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What a conversation keeps in mind after a message: the question that waits, what was talked about, what was said and why. */
final class Remembering {
    /** A weekly list may hold more than a phone shows reasons for. */
    private static final int MOST_EXPLAINED = 6;

    /** So long beyond its check day a question about a trouble may still be answered. */
    private static final int WAITING_DAYS = 3;

    private final Replier replier;
    private final Memory memory;
    private final LocalDate today;

    /** @param memory what was in mind before the message */
    Remembering(Replier replier, Memory memory, LocalDate today) {
        this.replier = replier;
        this.memory = memory;
        this.today = today;
    }

    /** The day that the reply names for the next look is kept, and what is to be said again on the day that the grower asked for. */
    private Raised toCome(Raised raised, Answer answer, Turn turn) {
        Raised next = raised;
        if (answer.nextLook() != null) {
            for (Given given : answer.spoken()) {
                if (answer.nextLook().equals(given.nextCheck())) {
                    next = next.toCheck(given.planting() == null ? "" : given.planting(), answer.nextLook());
                }
            }
        }
        boolean remind = turn.written().stream()
                .anyMatch(line -> line.entry() instanceof SettingChange change
                        && change.setting().equals("remindOn"));
        return remind ? next.toSayAgain(memory.lastSaid()) : next;
    }

    /** A question about a trouble waits through other talk until it is answered or its case is past: the answer may come days later. */
    private boolean waits(Turn turn) {
        return memory.pending() != null
                && CaseNotes.ofACase(memory.pending())
                && turn.heard().kind() != Kind.LET_GO
                && turn.diagnoses().stream()
                        .anyMatch(diagnosis -> CaseNotes.isAbout(memory.pending(), diagnosis)
                                && !today.isAfter(diagnosis.nextCheck().plusDays(WAITING_DAYS)))
                && turn.written().stream()
                        .noneMatch(line -> line.entry() instanceof Finding finding && finding.asked());
    }

    private Set<String> said(Answer answer) {
        Set<String> said = new LinkedHashSet<>(memory.saidOn(today));
        answer.spoken().stream().map(Turn::key).forEach(said::add);
        return said;
    }

    /** What to know next time. */
    Memory after(Answer answer, Turn turn, Raised raised) {
        List<String> why =
                replier.why(answer.spoken().stream().limit(MOST_EXPLAINED).toList(), turn);
        Set<String> mentioned = new LinkedHashSet<>();
        for (Logged line : turn.written()) {
            if (line.entry() instanceof Event event && event.planting() != null) {
                mentioned.add(event.planting());
            }
        }
        turn.heard().inquiries().forEach(inquiry -> mentioned.addAll(inquiry.plantings()));
        turn.heard().signs().stream()
                .map(SignSeen::planting)
                .filter(java.util.Objects::nonNull)
                .forEach(mentioned::add);
        Set<String> crops = cropsNamed(turn.heard());
        boolean silent = mentioned.isEmpty() && crops.isEmpty();
        Set<String> keys = answer.spoken().stream().map(Turn::key).collect(Collectors.toSet());
        return new Memory(
                answer.asked() == null && waits(turn) ? memory.pending() : answer.asked(),
                why.isEmpty() ? memory.why() : why,
                silent ? memory.mentioned() : List.copyOf(mentioned),
                silent ? memory.crops() : List.copyOf(crops),
                toCome(raised, answer, turn),
                said(answer),
                today,
                keys.isEmpty() ? memory.lastSaid() : keys,
                verdicts(turn),
                asked(turn.heard()));
    }

    /** Talk that says nothing ("thanks") leaves the last question standing. */
    private List<Inquiry> asked(Heard heard) {
        boolean tells = !heard.statements().isEmpty()
                || !heard.signs().isEmpty()
                || !heard.plans().isEmpty()
                || !heard.amendments().isEmpty();
        if (tells) {
            return List.of();
        }
        List<Inquiry> asked = heard.inquiries().stream()
                .filter(inquiry -> !inquiry.onlyTold())
                .toList();
        return asked.isEmpty() ? memory.asked() : asked;
    }

    /** What was said of the troubles that are still being looked into; one spoken of now is as it is now. */
    private Map<String, Diagnosis.Said> verdicts(Turn turn) {
        Map<String, Diagnosis.Said> verdicts = new HashMap<>();
        for (Diagnosis diagnosis : turn.diagnoses()) {
            Diagnosis.Said said =
                    diagnosis.justTold() ? diagnosis.said() : memory.verdicts().get(diagnosis.of());
            if (said != null) {
                verdicts.put(diagnosis.of(), said);
            }
        }
        return verdicts;
    }

    /** The crops that a message was about, whether they grow already or not. */
    private static Set<String> cropsNamed(Heard heard) {
        Set<String> crops = new LinkedHashSet<>();
        heard.inquiries().forEach(inquiry -> crops.add(inquiry.crop()));
        heard.statements().forEach(statement -> crops.add(statement.event().crop()));
        heard.plans().forEach(plan -> crops.add(plan.crop()));
        heard.signs().forEach(sign -> crops.add(sign.crop()));
        crops.remove(null);
        return crops;
    }
}
