package bothy.reading.said;

/** Whether what is told was done. */
public enum Mood {
    DONE,
    /** Meant to be done. */
    MEANT,
    /** It may be done or only meant. */
    UNCLEAR,
    /** Not done, only supposed, another's, long past, or said in jest. */
    NOT_OURS
}
