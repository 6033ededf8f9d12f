package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.SettingChange;
import bothy.reading.said.DaySaid;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseFile;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds when a grower wants to hear something unasked: "only Sundays", "remind me tomorrow", "away until the 5th", "stop messages". */
final class ReminderWishes {
    private static final Set<String> UP_TO = Set.of("to", "till", "til", "until", "through", "-", "–");

    private static final Set<String> AHEAD = Set.of(
            "will",
            "going",
            "from",
            "until",
            "till",
            "next",
            "tomorrow",
            "leaving",
            "off",
            "be",
            "while",
            "shall",
            "soon",
            "am",
            "go",
            "heading");

    private static final String FILE = "reminders";
    private static final Pattern TIME = Pattern.compile(
            "\\b(?:(?=\\d{1,2}(?:[:.]\\d{2})?\\s*(?:am|pm)\\b)|(?:at|from|before|after|between|to|until|till|and|than|[-–])\\s*)(\\d{1,2})(?:[:.](\\d{2}))?\\s*(am|pm|o'clock|h)?(?![\\d./]|\\s*(?:st|nd|rd|th|days?|weeks?)\\b)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern FOR = Pattern.compile(
            "\\b(?:for|gone|away)\\s+(?:the\\s+(?:next\\s+)?)?(a|an|one|two|three|four|five|six|ten|\\d{1,2})?\\s*(day|night|week|fortnight|month)s?\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Map<String, Integer> COUNTS =
            Map.of("a", 1, "an", 1, "one", 1, "two", 2, "three", 3, "four", 4, "five", 5, "six", 6, "ten", 10);

    private static final Set<String> OF_MESSAGES = Set.of("reminders", "listDay", "quiet", "remindOn", "remindNoMore");

    private final PhraseBook<String> modes = new PhraseBook<>();
    private final Map<String, PhraseBook<String>> books;
    private final RemindersAsked reminders;

    ReminderWishes(Words words) {
        PhraseFile file = new PhraseFile(words, FILE, Map.of());
        reminders = new RemindersAsked(words);
        words.names(FILE, "/modes").forEach(mode -> file.into(modes, "/modes/" + mode, mode));
        books = Map.of(
                "only-on", file.book("/only-on", ""),
                "list-on", file.book("/list-on", ""),
                "away", file.book("/away", ""),
                "away-for", file.book("/away-for", ""),
                "been-away", file.book("/been-away", ""),
                "back", file.book("/back", ""),
                "quiet", file.book("/quiet", ""),
                "within", file.book("/within", ""),
                "weekend-only", file.book("/weekend-only", ""));
    }

    Set<String> vocabulary() {
        Set<String> all = new HashSet<>(modes.vocabulary());
        books.values().forEach(book -> all.addAll(book.vocabulary()));
        all.addAll(reminders.vocabulary());
        return all;
    }

    /** Whether a setting is about messages unasked: "can you nudge me to feed them on Friday?" asks nothing of feeding. */
    static boolean ofMessages(SettingChange change) {
        return OF_MESSAGES.contains(change.setting());
    }

    RemindersAsked reminders() {
        return reminders;
    }

    /** The wishes told in a sentence. */
    List<SettingChange> in(Passage passage, int[] sentence) {
        Optional<LocalDate> day = day(passage, sentence);
        List<LocalTime> times = times(text(passage, sentence));
        if (said("only-on", passage, sentence) && day.isPresent()) {
            return list(day.get(), reminders.hour(passage, sentence, times), true);
        }
        List<SettingChange> reminder =
                reminders.in(passage, sentence, day(passage, reminders.from(passage, sentence)), times);
        if (!reminder.isEmpty()) {
            return reminder;
        }
        if (said("away", passage, sentence) && day.isPresent() && noCrop(passage, sentence)) {
            // "From the 3rd to the 17th": the later day is that of the return.
            LocalDate last = days(passage, sentence)
                    .reduce((first, later) -> later.isAfter(first) ? later : first)
                    .orElseThrow();
            LocalDate until = upTo(passage, sentence, last);
            return List.of(new SettingChange("awayUntil", until.toString()));
        }
        if (said("list-on", passage, sentence) && day.isPresent()) {
            return list(day.get(), reminders.hour(passage, sentence, times), false);
        }
        return withoutDay(
                passage, sentence, times, day.orElse(passage.situation().today()));
    }

    /** "August 19 to 30": the day of the month behind the last day told. */
    private static LocalDate upTo(Passage passage, int[] sentence, LocalDate last) {
        return Passage.within(passage.days(), sentence[0], sentence[1]).stream()
                .filter(day -> last.equals(day.future()))
                .flatMap(day -> IntStream.range(day.start() + 1, Math.min(day.end() + 2, sentence[1]))
                        .filter(at -> UP_TO.contains(passage.word(at - 1)))
                        .mapToObj(at -> passage.tokens().get(at).number()))
                .filter(number -> number > last.getDayOfMonth() && number <= last.lengthOfMonth())
                .map(number -> last.withDayOfMonth(number.intValue()))
                .findFirst()
                .orElse(last);
    }

    /** "Away ten days; the celery is stringy": whoever tells how things stand is back. */
    static boolean over(Passage passage, SettingChange told) {
        return told.setting().equals("awayUntil") && passage.words().stream().noneMatch(AHEAD::contains);
    }

    /** @param from the day from which a span told lasts ("away from Saturday for ten days") */
    private List<SettingChange> withoutDay(Passage passage, int[] sentence, List<LocalTime> times, LocalDate from) {
        LocalDate today = passage.situation().today();
        Optional<LocalDate> end = lasting(text(passage, sentence), from);
        var mode = modes.find(passage.tokens(), sentence[0], sentence[1], passage);
        boolean silent = !mode.isEmpty() && mode.get(0).meaning().equals("none");
        // "Went away for a week" is over.
        boolean away = said("away-for", passage, sentence)
                && !said("been-away", passage, sentence)
                && !ofTheWeather(passage, sentence);
        if ((silent || away) && end.isPresent()) {
            // "Stop messages for a month" is no wish to be left alone for good.
            return List.of(new SettingChange("awayUntil", end.get().toString()));
        }
        List<SettingChange> told = new ArrayList<>();
        if (!mode.isEmpty()) {
            told.add(new SettingChange("reminders", mode.get(0).meaning()));
        }
        if (said("weekend-only", passage, sentence)) {
            told.clear();
            told.add(new SettingChange("reminders", "weekly"));
            told.add(new SettingChange("listDay", "saturday"));
        }
        boolean within = said("within", passage, sentence);
        if ((within || said("quiet", passage, sentence)) && !times.isEmpty()) {
            told.add(new SettingChange("quiet", quiet(text(passage, sentence), times, within)));
        }
        if (!told.isEmpty()) {
            return told;
        }
        boolean brief = sentence[1] - sentence[0] <= 6;
        return brief && said("back", passage, sentence)
                ? List.of(new SettingChange("awayUntil", today.toString()))
                : List.of();
    }

    /** "It is going to be 35 for a week" tells of the weather, not of a journey. */
    private static boolean ofTheWeather(Passage passage, int[] sentence) {
        boolean weather = false;
        for (int at = sentence[0]; at + 2 < sentence[1]; at++) {
            weather |= passage.word(at).equals("going")
                    && passage.word(at + 1).equals("to")
                    && Set.of("be", "get", "stay", "rain", "snow", "freeze").contains(passage.word(at + 2));
        }
        return weather && !passage.words().contains("away") && !passage.words().contains("holiday");
    }

    private boolean said(String book, Passage passage, int[] sentence) {
        return !books.get(book)
                .find(passage.tokens(), sentence[0], sentence[1], passage)
                .isEmpty();
    }

    /** "The tomatoes were away until 3 May" tells of tomatoes. */
    private static boolean noCrop(Passage passage, int[] sentence) {
        return Passage.within(passage.crops(), sentence[0], sentence[1]).isEmpty();
    }

    private static Optional<LocalDate> day(Passage passage, int[] sentence) {
        return days(passage, sentence).findFirst();
    }

    private static Stream<LocalDate> days(Passage passage, int[] sentence) {
        return Passage.within(passage.days(), sentence[0], sentence[1]).stream()
                .map(DaySaid::future)
                .filter(day -> day != null && !day.isBefore(passage.situation().today()));
    }

    private static List<SettingChange> list(LocalDate day, Optional<LocalTime> hour, boolean only) {
        List<SettingChange> told = new ArrayList<>();
        if (only) {
            told.add(new SettingChange("reminders", "weekly"));
        }
        told.add(new SettingChange("listDay", day.getDayOfWeek().name().toLowerCase(Locale.ROOT)));
        hour.ifPresent(time -> told.add(new SettingChange("listTime", time.toString())));
        return told;
    }

    private static List<LocalTime> times(String words) {
        List<LocalTime> times = new ArrayList<>();
        Matcher found = TIME.matcher(words);
        while (found.find()) {
            int hour = Integer.parseInt(found.group(1));
            int minute = found.group(2) == null ? 0 : Integer.parseInt(found.group(2));
            hour = "pm".equalsIgnoreCase(found.group(3)) && hour < 12 ? hour + 12 : hour;
            if (hour < 24 && minute < 60) {
                times.add(LocalTime.of(hour, minute));
            }
        }
        return times;
    }

    /**
     * "Between 21 and 7", "not before 9", "nothing after 9 pm": as "21:00-07:00"; what is not told keeps its usual hour.
     *
     * @param within whether the hours told are those in which the grower wants to be written to: "only between 9 and 5"
     */
    private static String quiet(String words, List<LocalTime> times, boolean within) {
        LocalTime first = times.get(0);
        if (times.size() > 1) {
            LocalTime last = times.get(1);
            LocalTime evening = within && last.isBefore(first) ? last.plusHours(12) : last;
            return within ? evening + "-" + first : first + "-" + last;
        }
        boolean morning = within
                != Pattern.compile("\\b(before|earlier)\\b", Pattern.CASE_INSENSITIVE)
                        .matcher(words)
                        .find();
        LocalTime evening = first.getHour() < 12 ? first.plusHours(12) : first;
        return morning ? "20:00-" + first : evening + "-08:00";
    }

    private static Optional<LocalDate> lasting(String words, LocalDate today) {
        Matcher found = FOR.matcher(words);
        if (!found.find()) {
            return Optional.empty();
        }
        String count = found.group(1) == null ? "one" : found.group(1).toLowerCase(Locale.ROOT);
        int number = COUNTS.containsKey(count) ? COUNTS.get(count) : Integer.parseInt(count);
        return Optional.of(
                switch (found.group(2).toLowerCase(Locale.ROOT)) {
                    case "day", "night" -> today.plusDays(number);
                    case "week" -> today.plusWeeks(number);
                    case "fortnight" -> today.plusWeeks(2L * number);
                    default -> today.plusMonths(number);
                });
    }

    private static String text(Passage passage, int[] sentence) {
        int from = passage.tokens().get(sentence[0]).from();
        int to = passage.tokens().get(sentence[1] - 1).to();
        return passage.message().substring(from, Math.min(to, passage.message().length()));
    }
}
