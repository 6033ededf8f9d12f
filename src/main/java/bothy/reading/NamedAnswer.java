package bothy.reading;

import bothy.garden.Doubt;
import bothy.garden.Doubt.Choice;
import bothy.garden.Heard;
import bothy.garden.Planting;
import bothy.garden.Statement;
import bothy.reading.said.CropSaid;
import bothy.reading.said.DaySaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.told.PlantingsMeant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** An answer that names one of the choices: a planting by place, kind or day, a crop, or words of a label. */
final class NamedAnswer {
    /** Words of an answer that may name what was not offered. */
    private static final int BRIEF = 6;
    /** The same where nothing was offered. */
    private static final int NOT_LONG = 10;
    /** More is no count of plants. */
    private static final int MOST = 20_000;

    private static final Set<String> TELLING =
            Set.of("is", "are", "has", "have", "look", "looks", "got", "gone", "went");

    private NamedAnswer() {}

    static Optional<Heard> planting(Passage passage, Doubt pending) {
        Set<String> offered = new java.util.HashSet<>(
                pending.choices().stream().map(Choice::meaning).toList());
        List<Planting> fitting = passage.situation().plantings().stream()
                .filter(planting -> offered.contains(planting.id()))
                .toList();
        List<Planting> narrowed = fitting;
        for (CropSaid crop : passage.crops()) {
            narrowed = PlantingsMeant.keep(
                    narrowed,
                    planting -> crop.canMean(planting.crop())
                            && (crop.variety() == null || says(crop.variety(), planting.variety())));
        }
        for (var place : passage.places()) {
            narrowed = PlantingsMeant.keep(narrowed, planting -> PlantingsMeant.stands(planting, place));
        }
        for (DaySaid day : passage.days()) {
            narrowed = PlantingsMeant.keep(
                    narrowed,
                    planting -> planting.begun() != null && planting.begun().equals(day.past()));
        }
        narrowed = PlantingsMeant.keep(
                narrowed,
                planting -> planting.variety() != null
                        && passage.tokens().stream().anyMatch(token -> says(token.word(), planting.variety())));
        if (narrowed.size() != 1) {
            return overlapping(passage, pending);
        }
        String id = narrowed.get(0).id();
        return pending.choices().stream()
                .filter(choice -> choice.meaning().equals(id))
                .findFirst()
                .map(Answers::said);
    }

    private static boolean says(String word, String variety) {
        String one = word.toLowerCase(Locale.ROOT);
        String named = variety == null ? "" : variety.toLowerCase(Locale.ROOT);
        return word.length() > 2 && (named.contains(one) || one.length() > 3 && one.equals(named + "s"));
    }

    static Optional<Heard> crop(Passage passage, Doubt pending) {
        return kind(passage, pending).map(heard -> counted(heard, passage));
    }

    private static Optional<Heard> kind(Passage passage, Doubt pending) {
        for (CropSaid crop : passage.crops()) {
            Optional<Choice> choice = pending.choices().stream()
                    .filter(offer -> crop.single() && crop.crop().equals(offer.meaning()))
                    .findFirst();
            if (choice.isPresent()) {
                return choice.map(Answers::said);
            }
            // "Back, the zucchini are huge" answers nothing about beans.
            boolean brief =
                    passage.size() <= (pending.choices().isEmpty() ? NOT_LONG : BRIEF) && !toldOf(passage, crop);
            if (brief && (crop.single() || crop.certain()) && pending.draft() != null) {
                List<String> ids = PlantingsMeant.ids(PlantingsMeant.of(crop, passage, 0, passage.size(), true));
                return Optional.of(Answers.filled(
                        pending.draft(),
                        statement -> Answers.settled(
                                statement,
                                statement
                                        .event()
                                        .withPlanting(null, crop.crop())
                                        .withVariety(crop.variety()),
                                statement.event().what() == bothy.garden.What.SOWN || ids.size() > 1
                                        ? List.of()
                                        : ids)));
            }
        }
        return overlapping(passage, pending);
    }

    /** "Two pumpkins setting hard" answers no "which crop?": something is told of them. */
    private static boolean toldOf(Passage passage, CropSaid crop) {
        String next = passage.word(crop.end());
        return next.endsWith("ing") || TELLING.contains(next);
    }

    /** "Runners" for runner beans. */
    private static String oneOf(String word) {
        return word.length() > 3 && word.endsWith("s") ? word.substring(0, word.length() - 1) : word;
    }

    /** "Runners. 12": with the kind its count is told, where none was. */
    private static Heard counted(Heard heard, Passage passage) {
        List<NumberSaid> numbers = passage.counts(0, passage.size());
        boolean one =
                numbers.size() == 1 && numbers.get(0).whole() && numbers.get(0).value() > 1;
        if (!one || heard.statements().size() != 1) {
            return heard;
        }
        Statement told = heard.statements().get(0);
        int count = (int) Math.min(numbers.get(0).value(), MOST);
        return told.event().count() != null
                ? heard
                : Heard.of(List.of(new Statement(
                        told.event().withCount(count),
                        told.plantings(),
                        told.sure(),
                        told.from(),
                        told.to(),
                        told.assumed())));
    }

    /** The one choice whose label shares the most words with the answer. */
    static Optional<Heard> overlapping(Passage passage, Doubt pending) {
        Choice best = null;
        int most = 0;
        boolean tie = false;
        for (Choice choice : pending.choices()) {
            Set<String> label = Stream.of(Answers.bare(choice.label()).split(" +"))
                    .map(NamedAnswer::oneOf)
                    .collect(Collectors.toSet());
            int shared = (int) passage.tokens().stream()
                    .map(token -> oneOf(token.word()))
                    .distinct()
                    .filter(word -> word.length() > 2
                            && !Set.of("the", "ones", "and", "are", "not").contains(word))
                    .filter(label::contains)
                    .count();
            tie = shared == most;
            if (shared > most) {
                most = shared;
                best = choice;
            }
        }
        return best == null || tie || passage.size() > 10 ? Optional.empty() : Optional.of(Answers.said(best));
    }
}
