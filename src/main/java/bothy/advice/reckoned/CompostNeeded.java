package bothy.advice.reckoned;

/**
 * Compost for pots or trays, or for one bed.
 *
 * @param planting id of the planting asked about, {@code null} for none
 * @param pots pots to fill; {@code null} for trays and for a bed
 * @param trays trays to fill; {@code null} for pots and for a bed
 * @param potLitres volume of one, L
 * @param compostLitres loose compost for all, L
 */
public record CompostNeeded(String planting, Integer pots, Integer trays, double potLitres, double compostLitres) {}
