package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseFile;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a question is about by the things that it names, where no phrase fits better: "water" and "how much", "plant out" and "can".
 * Word order plays no part, so it is less sure than a phrase.
 */
final class Framed {
    private static final String FILE = "questions";

    private final PhraseBook<String> naming = new PhraseBook<>();
    private final List<Frame> frames = new ArrayList<>();

    /** The names that must be there, and those that must not. */
    private record Frame(Question question, Set<String> all, Set<String> none) {
        boolean fits(Set<String> named) {
            return named.containsAll(all) && none.stream().noneMatch(named::contains);
        }
    }

    /**
     * The kind that a frame tells.
     *
     * @param names how many names tell it
     */
    record Told(Question question, int names) {}

    Framed(Words words) {
        PhraseFile file = new PhraseFile(words, FILE, Map.of());
        words.names(FILE, "/naming").forEach(name -> file.into(naming, "/naming/" + name, name));
        for (String kind : words.names(FILE, "/frames")) {
            Question question = Questions.question(words, kind);
            for (String text : words.list(FILE, "/frames/" + kind)) {
                Set<String> all = new HashSet<>();
                Set<String> none = new HashSet<>();
                for (String name : text.split(" ")) {
                    if (name.startsWith("-")) {
                        none.add(name.substring(1));
                    } else {
                        all.add(name);
                    }
                }
                frames.add(new Frame(question, all, none));
            }
        }
    }

    Set<String> vocabulary() {
        return naming.vocabulary();
    }

    /** The frame of the most names that fits a stretch, {@code null} when none does. */
    Told in(Passage passage, int from, int to) {
        Set<String> named = named(passage, from, to);
        Told best = null;
        for (Frame frame : frames) {
            if (frame.fits(named) && (best == null || frame.all().size() > best.names())) {
                best = new Told(frame.question(), frame.all().size());
            }
        }
        return best;
    }

    private Set<String> named(Passage passage, int from, int to) {
        Set<String> named = new HashSet<>();
        naming.all(passage.tokens(), from, to, passage).forEach(found -> named.add(found.meaning()));
        if (!Passage.within(passage.crops(), from, to).isEmpty()) {
            named.add("crop");
        }
        if (Passage.within(passage.quantities(), from, to).stream()
                .anyMatch(quantity -> quantity.unit().equals("L"))) {
            named.add("volume");
        }
        return named;
    }
}
