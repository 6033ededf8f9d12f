package bothy.reading;

import bothy.garden.Event;
import bothy.garden.Heard;
import bothy.garden.Situation;
import bothy.garden.Statement;
import bothy.garden.Units;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;

/** How right reading is on a corpus, by sort of message, with what was read wrong. */
final class Score {
    private final TreeMap<String, int[]> counts = new TreeMap<>();
    private final List<String> wrong = new ArrayList<>();
    private final TreeMap<String, int[]> calibration = new TreeMap<>();
    private int wrongSure;
    private int messages;
    private int datesRight;
    private int dates;
    private int falseEntries;

    Score(Corpus corpus, Reading reading) {
        Vocabulary vocabulary = new Vocabulary(reading);
        for (Corpus.Labelled message : corpus.messages()) {
            Heard heard = reading.understood(message.say(), message.situation());
            score(message, heard, vocabulary);
        }
    }

    private void score(Corpus.Labelled message, Heard heard, Vocabulary vocabulary) {
        messages++;
        List<String> found =
                new ArrayList<>(heard.statements().stream().map(Score::word).toList());
        List<String> expected = message.entries().stream()
                .map(entry -> full(entry, message.situation()))
                .toList();
        boolean entriesRight = entriesRight(message, heard, found, expected);
        count(sort(message), entriesRight && othersRight(message, heard, vocabulary));
        if (!message.entries().isEmpty()) {
            count("= entries", entriesRight);
            dates(expected, found);
        }
        if (message.nothing()) {
            count("= not entries", found.isEmpty());
            falseEntries += found.isEmpty() ? 0 : 1;
        }
        if (!message.asks().isEmpty()) {
            count("= questions", asksRight(message, heard));
        }
        if (!message.signs().isEmpty()) {
            count("= signs", signsRight(message, heard, vocabulary));
        }
        if (!message.loose()) {
            heard.statements().forEach(one -> calibrate(one, expected));
        }
        boolean wronglySure =
                heard.statements().stream().anyMatch(one -> one.sure() && wrongly(one, message, expected));
        wrongSure += wronglySure ? 1 : 0;
        if (!entriesRight || !othersRight(message, heard, vocabulary)) {
            wrong.add((wronglySure ? "WRONG AND SURE: " : "") + message.say() + "\n      wanted " + expected
                    + message.asks() + message.signs()
                    + message.settings() + (message.unsure() ? " unsure" : "")
                    + "\n      found  " + found
                    + heard.inquiries().stream()
                            .filter(ask -> !ask.onlyTold())
                            .map(ask -> ask.question().word())
                            .toList()
                    + signs(heard, vocabulary)
                    + heard.settings()
                    + (heard.doubt() == null ? "" : " " + heard.doubt().about())
                    + (heard.corrects() ? " corrects" : ""));
        }
    }

    /** How often a statement is right, by how much it took for granted. */
    private void calibrate(Statement one, List<String> expected) {
        List<String> granted =
                one.assumed().stream().filter(part -> !part.equals("date")).toList();
        String how = !one.sure() ? "asked back" : granted.isEmpty() ? "sure, as told" : "sure, " + granted + " assumed";
        int[] count = calibration.computeIfAbsent(how, first -> new int[2]);
        count[0] += expected.contains(word(one)) ? 1 : 0;
        count[1]++;
    }

    private static boolean wrongly(Statement one, Corpus.Labelled message, List<String> expected) {
        return !message.loose() && !expected.contains(word(one));
    }

    private static boolean entriesRight(
            Corpus.Labelled message, Heard heard, List<String> found, List<String> expected) {
        if (message.unsure()) {
            return heard.doubt() != null
                    && heard.statements().stream().noneMatch(one -> one.sure() && !expected.contains(word(one)));
        }
        if (message.loose()) {
            return expected.stream().allMatch(entry -> found.stream().anyMatch(one -> one.startsWith(firstTwo(entry))));
        }
        return sorted(found).equals(sorted(expected))
                && heard.statements().stream().allMatch(Statement::sure);
    }

    private static String firstTwo(String entry) {
        String[] parts = entry.split(" ");
        return parts[0] + " " + parts[1];
    }

    private boolean othersRight(Corpus.Labelled message, Heard heard, Vocabulary vocabulary) {
        boolean settings = heard.settings().stream()
                .map(set -> set.setting() + "=" + set.value())
                .toList()
                .containsAll(message.settings());
        return asksRight(message, heard)
                && signsRight(message, heard, vocabulary)
                && settings
                && heard.corrects() == message.corrects();
    }

