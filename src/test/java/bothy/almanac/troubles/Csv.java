package bothy.almanac.troubles;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A published table as collected. */
final class Csv {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).build();

    private Csv() {}

    static List<CSVRecord> records(String name) {
        Path table = Path.of("src/test/resources/reference/troubles", name);
        try (CSVParser parser = CSVParser.parse(table, StandardCharsets.UTF_8, FORMAT)) {
            return parser.getRecords();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Its rows, their cells by the name of the column. */
    static List<Map<String, String>> rows(String name) {
        return records(name).stream().map(CSVRecord::toMap).toList();
    }
}
