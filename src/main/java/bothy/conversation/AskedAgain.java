package bothy.conversation;

import bothy.garden.Doubt;
import bothy.garden.Heard;
import bothy.garden.Kind;
import java.util.HashMap;
import java.util.Map;

/** A few words that say nothing while a question waits are taken for an answer that was not understood: it is asked once more. */
final class AskedAgain {
    private static final int WORDS_OF_AN_ANSWER = 5;
    /** Marks a question that was asked a second time, which its wording opens with. */
    private static final String AGAIN = "again";

    private final Doubt pending;
    private final boolean answered;

    /** @param answered whether one of the choices was taken */
    AskedAgain(Doubt pending, boolean answered) {
        this.pending = pending;
        this.answered = answered;
    }

    Heard orElse(Heard heard, String text) {
        boolean asksAgain = pending != null
                && !answered
                && !pending.arguments().containsKey(AGAIN)
                && saysNothing(heard)
                && text.strip().split("\\s+").length <= WORDS_OF_AN_ANSWER;
        return asksAgain ? heard.withDoubt(again()) : heard;
    }

    private static boolean saysNothing(Heard heard) {
        boolean strange = heard.kind() == Kind.OFF_TOPIC
                || heard.kind() == Kind.CHAT && !heard.strange().isEmpty();
        return strange
                && heard.doubt() == null
                && heard.statements().isEmpty()
                && heard.inquiries().isEmpty()
                && heard.signs().isEmpty()
                && heard.settings().isEmpty()
                && heard.plans().isEmpty();
    }

    private Doubt again() {
        Map<String, String> arguments = new HashMap<>(pending.arguments());
        arguments.put(AGAIN, "yes");
        return new Doubt(pending.about(), arguments, pending.choices(), pending.draft());
    }
}
