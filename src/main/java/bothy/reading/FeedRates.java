package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Question;
import bothy.reading.said.Passage;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A solid feed's rate by the ground: "100 g per square metre", "2 oz to the square yard", "a pound per 100 sq ft". */
final class FeedRates {
    static final String TOPIC = "by-area";
    static final String UNIT = "g/m²";

    /** The exact definitions of the international yard and pound (1959). */
    private static final double G_PER_OUNCE = 28.349523125;

    private static final double M2_PER_SQUARE_FOOT = 0.09290304;
    private static final double M2_PER_SQUARE_YARD = 0.83612736;

    private static final String AMOUNT = "(\\d+(?:[.,]\\d+)?|\\d+\\s*/\\s*\\d+|half an?|an?|one|two|three|four)";
    private static final String WEIGHT = "(kgs?|kilos?|grams?|grammes?|gms?|g|ounces?|ounce|oz|pounds?|lbs?|lb)";
    private static final String GROUND =
            "(sq\\.?\\s?(?:metres?|meters?|m|yards?|yds?|yd|feet|foot|ft)|square\\s(?:metres?|meters?|yards?|feet|foot)|m2|m²|sqm|sqft)";
    private static final Pattern RATE = Pattern.compile("(?<![\\w.,])" + AMOUNT + "\\s*" + WEIGHT
            + "(?:\\s+of\\s+(?:\\w+\\s+){0,3}?\\w+)?\\s*(?:per|to|for|a|on|over|/|each|every)\\s*(?:each |every |the |a |one )?"
            + "(\\d+)?\\s*" + GROUND + "(?![\\w²])");
    private static final Pattern AREA =
            Pattern.compile("(?<!per )(?<![\\w.,/])(\\d+(?:[.,]\\d+)?)\\s*" + GROUND + "(?![\\w²])");

    private FeedRates() {}

    /** The question as one for what the rate comes to on the bed told; as it was where no rate is told or nothing is counted. */
    static Inquiry in(Inquiry inquiry, Passage passage) {
        String text = passage.message().toLowerCase(Locale.ROOT);
        Matcher rate = RATE.matcher(text);
        if (!passage.words().contains("much") && !passage.words().contains("many") || !rate.find()) {
            return inquiry;
        }
        double ground = rate.group(3) == null ? 1 : FeedLabels.number(rate.group(3));
        double perM2 = FeedLabels.number(rate.group(1)) * grams(rate.group(2)) / (ground * squareMetres(rate.group(4)));
        Inquiry asked = sized(inquiry.asking(Question.FEED_DOSE).withTopic(TOPIC), passage, text, rate);
        return asked.with(null, asked.length(), perM2, UNIT);
    }

    /** Sides that the message tells, or the side of a square of the area that it tells. */
    private static Inquiry sized(Inquiry asked, Passage passage, String text, Matcher rate) {
        Inquiry sides = SizesAsked.sides(asked, passage);
        if (sides.length() != null) {
            return sides;
        }
        Matcher area = AREA.matcher(text);
        while (area.find()) {
            if (area.start() < rate.start() || area.start() >= rate.end()) {
                double side = Math.sqrt(FeedLabels.number(area.group(1)) * squareMetres(area.group(2)));
                return sides.sized(side, side);
            }
        }
        return sides;
    }

    private static double grams(String weight) {
        return switch (weight.charAt(0)) {
            case 'k' -> 1000;
            case 'o' -> G_PER_OUNCE;
            case 'p', 'l' -> 16 * G_PER_OUNCE;
            default -> 1;
        };
    }

    private static double squareMetres(String ground) {
        return ground.contains("y") ? M2_PER_SQUARE_YARD : ground.contains("f") ? M2_PER_SQUARE_FOOT : 1;
    }
}
