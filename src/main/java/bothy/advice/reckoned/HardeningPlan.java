package bothy.advice.reckoned;

import java.time.LocalDate;

/**
 * A calendar for getting seedlings used to the open.
 *
 * @param firstDay first day outside
 * @param firstHours hours outside on the first day
 * @param mostHours hours on the last day that they come in again
 * @param lastDayIn that day
 * @param firstNight first night outside
 * @param plantingOut day of planting out
 * @param told whether it rests on told frost dates
 */
public record HardeningPlan(
        String planting,
        LocalDate firstDay,
        int firstHours,
        int mostHours,
        LocalDate lastDayIn,
        LocalDate firstNight,
        LocalDate plantingOut,
        boolean told) {}
