package bothy.conversation;

import bothy.advice.clinic.Clinic;
import bothy.advice.clinic.OpenCases;
import bothy.almanac.troubles.TroubleBook;
import bothy.almanac.troubles.Troubles;
import bothy.garden.Diagnosis;
import bothy.garden.Doubt;
import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Finding;
import bothy.garden.Garden;
import bothy.garden.Heard;
import bothy.garden.Message;
import bothy.garden.Planting;
import bothy.garden.SignSeen;
import bothy.garden.Situation;
import bothy.garden.Statement;
import bothy.garden.What;
import bothy.reading.Description;
import bothy.reading.Reading;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What one message adds to the case that it belongs to: an answer to the question that waits, and what it tells unasked. */
final class CaseNotes {
    private final Reading reading;
    private final TroubleBook book;
    private final Garden garden;
    private final Doubt pending;
    private final Message message;
    private final Situation situation;
    private OpenCases openCases;
    private Description described;
    private List<Finding> found;
    private List<Finding> toldOnly;
    private List<Finding> fared = List.of();

    CaseNotes(Reading reading, TroubleBook book, Garden garden, Doubt pending, Message message, Situation situation) {
        this.reading = reading;
        this.book = book;
        this.garden = garden;
        this.pending = pending;
        this.message = message;
        this.situation = situation;
    }

    /** The message looked at as a description of a trouble, once. */
    private Description description() {
        if (described == null) {
            described = reading.description(message.text(), situation);
        }
        return described;
    }

    /** Whether the message names a crop, be it one of several kinds. */
    boolean nameACrop() {
        return !description().crops().isEmpty();
    }

    /** Whether the message describes a trouble in words enough, beside naming it. */
    boolean describe() {
        return loosely().describedAtLength();
    }

    private LooselyTold loosely() {
        return new LooselyTold(description(), book, message.text(), part -> reading.description(part, situation));
    }

    /** What the message tells of a closer look, read once. */
    private List<Finding> found() {
        if (found == null) {
            found = description().findings();
        }
        return found;
    }

    /** The same for a trouble that is open already: what the message only asks tells nothing of it. */
    private List<Finding> foundOf(Heard heard) {
        if (heard.inquiries().isEmpty() || !heard.signs().isEmpty()) {
            return found();
        }
        if (toldOnly == null) {
            toldOnly = reading.toldOnly(message.text(), situation).findings();
        }
        return toldOnly;
    }

    /** Whether a question that waits is about a trouble. */
    static boolean ofACase(Doubt doubt) {
        return doubt.about() == Doubt.About.ADVICE && doubt.arguments().containsKey(Doubt.CASE);
    }

    /** Whether a question is about the case of a diagnosis. */
    static boolean isAbout(Doubt doubt, Diagnosis diagnosis) {
        return diagnosis.of().equals(doubt.arguments().get(Doubt.CASE));
    }

    /** Whether someone is unwell: then plants can wait for the next message. */
    boolean ofAPerson() {
        return message.pressed() == null
                && !Commands.isCommand(message.text())
                && found().stream().anyMatch(finding -> Clinic.OF_A_PERSON.contains(finding.about()));
    }

    /** "Much better, no more holes" names the trouble that is over; it tells of no new one. */
    Heard withoutWhatFared(Heard heard) {
        if (message.pressed() != null || !heard.inquiries().isEmpty()) {
            return heard;
        }
        boolean answers = pending != null && ofACase(pending);
        fared = new FaringOfSigns(reading, situation, open()).told(heard.signs(), message.text(), answers);
        boolean openOnes = heard.signs().stream()
                .allMatch(sign -> open().of(sign.planting(), sign.crop()).isPresent());
        return !fared.isEmpty() || openOnes && !better(outcome(heard)).isEmpty() ? heard.withoutSigns() : heard;
    }

    private static List<Finding> better(List<Finding> outcomes) {
        return outcomes.stream()
                .filter(finding -> finding.found().equals("better"))
                .toList();
    }

