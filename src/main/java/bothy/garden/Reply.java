package bothy.garden;

import java.util.List;

/**
 * What goes back to the grower.
 *
 * @param text plain text, paragraphs apart by an empty line; never empty, any length (a channel splits it to its own limits)
 * @param buttons labels to tap, at most a few, in order; empty for none
 * @param documents files that go along, in order; empty for none
 */
public record Reply(String text, List<String> buttons, List<Document> documents) {
    public Reply {
        buttons = List.copyOf(buttons);
        documents = documents == null ? List.of() : List.copyOf(documents);
    }

    public Reply(String text, List<String> buttons) {
        this(text, buttons, List.of());
    }
}
