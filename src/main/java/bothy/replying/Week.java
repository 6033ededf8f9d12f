package bothy.replying;

import bothy.almanac.Wording;
import bothy.garden.Given;
import bothy.garden.Given.Occasion;
import bothy.garden.Inquiry;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The weekly list: what is to be done in the seven days from today, by day, the most urgent first. */
final class Week {
    private static final int DAYS = 7;
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
                .filter(one ->
                        inquiry.plantings().isEmpty() || inquiry.plantings().contains(one.planting()))
                .filter(one -> todo(one).isPresent())
                .toList();
    }

    String list(List<Given> given, Inquiry inquiry) {
        Map<LocalDate, Map<String, List<String>>> days = new TreeMap<>();
        for (Given one : listed(given, inquiry)) {
            todo(one).ifPresent(text -> days.computeIfAbsent(day(one), key -> new LinkedHashMap<>())
                    .computeIfAbsent(text, key -> new ArrayList<>())
                    .add(one.planting() == null ? "" : vocabulary.names().planting(one.planting())));
        }
        if (days.isEmpty()) {
            return wording.talk().get(turn.garden().growing().isEmpty() ? "week-no-plantings" : "week-empty");
        }
        StringBuilder text = new StringBuilder(wording.talk().get("week"));
        days.forEach((day, tasks) -> {
            text.append("\n\n").append(Phrasing.upper(vocabulary.quantities().nearDay(day)));
            tasks.forEach((task, plantings) ->
                    text.append("\n• ").append(Phrasing.upper(task.replace(CROPS_HERE, Names.list(plantings)))));
        });
        return text.toString();
    }

    private LocalDate day(Given one) {
        return one.due().isBefore(turn.today()) ? turn.today() : one.due();
    }

    /** One task as the list would say it; empty for what is no task. */
    Optional<String> line(Given given) {
        String planting = given.planting() == null ? "" : vocabulary.names().planting(given.planting());
        return todo(given).map(text -> Phrasing.upper(text.replace(CROPS_HERE, planting)));
    }

    private Optional<String> todo(Given given) {
        Wording.Says says = wording.advice().get(given.id());
        if (says == null || says.in(given.crop()).todo() == null) {
            return Optional.empty();
        }
        return new Sentence(says.in(given.crop()).todo())
                .fill(name -> name.equals("crops") ? Optional.of(CROPS_HERE) : vocabulary.word(given, name));
    }
}
