package bothy.advice.facts;

import java.time.LocalDate;

/**
 * The frost dates of the season at hand.
 *
 * @param lastSpring usual last frost of spring
 * @param firstAutumn usual first frost of the next autumn
 * @param told whether the grower told them (false: estimated)
 */
public record Frosts(LocalDate lastSpring, LocalDate firstAutumn, boolean told) implements Assumable {}
