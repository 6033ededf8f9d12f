package bothy.advice.facts;

import bothy.garden.What;
import java.time.LocalDate;

/**
 * When something may be expected of a planting, or is best done.
 *
 * @param what what is expected
 * @param how "indoors", "indoors-late", "outdoors", "autumn" for a sowing; "latest" for the last day of sowing; "temperature", "usual" for emergence; "last-weeks" for the end of a tender crop; "frost", "age", "hardened" for planting out …
 * @param from the earliest day
 * @param to the latest day; what has not come by then is late
 * @param told whether it rests on told facts only (false: something was assumed, as frost dates by latitude)
 */
public record Outlook(String planting, What what, String how, LocalDate from, LocalDate to, boolean told)
        implements Assumable {}