    /** The entries to add to the diary. */
    List<Entry> findings(Heard heard) {
        List<Entry> entries = new ArrayList<>();
        if (message.photo()) {
            SignSeen seen = heard.signs().isEmpty() ? null : heard.signs().get(0);
            String named =
                    description().crops().size() == 1 ? description().crops().get(0) : null;
            entries.add(Event.of(
                            What.NOTE,
                            seen == null ? null : seen.planting(),
                            seen == null ? named : seen.crop(),
                            situation.today())
                    .withDetail("photo"));
        }
        if (Commands.isCommand(message.text()) || !heard.amendments().isEmpty()) {
            return entries;
        }
        List<Finding> ofAPerson = found().stream()
                .filter(finding -> Clinic.OF_A_PERSON.contains(finding.about()))
                .toList();
        if (!ofAPerson.isEmpty()) {
            entries.addAll(ofAPerson);
            return entries;
        }
        found().stream()
                .filter(finding -> Clinic.OF_PEOPLE.contains(finding.about()))
                .forEach(entries::add);
        if (!fared.isEmpty()) {
            entries.addAll(fared);
            return entries;
        }
        if (heard.signs().isEmpty() && !better(outcome(heard)).isEmpty()) {
            entries.addAll(better(outcome(heard)));
            return entries; // "Picked the caterpillars off, much better now": good news is no new description.
        }
        Optional<Finding> answer = pending == null || !ofACase(pending) ? Optional.empty() : answered(heard);
        answer.ifPresent(entries::add);
        wordsOf(heard.signs()).forEach(entries::add);
        if (answer.isEmpty() && heard.signs().isEmpty()) {
            entries.addAll(outcome(heard));
        }
        if (answer.isPresent() || !anotherTrouble(heard)) {
            told(heard).stream()
                    .filter(finding -> answer.isEmpty() || !answer.get().about().equals(finding.about()))
                    .forEach(entries::add);
        }
        entries.addAll(answer.isPresent() ? List.of() : unnamed(heard));
        if (entries.stream()
                .allMatch(entry -> entry instanceof Finding finding && Clinic.OF_PEOPLE.contains(finding.about()))) {
            entries.addAll(goesOn(heard));
        }
        return entries;
    }

    /** "On the stem near the ground, two plants": where and how many, told of the trouble that is talked about. */
    private List<Entry> goesOn(Heard heard) {
        boolean tellsElse = !heard.statements().isEmpty()
                || !heard.inquiries().isEmpty()
                || !heard.signs().isEmpty()
                || !heard.settings().isEmpty()
                || !heard.plans().isEmpty()
                || message.pressed() != null
                || message.text().isBlank();
        if (tellsElse || pending != null && !ofACase(pending)) {
            return List.of();
        }
        long where = description().whereabouts();
        boolean tells = where + description().complaints() >= (pending == null ? 2 : 1) && where > 0;
        // "Tomatoes look really weird", once more of the same.
        List<SignSeen> again = description().looseSigns(true).isEmpty()
                ? List.of()
                : spokenOf().named();
        tells &= loosely().goesOnWithATrouble(waits());
        return List.copyOf(wordsOf(tells ? spokenOf().talkedAbout() : again));
    }

    private boolean waits() {
        return pending != null && ofACase(pending);
    }

    private Optional<Finding> answered(Heard heard) {
        boolean tapped = message.pressed() != null;
        CaseAnswer answer = new CaseAnswer(pending, garden, situation.today());
        if (!tapped && answer.isOfAnother(heard.signs())) {
            return Optional.empty();
        }
        String said = tapped ? message.pressed() : message.text();
        List<Finding> found = tapped ? reading.description(said, situation).findings() : foundOf(heard);
        return answer.in(
                said,
                reading.answerAlone(said, situation),
                found,
                heard.inquiries().isEmpty());
    }

    /** What became of an open case, told unasked: "they look better now". */
    private List<Finding> outcome(Heard heard) {
        boolean answersElse =
                pending != null && !ofACase(pending) && !heard.statements().isEmpty();
        List<Finding> told = message.pressed() != null || answersElse
                ? List.of()
                : foundOf(heard).stream()
                        .filter(finding -> finding.about().equals(Finding.OUTCOME))
                        .toList();
        return told.isEmpty() ? List.of() : of(spokenOf().fared(message.text()), told);
    }

    /** What was told unasked goes to the sign of the same message, else to the open case of the crop spoken of. */
    private List<Finding> told(Heard heard) {
        if (message.pressed() != null || message.text().isBlank()) {
            return List.of();
        }
        if (!heard.signs().isEmpty()) {
            return parts().of(heard.signs(), one -> ofPlants(one.findings()).toList());
        }
        CaseSpokenOf cases = spokenOf();
        List<SignSeen> spokenOf = cases.inPassing();
        boolean ofOthers = spokenOf.isEmpty();
        List<SignSeen> subjects = ofOthers ? cases.lately() : spokenOf;
        if (subjects.isEmpty()) {
            return List.of();
        }
        Set<String> signs = new HashSet<>();
        subjects.forEach(sign -> signs.addAll(open().signsOf(sign)));
        List<Finding> found = (ofOthers ? besideOtherCrops() : ofPlants(foundOf(heard)))
                .filter(one -> weighs(one, List.copyOf(signs)))
                .toList();
        if (found.isEmpty()) {
            return List.of();
        }
        boolean inPassing = !ofOthers
                && (tellsElse(heard) || LooselyTold.asksElse(heard))
                && found.stream().noneMatch(one -> book.tables().tells(one.about(), one.found()));
        if (inPassing) {
            return List.of();
        }
        // "How often should I water the tunnel" asks for itself, whatever question about a trouble waits.
        boolean ofIt = !LooselyTold.asksElse(heard) && loosely().goesOnWithATrouble(waits());
        return of(subjects, ofIt ? found : found.stream().filter(this::asked).toList());
    }

