package bothy.advice;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.CropSheets;
import bothy.almanac.Places;
import bothy.almanac.RulesFolder;
import bothy.garden.Event;
import bothy.garden.Garden;
import bothy.garden.Given;
import bothy.garden.Grower;
import bothy.garden.Planting;
import bothy.garden.What;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.conf.ThreadSafeOption;

class RuleBookTest {
    @Test
    void the_shipped_rules_compile_and_advise_on_a_fresh_sowing() {
        RulesFolder folder = RulesFolder.at(Path.of("rules"));
        Advisor advisor = new Advisor(RuleBook.of(folder, null), CropSheets.load(folder), Places.in(folder));
        LocalDate day = LocalDate.of(2027, 4, 3);
        Event sown = new Event(What.SOWN, "cucumber-1", "cucumber", null, 6, 15.0, "°C", day, "porch", "modules", null);
        Planting planting = new Planting(
                "cucumber-1", "cucumber", null, "porch", "modules", Planting.Start.SEED, day, null, 6, null);
        Garden garden = new Garden(
                Grower.in(ZoneId.of("Europe/London")),
                day,
                List.of(planting),
                List.of(new bothy.garden.Logged(1, "m", java.time.Instant.EPOCH, sown)));

        Advised advised =
                advisor.advise(new Day(day, garden, List.of(sown), List.of(), List.of(), List.of(), List.of()));

        assertThat(advised.given()).extracting(Given::id).contains("warm-the-seeds");
    }

    /**
     * Sessions that are told to serve one thread share the arguments of consequences with all others on the same rules, so that one grower's
     * advice is now and then given in another's run.
     */
    @Test
    void runs_side_by_side_share_nothing_that_a_rule_is_given() {
        KieSession session = RuleBook.of(RulesFolder.at(Path.of("rules")), null).session(Map.of());

        assertThat(session.getSessionConfiguration()
                        .getOption(ThreadSafeOption.KEY)
                        .isThreadSafe())
                .isTrue();
        session.dispose();
    }
}
