package bothy.conversation;

import bothy.advice.AdviceFailed;
import bothy.advice.Advised;
import bothy.advice.Day;
import bothy.conversation.Conversation.Outcome;
import bothy.diary.Page;
import bothy.diary.Replay;
import bothy.garden.Garden;
import bothy.garden.Given;
import bothy.garden.Given.Occasion;
import bothy.garden.Heard;
import bothy.garden.Kind;
import bothy.garden.WeatherDay;
import bothy.replying.Answer;
import bothy.replying.Turn;
import bothy.replying.Unasked;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * What is said unasked at one moment, in one message: the weekly list at its hour, in the morning what is due, in the evening what the
 * weather threatens.
 */
final class SpeakingUp {
    private static final Logger LOG = LoggerFactory.getLogger(SpeakingUp.class);
    /** A weekly list may hold more than a phone shows reasons for. */
    private static final int MOST_EXPLAINED = 6;

    private final Knowledge knowledge;
    private final Page page;
    private final Garden garden;
    private final Instant moment;
    private final LocalDateTime now;
    private final Memory memory;
    private final Wishes wishes;

    SpeakingUp(Knowledge knowledge, Page page, Instant moment, ZoneId zone) {
        this.knowledge = knowledge;
        this.page = page;
        this.moment = moment;
        var lines = page.lines();
        ZoneId told = Replay.garden(lines, moment.atZone(zone).toLocalDate(), zone)
                .grower()
                .zone();
        this.now = moment.atZone(told).toLocalDateTime();
        this.garden = Replay.garden(lines, now.toLocalDate(), zone);
        this.memory = MemoryJson.read(page.state());
        this.wishes = Wishes.of(garden);
    }

    /** Says what is to be said, and notes when to look again. */
    Optional<Outcome> outcome() {
        Occasions occasions = new Occasions(wishes, memory.unasked(), now);
        List<WeatherDay> weather = Skies.over(page, knowledge.weather(), garden.grower(), now.toLocalDate());
        Optional<Outcome> outcome = occasions.any() ? spoken(occasions, weather) : Optional.empty();
        page.lookAgain(new NextLook(garden, moment, !weather.isEmpty()).moment());
        return outcome;
    }

    private Optional<Outcome> spoken(Occasions occasions, List<WeatherDay> weather) {
        Advised advised;
        try {
            advised = knowledge
                    .advisor()
                    .advise(Day.quiet(now.toLocalDate(), garden, weather).at(Skies.normals(page, garden.grower())));
        } catch (AdviceFailed failure) {
            LOG.error("The rules failed: {}", Discretion.of(failure));
            LOG.debug("The rules failed", failure);
            return Optional.empty();
        }
        Turn turn = new Turn(
                now.toLocalDate(),
                garden,
                Heard.nothing(Kind.CHAT),
                List.of(),
                List.of(),
                List.of(),
                advised.given(),
                advised.stages(),
                null,
                Set.of(),
                advised.diagnoses(),
                memory.verdicts());
        Set<String> standing = advised.given().stream()
                .filter(given -> given.occasion() == Occasion.STANDING)
                .map(Turn::key)
                .collect(Collectors.toSet());
        Raised before = memory.unasked();
        Unasked said = new Picking(
                        knowledge.replier(),
                        new Reminding(knowledge, garden, now.toLocalDate()),
                        before,
                        turn,
                        occasions)
                .picked();
        Raised after = occasions.noted(before.cleared(now.toLocalDate(), standing::contains));
        for (Given given : said.due()) {
            after = after.raised(Turn.key(given), now.toLocalDate(), given.nextCheck(), Picking.byWeather(given));
        }
        boolean silent = said.due().isEmpty() && !said.week() && said.opening() == null && said.question() == null;
        return silent ? silence(after) : Optional.of(said(said, turn, advised, after));
    }

    private Optional<Outcome> silence(Raised after) {
        page.keepState(MemoryJson.write(memory.with(after)));
        return Optional.empty();
    }

    private Outcome said(Unasked said, Turn turn, Advised advised, Raised after) {
        Answer answer = knowledge.replier().unasked(turn, said);
        List<String> why = knowledge
                .replier()
                .why(answer.spoken().stream().limit(MOST_EXPLAINED).toList(), turn);
        List<String> mentioned = answer.spoken().stream()
                .map(Given::planting)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
        page.keepState(MemoryJson.write(new Memory(
                answer.asked() == null ? memory.pending() : answer.asked(),
                why.isEmpty() ? memory.why() : why,
                mentioned.isEmpty() ? memory.mentioned() : mentioned,
                mentioned.isEmpty() ? memory.crops() : List.of(),
                after,
                memory.said(),
                memory.saidOn(),
                answer.spoken().stream().map(Turn::key).collect(Collectors.toSet()),
                memory.verdicts(),
                memory.asked())));
        return new Outcome(
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
                advised.diagnoses());
    }
}
