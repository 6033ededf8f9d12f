package bothy.reading.told;

import bothy.garden.Doubt;
import bothy.garden.Doubt.About;
import bothy.garden.Doubt.Choice;
import bothy.garden.Event;
import bothy.garden.Heard;
import bothy.garden.Kind;
import bothy.garden.Plan;
import bothy.garden.Planting;
import bothy.garden.Statement;
import bothy.reading.grammar.CropNames;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Makes the question back for statements that are not sure: one at a time, each answer carrying what is then said. */
public final class Asking {
    private static final int MOST_CHOICES = 6;
    private final CropNames cropNames;

    public Asking(CropNames cropNames) {
        this.cropNames = cropNames;
    }

    /** The question for the first that is open, the others waiting behind its answers; {@code null} when none is open. */
    public Doubt about(List<Told> told) {
        List<Told> open = told.stream().filter(one -> one.open() != null).toList();
        if (open.isEmpty()) {
            return null;
        }
        Told first = open.get(0);
        List<Told> alike =
                open.stream().skip(1).filter(other -> alike(first, other)).toList();
        List<Told> rest =
                open.stream().skip(1).filter(other -> !alike(first, other)).toList();
        List<Choice> choices = new ArrayList<>();
        choices(first, alike, rest, choices);
        return new Doubt(first.open(), arguments(first), choices, draft(first, alike, rest));
    }

    /** Whether one answer settles both: the same thing open, for the same plantings, in the same words. */
    private static boolean alike(Told one, Told other) {
        return one.open() == other.open()
                && one.open() != About.HOW_MANY
                && java.util.Objects.equals(one.found(), other.found())
                && one.among().equals(other.among())
                && one.crops().equals(other.crops());
    }

    private void choices(Told first, List<Told> alike, List<Told> rest, List<Choice> into) {
        switch (first.open()) {
            case WHICH_PLANTING ->
                first.among().stream()
                        .limit(MOST_CHOICES)
                        .forEach(planting -> into.add(new Choice(
                                PlantingsMeant.label(planting, cropNames.called(planting.crop()), first.among()),
                                planting.id(),
                                then(first, alike, rest, told -> planting(told, planting)))));
            case WHICH_CROP, DID_YOU_MEAN ->
                first.crops()
                        .forEach(crop -> into.add(new Choice(
                                cropNames.called(crop),
                                crop,
                                then(
                                        first,
                                        alike,
                                        rest,
                                        told -> told.settled(
                                                told.event().withPlanting(null, crop), told.plantings())))));
            case WHICH_DEGREES -> degrees(first, alike, rest, into);
            case REALLY_DONE -> {
                into.add(new Choice("Yes, done", "yes", then(first, alike, rest, Asking::settled)));
                into.add(new Choice("Not yet", "no", onlyMeant(first, rest)));
            }
            case HOW_MANY -> howMany(first, alike, rest, into);
            default -> {}
        }
    }

    /** A number that stood beside what was told: it counts that, or nothing. */
    private void howMany(Told first, List<Told> alike, List<Told> rest, List<Choice> into) {
        if (!first.assumed().contains("count")) {
            return;
        }
        int number = Integer.parseInt(first.found());
        into.add(new Choice(
                first.found(),
                first.found(),
                then(first, alike, rest, told -> told.settled(told.event().withCount(number), told.plantings()))));
        into.add(new Choice("No number", "none", then(first, alike, rest, Asking::settled)));
    }

    private static Statement settled(Told told) {
        return told.settled(told.event(), told.plantings());
    }

    private static Statement planting(Told told, Planting planting) {
        return told.settled(told.event().withPlanting(null, planting.crop()), List.of(planting.id()));
    }

    private void degrees(Told first, List<Told> alike, List<Told> rest, List<Choice> into) {
        double found = Double.parseDouble(first.found());
        double celsius = PlotEvents.celsius(found);
        into.add(new Choice(
                first.found() + " °F (" + PlotEvents.figures(Math.round(celsius)) + " °C)",
                "F",
                degrees(first, alike, rest, celsius)));
        into.add(new Choice(first.found() + " °C", "C", degrees(first, alike, rest, found)));
    }

    /** What no plot can be is not written even so. */
    private Heard degrees(Told first, List<Told> alike, List<Told> rest, double celsius) {
        if (!PlotEvents.possible(celsius)) {
            return rest.isEmpty()
                    ? Heard.nothing(Kind.LET_GO)
                    : Heard.of(rest.stream().map(Told::statement).toList()).withDoubt(about(rest));
        }
        return then(first, alike, rest, told -> told.settled(told.event().withAmount(celsius, "°C"), told.plantings()));
    }

    private Heard then(
            Told first, List<Told> alike, List<Told> rest, java.util.function.Function<Told, Statement> settle) {
        List<Statement> statements = new ArrayList<>();
        statements.add(settle.apply(first));
        alike.forEach(told -> statements.add(settle.apply(told)));
        rest.forEach(told -> statements.add(told.statement()));
        return Heard.of(statements).withDoubt(about(rest));
    }

    private Heard onlyMeant(Told first, List<Told> rest) {
        Event event = first.event();
        Heard nothing = Heard.of(rest.stream().map(Told::statement).toList());
        return new Heard(
                nothing.statements(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(new Plan(event.what(), event.crop(), first.plantings(), null)),
                about(rest),
                List.of(),
                nothing.kind(),
                false);
    }

    private static Heard draft(Told first, List<Told> alike, List<Told> rest) {
        if (first.open() == About.REALLY_DONE || first.open() == About.HOW_WARM) {
            return null;
        }
        List<Statement> waiting = new ArrayList<>();
        waiting.add(first.statement());
        alike.forEach(told -> waiting.add(told.statement()));
        rest.forEach(told -> waiting.add(told.statement()));
        return Heard.of(waiting);
    }

    private Map<String, String> arguments(Told told) {
        Map<String, String> arguments = new HashMap<>();
        arguments.put("what", told.event().what().word());
        if (told.event().crop() != null) {
            arguments.put("crop", cropNames.called(told.event().crop()));
        }
        if (told.found() != null) {
            boolean beside = told.open() == About.HOW_MANY && told.assumed().contains("count")
                    || told.open() == About.WHICH_DATE && told.assumed().contains("day");
            arguments.put(beside ? "beside" : "found", told.found());
        }
        return arguments;
    }
}
