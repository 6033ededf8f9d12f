package bothy.conversation;

import bothy.advice.AdviceFailed;
import bothy.advice.Advised;
import bothy.advice.Day;
import bothy.conversation.Conversation.Outcome;
import bothy.diary.Page;
import bothy.diary.Replay;
import bothy.garden.Amendment;
import bothy.garden.Doubt;
import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Finding;
import bothy.garden.Garden;
import bothy.garden.Heard;
import bothy.garden.Inquiry;
import bothy.garden.Logged;
import bothy.garden.Message;
import bothy.garden.Question;
import bothy.garden.Reply;
import bothy.garden.SettingChange;
import bothy.garden.SignSeen;
import bothy.garden.Situation;
import bothy.garden.Statement;
import bothy.garden.WeatherDay;
import bothy.garden.What;
import bothy.replying.Answer;
import bothy.replying.Turn;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** One message and its reply, inside one transaction. */
final class Exchange {
    private static final Logger LOG = LoggerFactory.getLogger(Exchange.class);
    /** A figure put right is looked for in as many lines, about a season's. */
    private static final int LINES_LOOKED_UP = 400;
    /** Settings after which it is said what they mean for frost and seasons. */
    private static final Set<String> OF_PLACE = Set.of("zone", "latitude", "frosts", "climate");

    private static final String PLACE_TOLD = "place-told";

    private final Knowledge knowledge;
    private final Page page;
    private final Message message;
    private final List<Logged> lines;
    private final Garden before;
    private final LocalDate today;
    private final Memory memory;
    private final Situation situation;
    private boolean rulesFailed;
    private Doubt.Choice chosen;

    Exchange(Knowledge knowledge, Page page, Message message) {
        this.knowledge = knowledge;
        this.page = page;
        this.message = message;
        this.lines = page.lines();
        LocalDate channelDay = message.at().atZone(message.zone()).toLocalDate();
        Garden first = Replay.garden(lines, channelDay, message.zone());
        this.today = message.at().atZone(first.grower().zone()).toLocalDate();
        this.before = today.equals(channelDay) ? first : Replay.garden(lines, today, message.zone());
        this.memory = MemoryJson.read(page.state());
        this.situation = situation();
    }

    Outcome outcome() {
        Heard heard = remindersAhead(hear());
        OwnData own = new OwnData(knowledge.replier(), page, before, memory);
        return own.outcome(heard).orElseGet(() -> answered(heard));
    }

    private Outcome answered(Heard told) {
        Waiting waiting = new Waiting(memory, before, today);
        boolean own = chosen == null && message.pressed() == null && !Commands.isCommand(message.text());
        Heard heard = own ? waiting.kept(told) : told;
        CaseNotes notes = new CaseNotes(
                knowledge.reading(), knowledge.advisor().troubles(), before, memory.pending(), message, situation);
        if (notes.ofAPerson()) {
            // "Why bitter?" waits too.
            heard = heard.withoutSigns()
                    .asking(heard.inquiries().stream()
                            .filter(inquiry ->
                                    inquiry.question() != Question.WHY && inquiry.question() != Question.OTHER)
                            .toList());
        }
        // What is in doubt is asked first: 70 degrees may be a cool spring soil or a fire.
        heard = notes.withoutWhatFared(heard);
        boolean degrees = heard.doubt() != null && heard.doubt().about() == Doubt.About.WHICH_DEGREES;
        List<Entry> closerLook = degrees ? List.of() : notes.findings(heard);
        heard = DoingsMentioned.without(heard, closerLook, notes.describe(), message.text());
        boolean ofTrouble = !heard.signs().isEmpty()
                || closerLook.stream().anyMatch(entry -> entry instanceof SignSeen || entry instanceof Finding);
        boolean weighed = heard.statements().stream()
                .anyMatch(one ->
                        one.event().what() == What.HARVESTED && one.event().amount() != null);
        if (ofTrouble && !weighed && heard.statements().stream().noneMatch(Statement::sure)) {
            // A trouble comes first: its own question is asked, not that about what else may have been said.
            heard = heard.withDoubt(null);
        }
        List<Logged> written = write(heard, closerLook);
        Garden garden = written.isEmpty() ? before : Replay.garden(page.lines(), today, message.zone());
        if (written.isEmpty()) {
            heard = new AskedAgain(memory.pending(), chosen != null).orElse(heard, message.text());
        }
        heard = new NotBegun(garden).settled(heard);
        if (AboutWhat.isOpen(heard)) {
            heard = new AboutWhat(garden, memory, written, today, notes.nameACrop())
                    .settled(heard, knowledge.replier());
        }
        Doubt still = own ? waiting.stillAsked(heard) : null;
        if (still != null) {
            heard = heard.withDoubt(still);
        }
        Advised advised = advise(heard, written, garden);
        List<Logged> learnt =
                new LessonLearnt(knowledge.replier(), garden, today).kept(page, message, written, advised);
        Turn turn = new Turn(
                today,
                garden,
                heard,
                written,
                takenBack(written),
                standingAgain(written, garden),
                advised.given(),
                advised.stages(),
                heard.doubt(),
                memory.saidOn(today),
                advised.diagnoses(),
                memory.verdicts());
        Settling settling = new Settling(knowledge.replier(), memory, chosen);
        Answer said = settling.answer(heard)
                .or(() -> new Commands(knowledge.replier(), memory.why(), message, turn).answer())
                .orElseGet(() -> knowledge.replier().answer(turn));
        Answer answer = new ZoneAsked(knowledge).after(said, heard, garden);
        Remembering remembering = new Remembering(knowledge.replier(), memory, today);
        page.keepState(MemoryJson.write(remembering.after(answer, turn, settling.settled(heard, today))));
        List<WeatherDay> weather = knowledge.weather().around(garden.grower(), today);
        page.lookAgain(new NextLook(garden, message.at(), !weather.isEmpty()).moment());
        Reply worded =
                message.photo() && !message.text().isBlank() ? withPhotoNoted(answer.reply(), heard) : answer.reply();
        Reply reply = WeatherNotes.under(
                worded, answer.spoken(), heard.inquiries(), garden.grower(), knowledge.weather(), knowledge.replier());
        if (waiting.taken() != null) {
            reply = new Reply(
                    knowledge
                                    .replier()
                                    .talk(
                                            "took-the-likeliest",
                                            Map.of("label", waiting.taken().label())) + "\n\n" + reply.text(),
                    reply.buttons());
        }
        return new Outcome(
                rulesFailed ? withFailure(reply) : reply,
                learnt,
                answer.spoken(),
                answer.nextLook(),
                // "Where on the plant is it?" is answered by a description, for which nothing need wait.
                answer.asked() != null || reply.text().strip().endsWith("?"),
                advised.fired(),
                advised.diagnoses());
    }

