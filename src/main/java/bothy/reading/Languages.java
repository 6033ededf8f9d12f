package bothy.reading;

import bothy.reading.said.Passage;
import bothy.reading.text.Spelling;
import bothy.reading.text.Token;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import opennlp.tools.langdetect.Language;
import opennlp.tools.langdetect.LanguageDetectorME;
import opennlp.tools.langdetect.LanguageDetectorModel;

/**
 * Tells a message in another language from badly written English. The detector is asked only about messages of which most words are
 * unknown, and its model is loaded when the first of these comes in: typed English is too short and too strange to be judged by
 * letters alone (the figures are in DEVELOPERS.md).
 */
final class Languages {
    private static final String MODEL = "/langdetect-183.bin";
    private static final String ENGLISH = "eng";
    /** Words that must be there before a language is judged at all. */
    private static final int FEWEST_WORDS = 3;
    /** The share of words known from which a message is English without asking. */
    private static final double KNOWN_ENOUGH = 0.5;
    /** Below this confidence the detector is only guessing at keys pressed. */
    private static final double LEAST_CONFIDENCE = 0.0140;
    /** How much likelier than English another language must be. */
    private static final double LIKELIER = 1.2;

    private final Spelling spelling;

    /** Holds the model from the first time that it is needed. */
    private static final class Detector {
        private static final LanguageDetectorModel MODEL_READ = model();

        private static LanguageDetectorModel model() {
            try (InputStream in = Languages.class.getResourceAsStream(MODEL)) {
                return new LanguageDetectorModel(in);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
    }

    Languages(Spelling spelling) {
        this.spelling = spelling;
    }

    /** The ISO 639-3 code of the language that a message is in, {@code null} when that is English or cannot be told. */
    String foreign(Passage passage) {
        List<Token> words = passage.tokens().stream()
                .filter(token -> token.aWord() && token.word().length() > 1)
                .toList();
        boolean otherLetters =
                passage.message().codePoints().filter(Character::isLetter).anyMatch(Languages::notLatin);
        if (!otherLetters && (words.size() < FEWEST_WORDS || knownShare(words) >= KNOWN_ENOUGH)) {
            return null;
        }
        return judged(passage.message().toLowerCase(Locale.ROOT), otherLetters);
    }

    private static boolean notLatin(int letter) {
        Character.UnicodeScript script = Character.UnicodeScript.of(letter);
        return script != Character.UnicodeScript.LATIN
                && script != Character.UnicodeScript.COMMON
                && script != Character.UnicodeScript.INHERITED;
    }

    private double knownShare(List<Token> words) {
        long known = words.stream()
                .filter(token -> !token.mended() && spelling.known(token.word()))
                .count();
        return (double) known / words.size();
    }

    private static String judged(String message, boolean otherLetters) {
        Language[] likely = new LanguageDetectorME(Detector.MODEL_READ).predictLanguages(message);
        double english = 0;
        for (Language language : likely) {
            english = language.getLang().equals(ENGLISH) ? language.getConfidence() : english;
        }
        boolean sure = likely[0].getConfidence() >= LEAST_CONFIDENCE && likely[0].getConfidence() >= LIKELIER * english;
        return !likely[0].getLang().equals(ENGLISH) && (sure || otherLetters) ? likely[0].getLang() : null;
    }
}
