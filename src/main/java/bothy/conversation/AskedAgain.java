package bothy.conversation;

import bothy.garden.Doubt;
import bothy.garden.Heard;
import bothy.garden.Kind;

/** A few words that say nothing while a question waits are taken for an answer that was not understood: it is asked once more. */
final class AskedAgain {
    private static final int WORDS_OF_AN_ANSWER = 5;

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
                && !pending.askedBefore()
                && !pending.putOff()
                && saysNothing(heard)
                && text.strip().split("\\s+").length <= WORDS_OF_AN_ANSWER;
        return asksAgain ? heard.withDoubt(pending.again()) : heard;
    }

    private static boolean saysNothing(Heard heard) {
        boolean strange = heard.kind() == Kind.OFF_TOPIC
                || heard.kind() == Kind.ANSWER
                || heard.kind() == Kind.CHAT && !heard.strange().isEmpty();
        return strange
                && heard.doubt() == null
                && heard.statements().isEmpty()
                && heard.inquiries().isEmpty()
                && heard.signs().isEmpty()
                && heard.settings().isEmpty()
                && heard.plans().isEmpty();
    }
}
