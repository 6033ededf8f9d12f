package bothy.almanac;

import bothy.agronomy.Printed;
import java.nio.file.Path;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;

/** Crop sheets held against published figures. */
final class Published {
    /** The sheets that travel with the program. */
    static final Map<String, Sheet> SHEETS = CropSheets.load(RulesFolder.at(Path.of("rules")));

    private Published() {}

    /** The rows of {@code reference/sheets/<file>} for one sheet. */
    static List<Map<String, String>> rows(String file, String sheet) {
        return Printed.rows("sheets/" + file).stream()
                .filter(row -> row.get("sheet").equals(sheet))
                .toList();
    }

    /** The rows of one fact in the planting table for one sheet. */
    static List<Map<String, String>> planting(String sheet, String... facts) {
        List<String> wanted = List.of(facts);
        return rows("planting.csv", sheet).stream()
                .filter(row -> wanted.contains(row.get("fact")))
                .toList();
    }

    /** From the least to the greatest of what the rows print in the columns; empty when they print nothing there. */
    static Optional<Range> span(List<Map<String, String>> rows, String... columns) {
        DoubleSummaryStatistics all = rows.stream()
                .flatMap(row -> Stream.of(columns).map(column -> row.getOrDefault(column, "")))
                .filter(printed -> !printed.isBlank())
                .mapToDouble(Double::parseDouble)
                .summaryStatistics();
        return all.getCount() == 0 ? Optional.empty() : Optional.of(new Range(all.getMin(), all.getMax()));
    }

    /**
     * A figure of a sheet lies within what is published. One that also rests on common practice need only meet it.
     *
     * @param path path of the figure in the sheet ("sowing.depthMm")
     * @param tolerance rounding between the printed unit and ours
     */
    static void within(
            SoftAssertions softly, Sheet sheet, String path, Range figure, Range published, double tolerance) {
        String source = sheet.sources().get(path).source();
        String told = sheet.crop() + " " + path + " " + figure + " against " + published + " (" + source + ")";
        Range wide = new Range(published.low() - tolerance, published.high() + tolerance);
        if (source.contains("common practice")) {
            softly.assertThat(figure.low() <= wide.high() && wide.low() <= figure.high())
                    .as(told)
                    .isTrue();
        } else {
            softly.assertThat(wide.contains(figure.low()) && wide.contains(figure.high()))
                    .as(told)
                    .isTrue();
        }
    }
}
