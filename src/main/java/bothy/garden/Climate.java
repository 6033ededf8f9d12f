package bothy.garden;

import java.util.Locale;

/** What the winters and summers of a place are like, as far as it matters to when things are sown. */
public enum Climate {
    /** Frost for a third of the year or longer: sowing goes by the last frost and the first. */
    FROSTY,
    /** Little frost or none, hot summers: cool-season crops from autumn to spring, tender ones from spring on. */
    MILD,
    /** Little frost or none, summers without great heat. */
    MILD_COOL_SUMMER,
    /** No winter to speak of, a hot wet or very hot summer: cool-season crops in winter only, tender ones before and after summer. */
    SUBTROPICAL,
    /** Warm all year: cool-season crops, if at all, in the cooler dry months. */
    TROPICAL;

    /** As files and settings write it: "mild-cool-summer". */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * Reads a word.
     *
     * @throws IllegalArgumentException when there is no such climate
     */
    public static Climate of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
