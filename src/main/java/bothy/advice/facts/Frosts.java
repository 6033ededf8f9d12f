package bothy.advice.facts;

import java.time.LocalDate;

/**
 * The frost dates of the season at hand.
 *
 * @param lastSpring usual last frost of spring
 * @param firstAutumn usual first frost of the next autumn
 * @param told whether the grower told them (false: estimated)
 * @param none whether frost hardly ever comes: the dates are then the beginning and end of the warm season
 */
public record Frosts(LocalDate lastSpring, LocalDate firstAutumn, boolean told, boolean none) implements Assumable {

    /** Of a place that has frost. */
    public Frosts(LocalDate lastSpring, LocalDate firstAutumn, boolean told) {
        this(lastSpring, firstAutumn, told, false);
    }
}
