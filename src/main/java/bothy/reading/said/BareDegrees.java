package bothy.reading.said;

import bothy.reading.text.Token;
import java.util.Set;

/** Numbers without a scale or a unit that can only be how hot or how cold it was. */
final class BareDegrees {
    /** From a hot day in degrees Celsius to the hottest in Fahrenheit. By judgement. */
    private static final int HOT = 30;

    private static final int HOTTEST = 125;
    /** From where both scales meet, as cold as it gets where vegetables grow, to a little above 32 °F, where water freezes. */
    private static final int COLDEST = -40;

    private static final int FREEZING_F = 36;
    private static final Set<String> FROST = Set.of("frost", "frosty", "freeze", "froze", "frosted");
    private static final Set<String> CLIMBING = Set.of("hit", "topped", "reached", "touched");
    /** What may climb to a figure that is told without its scale. */
    private static final Set<String> WARMED = Set.of(
            "it",
            "just",
            "has",
            "temp",
            "temps",
            "temperature",
            "temperatures",
            "thermometer",
            "mercury",
            "outside",
            "here",
            "today",
            "yesterday",
            "already",
            "finally",
            "heat",
            "greenhouse",
            "tunnel",
            "polytunnel",
            "glasshouse",
            "conservatory",
            "porch",
            "patio",
            "shed",
            "frame",
            "house",
            "and",
            "shade",
            "sun",
            "weather",
            "nearly",
            "almost");
    /** What stands between a frost and how cold it was. */
    private static final Set<String> BEHIND_FROST = Set.of(
            "this",
            "morning",
            "last",
            "night",
            "overnight",
            "again",
            "today",
            "yesterday",
            "here",
            "down",
            "got",
            "went",
            "fell",
            "dropped",
            "to",
            "it",
            "was",
            "only",
            "about",
            "and",
            "on",
            "the",
            "grass",
            "ground",
            "first",
            "thing",
            "hit",
            "at",
            "hard");
    /** So many words stand there at most. */
    private static final int FROST_REACH = 8;

    /** The warmest night in Fahrenheit. By judgement. */
    private static final int WARMEST_NIGHT = 80;

    private static final Set<String> NIGHT = Set.of("night", "overnight", "dawn", "daybreak");
    /** What a night does to the thermometer. */
    private static final Set<String> LOWERED =
            Set.of("was", "down", "dropped", "fell", "dipped", "sank", "plunged", "went", "low", "minimum", "min");
    /** What else a sentence of nothing but a cold night is made of. */
    private static final Set<String> OF_A_NIGHT = Set.of(
            "it",
            "is",
            "got",
            "has",
            "to",
            "of",
            "only",
            "just",
            "about",
            "around",
            "nearly",
            "below",
            "under",
            "as",
            "cold",
            "chilly",
            "right",
            "on",
            "in",
            "at",
            "by",
            "the",
            "my",
            "our",
            "last",
            "here",
            "out",
            "there",
            "outside",
            "again",
            "already",
            "temp",
            "temps",
            "temperature",
            "temperatures",
            "thermometer",
            "mercury",
            "outdoor",
            "indoor",
            "patio",
            "yard",
            "garden",
            "plot");

    private final Passage passage;

    BareDegrees(Passage passage) {
        this.passage = passage;
    }

    /** "38 here today": a bare number at the head of a clause that can only be the heat, in one scale or the other. */
    int hot(int at) {
        boolean heads = at == 0
                || passage.tokens().get(at - 1).mark()
                || Set.of("its", "is", "was", "hit", "about", "nearly", "over", "and", "topped", "reached", "touched")
                        .contains(passage.word(at - 1));
        boolean climbed = at > 0 && CLIMBING.contains(passage.word(at - 1));
        heads &= !climbed
                || at == 1
                || passage.tokens().get(at - 2).mark()
                || WARMED.contains(passage.word(at - 2)); // "I hit 40 today", "the tally hit 97" are no heat.
        return heads ? bare(at, HOT, HOTTEST) : -1;
    }

    /** "Frost this morning, 31 on the porch": a bare number behind a frost that can only be how cold it was. */
    int cold(int at) {
        boolean led = at > 0
                && (passage.tokens().get(at - 1).mark()
                        || Set.of("to", "was", "hit", "at", "about", "only").contains(passage.word(at - 1)));
        int from = at - 1;
        while (from > 0
                && at - from < FROST_REACH
                && (passage.tokens().get(from).mark()
                        || behindFrost(passage.tokens().get(from)))) {
            from--;
        }
        return led && from >= 0 && FROST.contains(passage.word(from)) ? bare(at, COLDEST, FREEZING_F) : -1;
    }

    /** "It was 5 on the porch last night": a bare number in a clause that tells of a night, of how it cooled and of nothing else. */
    int night(int at) {
        int from = at;
        while (from > 0 && !passage.tokens().get(from - 1).mark()) {
            from--;
        }
        int end = bare(at, COLDEST, WARMEST_NIGHT);
        int to = Math.max(at, end);
        while (to < passage.tokens().size() && !passage.tokens().get(to).mark()) {
            to++;
        }
        boolean night = false;
        boolean lowered = false;
        for (int i = from; i < to; i++) {
            String word = passage.word(i);
            night |= NIGHT.contains(word);
            lowered |= LOWERED.contains(word);
            boolean ofIt = i >= at && i < end
                    || NIGHT.contains(word)
                    || LOWERED.contains(word)
                    || OF_A_NIGHT.contains(word)
                    || passage.tokens().get(i).weekday()
                    || placed(i);
            if (!ofIt) {
                return -1;
            }
        }
        return night && lowered ? end : -1;
    }

    private boolean placed(int at) {
        return passage.places().stream().anyMatch(place -> place.start() <= at && at < place.end());
    }

    /** A number without a unit from a least to a most, at a place. */
    private int bare(int at, int least, int most) {
        return passage.numbers().stream()
                .filter(number -> number.start() == at && number.value() >= least && number.value() <= most)
                .filter(number -> passage.quantities().stream().noneMatch(number::overlaps))
                .filter(number -> passage.end("crop", number.end()) < 0)
                .mapToInt(NumberSaid::end)
                .findFirst()
                .orElse(-1);
    }

    private static boolean behindFrost(Token token) {
        return BEHIND_FROST.contains(token.word()) || token.weekday();
    }
}
