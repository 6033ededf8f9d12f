package bothy.advice.reckoned;

/**
 * Compost for pots.
 *
 * @param planting id of the planting asked about, {@code null} for none
 * @param pots pots to fill
 * @param potLitres volume of one, L
 * @param compostLitres loose compost for all, L
 */
public record CompostNeeded(String planting, int pots, double potLitres, double compostLitres) {}
