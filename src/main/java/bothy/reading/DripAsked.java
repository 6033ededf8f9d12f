package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Planting;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import bothy.reading.told.PlantingsMeant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What drippers give in an hour, told with the question how long they run or as the answer to it: "4 litre an hour ones, one a plant". */
final class DripAsked {
    static final String TOPIC = "drip-timer";
    private static final Pattern RATE = Pattern.compile(FeedLabels.NUMBER + "\\s*-?\\s*(?:" + FeedLabels.VOLUME
            + "\\s*(?:/|per|an|a|p)\\s*(?:hours?|hr|h)\\b|(lph|gph)\\b)");
    private static final Pattern EACH = Pattern.compile(
            "\\b(one|two|three|four|[1-4])\\s+(?:drippers?|emitters?|heads?|of them)?\\s*(?:per|an?|for each|to each|at each|on each|each)\\s*plant");
    private static final Map<String, Integer> COUNTS = Map.of("one", 1, "two", 2, "three", 3, "four", 4);

    private DripAsked() {}

    /** The question with what the drippers told give a plant in an hour. */
    static Inquiry of(Passage passage, Inquiry inquiry) {
        OptionalDouble rate = litresAnHour(passage);
        boolean water = inquiry.question() == Question.HOW_MUCH_WATER || TOPIC.equals(inquiry.topic());
        if (!water || rate.isEmpty() && !TOPIC.equals(inquiry.topic())) {
            return inquiry;
        }
        Inquiry asked = inquiry.asking(Question.OTHER).withTopic(TOPIC);
        // "How long should I set it": the timer, and no crop that was talked about.
        boolean named = passage.crops().stream().anyMatch(said -> !said.thing());
        Inquiry about = named ? asked : asked.ofCrop(null).about(growing(passage));
        return rate.isEmpty()
                ? about
                : about.with(about.count(), about.length(), rate.getAsDouble(), Inquiry.LITRES_AN_HOUR);
    }

    /** The question that a rate told alone is: how long such drippers run. */
    static List<Inquiry> told(Passage passage, List<Inquiry> asked, boolean nothingElse) {
        boolean alone = asked.isEmpty() && nothingElse && litresAnHour(passage).isPresent();
        return alone
                ? List.of(
                        of(passage, Inquiry.of(Question.OTHER, null, List.of()).withTopic(TOPIC)))
                : List.of();
    }

    private static List<String> growing(Passage passage) {
        List<Planting> growing = passage.situation().plantings().stream()
                .filter(planting -> !planting.over())
                .toList();
        return PlantingsMeant.ids(growing);
    }

    private static OptionalDouble litresAnHour(Passage passage) {
        String text = passage.message().toLowerCase(Locale.ROOT);
        Matcher told = RATE.matcher(text);
        if (!told.find()) {
            return OptionalDouble.empty();
        }
        String unit = told.group(2) != null ? told.group(2) : told.group(3);
        double litres = FeedLabels.litres(unit, passage.situation().grower().units());
        Matcher each = EACH.matcher(text);
        int drippers = !each.find()
                ? 1
                : COUNTS.containsKey(each.group(1)) ? COUNTS.get(each.group(1)) : Integer.parseInt(each.group(1));
        double rate = FeedLabels.number(told.group(1)) * litres * drippers;
        return rate > 0 ? OptionalDouble.of(rate) : OptionalDouble.empty();
    }
}
