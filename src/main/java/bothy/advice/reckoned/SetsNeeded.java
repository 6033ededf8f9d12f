package bothy.advice.reckoned;

/**
 * Cloves, sets or tubers for a wanted number of plants: one makes one.
 *
 * @param plants plants wanted
 * @param spare a few more for those that rot or are eaten
 * @param start what is planted: "piece-clove", "piece-set" or "piece-tuber"
 */
public record SetsNeeded(String planting, int plants, int spare, String start) {}
