package bothy;

import bothy.garden.Amendment;
import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Finding;
import bothy.garden.Given;
import bothy.garden.Logged;
import bothy.garden.SignSeen;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Compares what followed a turn with what was to follow. */
final class Expectation {
    static final Set<String> ENTRY_KEYS = new TreeSet<>(Set.of(
            "what",
            "crop",
            "date",
            "count",
            "amount",
            "unit",
            "variety",
            "place",
            "container",
            "detail",
            "planting",
            "sign",
            "finding",
            "found"));

    private Expectation() {}

    /**
     * What followed a turn.
     *
     * @param text the replies
     * @param written the diary lines added
     * @param spoken the advice given
     * @param nextLook the day to look again, {@code null} for none
     * @param asks whether the reply ends with a question
     */
    record Followed(String text, List<Logged> written, List<Given> spoken, LocalDate nextLook, boolean asks) {}

    /** Sentences that say what differed; empty when nothing did. */
    static List<String> differences(ConversationFile.Expect expect, Followed followed) {
        List<String> differences = new ArrayList<>();
        if (expect.entries() != null) {
            for (Map<String, Object> wanted : expect.entries()) {
                if (followed.written().stream()
                        .noneMatch(line -> matches(AmountExpected.inDiary(wanted), entry(line)))) {
                    differences.add("no entry " + wanted);
                }
            }
        }
        if (expect.noEntries()
                && followed.written().stream()
                        .anyMatch(line -> line.entry() instanceof Event || line.entry() instanceof Amendment)) {
            differences.add("entries where none was expected");
        }
        words(expect, followed.text(), differences);
        advice(expect, followed.spoken(), differences);
        if (expect.nextCheck() != null) {
            nextCheck(expect.nextCheck(), followed.nextLook(), differences);
        }
        if (expect.asks() != null && expect.asks() != followed.asks()) {
            differences.add(expect.asks() ? "the reply asks nothing" : "the reply asks something");
        }
        return differences;
    }

    private static Entry entry(Logged line) {
        return line.entry() instanceof Amendment amendment && amendment.instead() != null
                ? amendment.instead()
                : line.entry();
    }

    private static boolean matches(Map<String, Object> wanted, Entry entry) {
        return wanted.entrySet().stream().allMatch(part -> same(part.getValue(), value(part.getKey(), entry)));
    }

    private static Object value(String key, Entry entry) {
        if (entry instanceof SignSeen sign) {
            return switch (key) {
                case "sign" -> sign.sign();
                case "crop" -> sign.crop();
                case "planting" -> sign.planting();
                case "date" -> sign.on();
                case "count" -> sign.count();
                default -> null;
            };
        }
        if (entry instanceof Finding finding) {
            return switch (key) {
                case "finding" -> finding.about();
                case "found" -> finding.found();
                case "crop" -> finding.crop();
                case "planting" -> finding.planting();
                case "date" -> finding.on();
                default -> null;
            };
        }
        if (!(entry instanceof Event event)) {
            return null;
        }
        return switch (key) {
            case "what" -> event.what().word();
            case "crop" -> event.crop();
            case "date" -> event.on();
            case "count" -> event.count();
            case "amount" -> event.amount();
            case "unit" -> event.unit();
            case "variety" -> event.variety();
            case "place" -> event.place();
            case "container" -> event.container();
            case "detail" -> event.detail();
            case "planting" -> event.planting();
            default -> null;
        };
    }

    private static boolean same(Object wanted, Object found) {
        if (wanted instanceof Number number && found instanceof Number other) {
            return Math.abs(number.doubleValue() - other.doubleValue()) < 0.01 + Math.abs(number.doubleValue()) * 0.005;
        }
        return wanted == null ? found == null : wanted.toString().equalsIgnoreCase(Objects.toString(found, null));
    }

    private static void words(ConversationFile.Expect expect, String text, List<String> differences) {
        for (String says : expect.says() == null ? List.<String>of() : expect.says()) {
            if (!contains(text, says)) {
                differences.add("the reply does not say " + says);
            }
        }
        for (String not : expect.notSays() == null ? List.<String>of() : expect.notSays()) {
            if (contains(text, not)) {
                differences.add("the reply says " + not);
            }
        }
    }

    private static boolean contains(String text, String wanted) {
        if (wanted.length() > 2 && wanted.startsWith("/") && wanted.endsWith("/")) {
            return Pattern.compile(
                            wanted.substring(1, wanted.length() - 1), Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)
                    .matcher(text)
                    .find();
        }
        return text.toLowerCase(Locale.ROOT).contains(wanted.toLowerCase(Locale.ROOT));
    }

    private static void advice(ConversationFile.Expect expect, List<Given> spoken, List<String> differences) {
        List<String> ids = spoken.stream().map(Given::id).toList();
        for (String id : expect.advice() == null ? List.<String>of() : expect.advice()) {
            if (!ids.contains(id)) {
                differences.add("no advice " + id);
            }
        }
        for (String id : expect.notAdvice() == null ? List.<String>of() : expect.notAdvice()) {
            if (ids.contains(id)) {
                differences.add("advice " + id);
            }
        }
    }

    private static void nextCheck(JsonNode wanted, LocalDate found, List<String> differences) {
        LocalDate from = LocalDate.parse(wanted.isObject() ? wanted.path("from").asText() : wanted.asText());
        LocalDate to = LocalDate.parse(wanted.isObject() ? wanted.path("to").asText() : wanted.asText());
        if (found == null || found.isBefore(from) || found.isAfter(to)) {
            differences.add("next check " + found + ", not " + (from.equals(to) ? from : from + " to " + to));
        }
    }
}
