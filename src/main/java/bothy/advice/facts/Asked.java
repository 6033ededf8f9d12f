package bothy.advice.facts;

import bothy.garden.Eaten;
import bothy.garden.Question;

/**
 * A question of the message at hand.
 *
 * @param planting id of the planting, {@code null} for the whole plot; a crop not begun yet stands in as a planting that is still in
 *     its packet
 * @param topic the step or matter asked about, {@code null} when none
 * @param eaten what is to be eaten, {@code null} when it is not asked whether something can be eaten
 */
public record Asked(Question question, String planting, String topic, Eaten eaten) {}
