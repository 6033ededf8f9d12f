package bothy.reading;

import bothy.almanac.Words;
import bothy.reading.said.Passage;
import bothy.reading.text.Token;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Puts plainer words for those that growers use of a trouble: "titchy" is tiny, and what "flags" is wilting. */
final class PlainWords {
    private static final String FILE = "plain-words";
    private final Map<String, String> plain = new HashMap<>();

    PlainWords(Words words) {
        for (String word : words.names(FILE, "")) {
            words.list(FILE, "/" + word).forEach(other -> plain.put(other, word));
        }
    }

    Set<String> vocabulary() {
        return plain.keySet();
    }

    /** The message in plainer words; itself when it has none to put. */
    Passage of(Passage passage) {
        if (passage.tokens().stream().noneMatch(token -> plain.containsKey(token.word()))) {
            return passage;
        }
        List<Token> tokens = passage.tokens().stream().map(this::plainer).toList();
        return passage.withTokens(tokens);
    }

    private Token plainer(Token token) {
        String word = plain.get(token.word());
        return word == null ? token : token.as(word);
    }
}
