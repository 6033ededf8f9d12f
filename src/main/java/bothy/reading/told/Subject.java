package bothy.reading.told;

import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.Set;

/** Who or what a clause without a crop is about: "my nephew did the digging" and "the creek's up" tell nothing of plants. */
final class Subject {
    private static final Set<String> GROWER = Set.of(
            "i",
            "we",
            "ive",
            "weve",
            "im",
            "me",
            "us",
            "myself",
            "ourselves",
            "both",
            "daughter",
            "son",
            "kids",
            "children",
            "husband",
            "hubby",
            "wife",
            "partner",
            "missus",
            "class",
            "pupils",
            "himself",
            "herself",
            "team",
            "lads");

    private static final Set<String> PLANTS = Set.of(
            "they",
            "them",
            "it",
            "these",
            "those",
            "ones",
            "one",
            "all",
            "everything",
            "everyone",
            "plants",
            "plant",
            "seedlings",
            "seedling",
            "seeds",
            "seed",
            "rest",
            "lot",
            "lots",
            "row",
            "rows",
            "tray",
            "trays",
            "pot",
            "pots",
            "leaves",
            "flowers",
            "flower",
            "fruit",
            "fruits",
            "pods",
            "crop",
            "crops",
            "half",
            "most",
            "some",
            "few",
            "many",
            "others",
            "sowing",
            "batch",
            "whole",
            "two",
            "three",
            "four",
            "none",
            "this",
            "that",
            "first",
            "second",
            "last",
            "bed",
            "beds",
            "tops",
            "roots",
            "cells",
            "modules",
            "babies",
            "veg",
            "veggies",
            "tubers",
            "cloves",
            "sets",
            "bulbs",
            "shoots",
            "there",
            "here",
            "more",
            "each");

    private static final Set<String> BESIDE = Set.of(
            "ok",
            "okay",
            "right",
            "so",
            "hi",
            "hello",
            "yes",
            "phew",
            "wow",
            "omg",
            "yay",
            "oh",
            "ooh",
            "woohoo",
            "hooray",
            "hurrah",
            "hurray",
            "yippee",
            "whoop",
            "woo",
            "hoo",
            "hey",
            "look",
            "gosh",
            "blimey",
            "crikey",
            "lol",
            "done",
            "great",
            "is",
            "are",
            "was",
            "were",
            "be",
            "been",
            "am",
            "has",
            "have",
            "had",
            "did",
            "do",
            "got",
            "get",
            "getting",
            "just",
            "then",
            "and",
            "also",
            "finally",
            "already",
            "now",
            "but",
            "not",
            "still",
            "even",
            "well",
            "up",
            "out",
            "off",
            "at",
            "last",
            "as",
            "to",
            "went",
            "go",
            "going",
            "came",
            "managed",
            "started",
            "only",
            "too",
            "very",
            "really",
            "all",
            "again",
            "gently",
            "carefully",
            "quickly",
            "ever",
            "never",
            "nearly",
            "almost",
            "because",
            "since",
            "when",
            "after",
            "before",
            "or",
            "if",
            "which",
            "who",
            "later",
            "today",
            "yesterday",
            "tonight",
            "soon",
            "back",
            "down",
            "in",
            "on",
            "of",
            "with");

    private static final Set<String> DETERMINERS =
            Set.of("the", "a", "an", "my", "our", "his", "her", "their", "your", "some");

    private static final Set<String> AIDS = Set.of("supported", "protected");
    private static final Set<String> AIDED =
            Set.of("them", "it", "they", "these", "those", "each", "every", "all", "both", "lot", "one");

    private Subject() {}

    static boolean plantOrGrower(String word) {
        return PLANTS.contains(word) || GROWER.contains(word) || BESIDE.contains(word);
    }

    /** Whether something that is neither the grower nor a plant does or is what the clause tells. */
    static boolean foreign(Passage passage, Clause clause) {
        if (Counted.number(passage, clause) != null) {
            return false; // "The other two had snapped".
        }
        if (clause.action().form() == null
                && AIDS.contains(clause.action().action())
                && Cropless.names(passage, clause, AIDED)) {
            return false; // "The canes up for them": the canes are what was done.
        }
        int verb = clause.action().words().nextSetBit(0);
        if (verb > 0
                && DETERMINERS.contains(passage.word(verb - 1))
                && clause.action().state()) {
            return false; // "The first tiny pods" are what was seen.
        }
        if (verb > 0 && DETERMINERS.contains(passage.word(verb - 1))) {
            // "The dug was no help": a noun, whatever it looks like.
            return true;
        }
        for (int at = verb - 1; at >= clause.sentence()[0]; at--) {
            String word = passage.word(at);
            if (passage.tokens().get(at).mark()
                    || GROWER.contains(word)
                    || PLANTS.contains(word)
                    || covered(passage, at)) {
                return false;
            }
            boolean passed = BESIDE.contains(word) || DETERMINERS.contains(word) || word.endsWith("ly");
            if (!passed) {
                int led = DETERMINERS.contains(passage.word(at - 1)) ? at - 2 : at - 1;
                if (led > clause.sentence()[0]
                        && Set.of("on", "in", "at", "by", "under", "from", "into")
                                .contains(passage.word(led))) {
                    at = led; // "Now they are on the bench outside by day": a place, no subject.
                    continue;
                }
                return named(passage, clause, at);
            }
        }
        return false;
    }

    /** A subject stands behind its "the" or "my"; any other word may be one of the little ones that no list holds. */
    private static boolean named(Passage passage, Clause clause, int at) {
        boolean determined = at > clause.sentence()[0] && DETERMINERS.contains(passage.word(at - 1))
                || at > clause.sentence()[0] + 1
                        && DETERMINERS.contains(passage.word(at - 2))
                        && !covered(passage, at - 1);
        return determined || at == clause.sentence()[0];
    }

    private static boolean covered(Passage passage, int at) {
        return passage.crops().stream().anyMatch((CropSaid crop) -> crop.start() <= at && at < crop.end())
                || passage.numbers().stream().anyMatch(number -> number.start() <= at && at < number.end())
                || passage.days().stream().anyMatch(day -> day.start() <= at && at < day.end())
                || passage.places().stream().anyMatch(place -> place.start() <= at && at < place.end())
                || passage.actions().stream().anyMatch(action -> action.words().get(at));
    }
}
