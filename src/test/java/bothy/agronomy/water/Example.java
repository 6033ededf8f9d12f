package bothy.agronomy.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bothy.agronomy.Printed;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A worked example of FAO-56, walked link by link; every printed figure that is no input must be held against a computed one. */
final class Example {
    private final String name;
    private final List<Map<String, String>> rows;
    private final Set<String> checked = new HashSet<>();

    private Example(String name, List<Map<String, String>> rows) {
        this.name = name;
        this.rows = rows;
    }

    static Example of(String file, String name) {
        List<Map<String, String>> rows = Printed.rows("water/" + file).stream()
                .filter(row -> row.get("example").equals(name))
                .toList();
        assertThat(rows).as(name).isNotEmpty();
        return new Example(name, rows);
    }

    static List<String> names(String file) {
        return Printed.rows("water/" + file).stream()
                .map(row -> row.get("example"))
                .distinct()
                .toList();
    }

    private static String key(Map<String, String> row) {
        String day = row.getOrDefault("day", "");
        return day.isEmpty() ? row.get("symbol") : day + ":" + row.get("symbol");
    }

    private String printed(String symbol) {
        return rows.stream()
                .filter(row -> key(row).equals(symbol))
                .findFirst()
                .orElseThrow(() -> new AssertionError(name + " prints no " + symbol))
                .get("value");
    }

    /** A printed figure, as input. */
    double in(String symbol) {
        return Double.parseDouble(printed(symbol));
    }

    int whole(String symbol) {
        return Integer.parseInt(printed(symbol));
    }

    /** Holds a computed value against the printed one, to half of its last digit. */
    double check(String symbol, double computed) {
        return check(symbol, computed, Printed.tolerance(printed(symbol)));
    }

    /** The same with an allowance that the caller explains beside it. */
    double check(String symbol, double computed, double allowance) {
        assertThat(computed).as("%s: %s", name, symbol).isCloseTo(in(symbol), within(allowance));
        checked.add(symbol);
        return computed;
    }

    /** Leaves out a printed figure, for a reason stated beside it. */
    void leaveOut(String symbol) {
        printed(symbol);
        checked.add(symbol);
    }

    /** Fails when a printed intermediate or final figure has not been checked. */
    void done() {
        List<String> left = rows.stream()
                .filter(row ->
                        row.get("role").equals("result") || row.get("role").equals("intermediate"))
                .map(Example::key)
                .filter(symbol -> !checked.contains(symbol))
                .toList();
        assertThat(left).as("figures of %s not checked", name).isEmpty();
    }

    int checks() {
        return checked.size();
    }
}
