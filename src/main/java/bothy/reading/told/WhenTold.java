package bothy.reading.told;

import bothy.garden.Doubt;
import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.DaySaid;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** The day on which something told happened. */
final class WhenTold {
    private static final Set<String> AT_ONCE =
            Set.of("straight away", "straight after", "right after", "right away", "at once", "same day", "same time");

    /** A day without a year that lies longer back than this is more likely a slip than a record, in days. */
    static final int LONG_AGO = 300;
    /** With its year told it may lie as far back as a whole season, in days. */
    static final int A_SEASON = 400;

    /** "Hardening off for three days now" tells when it began; "watered daily for a week now" does not. */
    private static final Set<What> LASTING =
            EnumSet.of(What.HARDENING_STARTED, What.EMERGED, What.FLOWERING, What.FRUIT_SET, What.CURED);

    /** "Entry for 16 May.": so many words may lead a day that stands by itself. */
    private static final int LEADING_WORDS = 4;

    private WhenTold() {}

    /** The day told for a clause: in it, at the head or the end of its sentence, or at the head of the message; else {@code null}. */
    static DaySaid said(Passage passage, Clause clause) {
        List<DaySaid> own = Passage.within(passage.days(), clause.from(), clause.to()).stream()
                .filter(day -> !clause.inRelative(day.start())
                        && !DaysOfElse.toCome(passage, clause, day)
                        && !DaysOfElse.forecast(passage, day)
                        && !ofWhatWentOn(passage, clause, day)
                        && !DaysOfElse.occasion(passage, clause, day)
                        && !DaysOfElse.wished(passage, day)
                        && !DaysOfElse.toldAgain(passage, day))
                .toList();
        if (!own.isEmpty()) {
            // "Don't know when exactly, early April-ish": who says so is to be asked.
            return own.stream()
                    .filter(day -> day.sort() == DaySaid.Sort.UNKNOWN
                            && own.stream().allMatch(other -> other == day || other.sort() == DaySaid.Sort.ABOUT))
                    .findFirst()
                    .orElseGet(() -> nearest(passage, own, clause));
        }
        List<DaySaid> sentence = Passage.within(passage.days(), clause.sentence()[0], clause.sentence()[1]).stream()
                .filter(day -> !clause.inRelative(day.start())
                        && !DaysOfElse.forecast(passage, day)
                        && !DaysOfElse.occasion(passage, clause, day)
                        && !DaysOfElse.wished(passage, day))
                .toList();
        DaySaid before = sentence.stream()
                .filter(day -> day.end() <= clause.from())
                .reduce((first, second) -> second)
                .orElse(null);
        if (before != null && besideIt(passage, clause) && over(passage, before)) {
            return before;
        }
        DaySaid leading = sentence.isEmpty() ? null : sentence.get(0);
        if (leading != null && heads(passage, leading, clause.sentence()[0])) {
            return leading;
        }
        DaySaid then = byThen(passage, clause) ? lastBefore(passage, clause) : null;
        if (then != null) {
            return then;
        }
        if (before != null && then(passage, clause) && over(passage, before)) {
            return before;
        }
        if (before != null && (ahead(passage, clause, before) || everSince(passage, clause))) {
            return before;
        }
        DaySaid last = sentence.isEmpty() ? null : sentence.get(sentence.size() - 1);
        if (last != null
                && last.start() > clause.to()
                && clause.action().form() == Form.PAST
                && last.end() >= clause.sentence()[1] - 1
                && !ofLastInList(passage, last)
                && !DaysOfElse.ofWhichOnes(passage, clause, last)) {
            return last;
        }
        if (alsoThen(passage, clause)) {
            return lastBefore(passage, clause);
        }
        if (clause.action().start() >= clause.to()) {
            return closing(passage, clause); // "40 parsnips. 60 carrots. All sown on Monday."
        }
        if (clause.action().start() < clause.from()) {
            return lastBefore(passage, clause);
        }
        return heading(passage, clause.sentence()[0]);
    }

