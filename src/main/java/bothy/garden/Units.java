package bothy.garden;

/** The units that a grower reads and writes by default. */
public enum Units {
    METRIC,
    US
}
