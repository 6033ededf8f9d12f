package bothy.garden;

import java.time.LocalDate;

/**
 * What a closer look showed: an answer to a question about a trouble, told when asked or unasked.
 *
 * @param planting id of the planting, {@code null} when it is not known which
 * @param crop name of the crop, {@code null} when not told
 * @param trouble a sign of the trouble that it was asked of, where a planting has several; {@code null} when not told
 * @param about the question that it answers ("fur-beneath"), or {@link #OUTCOME}
 * @param found the answer ("yes", "mushy"), {@link #UNKNOWN} when the grower could not tell
 * @param asked whether it was asked for (false: told unasked)
 * @param on the day
 */
public record Finding(
        String planting, String crop, String trouble, String about, String found, boolean asked, LocalDate on)
        implements Entry {
    /** What became of a trouble: "better", "same" or "worse". */
    public static final String OUTCOME = "outcome";
    /** The answer of a grower who could not tell. */
    public static final String UNKNOWN = "unknown";

    /** A finding of no trouble in particular. */
    public Finding(String planting, String crop, String about, String found, boolean asked, LocalDate on) {
        this(planting, crop, null, about, found, asked, on);
    }

    /** The same of this planting. */
    public Finding of(String planting, String crop) {
        return new Finding(planting, crop, trouble, about, found, asked, on);
    }

    /** The same of the trouble that shows this sign. */
    public Finding ofTrouble(String sign) {
        return new Finding(planting, crop, sign, about, found, asked, on);
    }
}
