package bothy.reading;

import bothy.almanac.CraftNotes;
import bothy.almanac.RulesFolder;
import bothy.almanac.Words;
import bothy.garden.Doubt;
import bothy.garden.Event;
import bothy.garden.Grower;
import bothy.garden.Heard;
import bothy.garden.Logged;
import bothy.garden.Planting;
import bothy.garden.Situation;
import bothy.garden.Statement;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/** A grower on Wednesday 19 May 2027 with a few plantings, who says one thing after another. */
final class Grown {
    private static final RulesFolder RULES = RulesFolder.at(Path.of("rules"));
    static final Reading READING = new Reading(Words.in(RULES), CraftNotes.in(RULES));
    static final LocalDate TODAY = LocalDate.of(2027, 5, 19);
    static final Grower GROWER = Grower.in(ZoneId.of("Europe/London"));

    private final List<Planting> plantings;
    private Doubt pending;
    private List<Logged> lately = List.of();
    private List<String> mentioned = List.of();
    private long number;

    private Grown(List<Planting> plantings) {
        this.plantings = plantings;
    }

    static Grown with(String... lines) {
        return new Grown(new PlantingLines(READING).read(List.of(lines), TODAY, GROWER));
    }

    /** Two plantings of tomatoes and one each of squash, pumpkin, pea and runner bean. */
    static Grown usual() {
        return with(
                "6 cherry tomatoes sown 2027-03-01, greenhouse",
                "8 plum tomatoes sown 2027-03-20, bed 2",
                "4 winter squash sown 2027-04-25, in pots, porch",
                "3 pumpkins sown 2027-04-25, in pots, porch",
                "10 peas sown 2027-04-01, bed 2",
                "12 runner beans sown 2027-05-01, greenhouse");
    }

    Heard says(String text) {
        Heard heard = READING.understood(text, new Situation(TODAY, GROWER, plantings, pending, lately, mentioned));
        pending = heard.doubt();
        remember(heard);
        return heard;
    }

    private void remember(Heard heard) {
        List<Logged> written = new ArrayList<>();
        for (Statement statement : heard.statements()) {
            if (statement.sure()) {
                List<String> ids = statement.plantings().isEmpty()
                        ? java.util.Collections.singletonList(null)
                        : statement.plantings();
                ids.forEach(id -> written.add(line(
                        statement.event().withPlanting(id, statement.event().crop()))));
                mentioned = statement.plantings();
            }
        }
        heard.signs().forEach(sign -> written.add(new Logged(++number, "message", Instant.EPOCH, sign)));
        lately = written.isEmpty() ? lately : written;
    }

    private Logged line(Event event) {
        return new Logged(++number, "message", Instant.EPOCH, event);
    }

    Doubt pending() {
        return pending;
    }

    /** What a message tells, for a grower without plantings on another day. */
    static Heard heard(String text, LocalDate today, boolean monthFirst) {
        Grower grower = new Grower(
                ZoneId.of("Europe/London"),
                null,
                null,
                MonthDay.of(5, 10),
                MonthDay.of(10, 10),
                bothy.garden.Units.METRIC,
                null,
                monthFirst);
        return READING.understood(text, new Situation(today, grower, List.of(), null, List.of(), List.of()));
    }
}
