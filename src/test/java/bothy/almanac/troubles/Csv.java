package bothy.almanac.troubles;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A published table as collected: rows with their cells by the name of the column. */
final class Csv {
    private Csv() {}

    static List<Map<String, String>> rows(String name) {
        try {
            List<String> lines =
                    Files.readAllLines(Path.of("src/test/resources/reference/troubles", name), StandardCharsets.UTF_8);
            List<String> columns = cells(lines.get(0));
            List<Map<String, String>> rows = new ArrayList<>();
            for (String line : lines.subList(1, lines.size())) {
                List<String> cells = cells(line);
                Map<String, String> row = new HashMap<>();
                for (int i = 0; i < columns.size(); i++) {
                    row.put(columns.get(i), cells.get(i));
                }
                rows.add(row);
            }
            return rows;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : (line + ",").toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        return cells;
    }
}
