package bothy.replying;

import bothy.garden.Doubt;
import bothy.garden.Given;
import java.util.List;

/**
 * What to say unasked, in one message.
 *
 * @param due advice that is due, the most urgent first
 * @param week whether the weekly list is to be told
 * @param opening a sentence to begin with, {@code null} for none
 * @param first a question that goes before those of the advice, {@code null} for none
 * @param question a question to end with when no advice asks one, {@code null} for none
 */
public record Unasked(List<Given> due, boolean week, String opening, Doubt first, Doubt question) {
    public Unasked {
        due = List.copyOf(due);
    }
}
