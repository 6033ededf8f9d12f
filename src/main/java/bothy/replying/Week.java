package bothy.replying;

import bothy.almanac.Wording;
import bothy.garden.Given;
import bothy.garden.Given.Occasion;
import bothy.garden.Inquiry;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The weekly list: what is to be done in the seven days from today, by day, the most urgent first. */
final class Week {
    private static final int DAYS = 7;
    /** A phone shows no more at a glance. */
    private static final int MOST_LINES = 8;
    /** The topic of a question for the list with nothing left out. */
    private static final String WHOLE = "whole-list";

    private static final String CROPS_HERE = "\u0001";
    private final Wording wording;
    private final Vocabulary vocabulary;
    private final Turn turn;

    Week(Wording wording, Vocabulary vocabulary, Turn turn) {
        this.wording = wording;
        this.vocabulary = vocabulary;
        this.turn = turn;
    }

    /** The advice that stands in the list. */
    List<Given> listed(List<Given> given, Inquiry inquiry) {
        LocalDate end = turn.today().plusDays(DAYS - 1);
        return given.stream()
                .filter(one -> one.occasion() == Occasion.STANDING && !one.due().isAfter(end))
                .filter(one -> inquiry.plantings().isEmpty()
                        || inquiry.plantings().stream().anyMatch(id -> id.equals(one.planting())))
                .filter(one -> todo(one).isPresent())
                .toList();
    }

    String list(List<Given> given, Inquiry inquiry) {
        Map<String, Task> tasks = new LinkedHashMap<>();
        for (Given one : listed(given, inquiry)) {
            todo(one)
                    .ifPresent(text -> tasks.merge(
                            day(one) + text,
                            new Task(
                                    day(one),
                                    text,
                                    one.neglect(),
                                    List.of(vocabulary.names().plants(one))),
                            Task::with));
        }
        if (tasks.isEmpty()) {
            return wording.talk().get(turn.garden().growing().isEmpty() ? "week-no-plantings" : "week-empty");
        }
        List<Task> urgent = tasks.values().stream()
                .sorted(Comparator.comparing(Task::neglect).thenComparing(Task::day))
                .toList();
        boolean whole = WHOLE.equals(inquiry.topic()) || urgent.size() <= MOST_LINES + 1;
        List<Task> shown = whole ? urgent : urgent.subList(0, MOST_LINES);
        StringBuilder text = new StringBuilder(wording.talk().get("week"));
        byDay(shown).forEach((day, here) -> {
            text.append("\n\n").append(heading(day));
            here.forEach(task -> text.append("\n• ")
                    .append(Phrasing.upper(task.text().replace(CROPS_HERE, Names.list(task.plantings())))));
        });
        if (shown.size() < urgent.size()) {
            text.append("\n\n").append(rest(urgent.size() - shown.size()));
        }
        return text.toString();
    }

    /**
     * One line of the list.
     *
     * @param day the day it stands under, {@link LocalDate#MAX} for any day of the week
     * @param text what is to be done, the crops left open
     * @param neglect what is lost when it is left undone
     * @param plantings what it is to be done with
     */
    private record Task(LocalDate day, String text, Given.Neglect neglect, List<String> plantings) {
        private Task with(Task other) {
            List<String> both = new ArrayList<>(plantings);
            both.addAll(other.plantings);
            return new Task(day, text, neglect.compareTo(other.neglect) <= 0 ? neglect : other.neglect, both);
        }
    }

    private static Map<LocalDate, List<Task>> byDay(List<Task> tasks) {
        return tasks.stream().collect(Collectors.groupingBy(Task::day, TreeMap::new, Collectors.toList()));
    }

    private String heading(LocalDate day) {
        return day.equals(LocalDate.MAX)
                ? wording.talk().get("week-any-day")
                : Phrasing.upper(vocabulary.quantities().nearDay(day));
    }

    private String rest(int count) {
        return wording.talk().get("week-rest").replace("{count}", String.valueOf(count));
    }

    /** What has been due and loses little by waiting is for any day of the week; what cannot wait is for today. */
    private LocalDate day(Given one) {
        if (one.due().isAfter(turn.today())) {
            return one.due();
        }
        boolean canWait = one.due().isBefore(turn.today()) && one.neglect().compareTo(Given.Neglect.CROP_LOST) > 0;
        return canWait ? LocalDate.MAX : turn.today();
    }

    /** One task as the list would say it; empty for what is no task. */
    Optional<String> line(Given given) {
        return todo(given)
                .map(text -> Phrasing.upper(
                        text.replace(CROPS_HERE, vocabulary.names().plants(given))));
    }

    private Optional<String> todo(Given given) {
        Wording.Says says = wording.says(given.id());
        if (says == null || says.in(given.crop()).todo() == null) {
            return Optional.empty();
        }
        return new Sentence(says.in(given.crop()).todo())
                .fill(name -> name.equals("crops") ? Optional.of(CROPS_HERE) : vocabulary.word(given, name));
    }
}
