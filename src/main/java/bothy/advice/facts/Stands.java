package bothy.advice.facts;

import bothy.almanac.PlaceKind;

/**
 * Where a planting stands.
 *
 * @param where in the house, under glass or outdoors
 * @param inContainer whether it is in a pot, tray or growbag rather than in open ground
 */
public record Stands(String planting, PlaceKind where, boolean inContainer) {}
