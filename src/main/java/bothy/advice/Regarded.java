package bothy.advice;

import bothy.garden.Event;
import bothy.garden.Inquiry;
import bothy.garden.Plan;
import bothy.garden.Planting;
import bothy.garden.Question;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Set;

/**
 * The growing plantings that a message is about. The rules look at no others: a reply says nothing of them, and of the time of a run
 * most goes by the plantings. No rule may hold one planting against another, therefore.
 */
final class Regarded {
    /** Questions that are of the whole plot when they name no planting, whatever crop they name. */
    private static final Set<Question> OF_THE_PLOT = EnumSet.of(Question.TO_DO, Question.NEXT, Question.STATUS);

    private final boolean all;
    private final Set<String> plantings = new HashSet<>();
    private final Set<String> crops = new HashSet<>();

    /** @param ofCases plantings whose cases are weighed on the day, whatever is spoken of */
    Regarded(Day day, Set<String> ofCases) {
        all = day.whole()
                || day.told().stream()
                        .anyMatch(told -> told.planting() == null || told.what().ofThePlot())
                || day.inquiries().stream().anyMatch(Regarded::ofThePlot)
                || day.plans().stream()
                        .anyMatch(
                                plan -> plan.crop() == null && plan.plantings().isEmpty());
        day.told().stream().map(Event::planting).forEach(plantings::add);
        day.inquiries().stream().map(Inquiry::plantings).forEach(plantings::addAll);
        day.inquiries().stream().map(Inquiry::crop).forEach(crops::add);
        day.plans().stream().map(Plan::plantings).forEach(plantings::addAll);
        plantings.addAll(ofCases);
    }

    private static boolean ofThePlot(Inquiry inquiry) {
        return inquiry.plantings().isEmpty() && (inquiry.crop() == null || OF_THE_PLOT.contains(inquiry.question()));
    }

    boolean holds(Planting planting) {
        return all || plantings.contains(planting.id()) || crops.contains(planting.crop());
    }
}