    private static boolean asksRight(Corpus.Labelled message, Heard heard) {
        List<String> found = heard.inquiries().stream()
                .filter(ask -> !ask.onlyTold())
                .map(ask -> ask.question().word())
                .distinct()
                .toList();
        return message.looseAsks() ? !found.isEmpty() : sorted(found).equals(sorted(message.asks()));
    }

    private static boolean signsRight(Corpus.Labelled message, Heard heard, Vocabulary vocabulary) {
        Set<String> found = signs(heard, vocabulary);
        return found.containsAll(message.signs())
                && heard.signs().size() <= message.signs().size();
    }

    @SuppressWarnings("unchecked")
    private static Set<String> signs(Heard heard, Vocabulary vocabulary) {
        return Set.copyOf((List<String>) vocabulary.object(null, heard).get("signs"));
    }

    private void dates(List<String> expected, List<String> found) {
        for (String entry : expected) {
            dates++;
            String what = firstTwo(entry);
            String date = entry.split(" ")[3];
            datesRight +=
                    found.stream().anyMatch(one -> one.startsWith(what) && one.split(" ")[3].equals(date)) ? 1 : 0;
        }
    }

    private static String sort(Corpus.Labelled message) {
        int sorts = (message.entries().isEmpty() ? 0 : 1)
                + (message.asks().isEmpty() ? 0 : 1)
                + (message.signs().isEmpty() ? 0 : 1);
        return message.nothing()
                ? "not an entry"
                : message.corrects()
                        ? "correction"
                        : sorts > 1
                                ? "mixed"
                                : !message.entries().isEmpty()
                                        ? message.unsure() ? "to ask back" : "entry"
                                        : !message.asks().isEmpty()
                                                ? "question"
                                                : !message.signs().isEmpty() ? "trouble" : "setting";
    }

    private void count(String sort, boolean right) {
        int[] count = counts.computeIfAbsent(sort, first -> new int[2]);
        count[0] += right ? 1 : 0;
        count[1]++;
    }

    /** What, crop, count, day and amount, each "-" when not told. */
    private static String word(Statement statement) {
        Event event = statement.event();
        String amount = event.amount() == null ? "-" : LabelledAmount.rounded(event.amount()) + event.unit();
        return event.what().word() + " " + or(event.crop()) + " " + or(event.count()) + " " + event.on() + " " + amount;
    }

    private static String full(String entry, Situation situation) {
        LocalDate today = situation.today();
        String[] parts = entry.split(" ");
        boolean ofYear = parts.length > 3 && parts[3].length() > "05-19".length(); // "2026-10-31".
        String day = ofYear ? parts[3] : parts.length > 3 ? today.getYear() + "-" + parts[3] : today.toString();
        return parts[0] + " " + parts[1] + " " + (parts.length > 2 ? parts[2] : "-") + " " + day + " "
                + (parts.length > 4
                        ? LabelledAmount.inTheDiarysUnit(
                                parts[4], situation.grower().units() == Units.US)
                        : "-");
    }

    private static String or(Object part) {
        return part == null ? "-" : part.toString();
    }

    private static List<String> sorted(List<String> list) {
        return list.stream().sorted().toList();
    }

    double share(String sort) {
        int[] count = counts.getOrDefault(sort, new int[] {0, 0});
        return count[1] == 0 ? 1 : (double) count[0] / count[1];
    }

    int falseEntries() {
        return falseEntries;
    }

    double wrongSure() {
        return (double) wrongSure / messages;
    }

    double dates() {
        return dates == 0 ? 1 : (double) datesRight / dates;
    }

    List<String> wrong() {
        return wrong;
    }

    String table(String title) {
        StringBuilder table = new StringBuilder(title + ": " + messages + " messages\n");
        counts.forEach((sort, count) -> table.append(String.format(
                Locale.ROOT, "  %-14s %4d of %4d  %5.1f %%%n", sort, count[0], count[1], 100.0 * count[0] / count[1])));
        table.append(String.format(
                Locale.ROOT, "  %-14s %4d of %4d  %5.1f %%%n", "= dates", datesRight, dates, 100 * dates()));
        calibration.forEach((how, count) -> table.append(String.format(
                Locale.ROOT,
                "  right when %-28s %4d of %4d  %5.1f %%%n",
                how,
                count[0],
                count[1],
                100.0 * count[0] / count[1])));
        table.append(String.format(
                Locale.ROOT, "  wrong entries taken as sure: %d messages, %.2f %%%n", wrongSure, 100 * wrongSure()));
        return table.toString();
    }
}