    /** "Set them out yesterday with fleece over them": a cover or a cane told without a verb was put there with the doing before it. */
    private static boolean besideIt(Passage passage, Clause clause) {
        boolean aid = clause.action().form() == null
                && Set.of("supported", "protected").contains(clause.action().action());
        return aid
                && clause.crops().isEmpty()
                && clause.from() > clause.sentence()[0]
                && IntStream.range(clause.from(), clause.to())
                        .noneMatch(at -> Set.of("now", "already", "tonight", "are", "is", "still")
                                .contains(passage.word(at)));
    }

    private static boolean over(Passage passage, DaySaid day) {
        return day.past() != null && !day.past().isAfter(passage.situation().today());
    }

    /** "Dug the spuds, garlic lifted yesterday": behind a comma the day is of what stands there alone. */
    static boolean ofLastInList(Passage passage, DaySaid day) {
        return passage.actions().stream()
                .filter(action -> action.lastWord() + 1 == day.start()
                        || action.lastWord() + 2 == day.start()
                                && passage.word(day.start() - 1).equals("on"))
                .mapToInt(action -> action.words().nextSetBit(0))
                .anyMatch(verb -> passage.crops().stream()
                        .filter(crop -> crop.end() == verb)
                        .anyMatch(crop -> behindComma(passage, crop.start())));
    }

    /** Whether no more than a number or an article stands between a comma and a crop's name. */
    private static boolean behindComma(Passage passage, int crop) {
        int at = crop - 1;
        while (Set.of("the", "my", "our", "some").contains(passage.word(at)) || passage.end("n", at) == at + 1) {
            at--;
        }
        return passage.word(at).equals(",");
    }

    /** "Chitting since last Sunday and sowed leeks yesterday": what goes on since then stands before the doing. */
    private static boolean ofWhatWentOn(Passage passage, Clause clause, DaySaid day) {
        return day.end() <= clause.action().start()
                && passage.word(day.end()).equals("and")
                && (passage.word(day.start()).equals("since")
                        || passage.word(day.start() - 1).equals("since"));
    }

    /** "He did it all on Saturday, ten sweetcorn planted, the onions watered": a day told ahead of a list is of each in it. */
    private static boolean ahead(Passage passage, Clause clause, DaySaid day) {
        int verb = clause.action().words().nextSetBit(0);
        boolean first = passage.actions().stream()
                .noneMatch(action -> action.start() >= clause.sentence()[0] && action.start() < day.start());
        return first
                && day.known()
                && !day.past().isAfter(passage.situation().today())
                && clause.action().form() == Form.PAST
                && passage.word(clause.from() - 1).equals(",")
                && clause.crops().stream().anyMatch(crop -> crop.end() == verb);
    }

    /** "Cut on Saturday, and curing ever since". */
    private static boolean everSince(Passage passage, Clause clause) {
        return !clause.action().action().equals("died") // "1 has died since": not on that day.
                && IntStream.range(clause.action().end(), clause.to())
                        .anyMatch(at -> passage.word(at).equals("since")
                                && (at + 1 >= passage.size()
                                        || passage.tokens().get(at + 1).mark()));
    }

    private static DaySaid closing(Passage passage, Clause clause) {
        int verb = clause.action().start();
        return passage.sentences().stream()
                .filter(sentence -> sentence[0] <= verb && verb < sentence[1])
                .flatMap(sentence -> Passage.within(passage.days(), sentence[0], sentence[1]).stream())
                .findFirst()
                .orElse(heading(passage, clause.sentence()[0]));
    }

    private static DaySaid lastBefore(Passage passage, Clause clause) {
        return Passage.within(passage.days(), 0, clause.from()).stream()
                .reduce((one, two) -> two)
                .orElse(null);
    }

    /** "The other two had died by then": not later than the day told before. */
    private static boolean byThen(Passage passage, Clause clause) {
        for (int at = clause.from(); at < clause.to(); at++) {
            if (passage.word(at).equals("then") && passage.word(at - 1).equals("by")) {
                return true;
            }
        }
        int first = clause.action().words().nextSetBit(0);
        boolean had = IntStream.rangeClosed(first - 1, clause.action().lastWord())
                .anyMatch(at -> passage.word(at).equals("had"));
        return had && Counted.others(passage, clause);
    }

