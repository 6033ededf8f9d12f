package bothy.conversation;

import bothy.advice.AdviceFailed;
import bothy.advice.Advised;
import bothy.advice.Day;
import bothy.conversation.Conversation.Outcome;
import bothy.diary.Page;
import bothy.diary.Replay;
import bothy.garden.Garden;
import bothy.garden.Given;
import bothy.garden.Given.Neglect;
import bothy.garden.Given.Occasion;
import bothy.garden.Heard;
import bothy.garden.Kind;
import bothy.garden.WeatherDay;
import bothy.replying.Answer;
import bothy.replying.Turn;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * What is said unasked on one day: the weekly list on its day, else what is due and harms when left. Each advice rests after it was
 * raised until its own next check, so that nobody is nagged.
 */
final class SpeakingUp {
    private static final Logger LOG = LoggerFactory.getLogger(SpeakingUp.class);
    private static final DayOfWeek LIST_DAY = DayOfWeek.SATURDAY;
    private static final LocalTime FROM = LocalTime.of(8, 0);
    private static final LocalTime TO = LocalTime.of(20, 0);
    private static final int MOST = 3;
    private static final int LEAST_REST_DAYS = 3;
    /** A weekly list may hold more than a phone shows reasons for. */
    private static final int MOST_EXPLAINED = 6;

    private final Knowledge knowledge;
    private final Page page;
    private final Garden garden;
    private final LocalDate today;
    private final LocalTime time;
    private final Memory memory;

    SpeakingUp(Knowledge knowledge, Page page, Instant moment, ZoneId zone) {
        this.knowledge = knowledge;
        this.page = page;
        ZoneId told = Replay.garden(page.lines(), moment.atZone(zone).toLocalDate(), zone)
                .grower()
                .zone();
        this.today = moment.atZone(told).toLocalDate();
        this.time = moment.atZone(told).toLocalTime();
        this.garden = Replay.garden(page.lines(), today, zone);
        this.memory = MemoryJson.read(page.state());
    }

    Optional<Outcome> outcome() {
        boolean night = time.isBefore(FROM) || time.isAfter(TO);
        if (garden.growing().isEmpty() || night || today.equals(memory.lookedUnasked())) {
            return Optional.empty();
        }
        Optional<Outcome> outcome = spoken();
        if (outcome.isEmpty()) {
            page.keepState(MemoryJson.write(memory.withLookedUnasked(today)));
        }
        return outcome;
    }

    private Optional<Outcome> spoken() {
        List<WeatherDay> weather = Skies.over(page, knowledge.weather(), garden.grower(), today);
        Advised advised;
        try {
            advised = knowledge.advisor().advise(Day.quiet(today, garden, weather));
        } catch (AdviceFailed failure) {
            LOG.error("The rules failed: {}", failure.getMessage(), failure);
            return Optional.empty();
        }
        boolean week = today.getDayOfWeek() == LIST_DAY;
        List<Given> due = due(advised.given());
        if (due.isEmpty() && !(week && anythingThisWeek(advised.given()))) {
            return Optional.empty();
        }
        Turn turn = new Turn(
                today,
                garden,
                Heard.nothing(Kind.CHAT),
                List.of(),
                List.of(),
                advised.given(),
                advised.stages(),
                null,
                Set.of(),
                advised.diagnoses());
        Answer answer = knowledge.replier().unasked(turn, due, week);
        remember(answer, due, turn);
        return Optional.of(new Outcome(
                WeatherNotes.under(
                        answer.reply(),
                        answer.spoken(),
                        List.of(),
                        garden.grower(),
                        knowledge.weather(),
                        knowledge.replier()),
                List.of(),
                answer.spoken(),
                answer.nextLook(),
                answer.asked() != null,
                advised.fired(),
                advised.diagnoses()));
    }

    private List<Given> due(List<Given> given) {
        return given.stream()
                .filter(one -> one.occasion() == Occasion.STANDING && !one.due().isAfter(today))
                .filter(one -> one.neglect() == Neglect.PLANTS_LOST || one.neglect() == Neglect.CROP_LOST)
                .filter(one -> !today.isBefore(memory.raised().getOrDefault(Turn.key(one), today)))
                .limit(MOST)
                .toList();
    }

    private boolean anythingThisWeek(List<Given> given) {
        return given.stream()
                .anyMatch(
                        one -> one.occasion() == Occasion.STANDING && one.due().isBefore(today.plusDays(7)));
    }

    private void remember(Answer answer, List<Given> due, Turn turn) {
        Map<String, LocalDate> raised = new HashMap<>(memory.raised());
        raised.values().removeIf(until -> until.isBefore(today));
        for (Given given : due) {
            LocalDate rest = today.plusDays(LEAST_REST_DAYS);
            LocalDate next = given.nextCheck();
            raised.put(Turn.key(given), next != null && next.isAfter(rest) ? next : rest);
        }
        List<String> why = answer.spoken().stream()
                .limit(MOST_EXPLAINED)
                .map(given -> knowledge.replier().why(given, turn))
                .toList();
        page.keepState(MemoryJson.write(new Memory(
                answer.asked() == null ? memory.pending() : answer.asked(),
                why.isEmpty() ? memory.why() : why,
                answer.spoken().isEmpty()
                        ? memory.mentioned()
                        : answer.spoken().stream()
                                .map(Given::planting)
                                .filter(java.util.Objects::nonNull)
                                .distinct()
                                .toList(),
                raised,
                today,
                memory.said(),
                memory.saidOn())));
    }
}
