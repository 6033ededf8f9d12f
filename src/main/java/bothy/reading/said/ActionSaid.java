package bothy.reading.said;

import bothy.reading.text.Conjugation.Form;
import java.util.BitSet;

/**
 * A doing or a state told.
 *
 * @param action its name in the words files: a kind of entry, or "planted", which may be sowing or planting out
 * @param form the verb's form, {@code null} for a state or a phrase that stands as it is
 * @param state whether it holds now rather than having been done
 * @param detail what it adds ("dry"), {@code null} for nothing
 * @param words the tokens that tell it, without the gap in which the crop may stand
 */
public record ActionSaid(int start, int end, String action, Form form, boolean state, String detail, BitSet words)
        implements Span {
    /** The last token that tells it. */
    public int lastWord() {
        return words.length() - 1;
    }
}
