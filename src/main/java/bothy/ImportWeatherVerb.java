package bothy;

import bothy.agronomy.climate.DegreeDays;
import bothy.agronomy.climate.FrostRecord;
import bothy.agronomy.climate.MonthlyNormals;
import bothy.diary.Replay;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Entry;
import bothy.garden.Grower;
import bothy.garden.SettingChange;
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
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes in a weather station's record: frost dates with their chances, degree days and rain by month. */
@Command(
        name = "import-weather",
        mixinStandardHelpOptions = true,
        description =
                "Reads a weather station's daily record (CSV with the columns date, tmin, tmax in °C and rain in mm) and "
                        + "prints frost dates, degree days and rain; with --set it makes the even-odds frost dates a grower's own.")
final class ImportWeatherVerb implements Callable<Integer> {
    /** Base of the degree days printed, °C: that of most vegetables of the cool season is 4 to 5, of warm ones 10. */
    private static final double BASE_C = 10;

    private static final double[] CHANCES = {0.9, 0.5, 0.1};

    @Parameters(paramLabel = "FILE", description = "The record.")
    private Path file;

    @Option(names = "--south", description = "The station lies south of the equator.")
    private boolean south;

    @Option(
            names = "--set",
            paramLabel = "GROWER",
            arity = "0..1",
            fallbackValue = "terminal:me",
            description = "Whose frost dates to set (default: ${FALLBACK-VALUE}, whoever chats in the terminal).")
    private String grower;

    @Option(
            names = "--db",
            paramLabel = "FILE",
            defaultValue = "bothy.db",
            description = "Diary: an SQLite file, or a jdbc:postgresql: address (default: ${DEFAULT-VALUE} here).")
    private String diary;

    @Override
    public Integer call() throws IOException {
        List<WeatherDay> days = read();
        NavigableMap<LocalDate, Double> lowest = new TreeMap<>();
        days.forEach(day -> lowest.put(day.date(), day.tmin()));
        FrostRecord frosts = FrostRecord.of(lowest, south);
        Optional<FrostRecord.Fitted> spring = frosts.lastSpring(0);
        Optional<FrostRecord.Fitted> autumn = frosts.firstAutumn(0);
        System.out.println(days.size() + " days from " + days.get(0).date() + " to "
                + days.get(days.size() - 1).date() + ".");
        print("Last spring frost", spring);
        print("First autumn frost", autumn);
        months(days);
        if (grower != null) {
            set(spring, autumn);
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

    private static void print(String what, Optional<FrostRecord.Fitted> fitted) {
        if (fitted.isEmpty()) {
            System.out.println(what + ": too few years with a frost in the record to say; three are needed.");
            return;
        }
        List<String> dates = new ArrayList<>();
        for (double chance : CHANCES) {
            dates.add(Math.round(100 * chance) + "% after "
                    + day(fitted.get().curve().dateWithChanceAfter(chance)));
        }
        System.out.println(what + ": " + String.join(", ", dates) + " ("
                + fitted.get().years() + " years, " + fitted.get().withoutFrost() + " without frost).");
    }

    private static String day(MonthDay day) {
        return day.getDayOfMonth() + " " + day.getMonth().getDisplayName(TextStyle.FULL, Locale.UK);
    }

    private static void months(List<WeatherDay> days) {
        NavigableMap<LocalDate, Double> rain = new TreeMap<>();
        NavigableMap<LocalDate, Double> warmth = new TreeMap<>();
        days.forEach(day -> {
            rain.put(day.date(), day.rain());
            warmth.put(day.date(), DegreeDays.averaging(day.tmin(), day.tmax(), BASE_C));
        });
        MonthlyNormals rainfall = MonthlyNormals.of(rain);
        MonthlyNormals degreeDays = MonthlyNormals.of(warmth);
        System.out.printf(Locale.ROOT, "%-10s %8s %24s%n", "Month", "rain mm", "degree days above " + (int) BASE_C);
        for (Month month : Month.values()) {
            System.out.printf(
                    Locale.ROOT,
                    "%-10s %8s %24s%n",
                    month.getDisplayName(TextStyle.FULL, Locale.UK),
                    whole(rainfall.mean(month)),
                    whole(degreeDays.mean(month)));
        }
        System.out.printf(
                Locale.ROOT, "%-10s %8s %24s%n", "Year", whole(rainfall.meanYear()), whole(degreeDays.meanYear()));
    }

    private static String whole(Optional<Double> value) {
        return value.map(sum -> String.valueOf(Math.round(sum))).orElse("–");
    }

    private void set(Optional<FrostRecord.Fitted> spring, Optional<FrostRecord.Fitted> autumn) {
        List<Entry> settings = new ArrayList<>();
        spring.ifPresent(one -> settings.add(setting("lastSpringFrost", one)));
        autumn.ifPresent(one -> settings.add(setting("firstAutumnFrost", one)));
        if (settings.isEmpty()) {
            System.out.println("Nothing was set: the record gives no frost date.");
            return;
        }
        Instant now = Instant.now();
        try (Store store = Shelf.open(diary)) {
            Grower known = store.write(grower, page -> {
                page.append("import-weather-" + now.toEpochMilli(), now, settings);
                ZoneId zone = ZoneId.systemDefault();
                return Replay.garden(page.lines(), LocalDate.ofInstant(now, zone), zone)
                        .grower();
            });
            System.out.println("Set for " + grower + ": last spring frost " + told(known.lastSpringFrost())
                    + ", first autumn frost " + told(known.firstAutumnFrost()) + ".");
        }
    }

    private static String told(MonthDay day) {
        return day == null ? "not known" : day(day);
    }

    private static SettingChange setting(String name, FrostRecord.Fitted fitted) {
        MonthDay even = fitted.curve().dateWithChanceAfter(0.5);
        return new SettingChange(
                name, String.format(Locale.ROOT, "%02d-%02d", even.getMonthValue(), even.getDayOfMonth()));
    }
}
