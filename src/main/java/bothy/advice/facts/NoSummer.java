package bothy.advice.facts;

/**
 * The plot lies so near a pole that no season without frost can be counted on, and no frost dates were told.
 *
 * @param latitude degrees
 */
public record NoSummer(double latitude) {}
