package bothy.garden;

import java.util.Set;

/** Which names a grower knows crops by, told by units and time zone. */
public enum English {
    BRITISH,
    AMERICAN,
    AUSTRALIAN,
    INDIAN;

    private static final Set<String> NEW_ZEALAND = Set.of("Pacific/Auckland", "Pacific/Chatham", "NZ");
    private static final Set<String> INDIA = Set.of("Asia/Kolkata", "Asia/Calcutta");

    /** US units tell an American; else the zone. */
    public static English of(Grower grower) {
        if (grower.units() == Units.US) {
            return AMERICAN;
        }
        String zone = grower.zone().getId();
        if (zone.startsWith("Australia/") || NEW_ZEALAND.contains(zone)) {
            return AUSTRALIAN;
        }
        return INDIA.contains(zone) ? INDIAN : BRITISH;
    }
}
