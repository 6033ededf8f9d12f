package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.garden.Units;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;
import bothy.reading.told.PlotEvents;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;

/** Great heat that is told beside a question ("41 degrees tomorrow, what do I do"): it asks what to do in a heat wave. */
final class HeatToCome {
    private static final double HOT_C = 32;
    /** No air is so hot in Celsius: such degrees are Fahrenheit. */
    private static final double SURELY_F = 60;

    private static final double HOTTEST_C = 55;
    private static final String TOPIC = "heat-wave";

    private static final Set<Question> OPEN = Set.of(
            Question.OTHER,
            Question.SAFE,
            Question.HOW_TO,
            Question.NEXT,
            Question.TO_DO,
            Question.STATUS,
            Question.STILL_TIME);
    private static final Set<String> PLAIN_TOPICS = Set.of("normal", "recovery", "frost", "eating", "protecting");
    private static final Set<String> OF_THE_DAY = Set.of(
            "today",
            "tomorrow",
            "tomoz",
            "weekend",
            "week",
            "days",
            "fortnight",
            "forecast",
            "forecasting",
            "monday",
            "tuesday",
            "wednesday",
            "thursday",
            "friday",
            "saturday",
            "sunday",
            "outside",
            "out",
            "high",
            "highs",
            "afternoon",
            "heat",
            "hot",
            "weather",
            "coming");
    private static final Set<String> AHEAD = Set.of(
            "tomorrow",
            "gonna",
            "going",
            "forecast",
            "forecasting",
            "weekend",
            "supposed",
            "expected",
            "coming",
            "will");
    /** Behind "next", "all" or "rest of the" they tell of days to come: "35C all next week". */
    private static final Set<String> SPANS = Set.of("week", "weekend", "days", "few", "fortnight", "month");

    private static final Set<String> BEFORE_SPANS = Set.of("next", "all", "the", "this");
    private static final Set<String> BEEN =
            Set.of("was", "were", "been", "had", "has", "have", "got", "last", "since", "did", "past");

    private static final Set<String> OF_THE_NIGHT =
            Set.of("tonight", "tonite", "night", "nights", "overnight", "low", "lows");

    private HeatToCome() {}

    /** The question, about great heat where that is told and nothing else is asked. */
    static Inquiry asked(Inquiry inquiry, Passage passage) {
        boolean open = OPEN.contains(inquiry.question())
                && (inquiry.topic() == null || PLAIN_TOPICS.contains(inquiry.topic()));
        return open && in(passage) ? inquiry.asking(Question.OTHER).withTopic(TOPIC) : inquiry;
    }

    /** The question that great heat to come is. */
    static Inquiry heatWave() {
        return Inquiry.of(Question.OTHER, null, List.of()).withTopic(TOPIC);
    }

    /** Whether a sentence tells great heat that has not been: there is nothing to write down. */
    static boolean ahead(Passage passage, int[] sentence) {
        boolean ahead = false;
        for (int at = sentence[0]; at < sentence[1]; at++) {
            ahead |= AHEAD.contains(passage.word(at)) || spanAhead(passage, at);
        }
        return ahead && (in(passage) || named(passage));
    }

    /** "Heatwave coming". */
    private static boolean named(Passage passage) {
        Set<String> words = passage.words();
        return words.contains("heatwave")
                || words.contains("scorcher")
                || words.contains("heat") && words.contains("wave");
    }

    private static boolean spanAhead(Passage passage, int at) {
        return BEFORE_SPANS.contains(passage.word(at))
                && SPANS.contains(passage.word(at + 1))
                && passage.words().stream().noneMatch(BEEN::contains);
    }

    private static boolean in(Passage passage) {
        return passage.words().stream().anyMatch(OF_THE_DAY::contains)
                && passage.words().stream().noneMatch(OF_THE_NIGHT::contains)
                && told(passage).anyMatch(celsius -> celsius >= HOT_C && celsius <= HOTTEST_C);
    }

    private static DoubleStream told(Passage passage) {
        boolean fahrenheit = passage.situation().grower().units() == Units.US;
        DoubleStream degrees = passage.quantities().stream()
                .filter(Quantity::degrees)
                .mapToDouble(one -> one.unit().equals("°") ? celsius(one.value(), fahrenheit) : one.value());
        DoubleStream bare = passage.numbers().stream()
                .filter(number -> ofTheWeather(passage, number))
                .mapToDouble(number -> celsius(number.value(), fahrenheit));
        return DoubleStream.concat(degrees, bare);
    }

    /** "Going to hit 41", "its 38 today", "42 on Friday"; "planted 40 today" counts plants. */
    private static boolean ofTheWeather(Passage passage, NumberSaid number) {
        boolean opens =
                number.start() == 0 || passage.tokens().get(number.start() - 1).mark();
        boolean ofADay = passage.days().stream().anyMatch(day -> day.start() == number.end())
                || passage.word(number.end()).equals("on")
                        && passage.days().stream().anyMatch(day -> day.start() == number.end() + 1)
                || passage.word(number.end()).equals("forecast");
        if (passage.quantities().stream().anyMatch(amount -> amount.covers(number.start()))) {
            return false; // "Modules of 100 ml".
        }
        return opens && ofADay && passage.actions().isEmpty()
                || Set.of(
                                "be",
                                "hit",
                                "hits",
                                "hitting",
                                "reach",
                                "reaches",
                                "reaching",
                                "to",
                                "is",
                                "of",
                                "at",
                                "says",
                                "forecast",
                                "above",
                                "over",
                                "around",
                                "about")
                        .contains(passage.word(number.start() - 1));
    }

    private static double celsius(double told, boolean fahrenheit) {
        return fahrenheit || told >= SURELY_F ? PlotEvents.celsius(told) : told;
    }
}
