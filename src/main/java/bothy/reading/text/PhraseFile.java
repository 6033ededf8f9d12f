package bothy.reading.text;

import bothy.almanac.RulesBroken;
import bothy.almanac.Words;
import java.util.List;
import java.util.Map;

/** Puts the phrases at a place of a words file into a book, or says which one cannot be read and where it stands. */
public record PhraseFile(Words words, String file, Map<String, List<String>> groups) {

    public <T> void into(PhraseBook<T> book, String pointer, T meaning) {
        for (String text : words.list(file, pointer)) {
            try {
                book.add(new Phrase(text, groups), meaning);
            } catch (IllegalArgumentException wrong) {
                String problem = "\"" + text + "\" is no phrase: " + wrong.getMessage() + ".";
                throw new RulesBroken(List.of(words.problem(file, pointer, problem)));
            }
        }
    }

    /** A book of the phrases at one place, all meaning the same. */
    public <T> PhraseBook<T> book(String pointer, T meaning) {
        PhraseBook<T> book = new PhraseBook<>();
        into(book, pointer, meaning);
        return book;
    }
}
