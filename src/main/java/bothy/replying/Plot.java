package bothy.replying;

import bothy.almanac.Wording;
import bothy.garden.Given;
import bothy.garden.Given.Occasion;
import bothy.garden.Inquiry;
import bothy.garden.Planting;
import bothy.garden.Stage;
import java.time.temporal.ChronoUnit;
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
                .orElseGet(() -> over(inquiry));
    }

    /** A line for each planting asked about; empty when none grows. */
    Optional<String> standing(List<Given> given, Inquiry inquiry) {
        List<String> lines = turn.garden().growing().stream()
                .filter(planting -> asked(inquiry, planting) && turn.stages().get(planting.id()) != Stage.OVER)
                .map(planting -> "• "
                        + Phrasing.upper(
                                line(planting, given, !inquiry.plantings().isEmpty())))
                .toList();
        return lines.isEmpty() ? Optional.empty() : Optional.of(String.join("\n", lines));
    }

    /** What is said of a crop that was grown and is not growing any more, of one that never was, and of an empty plot. */
    private String over(Inquiry inquiry) {
        boolean all = inquiry.plantings().isEmpty() && inquiry.crop() == null;
        List<String> ended = turn.garden().plantings().stream()
                .filter(planting -> !all && asked(inquiry, planting))
                .map(planting -> vocabulary.names().planting(planting.id()))
                .toList();
        if (!ended.isEmpty()) {
            return said("plot-over", Names.list(ended));
        }
        return inquiry.crop() == null
                ? wording.talk().get("plot-empty")
                : said("plot-without", vocabulary.names().many(inquiry.crop()));
    }

    private String said(String id, String crops) {
        return Phrasing.upper(new Sentence(wording.talk().get(id))
                .fill(name -> name.equals("crops") ? Optional.of(crops) : Optional.empty())
                .orElseThrow());
    }

    private static boolean asked(Inquiry inquiry, Planting planting) {
        return inquiry.plantings().isEmpty() && inquiry.crop() == null
                || inquiry.plantings().contains(planting.id())
                || planting.crop().equals(inquiry.crop());
    }

    /** @param dated whether the day that it was begun is told too: of some plantings asked about, not of the whole plot */
    private String line(Planting planting, List<Given> given, boolean dated) {
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
            if (dated) {
                words.put("begun", vocabulary.quantities().day(planting.begun()));
            }
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
                .filter(one -> wording.says(one.id()) != null
                        && wording.says(one.id()).in(one.crop()).todo() != null)
                .min(Comparator.comparing(Given::due).thenComparing(Given::neglect))
                .flatMap(one -> new Sentence(
                                wording.says(one.id()).in(one.crop()).todo())
                        .fill(name -> name.equals("crops")
                                ? Optional.of(vocabulary.names().planting(planting.id()))
                                : vocabulary.word(one, name))
                        .map(text -> vocabulary
                                        .quantities()
                                        .nearDay(one.due().isBefore(turn.today()) ? turn.today() : one.due())
                                + ", " + Character.toLowerCase(text.charAt(0)) + text.substring(1)));
    }
}
