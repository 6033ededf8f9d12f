package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.SettingChange;
import bothy.reading.said.DaySaid;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseFile;
import bothy.reading.text.Token;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds what a grower asks to be reminded of: "remind me tomorrow", "remind me to feed the toms on Friday at 6", "remind me every other day
 * to water". The day comes as {@code remindOn}, followed where they are told by {@code remindAt}, {@code remindEvery} and, in the grower's
 * own words, {@code remindOf}.
 */
final class RemindersAsked {
    private static final String FILE = "reminders";

    private static final Map<String, Integer> SEASONS =
            Map.of("spring", 3, "summer", 6, "autumn", 9, "fall", 9, "winter", 12);
    private static final int HALF_A_YEAR = 6;

    private final PhraseBook<String> onADay;
    private final PhraseBook<String> toDo;
    private final PhraseBook<String> noMore;
    private final PhraseBook<Integer> every = new PhraseBook<>();
    private final PhraseBook<LocalTime> hours = new PhraseBook<>();
    private final Set<String> openings;
    private final Set<String> besides;
    private final Set<String> verbs;
    private final Set<String> hangs;

    RemindersAsked(Words words) {
        PhraseFile file = new PhraseFile(words, FILE, Map.of());
        onADay = file.book("/remind", "");
        toDo = file.book("/remind-to", "");
        noMore = file.book("/remind-no-more", "");
        words.names(FILE, "/every").forEach(days -> file.into(every, "/every/" + days, Integer.valueOf(days)));
        words.names(FILE, "/hours").forEach(hour -> file.into(hours, "/hours/" + hour, LocalTime.parse(hour)));
        openings = Set.copyOf(words.list(FILE, "/remind-openings"));
        besides = Set.copyOf(words.list(FILE, "/remind-besides"));
        verbs = Set.copyOf(words.list(FILE, "/remind-verbs"));
        hangs = Set.copyOf(words.list(FILE, "/remind-hangs"));
    }

    Set<String> vocabulary() {
        Set<String> all = new HashSet<>(onADay.vocabulary());
        List.of(toDo, noMore, every, hours).forEach(book -> all.addAll(book.vocabulary()));
        return all;
    }

    /**
     * The reminder asked for in a sentence; empty for none.
     *
     * @param day the first day told in it that is not past
     * @param times the hours told in it
     */
    List<SettingChange> in(Passage passage, int[] sentence, Optional<LocalDate> day, List<LocalTime> times) {
        if (said(noMore, passage, sentence)) {
            return List.of(
                    new SettingChange("remindNoMore", own(passage, sentence).orElse("")));
        }
        boolean asked = said(onADay, passage, sentence);
        boolean of = said(toDo, passage, sentence);
        if (!asked && !of) {
            return List.of();
        }
        OptionalInt often = often(passage, sentence);
        Optional<LocalTime> hour = hour(passage, sentence, times);
        Optional<LocalDate> first = day.map(told -> ahead(passage, sentence, told))
                .or(() -> firstOfMonth(passage, sentence))
                .or(() -> firstOfSeason(passage, sentence))
                .or(() -> of && !hangs(passage, sentence)
                        ? Optional.of(unlessTold(passage, often, hour))
                        : Optional.empty());
        List<SettingChange> told = new ArrayList<>();
        first.ifPresent(on -> {
            told.add(new SettingChange("remindOn", on.toString()));
            hour.ifPresent(at -> told.add(new SettingChange("remindAt", at.toString())));
            often.ifPresent(days -> told.add(new SettingChange("remindEvery", String.valueOf(days))));
            own(passage, sentence).ifPresent(words -> told.add(new SettingChange("remindOf", words)));
        });
        return told;
    }

    /** The hour told by the clock, else that of a time of the day. */
    Optional<LocalTime> hour(Passage passage, int[] sentence, List<LocalTime> times) {
        return times.stream().findFirst().or(() -> first(hours, passage, sentence));
    }