    private Heard remindersAhead(Heard heard) {
        return heard.settings().isEmpty()
                ? heard
                : new RemindersAhead(
                                message.at().atZone(before.grower().zone()).toLocalDateTime(),
                                Wishes.of(before).quietTo())
                        .settled(heard);
    }

    private Heard hear() {
        if (message.latitude() != null && message.longitude() != null) {
            return Locations.heard(message.latitude(), message.longitude());
        }
        chosen = Settling.chosen(memory.pending(), message);
        Doubt pending = memory.pending();
        if (chosen == null && message.pressed() == null && pending != null && pending.ofATask()) {
            chosen = Settling.meant(pending, knowledge.reading().answerAlone(message.text(), situation));
        }
        if (chosen != null) {
            return chosen.then();
        }
        if (message.pressed() != null) {
            return knowledge.reading().read(message.pressed(), situation);
        }
        if (Commands.isCommand(message.text())) {
            return Commands.sentence(message.text())
                    .map(same -> knowledge.reading().read(same, situation))
                    .filter(heard -> !heard.inquiries().isEmpty())
                    .orElseGet(() -> Commands.heard(message.text(), Replay.last(lines)));
        }
        return knowledge.reading().read(message.text(), situation);
    }

    private Situation situation() {
        return new Situation(
                today,
                before.grower(),
                before.plantings(),
                memory.pending(),
                Replay.lately(lines),
                newestFirst(before.standing()),
                memory.mentioned(),
                memory.crops(),
                before.happened(),
                memory.askedBy(today));
    }

    private static List<Logged> newestFirst(List<Logged> standing) {
        List<Logged> lines =
                new ArrayList<>(standing.subList(Math.max(0, standing.size() - LINES_LOOKED_UP), standing.size()));
        java.util.Collections.reverse(lines);
        return lines;
    }

    private List<Logged> write(Heard heard, List<Entry> closerLook) {
        Writing writing = new Writing(before, lines, memory.mentioned());
        List<Logged> earlier = message.edits() == null ? List.of() : linesOf(message.edits());
        List<Entry> entries = earlier.isEmpty() ? writing.entries(heard) : writing.edited(heard, earlier);
        entries = new ArrayList<>(new Undoing(lines).retarget(entries));
        entries.addAll(closerLook);
        entries.replaceAll(new BegunWithIt(entries, today)::of);
        return entries.isEmpty() ? List.of() : page.append(message.id(), message.at(), entries);
    }

    private List<Logged> linesOf(String edited) {
        return before.standing().stream()
                .filter(line -> line.message().equals(edited) && line.entry() instanceof Event)
                .toList();
    }