    /** "Put up canes on Sunday, then sowed the beans": one after the other on one day. */
    private static boolean then(Passage passage, Clause clause) {
        int verb = clause.action().words().nextSetBit(0);
        for (int at = Math.max(clause.sentence()[0], clause.from() - 1); at < verb; at++) {
            if (passage.word(at).equals("then") && verb - at <= 3) {
                return clause.action().form() == Form.PAST;
            }
        }
        return clause.action().form() == Form.PAST && passage.word(verb - 1).equals("and")
                || andGave(passage, clause)
                || atOnce(passage, clause);
    }

    /** "Set them out yesterday and gave them 40 litres": the giving is the verb, though the litres tell the doing. */
    private static boolean andGave(Passage passage, Clause clause) {
        int gave = clause.action().start() - 1;
        while (Set.of("them", "it", "those", "each", "all", "the", "lot", "both")
                .contains(passage.word(gave))) {
            gave--;
        }
        return Set.of("watered", "fed").contains(clause.action().action())
                && passage.word(gave).equals("gave")
                && passage.word(gave - 1).equals("and");
    }

    /** "Planted out the tomatoes Sunday. Staked them too": what is done to them besides, told of no day of its own. */
    private static boolean alsoThen(Passage passage, Clause clause) {
        int last = clause.sentence()[1] - 1;
        return clause.action().form() == Form.PAST
                && (clause.action().start() == clause.sentence()[0]
                        || Set.of("and", "i", "we", "then")
                                .contains(passage.word(clause.action().start() - 1)))
                && Set.of("too", "also").contains(passage.word(last))
                && Set.of("them", "it", "em", "those").contains(passage.word(last - 1));
    }

    /** "… and put cloches over them straight away". */
    private static boolean atOnce(Passage passage, Clause clause) {
        for (int at = clause.action().end(); at < clause.sentence()[1]; at++) {
            String word = passage.word(at);
            if (word.equals("immediately") || AT_ONCE.contains(passage.word(at - 1) + " " + word)) {
                return true;
            }
        }
        return false;
    }

    /** "Saturday: sowed peas. Fed the toms.", "18/5 plot 14. Leeks dibbed in.": the day at the head of a sentence before. */
    private static DaySaid heading(Passage passage, int before) {
        DaySaid heading = null;
        for (int[] sentence : passage.sentences()) {
            List<DaySaid> days = Passage.within(passage.days(), sentence[0], sentence[1]);
            if (sentence[0] >= before || days.isEmpty()) {
                continue;
            }
            DaySaid first = days.get(0);
            if (first.sort() == DaySaid.Sort.UNKNOWN) {
                continue; // "Back from hols."
            }
            boolean alone =
                    Passage.within(passage.actions(), sentence[0], sentence[1]).isEmpty();
            boolean bare = alone
                    && Passage.within(passage.crops(), sentence[0], sentence[1]).isEmpty();
            if (first.start() - sentence[0] <= (bare ? LEADING_WORDS : 1)
                    && !DaysOfElse.ofAnOccasion(passage, sentence, first)
                    && (alone || marked(passage, first))) {
                heading = first;
            }
        }
        return heading;
    }

    /** The day told for one of several crops: the one after its name, before the next crop's. */
    static DaySaid said(Passage passage, Clause clause, bothy.reading.said.CropSaid crop) {
        List<DaySaid> own = Passage.within(passage.days(), clause.from(), clause.to()).stream()
                .filter(day -> !clause.inRelative(day.start()) && !ofWhatWentOn(passage, clause, day))
                .toList();
        if (crop == null || own.size() < 2 || clause.crops().size() < 2) {
            return said(passage, clause);
        }
        if (eachLed(own, clause) || DaysAhead.ofEach(passage, own, clause)) {
            return own.stream()
                    .filter(day -> day.end() <= crop.start())
                    .reduce((first, second) -> second)
                    .orElse(own.get(0));
        }
        int next = clause.crops().stream()
                .mapToInt(bothy.reading.said.CropSaid::start)
                .filter(start -> start > crop.start())
                .min()
                .orElse(clause.to());
        boolean led = own.get(0).end() <= clause.crops().get(0).start();
        return own.stream()
                .filter(day -> day.start() >= crop.end() && day.end() <= next)
                .findFirst()
                // "On Monday sowed peas, carrots on Tuesday".
                .or(() -> own.stream()
                        .filter(day -> led && day.end() <= crop.start())
                        .reduce((first, second) -> second))
                .or(() -> own.stream().filter(day -> day.start() > crop.end()).findFirst())
                .orElse(own.get(own.size() - 1));
    }