    private static Stream<Finding> ofPlants(List<Finding> found) {
        return found.stream()
                .filter(finding ->
                        !Clinic.ofNoPlant(finding.about()) && !finding.about().equals(Finding.OUTCOME));
    }

    /** "Sowed lettuce today. Old leaves at the bottom by the way": what the sentences tell that name no other crop. */
    private Stream<Finding> besideOtherCrops() {
        return Stream.of(message.text().split("[.;!?\\n]+"))
                .map(sentence -> reading.toldOnly(sentence, situation))
                .filter(sentence -> sentence.crops().isEmpty())
                .flatMap(sentence -> ofPlants(sentence.findings())
                        .filter(finding -> sentence.whereabouts() > 0
                                || asked(finding)
                                || book.tables().tells(finding.about(), finding.found())));
    }

    /** Whether a finding tells anything in an open case: a dropped bottle is no bruised squash where leaves are spotted. */
    private boolean weighs(Finding finding, List<String> signs) {
        Troubles.Question question = book.tables().questions().get(finding.about());
        return question == null || question.countsAt(signs);
    }

    private boolean asked(Finding finding) {
        return pending != null
                && ofACase(pending)
                && new CaseAnswer(pending, garden, situation.today()).asksFor(finding);
    }

    private static List<Finding> of(List<SignSeen> subjects, List<Finding> found) {
        return subjects.stream()
                .flatMap(sign -> found.stream()
                        .map(one ->
                                new Finding(sign.planting(), sign.crop(), one.about(), one.found(), false, one.on())))
                .toList();
    }

    /** The words that a trouble was described with, kept with its signs. */
    private List<Finding> wordsOf(List<SignSeen> signs) {
        if (signs.isEmpty() || message.pressed() != null) {
            return List.of();
        }
        return parts().of(signs, described -> {
            List<String> words = book.tables().portraits().known(described.words());
            return words.isEmpty()
                    ? List.of()
                    : List.of(
                            new Finding(null, null, Troubles.WORDS, String.join(" ", words), false, situation.today()));
        });
    }

    private PartsByCrop parts() {
        return new PartsByCrop(reading, situation, message.text(), description());
    }

    /**
     * A trouble told without a sign that reading knows: signs told loosely, or else something found on a plant, when nothing else was
     * told, asked or open.
     *
     * @return the signs that open its case and what was found, empty when it is none
     */
    private List<Entry> unnamed(Heard heard) {
        if (message.pressed() != null) {
            return List.of();
        }
        List<String> crops = new ArrayList<>(description().crops());
        List<String> growing =
                garden.growing().stream().map(Planting::crop).distinct().toList();
        if (crops.isEmpty() && growing.size() == 1) {
            crops.addAll(growing);
        }
        List<Finding> found = found().stream()
                .filter(finding -> !finding.about().equals(Finding.OUTCOME) && !Clinic.ofNoPlant(finding.about()))
                .toList();
        boolean nothingElse = heard.statements().stream().noneMatch(Statement::sure);
        boolean ofAnOpenCase = !spokenOf().named().isEmpty() && !anotherTrouble(heard);
        if (crops.isEmpty() && !nothingElse || ofAnOpenCase) {
            return List.of();
        }
        List<String> names = loosely().signs(heard, found);
        if (names.isEmpty()) {
            return List.of();
        }
        String crop =
                crops.stream().filter(growing::contains).findFirst().orElse(crops.isEmpty() ? null : crops.get(0));
        List<SignSeen> signs = names.stream()
                .map(name -> new SignSeen(name, null, crop, situation.today(), null, null))
                .toList();
        List<Entry> entries = new ArrayList<>(signs);
        entries.addAll(of(List.of(signs.get(0)), found));
        entries.addAll(wordsOf(List.of(signs.get(0))));
        return entries;
    }

    /** Whether the message, which answers nothing that was asked, shows a trouble of its own beside the open case of its crop. */
    private boolean anotherTrouble(Heard heard) {
        List<Finding> found = ofPlants(foundOf(heard)).toList();
        return heard.signs().isEmpty()
                && message.pressed() == null
                && found.stream().noneMatch(this::asked)
                && spokenOf().anotherTrouble(found);
    }

    /** How soil and weather are may tell of a trouble that is open; what was done does not. */
    private boolean tellsElse(Heard heard) {
        return heard.statements().stream()
                .filter(Statement::sure)
                .map(statement -> statement.event().what())
                .anyMatch(what -> !(what.ofThePlot() || what == What.SOIL_CHECKED));
    }

    /** The cases that the message finds open, derived once. */
    private OpenCases open() {
        if (openCases == null) {
            openCases = new OpenCases(garden, situation.today(), book.tables());
        }
        return openCases;
    }

    private CaseSpokenOf spokenOf() {
        return new CaseSpokenOf(open(), pending, description().crops());
    }
}