    /** "Remind me to cover them if frost is coming" names no day; what hangs on the weather or the plants is said when it is there. */
    private boolean hangs(Passage passage, int[] sentence) {
        return IntStream.range(sentence[0], sentence[1]).anyMatch(at -> hangs.contains(passage.word(at)));
    }

    /** Where a reminder is asked for in a sentence; its end where none is. */
    int begins(Passage passage, int[] sentence, List<SettingChange> told) {
        return told.stream().noneMatch(one -> one.setting().equals("remindOn"))
                ? sentence[1]
                : IntStream.range(sentence[0], sentence[1])
                        .filter(at -> verbs.contains(passage.word(at)))
                        .findFirst()
                        .orElse(sentence[1]);
    }

    /**
     * The part of a sentence in which the day of the reminder is looked for: "ate the last one today, remind me in March" is for March,
     * "on Friday remind me" for Friday.
     */
    int[] from(Passage passage, int[] sentence) {
        int verb = IntStream.range(sentence[0], sentence[1])
                .filter(at -> verbs.contains(passage.word(at)))
                .findFirst()
                .orElse(sentence[0]);
        return Passage.within(passage.days(), verb, sentence[1]).isEmpty() ? sentence : new int[] {verb, sentence[1]};
    }

    /** Where no day is told: from today where an hour is and it recurs, else tomorrow, or as many days on as it is to recur. */
    private static LocalDate unlessTold(Passage passage, OptionalInt often, Optional<LocalTime> hour) {
        LocalDate today = passage.situation().today();
        return hour.isPresent() && often.isPresent() ? today : today.plusDays(often.orElse(1));
    }

    private static boolean said(PhraseBook<String> book, Passage passage, int[] sentence) {
        return first(book, passage, sentence).isPresent();
    }

    private static <T> Optional<T> first(PhraseBook<T> book, Passage passage, int[] sentence) {
        return book.find(passage.tokens(), sentence[0], sentence[1], passage).stream()
                .map(PhraseBook.Found::meaning)
                .findFirst();
    }

