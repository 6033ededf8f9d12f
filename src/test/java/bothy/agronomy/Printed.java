package bothy.agronomy;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Published figures kept as test resources, each row with its source and whether a copy was read or it was recalled. */
public final class Printed {
    private Printed() {}

    /** The rows of {@code reference/<path>}, each by column name. */
    public static List<Map<String, String>> rows(String path) {
        try (InputStream in = Printed.class.getResourceAsStream("/reference/" + path)) {
            CSVFormat format = CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .build();
            return CSVParser.parse(new InputStreamReader(in, StandardCharsets.UTF_8), format).stream()
                    .map(CSVRecord::toMap)
                    .toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Half of the last digit that is printed: 1.70 may be off by 0.005, plus a hair for halves that round either way. */
    public static double tolerance(String printed) {
        int point = printed.indexOf('.');
        int decimals = point < 0 ? 0 : printed.length() - point - 1;
        return 0.5 * Math.pow(10, -decimals) + 1e-9;
    }
}