    /** "1 May 40 parsnips, 4 May 60 carrots": days that stand before their crops. */
    private static boolean eachLed(List<DaySaid> days, Clause clause) {
        int first = clause.crops().get(0).start();
        int last = clause.crops().get(clause.crops().size() - 1).start();
        boolean before = days.get(0).end() <= first && days.get(days.size() - 1).end() <= last;
        boolean verbBetween =
                clause.action().start() >= days.get(0).end() && clause.action().start() < first;
        return before && !verbBetween;
    }

    private static DaySaid nearest(Passage passage, List<DaySaid> days, Clause clause) {
        int verb = clause.action().words().nextSetBit(0);
        DaySaid heading = days.stream()
                .filter(day -> leads(passage, day, verb))
                .reduce((first, last) -> last)
                .orElse(null);
        if (days.size() > 1
                && heading != null
                && (heading.start() - clause.from() <= 1
                        || passage.tokens().get(heading.start() - 1).mark())) {
            return heading; // "15th moved the aubergines, today 28 °C in there".
        }
        return days.stream()
                .filter(day -> day.start() >= clause.action().start())
                .findFirst()
                .orElse(days.get(days.size() - 1));
    }

    /** Whether no more than who did it stands between a day and the verb: "Tuesday I fed". */
    private static boolean leads(Passage passage, DaySaid day, int verb) {
        return day.end() <= verb
                && IntStream.range(day.end(), verb).allMatch(at -> Set.of("i", "we", "have", "also", "just", "then")
                        .contains(passage.word(at)));
    }

    private static boolean heads(Passage passage, DaySaid day, int start) {
        for (int at = start; at < day.start(); at++) {
            if (passage.actions().stream().anyMatch(action -> action.words().get(day.start() - 1))) {
                return false;
            }
        }
        return day.start() - start <= 2;
    }

    private static boolean marked(Passage passage, DaySaid day) {
        return day.end() < passage.size() && List.of(":", "-", ",", "\n", ".").contains(passage.word(day.end()));
    }

    /** A statement dated, or in doubt about its day. */
    static Told dated(Told told, DaySaid day, Passage passage) {
        LocalDate today = passage.situation().today();
        if (day == null) {
            return told.with(told.event().withOn(today)).assuming("date");
        }
        String words = words(passage, day);
        if (told.event().what() == What.RAIN && passage.word(day.start() - 1).equals("since")) {
            return told.with(told.event().withOn(today)).assuming("date"); // "31 mm since Friday" is measured now.
        }
        boolean meantime =
                words.startsWith("for ") && !LASTING.contains(told.event().what());
        if (meantime || day.known() && day.past().isAfter(today) && words.startsWith("in ")) {
            return told.with(told.event().withOn(today)).assuming("date");
        }
        if (!day.known()) {
            return told.with(told.event().withOn(today)).doubting(Doubt.About.WHICH_DATE, words);
        }
        Told dated = told.with(told.event().withOn(day.past()));
        long ago = ChronoUnit.DAYS.between(day.past(), today);
        boolean stale = ago > (day.sort() == DaySaid.Sort.YEARLY ? A_SEASON : LONG_AGO);
        if (ago < 0 || stale) {
            return dated.with(dated.event().withOn(today)).doubting(Doubt.About.WHICH_DATE, words);
        }
        return day.sort() == DaySaid.Sort.ABOUT ? dated.assuming("date") : dated;
    }

    static String words(Passage passage, DaySaid day) {
        int from = passage.tokens().get(day.start()).from();
        int to = passage.tokens().get(Math.min(day.end(), passage.size()) - 1).to();
        return passage.message().substring(from, Math.min(to, passage.message().length()));
    }
}
