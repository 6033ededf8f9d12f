package bothy;

import java.util.HashMap;
import java.util.Map;

/**
 * An expected amount in the unit of the diary: a file may tell pounds where the diary holds kilograms. The factors stand here once more and
 * not in the words that reading turns units with: a wrong one there must not make the expectation wrong alike.
 */
final class AmountExpected {
    private record Unit(String inDiary, double factor, double offset) {}

    /** International pound of 1959, US liquid gallon of 231 cubic inches, inch of 25.4 mm. */
    private static final Map<String, Unit> UNITS = Map.ofEntries(
            Map.entry("g", new Unit("kg", 0.001, 0)),
            Map.entry("lb", new Unit("kg", 0.45359237, 0)),
            Map.entry("oz", new Unit("kg", 0.45359237 / 16, 0)),
            Map.entry("l", new Unit("L", 1, 0)),
            Map.entry("ml", new Unit("L", 0.001, 0)),
            Map.entry("gal", new Unit("L", 3.785411784, 0)),
            Map.entry("in", new Unit("mm", 25.4, 0)),
            Map.entry("C", new Unit("°C", 1, 0)),
            Map.entry("F", new Unit("°C", 1 / 1.8, -32)),
            Map.entry("°F", new Unit("°C", 1 / 1.8, -32)));

    private AmountExpected() {}

    /** The parts of an expected entry, with its amount as the diary holds it. */
    static Map<String, Object> inDiary(Map<String, Object> wanted) {
        Unit unit = UNITS.get(String.valueOf(wanted.get("unit")));
        if (unit == null || !(wanted.get("amount") instanceof Number amount)) {
            return wanted;
        }
        Map<String, Object> changed = new HashMap<>(wanted);
        changed.put("amount", (amount.doubleValue() + unit.offset()) * unit.factor());
        changed.put("unit", unit.inDiary());
        return changed;
    }
}
