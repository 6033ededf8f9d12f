package bothy.reading;

import bothy.almanac.Words;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.Phrase;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseBook.Found;
import bothy.reading.text.PhraseFile;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What was eaten and hurts nobody: "kids ate most of the peas raw", "one got eaten by a possum". Words of eating that are told of it
 * stand for themselves, so that no caution hangs on them.
 */
final class GoodFood {
    private static final String FILE = "eating";
    private static final String GROUPS = CloserLook.GROUPS;
    /** What is told without a part being named. */
    private static final String RIPE = "ripe";
    /** What stands instead of a word of eating. */
    private static final String TOOK = "had";
    /** Whoever ate it stands so many words behind "eaten by". */
    private static final int EATER = 3;

    /** How a thing gets into a mouth that is no meal. */
    private static final Set<String> NO_MEAL = Set.of("swallowed", "chewed", "chewing", "licked", "drank");

    private final Map<String, Set<String>> good = new HashMap<>();
    private final PhraseBook<String> parts = new PhraseBook<>();
    private final PhraseBook<String> harmful = new PhraseBook<>();
    private final Set<String> eating;
    private final Set<String> pets;
    private final Set<String> people = new HashSet<>();
    private final Set<String> notForPets;

    GoodFood(Words words) {
        PhraseFile file = new PhraseFile(words, FILE, words.lists(FILE, "/groups"));
        words.lists(FILE, "/good-food").forEach((part, crops) -> good.put(part, Set.copyOf(crops)));
        for (String part : words.names(FILE, "/parts")) {
            file.into(parts, "/parts/" + part, part);
        }
        parts.add(new Phrase("green", Map.of()), "green");
        Map<String, List<String>> groups = words.lists(GROUPS, "/groups");
        harmful.add(new Phrase("@harmful", groups), "harmful");
        file.into(harmful, "/harmful-besides", "harmful");
        eating = Set.copyOf(groups.get("ate"));
        pets = Set.copyOf(groups.get("pet"));
        notForPets = Set.copyOf(groups.get("not-for-pets"));
        people.addAll(groups.get("person"));
        people.addAll(groups.get("young"));
        people.addAll(pets);
    }

    /** The passage in which nothing is eaten that hurts nobody. */
    Passage without(Passage passage) {
        if (passage.words().stream().noneMatch(eating::contains)) {
            return passage;
        }
        List<Token> tokens = new ArrayList<>(passage.tokens());
        int[] ofCrops = null;
        for (int[] sentence : passage.sentences()) {
            if (!crops(passage, sentence).isEmpty()) {
                ofCrops = sentence;
            }
            int[] told = ofCrops == null ? sentence : new int[] {ofCrops[0], sentence[1]};
            for (int at = sentence[0]; at < sentence[1]; at++) {
                String word = passage.word(at);
                if (eating.contains(word) && (byTheWild(passage, at, sentence[1]) || good(passage, told, word))) {
                    tokens.set(at, tokens.get(at).as(TOOK));
                }
            }
        }
        return tokens.equals(passage.tokens()) ? passage : passage.withTokens(tokens);
    }

    private boolean byTheWild(Passage passage, int eaten, int end) {
        if (!passage.word(eaten + 1).equals("by")) {
            return false;
        }
        for (int at = eaten + 2; at < Math.min(end, eaten + 2 + EATER); at++) {
            if (people.contains(passage.word(at))) {
                return false;
            }
        }
        return true;
    }

    private boolean good(Passage passage, int[] told, String word) {
        List<CropSaid> crops = crops(passage, told);
        boolean unsuited = holds(passage, told, pets) && holds(passage, told, notForPets);
        if (crops.isEmpty() || NO_MEAL.contains(word) || unsuited) {
            return false;
        }
        List<Found<String>> named = parts.all(passage.tokens(), told[0], told[1], passage);
        return harmful.all(passage.tokens(), told[0], told[1], passage).stream()
                        .filter(harm -> crops.stream().noneMatch(crop -> crop.covers(harm.start())))
                        .allMatch(harm -> named.stream()
                                .filter(part -> part.start() <= harm.start() && harm.end() <= part.end())
                                .anyMatch(part -> allGood(crops, part.meaning())))
                && allGood(crops, RIPE);
    }

    private boolean allGood(List<CropSaid> crops, String part) {
        Set<String> goodOnes = good.getOrDefault(part, Set.of());
        return crops.stream().allMatch(crop -> goodOnes.contains(crop.crop()));
    }

    private static List<CropSaid> crops(Passage passage, int[] stretch) {
        return Passage.within(passage.crops(), stretch[0], stretch[1]);
    }

    private static boolean holds(Passage passage, int[] stretch, Set<String> words) {
        for (int at = stretch[0]; at < stretch[1]; at++) {
            if (words.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }
}
