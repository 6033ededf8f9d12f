package bothy.advice;

import bothy.advice.reckoned.WindAhead;
import bothy.advice.reckoning.FeedReckoning;
import bothy.advice.reckoning.HowManyReckoning;
import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.garden.WeatherDay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Figures that belong to no planting: wind ahead, and feed and compost asked about without a crop. */
final class PlotFigures {
    private static final double KMH_PER_MS = 3.6;
    private static final int DAYS_AHEAD = 3;

    private PlotFigures() {}

    static List<Object> of(Day day) {
        List<Object> facts = new ArrayList<>();
        day.weather().stream()
                .filter(one -> one.windMs() != null && one.windMs() >= 0)
                .filter(one -> !one.date().isBefore(day.today())
                        && !one.date().isAfter(day.today().plusDays(DAYS_AHEAD)))
                .max(Comparator.comparingDouble(WeatherDay::windMs))
                .ifPresent(one -> facts.add(new WindAhead(one.date(), one.windMs(), one.windMs() * KMH_PER_MS)));
        for (Inquiry inquiry : day.inquiries()) {
            if (inquiry.crop() == null && inquiry.plantings().isEmpty()) {
                if (inquiry.label() != null) {
                    facts.add(FeedReckoning.mix(
                            null, inquiry, day.garden().grower().units()));
                }
                FeedReckoning.forBed(null, inquiry).ifPresent(facts::add);
                if (inquiry.question() == Question.HOW_MANY_FIT && "compost".equals(inquiry.topic())) {
                    HowManyReckoning.compostOfNoCrop(
                                    inquiry, day.garden().grower().units())
                            .forEach(facts::add);
                }
            }
        }
        return facts;
    }
}