    private OptionalInt often(Passage passage, int[] sentence) {
        for (int at = sentence[0]; at + 2 < sentence[1]; at++) {
            boolean counted = Set.of("every", "each").contains(passage.word(at))
                    && passage.word(at + 1).matches("\\d{1,2}")
                    && passage.word(at + 2).matches("days?|weeks?");
            if (counted) {
                int count = Integer.parseInt(passage.word(at + 1));
                return OptionalInt.of(Math.max(1, passage.word(at + 2).startsWith("week") ? 7 * count : count));
            }
        }
        return first(every, passage, sentence).map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    /** "Remind me on Friday", said on a Friday, is a week ahead. */
    private static LocalDate ahead(Passage passage, int[] sentence, LocalDate day) {
        boolean named = IntStream.range(sentence[0], sentence[1]).anyMatch(at -> passage.word(at)
                .equals(day.getDayOfWeek().name().toLowerCase(Locale.ROOT)));
        return named && day.equals(passage.situation().today()) ? day.plusWeeks(1) : day;
    }

    /** "Remind me in February": on the first of the month that comes. */
    private static Optional<LocalDate> firstOfMonth(Passage passage, int[] sentence) {
        LocalDate today = passage.situation().today();
        return Passage.within(passage.days(), sentence[0], sentence[1]).stream()
                .filter(said -> said.sort() == DaySaid.Sort.UNKNOWN)
                .map(said -> passage.word(said.end() - 1).toUpperCase(Locale.ROOT))
                .flatMap(word -> Stream.of(Month.values())
                        .filter(month -> word.length() >= 3 && month.name().startsWith(word)))
                .map(month -> today.withDayOfMonth(1).withMonth(month.getValue()))
                .map(first -> first.isAfter(today) ? first : first.plusYears(1))
                .findFirst();
    }

    /** "Remind me next spring": on the first day of the season that comes, there where the grower is. */
    private static Optional<LocalDate> firstOfSeason(Passage passage, int[] sentence) {
        LocalDate today = passage.situation().today();
        Double latitude = passage.situation().grower().latitude();
        int turned = latitude != null && latitude < 0 ? HALF_A_YEAR : 0;
        return IntStream.range(sentence[0] + 1, sentence[1])
                .filter(at -> season(passage, at))
                .mapToObj(at -> today.withDayOfMonth(1)
                        .withMonth(SEASONS.get(passage.word(at)))
                        .plusMonths(turned))
                .map(first -> first.isAfter(today.plusYears(1)) ? first.minusYears(1) : first)
                .map(first -> first.isAfter(today) ? first : first.plusYears(1))
                .findFirst();
    }

    private static boolean season(Passage passage, int at) {
        return SEASONS.containsKey(passage.word(at))
                && Set.of("next", "in", "this", "the").contains(passage.word(at - 1));
    }

    /** What is to be done, in the grower's own words: all but the asking, the day, the hour and what is said for politeness. */
    private Optional<String> own(Passage passage, int[] sentence) {
        boolean[] spent = new boolean[passage.size()];
        int begin = sentence[0];
        for (int at = sentence[0]; at < sentence[1]; at++) {
            if (openings.contains(passage.word(at))) {
                begin = at + 1;
                break;
            }
        }
        Passage.within(passage.days(), begin, sentence[1]).forEach(day -> spend(spent, day.start(), day.end()));
        IntStream.range(Math.max(begin, 1), sentence[1])
                .filter(at -> season(passage, at))
                .forEach(at -> spend(spent, at - 1, at + 1));
        every.find(passage.tokens(), begin, sentence[1], passage)
                .forEach(found -> spend(spent, found.start(), found.end()));
        hours.find(passage.tokens(), begin, sentence[1], passage)
                .forEach(found -> spend(spent, found.start(), found.end()));
        for (int at = begin; at < sentence[1]; at++) {
            Token token = passage.tokens().get(at);
            String word = passage.message().substring(token.from(), token.to()).toLowerCase(Locale.ROOT);
            boolean clock = word.matches("\\d{1,2}([:.]\\d\\d)?\\s*(am|pm)?")
                    && at > begin
                    && Set.of("at", "by", "around", "about").contains(passage.word(at - 1));
            boolean counted = passage.word(at).matches("every|each")
                    && at + 2 < sentence[1]
                    && passage.word(at + 2).matches("days?|weeks?");
            if (clock) {
                spend(spent, at - 1, at + 1);
            } else if (counted) {
                spend(spent, at, at + 3);
            } else if (at > begin && word.matches("am|pm") && spent[at - 1]) {
                spent[at] = true;
            }
        }
        List<Integer> kept = IntStream.range(begin, sentence[1])
                .filter(at -> !spent[at])
                .boxed()
                .collect(java.util.stream.Collectors.toCollection(ArrayList::new));
        while (!kept.isEmpty() && (besides(passage, kept.get(0)) || shortTo(passage, kept))) {
            kept.remove(0);
        }
        while (!kept.isEmpty() && besides(passage, kept.get(kept.size() - 1))) {
            kept.remove(kept.size() - 1);
        }
        return kept.isEmpty() ? Optional.empty() : Optional.of(text(passage, kept));
    }

    /** "Remind me in June 2 put leeks out". */
    private static boolean shortTo(Passage passage, List<Integer> kept) {
        return passage.word(kept.get(0)).equals("2")
                && kept.size() > 1
                && passage.crops().stream().noneMatch(crop -> crop.start() == kept.get(1));
    }

    private static void spend(boolean[] spent, int from, int to) {
        java.util.Arrays.fill(spent, from, to, true);
    }

    private boolean besides(Passage passage, int at) {
        return passage.tokens().get(at).mark() || besides.contains(passage.word(at));
    }

    /** As it was written, without what was left out. */
    private static String text(Passage passage, List<Integer> kept) {
        StringBuilder text = new StringBuilder();
        for (int at : kept) {
            Token token = passage.tokens().get(at);
            boolean apart = text.length() > 0
                    && token.from() > passage.tokens().get(at - 1).to();
            text.append(apart ? " " : "").append(passage.message(), token.from(), token.to());
        }
        return text.toString();
    }
}
