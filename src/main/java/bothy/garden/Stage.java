package bothy.garden;

/**
 * How far a planting has come, in order. The numbers are the principal growth stages of the BBCH scale (Meier 2001, extended BBCH
 * scale, general); the work stages in between (hardening, curing, store) are the trade's own.
 */
public enum Stage {
    PACKET(null),
    SOWN("0"),
    EMERGED("0"),
    LEAFING("1"),
    HARDENING("1"),
    PLANTED_OUT("1"),
    GROWING("2-4"),
    FLOWERING("6"),
    FRUITING("7"),
    RIPENING("8"),
    PICKING("8"),
    CURING("9"),
    STORED("9"),
    OVER("9");

    private final String bbch;

    Stage(String bbch) {
        this.bbch = bbch;
    }

    /** Principal growth stage of the BBCH scale, {@code null} before the seed is sown. */
    public String bbch() {
        return bbch;
    }

    /** Lower case with hyphens: "planted-out". */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