    /** What the lines taken back had said, as it stood before. */
    private List<Event> takenBack(List<Logged> written) {
        Set<Long> gone = written.stream()
                .map(Logged::entry)
                .filter(entry -> entry instanceof Amendment amendment && amendment.instead() == null)
                .map(entry -> ((Amendment) entry).entry())
                .collect(Collectors.toSet());
        return gone.isEmpty() ? List.of() : Replay.standingOrCorrecting(lines, gone);
    }

    /** What a correction had changed, as it stands now that the correction was taken back. */
    private List<Event> standingAgain(List<Logged> written, Garden garden) {
        Set<Long> corrected = written.stream()
                .filter(line -> line.entry() instanceof Amendment back && back.instead() == null)
                .flatMap(back -> lines.stream()
                        .filter(line -> line.number() == ((Amendment) back.entry()).entry())
                        .filter(line -> line.entry() instanceof Amendment))
                .map(line -> ((Amendment) line.entry()).entry())
                .collect(Collectors.toSet());
        return garden.standing().stream()
                .filter(line -> corrected.contains(line.number()) && line.entry() instanceof Event)
                .map(line -> (Event) line.entry())
                .toList();
    }

    private Advised advise(Heard heard, List<Logged> written, Garden garden) {
        List<Event> told = new ArrayList<>();
        List<SignSeen> signs = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (Logged line : written) {
            Entry entry = line.entry() instanceof Amendment amendment ? amendment.instead() : line.entry();
            if (entry instanceof Event event) {
                told.add(event);
            } else if (entry instanceof SignSeen sign) {
                signs.add(sign);
            } else if (entry instanceof Finding finding) {
                findings.add(finding);
            }
        }
        Day day = new Day(
                today,
                garden,
                told,
                placeTold(asked(heard, written, garden), written),
                signs,
                heard.plans(),
                Skies.over(page, knowledge.weather(), garden.grower(), today),
                findings,
                Skies.normals(page, garden.grower()),
                false);
        try {
            return knowledge.advisor().advise(day);
        } catch (AdviceFailed failure) {
            LOG.error("The rules failed: {}", Discretion.of(failure));
            LOG.debug("The rules failed", failure);
            rulesFailed = true;
            return new Advised(List.of(), Map.of(), Set.of());
        }
    }

    /** Whoever tells where the plot is, or that it has no frost, is told what follows from it. */
    private static List<Inquiry> placeTold(List<Inquiry> asked, List<Logged> written) {
        boolean place = written.stream()
                .anyMatch(line -> line.entry() instanceof SettingChange change && OF_PLACE.contains(change.setting()));
        if (!place) {
            return asked;
        }
        List<Inquiry> all = new ArrayList<>(asked);
        all.add(Inquiry.of(Question.OTHER, null, List.of()).withTopic(PLACE_TOLD));
        return all;
    }

    /** A question about no named crop is about what was talked about last, if that still grows. */
    private static List<Inquiry> asked(Heard heard, List<Logged> written, Garden garden) {
        Set<String> growing = garden.growing().stream().map(one -> one.id()).collect(Collectors.toSet());
        return heard.inquiries().stream()
                .map(inquiry -> aboutBegun(aboutGrowing(inquiry, growing), written))
                .toList();
    }

    /** "Sowed carrots 3 weeks ago, nothing up, is that normal?" asks about what the message begins. */
    private static Inquiry aboutBegun(Inquiry inquiry, List<Logged> written) {
        List<String> begun = written.stream()
                .map(Logged::entry)
                .filter(entry -> entry instanceof Event event
                        && event.what() == What.SOWN
                        && event.planting() != null
                        && (inquiry.crop() == null || inquiry.crop().equals(event.crop())))
                .map(entry -> ((Event) entry).planting())
                .distinct()
                .toList();
        return inquiry.plantings().isEmpty() && begun.size() == 1 ? inquiry.about(begun) : inquiry;
    }

    private static Inquiry aboutGrowing(Inquiry inquiry, Set<String> growing) {
        List<String> known =
                inquiry.plantings().stream().filter(growing::contains).toList();
        return inquiry.about(known);
    }

    /** Where on the plant it is need not be asked of whoever has said so. */
    private Reply withPhotoNoted(Reply reply, Heard heard) {
        boolean where = heard.signs().stream().anyMatch(sign -> sign.where() != null);
        return new Reply(
                knowledge.replier().talk(where ? "photo-noted-told" : "photo-noted") + "\n\n" + reply.text(),
                reply.buttons());
    }

    private Reply withFailure(Reply reply) {
        return new Reply(reply.text() + "\n\n" + knowledge.replier().talk("rules-failed"), reply.buttons());
    }
}
