package bothy.weather;

import bothy.garden.WeatherDay;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A weather station's daily record as CSV (RFC 4180, UTF-8): a header that names the columns date (2027-05-01), tmin and tmax (°C) and
 * rain (mm), in any order and among others; then a line for each day, without a gap. The record is taken whole or not at all.
 */
public final class StationRecord {
    private static final List<String> COLUMNS = List.of("date", "tmin", "tmax", "rain");
    private static final int MOST_DAYS = 80_000;

    private final String file;
    private final List<RecordRefused.Mistake> mistakes = new ArrayList<>();
    private final List<WeatherDay> days = new ArrayList<>();
    private LocalDate before;

    private StationRecord(String file) {
        this.file = file;
    }

    /**
     * The days of a record, observed, in order.
     *
     * @param csv the record; not closed here
     * @param file name of the file for messages
     * @throws RecordRefused with the line and what to do about it
     */
    public static List<WeatherDay> read(Reader csv, String file) {
        StationRecord record = new StationRecord(file);
        record.take(csv);
        return List.copyOf(record.days);
    }

    private void take(Reader csv) {
        try (CSVParser parser = CSVParser.parse(csv, CSVFormat.RFC4180)) {
            Iterator<CSVRecord> rows = parser.iterator();
            try {
                Map<String, Integer> columns = header(rows);
                while (rows.hasNext()) {
                    row(parser, rows.next(), columns);
                }
            } catch (UncheckedIOException | IllegalStateException broken) {
                wrong(
                        parser.getCurrentLineNumber(),
                        "the line cannot be read as CSV. Look for a quotation mark that is not closed.");
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        if (mistakes.isEmpty() && days.isEmpty()) {
            wrong(0, "there is no day in it. After the header each line holds one day.");
        }
        refuseMistakes();
    }

    private Map<String, Integer> header(Iterator<CSVRecord> rows) {
        Map<String, Integer> columns = new HashMap<>();
        if (rows.hasNext()) {
            CSVRecord header = rows.next();
            for (int i = 0; i < header.size(); i++) {
                String name = header.get(i).replace("\uFEFF", "").strip().toLowerCase(Locale.ROOT);
                if (columns.put(name, i) != null && COLUMNS.contains(name)) {
                    wrong(1, "the column " + name + " stands there twice. Keep one of them.");
                }
            }
        }
        for (String name : COLUMNS) {
            if (!columns.containsKey(name)) {
                wrong(
                        1,
                        "the column " + name + " is missing. The first line must name date, tmin, tmax and rain, "
                                + "with commas between them.");
            }
        }
        refuseMistakes();
        return columns;
    }

    private void row(CSVParser parser, CSVRecord row, Map<String, Integer> columns) {
        long line = parser.getCurrentLineNumber();
        if (days.size() >= MOST_DAYS) {
            wrong(line, "a record may have " + MOST_DAYS + " days at most. Cut it.");
            refuseMistakes();
        }
        if (row.size() == 1 && row.get(0).isBlank()) {
            wrong(line, "the line is empty. Take it out.");
            return;
        }
        if (COLUMNS.stream().anyMatch(name -> columns.get(name) >= row.size())) {
            wrong(line, "the line has " + row.size() + " columns, too few for the header. Complete it.");
            return;
        }
        LocalDate date = date(line, row.get(columns.get("date")));
        Double tmin = number(line, "tmin", row.get(columns.get("tmin")), -90, 60, "°C");
        Double tmax = number(line, "tmax", row.get(columns.get("tmax")), -90, 60, "°C");
        Double rain = number(line, "rain", row.get(columns.get("rain")), 0, 2000, "mm");
        if (tmin != null && tmax != null && tmin > tmax) {
            wrong(line, "tmin " + tmin + " °C is above tmax " + tmax + " °C. Swap or correct them.");
        }
        days.add(new WeatherDay(date, tmin, tmax, rain, true));
    }

    private LocalDate date(long line, String cell) {
        try {
            LocalDate date = LocalDate.parse(cell.strip());
            followsOn(line, date);
            before = date;
            return date;
        } catch (DateTimeParseException unreadable) {
            wrong(line, "\"" + cell + "\" is no date. Write it as 2027-05-01.");
            before = before == null ? null : before.plusDays(1);
            return before;
        }
    }

    private void followsOn(long line, LocalDate date) {
        long step = before == null ? 1 : ChronoUnit.DAYS.between(before, date);
        if (step > 1) {
            wrong(
                    line,
                    date + " follows " + before + "; " + (step - 1) + (step == 2 ? " day is" : " days are")
                            + " missing between them. Add what is missing or begin the record after the gap.");
        } else if (step < 1) {
            wrong(line, date + " comes after " + before + ". Each day stands once, in order.");
        }
    }

    private Double number(long line, String name, String cell, double low, double high, String unit) {
        String text = cell.strip();
        try {
            double value = Double.parseDouble(text);
            if (value >= low && value <= high) {
                return value;
            }
            String hint =
                    unit.equals("°C") && value > high ? " Degrees Fahrenheit have to be converted." : " Correct it.";
            wrong(
                    line,
                    name + " is " + text + " " + unit + "; allowed is " + (int) low + " to " + (int) high + " " + unit
                            + "." + hint);
        } catch (NumberFormatException unreadable) {
            wrong(
                    line,
                    text.isEmpty()
                            ? name + " is empty. Fill it in or begin the record after this day."
                            : name + " is \"" + text + "\", which is no number. Write it with a point, as 12.5.");
        }
        return null;
    }

    private void wrong(long line, String text) {
        mistakes.add(new RecordRefused.Mistake(line, text));
    }

    private void refuseMistakes() {
        if (!mistakes.isEmpty()) {
            throw new RecordRefused(file, mistakes);
        }
    }
}
