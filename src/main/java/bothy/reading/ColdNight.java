package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.garden.Units;
import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;
import bothy.reading.told.PlotEvents;
import java.util.Set;

/** A cold night asked about for plants that stand: "will the corn be ok at 3C tonight", "are nights of 9C too cold for it". */
final class ColdNight {
    private static final String TOPIC = "night-cold";
    /** Milder nights are none that a grower fears. */
    private static final double COLD_C = 15;

    /** So cold by the forecast there may be frost on the ground. Common practice. */
    private static final double NEAR_FROST_C = 4;

    private static final Set<String> COVERING = Set.of("cover", "covering", "covered", "fleece");

    private static final Set<Question> OPEN = Set.of(Question.SAFE, Question.STATUS, Question.OTHER);
    private static final Set<String> PLAIN_TOPICS = Set.of("normal", "eating");
    private static final Set<String> OF_THE_NIGHT = Set.of(
            "tonight", "tonite", "night", "nights", "nite", "nites", "overnight", "outside", "outdoors", "forecast");

    private ColdNight() {}

    /** The question, about what cold the crop stands where a cold night is told and nothing is to be eaten. */
    static Inquiry asked(Inquiry inquiry, Passage passage) {
        boolean plain = OPEN.contains(inquiry.question())
                && (inquiry.topic() == null || PLAIN_TOPICS.contains(inquiry.topic()));
        if (wouldCover(inquiry, passage)) {
            return inquiry.asking(Question.SAFE).withTopic("frost");
        }
        // "Too cold for the corn" asks when to sow it only while none stands.
        boolean tooCold = inquiry.question() == Question.WHEN_SOW
                && inquiry.topic() == null
                && !inquiry.plantings().isEmpty()
                && passage.words().contains("cold");
        boolean named = inquiry.crop() != null || !inquiry.plantings().isEmpty();
        if (!(plain || tooCold) || !named || !in(passage, tooCold)) {
            return inquiry;
        }
        return inquiry.asking(inquiry.question() == Question.SAFE ? Question.SAFE : Question.OTHER)
                .withTopic(TOPIC);
    }

    /** "34F Thursday night, cover or leave it": how to cover is not what they want to know. */
    private static boolean wouldCover(Inquiry inquiry, Passage passage) {
        return inquiry.question() == Question.HOW_TO
                && passage.words().stream().anyMatch(COVERING::contains)
                && passage.words().stream().anyMatch(OF_THE_NIGHT::contains)
                && passage.quantities().stream()
                        .filter(Quantity::degrees)
                        .anyMatch(one -> celsius(one, passage) <= NEAR_FROST_C);
    }

    private static boolean in(Passage passage, boolean cold) {
        boolean degrees =
                passage.quantities().stream().filter(Quantity::degrees).anyMatch(one -> celsius(one, passage) <= COLD_C)
                        || passage.numbers().stream().anyMatch(number -> number.value() < 0); // "-2 tonight".
        return (cold || degrees) && passage.words().stream().anyMatch(OF_THE_NIGHT::contains);
    }

    /** What is told, °C; a bare degree is a grower's own. */
    static double celsius(Quantity one, Passage passage) {
        boolean fahrenheit =
                one.unit().equals("°") && passage.situation().grower().units() == Units.US;
        return fahrenheit ? PlotEvents.celsius(one.value()) : one.value();
    }
}
