package bothy.advice.facts;

/**
 * A planting whose times go by the sowing calendar of a mild climate, not by frost.
 *
 * @param never whether no time of the year is cool enough for the crop
 * @param notInHeat whether it does not stand the summer there
 */
public record ByCalendar(String planting, boolean never, boolean notInHeat) {}
