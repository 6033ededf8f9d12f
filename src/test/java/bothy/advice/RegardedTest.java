package bothy.advice;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.CropSheets;
import bothy.almanac.Places;
import bothy.almanac.RulesFolder;
import bothy.almanac.troubles.TroubleBook;
import bothy.diary.Replay;
import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Garden;
import bothy.garden.Given;
import bothy.garden.Given.Occasion;
import bothy.garden.Inquiry;
import bothy.garden.Logged;
import bothy.garden.Planting;
import bothy.garden.Question;
import bothy.garden.SignSeen;
import bothy.garden.What;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said of a planting does not hang on whether the rules looked at the others too. */
class RegardedTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 7, 20);
    private static final ZoneId ZONE = ZoneId.of("Europe/London");
    private static final List<String> CROPS =
            List.of("tomato", "potato", "runner-bean", "courgette", "onion", "chard", "cucumber", "carrot");
    private static final RulesFolder RULES = RulesFolder.at(Path.of("rules"));
    private static final Advisor ADVISOR =
            new Advisor(RuleBook.of(RULES, null), CropSheets.load(RULES), Places.in(RULES), TroubleBook.at(RULES));

    @Test
    void whatIsAskedOfOnePlantingIsAnsweredAsIfTheWholePlotWereLookedAt() {
        Garden garden = garden(List.of());
        for (Planting planting : garden.growing()) {
            for (Question question : Question.values()) {
                Inquiry asked = Inquiry.of(question, planting.crop(), List.of(planting.id()));
                assertThat(said(planting, garden, List.of(), List.of(asked), false))
                        .as(question + " of " + planting.id())
                        .isEqualTo(said(planting, garden, List.of(), List.of(asked), true));
            }
        }
    }

    @Test
    void whatIsToldOfOnePlantingIsAnsweredAsIfTheWholePlotWereLookedAt() {
        for (Planting planting : garden(List.of()).growing()) {
            for (What what : What.values()) {
                Event told = Event.of(what, planting.id(), planting.crop(), TODAY);
                Garden garden = garden(List.of(told));
                assertThat(said(planting, garden, List.of(told), List.of(), false))
                        .as(what + " of " + planting.id())
                        .isEqualTo(said(planting, garden, List.of(told), List.of(), true));
            }
        }
    }

    /** The advice of the planting, and all that did not stand by itself. */
    private static List<Given> said(
            Planting planting, Garden garden, List<Event> told, List<Inquiry> asked, boolean whole) {
        Day day = new Day(TODAY, garden, told, asked, List.of(), List.of(), List.of(), List.of(), null, whole);
        return ADVISOR.advise(day).given().stream()
                .filter(given -> given.occasion() != Occasion.STANDING
                        || given.planting() == null
                        || given.planting().equals(planting.id()))
                .toList();
    }

    /** A plot in July with a case of trouble open; a day of rain was told of no planting. */
    private static Garden garden(List<Event> told) {
        List<Logged> lines = new ArrayList<>();
        for (String crop : CROPS) {
            String id = crop + "-1";
            LocalDate sown = LocalDate.of(2027, 4, 10);
            log(lines, Event.of(What.SOWN, id, crop, sown));
            log(lines, Event.of(What.EMERGED, id, crop, sown.plusDays(12)));
            log(lines, Event.of(What.PLANTED_OUT, id, crop, sown.plusDays(45)));
            log(lines, Event.of(What.WATERED, id, crop, TODAY.minusDays(3)));
            log(lines, Event.of(What.FLOWERING, id, crop, TODAY.minusDays(9)));
        }
        log(lines, Event.of(What.RAIN, null, null, TODAY.minusDays(5)));
        log(lines, new SignSeen("yellow-lower-leaves", "cucumber-1", "cucumber", TODAY.minusDays(2), null, null, null));
        told.forEach(event -> log(lines, event));
        return Replay.garden(lines, TODAY, ZONE);
    }

    private static void log(List<Logged> lines, Entry entry) {
        lines.add(new Logged(
                lines.size() + 1, "m" + lines.size(), TODAY.atTime(9, 0).toInstant(ZoneOffset.UTC), entry));
    }
}
