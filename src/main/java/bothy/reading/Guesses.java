package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseFile;
import java.util.Map;
import java.util.Set;

/** Tells questions that suppose something of a trouble ("could it be slugs?") from those that ask something else. */
final class Guesses {
    private static final String FILE = "findings";

    /** "Could it be slugs" sounds like a question of how to keep them off. */
    private static final Set<Question> MAY_SUPPOSE = Set.of(Question.HOW_TO, Question.STATUS);

    private final PhraseBook<String> guesses;
    private final PhraseBook<String> not;
    private final Questions questions;
    private final Inquiries inquiries;

    Guesses(Words words, Questions questions) {
        PhraseFile file = new PhraseFile(words, FILE, Map.of());
        guesses = file.book("/guesses", "guess");
        not = file.book("/not-guesses", "not");
        this.questions = questions;
        inquiries = new Inquiries(questions);
    }

    /** The text of a passage up to where each of its sentences asks something else than what the trouble is. */
    String withoutOtherQuestions(Passage passage, String text) {
        StringBuilder kept = new StringBuilder();
        for (int[] sentence : passage.sentences()) {
            int begins = questions.begins(passage, sentence);
            int end = begins < 0 || supposes(passage, sentence, begins) ? sentence[1] : begins;
            if (end > sentence[0]) {
                kept.append(text, from(passage, sentence[0]), to(passage, end - 1))
                        .append(". ");
            }
        }
        return kept.toString();
    }

    private static int from(Passage passage, int at) {
        return passage.tokens().get(at).from();
    }

    private static int to(Passage passage, int at) {
        return passage.tokens().get(at).to();
    }

    private boolean supposes(Passage passage, int[] sentence, int begins) {
        Inquiry first = inquiries.all(passage, sentence, begins).get(0);
        return first.question() == Question.WHY
                || (first.question() == Question.OTHER && first.topic() == null
                                || MAY_SUPPOSE.contains(first.question()))
                        && stands(guesses, passage, begins, sentence[1])
                        && !stands(not, passage, begins, sentence[1]);
    }

    private static boolean stands(PhraseBook<String> book, Passage passage, int from, int to) {
        return !book.all(passage.tokens(), from, to, passage).isEmpty();
    }
}
