package bothy;

import bothy.conversation.StationTaken;
import bothy.diary.Replay;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Grower;
import bothy.garden.Normals;
import bothy.garden.WeatherDay;
import bothy.weather.RecordRefused;
import bothy.weather.StationRecord;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.ZoneId;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes in a weather station's record: its days, frost dates with their chances, degree days and rain by month. */
@Command(
        name = "import-weather",
        mixinStandardHelpOptions = true,
        description =
                "Reads a weather station's daily record (CSV with the columns date, tmin, tmax in °C and rain in mm), prints "
                        + "frost dates, degree days and rain, and keeps days and normals in a grower's diary; the even-odds frost "
                        + "dates become the grower's own.")
final class ImportWeatherVerb implements Callable<Integer> {
    /** Base of the degree days printed, °C: that of most vegetables of the cool season is 4 to 5, of warm ones 10. */
    private static final int BASE_C = 10;

    @Parameters(paramLabel = "FILE", description = "The record.")
    private Path file;

    @Option(
            names = "--south",
            description = "The station lies south of the equator (known from the grower's place, where it was told).")
    private boolean south;

    @Option(
            names = "--for",
            paramLabel = "GROWER",
            defaultValue = "terminal:me",
            description = "Whose plot the record is for (default: ${DEFAULT-VALUE}, whoever chats in the terminal).")
    private String grower;

    @Option(names = "--print", description = "Print only; nothing is kept.")
    private boolean printOnly;

    @Option(
            names = "--db",
            paramLabel = "FILE",
            defaultValue = "bothy.db",
            description = "Diary: an SQLite file, or a jdbc:postgresql: address (default: ${DEFAULT-VALUE} here).")
    private String diary;

    @Override
    public Integer call() throws IOException {
        List<WeatherDay> days = read();
        if (printOnly) {
            print(days, StationNormals.of(days, south));
            return 0;
        }
        try (Store store = Shelf.open(diary)) {
            keep(store, days);
        }
        return 0;
    }

    private List<WeatherDay> read() throws IOException {
        try (Reader csv = Files.newBufferedReader(file)) {
            return StationRecord.read(csv, file.toString());
        } catch (RecordRefused refused) {
            throw new Complaints.MisUse("The record cannot be used; nothing was taken in.\n" + refused.getMessage());
        } catch (NoSuchFileException missing) {
            throw new Complaints.MisUse("There is no file " + file + ". Name the station's record.");
        } catch (MalformedInputException unreadable) {
            throw new Complaints.MisUse(file + " is not written in UTF-8. Save it as UTF-8 and run again.");
        }
    }

    private void keep(Store store, List<WeatherDay> days) {
        Instant now = Instant.now();
        ZoneId zone = ZoneId.systemDefault();
        LocalDate today = LocalDate.ofInstant(now, zone);
        Grower known = store.write(grower, page -> {
            Grower before = Replay.garden(page.lines(), today, zone).grower();
            Normals normals = StationNormals.of(days, south || before.southern());
            print(days, normals);
            StationTaken.keep(page, before, days, normals);
            page.append("import-weather-" + now.toEpochMilli(), now, List.copyOf(StationTaken.frostDates(normals)));
            return Replay.garden(page.lines(), today, zone).grower();
        });
        System.out.println("Kept for " + grower + ": the days and normals; last spring frost "
                + told(known.lastSpringFrost()) + ", first autumn frost " + told(known.firstAutumnFrost()) + ".");
    }

    private static void print(List<WeatherDay> days, Normals normals) {
        System.out.println(days.size() + " days from " + days.get(0).date() + " to "
                + days.get(days.size() - 1).date() + ".");
        print("Last spring frost", normals.lastSpring());
        print("First autumn frost", normals.firstAutumn());
        months(normals);
    }

    private static void print(String what, Normals.Frost frost) {
        if (frost == null) {
            System.out.println(what + ": too few years with a frost in the record to say; three are needed.");
            return;
        }
        System.out.println(what + ": 90% after " + day(frost.nineInTenAfter()) + ", 50% after " + day(frost.evenOdds())
                + ", 10% after " + day(frost.oneInTenAfter()) + " (" + frost.years() + " years, "
                + frost.withoutFrost() + " without frost).");
    }

    private static String day(MonthDay day) {
        return day.getDayOfMonth() + " " + day.getMonth().getDisplayName(TextStyle.FULL, Locale.UK);
    }

    private static void months(Normals normals) {
        line("Month", "rain mm", "degree days above " + BASE_C);
        for (Month month : Month.values()) {
            String name = month.getDisplayName(TextStyle.FULL, Locale.UK);
            normals.of(month)
                    .ifPresentOrElse(
                            one -> line(name, whole(one.rainMm()), whole(warmth(one))), () -> line(name, "–", "–"));
        }
        if (normals.wholeYear()) {
            List<Normals.OfMonth> all = normals.months();
            line(
                    "Year",
                    whole(all.stream().mapToDouble(Normals.OfMonth::rainMm).sum()),
                    whole(all.stream().mapToDouble(ImportWeatherVerb::warmth).sum()));
        }
    }

    private static double warmth(Normals.OfMonth month) {
        return month.degreeDays().get(BASE_C / Normals.BASE_STEP_C);
    }

    private static void line(String month, String rain, String warmth) {
        System.out.printf(Locale.ROOT, "%-10s %8s %24s%n", month, rain, warmth);
    }

    private static String whole(double value) {
        return String.valueOf(Math.round(value));
    }

    private static String told(MonthDay day) {
        return day == null ? "not known" : day(day);
    }
}
