package bothy.advice.facts;

import bothy.garden.Question;

/**
 * A question of the message at hand.
 *
 * @param planting id of the planting, {@code null} for the whole plot; a crop not begun yet stands in as a planting that is still in
 *     its packet
 * @param topic the step or matter asked about, {@code null} when none
 */
public record Asked(Question question, String planting, String topic) {}
