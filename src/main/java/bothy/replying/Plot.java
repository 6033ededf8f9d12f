package bothy.replying;

import bothy.almanac.Wording;
import bothy.garden.Given;
import bothy.garden.Given.Occasion;
import bothy.garden.Inquiry;
import bothy.garden.Planting;
import bothy.garden.Stage;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How the plot stands: a line for each planting with its stage, its age and what comes next. */
final class Plot {
    private final Wording wording;
    private final Vocabulary vocabulary;
    private final Turn turn;

    Plot(Wording wording, Vocabulary vocabulary, Turn turn) {
        this.wording = wording;
        this.vocabulary = vocabulary;
        this.turn = turn;
    }

    String list(List<Given> given, Inquiry inquiry) {
        return standing(given, inquiry)
                .map(lines -> wording.talk().get("plot") + "\n" + lines)
                .orElseGet(() -> wording.talk().get("plot-empty"));
    }

    /** A line for each planting asked about; empty when none grows. */
    Optional<String> standing(List<Given> given, Inquiry inquiry) {
        List<String> lines = new ArrayList<>();
        for (Planting planting : turn.garden().growing()) {
            boolean asked = inquiry.plantings().isEmpty() && inquiry.crop() == null
                    || inquiry.plantings().contains(planting.id())
                    || planting.crop().equals(inquiry.crop());
            if (asked && turn.stages().get(planting.id()) != Stage.OVER) {
                lines.add("• " + Phrasing.upper(line(planting, given)));
            }
        }
        return lines.isEmpty() ? Optional.empty() : Optional.of(String.join("\n", lines));
    }

    private String line(Planting planting, List<Given> given) {
        Map<String, String> words = new HashMap<>();
        words.put("crops", vocabulary.names().planting(planting.id()));
        Integer count = planting.count() == null ? planting.sown() : planting.count();
        if (count != null) {
            words.put("count", count.toString());
        }
        Stage stage = turn.stages().get(planting.id());
        if (stage != null) {
            words.put("stage", vocabulary.stage(stage, planting.id()));
        }
        if (planting.begun() != null && planting.begun().isBefore(turn.today())) {
            words.put("days", String.valueOf(ChronoUnit.DAYS.between(planting.begun(), turn.today())));
        }
        next(planting, given).ifPresent(next -> words.put("next", next));
        return new Sentence(wording.talk().get("plot-line"))
                .fill(name -> Optional.ofNullable(words.get(name)))
                .orElse(words.get("crops"));
    }

    private Optional<String> next(Planting planting, List<Given> given) {
        return given.stream()
                .filter(one ->
                        one.occasion() == Occasion.STANDING && planting.id().equals(one.planting()))
                .filter(one -> wording.advice().containsKey(one.id())
                        && wording.advice().get(one.id()).in(one.crop()).todo() != null)
                .min(Comparator.comparing(Given::due).thenComparing(Given::neglect))
                .flatMap(one -> new Sentence(
                                wording.advice().get(one.id()).in(one.crop()).todo())
                        .fill(name -> name.equals("crops")
                                ? Optional.of(vocabulary.names().planting(planting.id()))
                                : vocabulary.word(one, name))
                        .map(text -> vocabulary
                                        .quantities()
                                        .nearDay(one.due().isBefore(turn.today()) ? turn.today() : one.due())
                                + ", " + Character.toLowerCase(text.charAt(0)) + text.substring(1)));
    }
}
