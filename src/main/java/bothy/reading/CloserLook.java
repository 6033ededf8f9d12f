package bothy.reading;

import bothy.almanac.RulesBroken;
import bothy.almanac.Words;
import bothy.garden.Finding;
import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;
import bothy.reading.text.Phrase;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseBook.Found;
import bothy.reading.text.Together;
import bothy.reading.text.TogetherBook;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds what a message tells of a closer look at a trouble: answers to questions that the tables of troubles ask, whether they were
 * asked or not ("white fur underneath", "soil is bone dry").
 */
final class CloserLook {
    /** Answers to questions that may be asked, and clues that are only ever told. */
    private static final List<String> FILES = List.of("findings", "clues");
    /** The file with the groups of words that patterns share. */
    static final String GROUPS = "clues";
    /** A "no" so many words before what was found turns it round. */
    private static final int REACH = 4;
    /** From 29.4 °C on fruit set of tomatoes falls (UF/IFAS). */
    private static final double HOT_C = 29.4;
    /** Below 10 °C warm-season crops stand still (R. Kujawski). */
    private static final double COLD_C = 10;
    /** Below about 15 °C warm-season seed hardly moves (Harrington). */
    private static final double COLD_SOIL_C = 14.9;

    private final PhraseBook<Answer> book = new PhraseBook<>();
    private final TogetherBook<Answer> near = new TogetherBook<>();
    private final Set<String> negators;
    private final Set<String> noes;

    private record Answer(String about, String answer) {}

    CloserLook(Words words) {
        negators = Set.copyOf(words.list(FILES.get(0), "/negators"));
        Set<String> questionsWithNo = new HashSet<>();
        for (String file : FILES) {
            Map<String, List<String>> groups = words.lists(GROUPS, "/groups");
            for (String about : words.names(file, "/found")) {
                String at = "/found/" + about;
                words.lists(file, at)
                        .forEach((answer, phrases) -> phrases.forEach(phrase -> {
                            try {
                                add(phrase, groups, new Answer(about, answer));
                            } catch (IllegalArgumentException unreadable) {
                                throw new RulesBroken(List.of(words.problem(
                                        file,
                                        at,
                                        "\"" + phrase + "\" cannot be read: " + unreadable.getMessage() + ".")));
                            }
                        }));
                if (words.names(file, at).contains("yes")) {
                    questionsWithNo.add(about);
                }
            }
        }
        noes = Set.copyOf(questionsWithNo);
    }

    private void add(String phrase, Map<String, List<String>> groups, Answer answer) {
        if (Together.isOne(phrase)) {
            near.add(new Together(phrase, groups), answer);
        } else {
            book.add(new Phrase(phrase, groups), answer);
        }
    }

    Set<String> vocabulary() {
        Set<String> all = new HashSet<>(book.vocabulary());
        all.addAll(near.vocabulary());
        return all;
    }

    /** What was found, one answer for each question: that of the longest phrase. */
    List<Finding> in(Passage passage) {
        List<Found<Answer>> all = new ArrayList<>(book.all(passage.tokens(), 0, passage.size(), passage));
        near(passage, all);
        all.sort(Comparator.comparingInt(found -> -found.place().length()));
        Map<String, Finding> found = new LinkedHashMap<>();
        for (Found<Answer> one : all) {
            String about = one.meaning().about();
            String answer = turned(one, passage);
            if (answer != null) {
                found.putIfAbsent(
                        about,
                        new Finding(
                                null,
                                null,
                                about,
                                answer,
                                false,
                                passage.situation().today()));
            }
        }
        degrees(passage)
                .forEach((about, answer) -> found.putIfAbsent(
                        about,
                        new Finding(
                                null,
                                null,
                                about,
                                answer,
                                false,
                                passage.situation().today())));
        return List.copyOf(found.values());
    }

    /** Words that stand near each other; where one of them is denied nothing was found. */
    private void near(Passage passage, List<Found<Answer>> into) {
        List<int[]> sentences = passage.sentences();
        near.possible(passage.words(), (together, answer) -> {
            for (int[] sentence : sentences) {
                Phrase.Place place = together.in(passage.tokens(), sentence[0], sentence[1], Together.IN_A_SENTENCE);
                if (place != null && !denied(passage, place)) {
                    into.add(new Found<>(answer, place));
                }
            }
        });
    }

    private boolean denied(Passage passage, Phrase.Place place) {
        return place.words().stream()
                .anyMatch(at -> negates(passage, place, at - 1)
                        || !passage.tokens().get(Math.max(0, at - 1)).mark() && negates(passage, place, at - 2));
    }

    /** A "no" that belongs to the pattern denies nothing. */
    private boolean negates(Passage passage, Phrase.Place place, int at) {
        return at >= 0 && !place.words().get(at) && negators.contains(passage.word(at));
    }

    /** Degrees told are hot or cold weather, or cold soil for seed. The limits are those of the published thresholds. */
    private static Map<String, String> degrees(Passage passage) {
        Map<String, String> found = new LinkedHashMap<>();
        for (Quantity quantity : passage.quantities()) {
            if (quantity.degrees()) {
                if (quantity.value() >= HOT_C) {
                    found.put("hot-spell", "yes");
                } else if (quantity.value() <= COLD_C) {
                    found.put("cold-spell", "yes");
                    found.put("night-cold", "yes");
                }
                if (quantity.value() <= COLD_SOIL_C) {
                    found.put("soil-warmth", "cold");
                }
            }
        }
        return found;
    }

    /** The answer, turned round after a "no"; {@code null} when a "no" leaves open which of several answers it is. */
    private String turned(Found<Answer> found, Passage passage) {
        String answer = found.meaning().answer();
        for (int at = found.start() - 1; at >= Math.max(0, found.start() - REACH); at--) {
            if (passage.tokens().get(at).mark() || passage.word(at).equals("but")) {
                return answer;
            }
            if (negators.contains(passage.word(at))) {
                return !noes.contains(found.meaning().about()) ? null : answer.equals("yes") ? "no" : null;
            }
        }
        return answer;
    }
}
