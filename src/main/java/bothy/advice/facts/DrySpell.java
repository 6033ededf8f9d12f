package bothy.advice.facts;

import java.time.LocalDate;

/**
 * Days without rain worth the name and without watering.
 *
 * @param planting id of the planting
 * @param days how many days
 * @param until the last dry day
 */
public record DrySpell(String planting, int days, LocalDate until) {}
