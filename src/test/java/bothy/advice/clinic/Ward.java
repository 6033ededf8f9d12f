package bothy.advice.clinic;

import bothy.advice.Advised;
import bothy.advice.Advisor;
import bothy.advice.Day;
import bothy.advice.RuleBook;
import bothy.almanac.CropSheets;
import bothy.almanac.Places;
import bothy.almanac.RulesFolder;
import bothy.almanac.troubles.TroubleBook;
import bothy.almanac.troubles.Troubles;
import bothy.diary.Replay;
import bothy.garden.Diagnosis;
import bothy.garden.Entry;
import bothy.garden.Finding;
import bothy.garden.Logged;
import bothy.garden.SignSeen;
import bothy.garden.WeatherDay;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** The shipped rules and tables, for looking into troubles of a diary made up by a test. */
final class Ward {
    static final LocalDate TODAY = LocalDate.of(2027, 7, 20);
    static final RulesFolder RULES = RulesFolder.at(Path.of("rules"));
    static final Troubles TROUBLES = Troubles.in(RULES);
    private static final ZoneId ZONE = ZoneId.of("Europe/London");
    private static final Advisor ADVISOR =
            new Advisor(RuleBook.of(RULES, null), CropSheets.load(RULES), Places.in(RULES), TroubleBook.at(RULES));

    private Ward() {}

    static Advised advised(List<Entry> before, List<Entry> told, List<WeatherDay> weather) {
        List<Logged> lines = new ArrayList<>();
        before.forEach(entry -> lines.add(new Logged(
                lines.size() + 1, "before", TODAY.minusDays(1).atTime(12, 0).toInstant(ZoneOffset.UTC), entry)));
        told.forEach(entry -> lines.add(
                new Logged(lines.size() + 1, "now", TODAY.atTime(12, 0).toInstant(ZoneOffset.UTC), entry)));
        return ADVISOR.advise(new Day(
                TODAY,
                Replay.garden(lines, TODAY, ZONE),
                List.of(),
                List.of(),
                of(told, SignSeen.class),
                List.of(),
                weather,
                of(told, Finding.class)));
    }

    private static <T> List<T> of(List<Entry> entries, Class<T> kind) {
        return entries.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    static Advised seen(String crop, String... signs) {
        List<Entry> told = new ArrayList<>();
        for (String sign : signs) {
            told.add(sign(crop, sign));
        }
        return advised(List.of(), told, List.of());
    }

    static SignSeen sign(String crop, String sign) {
        return new SignSeen(sign, null, crop, TODAY, null, null);
    }

    static Finding found(String crop, String about, String found) {
        return new Finding(null, crop, about, found, true, TODAY);
    }

    static Diagnosis only(Advised advised) {
        if (advised.diagnoses().size() != 1) {
            throw new AssertionError("not one diagnosis but " + advised.diagnoses());
        }
        return advised.diagnoses().get(0);
    }

    /** Ten days up to today, each with the same night, day and rain. */
    static List<WeatherDay> weather(double tmin, double tmax, double rain) {
        List<WeatherDay> days = new ArrayList<>();
        for (int ago = 9; ago >= 0; ago--) {
            days.add(new WeatherDay(TODAY.minusDays(ago), tmin, tmax, rain, true));
        }
        return days;
    }

    static double chance(Diagnosis diagnosis, String cause) {
        return diagnosis.causes().stream()
                .filter(likely -> likely.cause().equals(cause))
                .mapToDouble(Diagnosis.Likely::chance)
                .findFirst()
                .orElse(0);
    }
}
