package bothy.advice.reckoned;

import java.time.LocalDate;

/**
 * Until when young plants that are set out still ripen in a season.
 *
 * @param from from when they may go out in that season
 * @param to the last day on which a plant set out still ripens before the first autumn frost
 * @param next from when they may go out in the season after
 * @param told whether it rests on told frost dates
 */
public record LastPlantingOut(String planting, LocalDate from, LocalDate to, LocalDate next, boolean told) {}
