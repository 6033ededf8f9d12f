package bothy.reading.told;

import bothy.garden.Doubt;
import bothy.garden.Event;
import bothy.garden.Units;
import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.PlaceSaid;
import bothy.reading.said.Quantity;
import java.util.List;
import java.util.Set;

/** Events of the plot rather than of a planting: weather, temperatures, soil looked at, notes. */
public final class PlotEvents {
    private static final Set<String> SOIL = Set.of("soil", "compost", "ground", "bed", "mix", "earth");
    private static final Set<String> LOWS = Set.of("min", "minimum", "low", "lowest", "tmin");
    private static final Set<String> HIGHS = Set.of("max", "maximum", "high", "highest", "tmax");
    /** "A low of about 20". */
    private static final int NUMBER_REACH = 3;

    /** By definition of the inch. */
    private static final double MM_OF_AN_INCH = 25.4;

    private static final double SAME = 1e-3;
    // What air and soil of a plot can be, and what a bare figure is likely to mean: all by judgement.
    private static final double HOTTEST_C = 55;
    private static final double COLDEST_C = -40;
    private static final double COOLEST_F_LIKELY = 30;
    /** With frost about, whoever reckons in Fahrenheit means no Celsius by a figure above this. */
    private static final double WARM_FOR_FROST_C = 10;

    private static final double WARM_AIR_F = 75;
    private static final double HOTTEST_AIR_F = 130;
    /** No night is so warm: a low above it is Fahrenheit. */
    private static final double WARMEST_NIGHT_C = 36;

    private PlotEvents() {}

    static Event told(Event event, Passage passage, Clause clause) {
        return switch (event.what()) {
            case NOTE -> event.withDetail(note(passage, clause));
            case TEMPERATURE -> temperature(event, passage, clause);
            case FROST -> event.amount() == null ? bare(event, passage, clause) : event;
            case RAIN -> event.amount() == null ? gauged(event, passage, clause) : event;
            case SOIL_CHECKED -> event.withPlace(place(passage, clause), null);
            default -> event;
        };
    }

    private static Event temperature(Event event, Passage passage, Clause clause) {
        List<Quantity> own = Passage.within(
                passage.quantities(), clause.action().start(), clause.action().end());
        Event measured = own.isEmpty()
                ? bare(event, passage, clause)
                : event.withAmount(
                        own.get(own.size() - 1).value(), own.get(own.size() - 1).unit());
        boolean soil = SOIL.stream().anyMatch(word -> says(passage, clause.from(), clause.to(), word));
        return measured.withDetail(soil ? "soil" : null).withPlace(place(passage, clause), null);
    }

    /** "Rain gauge: 6.5": the number alone is in what the grower's gauges are marked with. */
    private static Event gauged(Event event, Passage passage, Clause clause) {
        boolean us = passage.situation().grower().units() == Units.US;
        return !says(passage, clause.action().start(), clause.action().end(), "gauge")
                ? event
                : Passage.within(
                                passage.numbers(),
                                clause.action().start(),
                                clause.action().end())
                        .stream()
                        .reduce((first, second) -> second)
                        .map(number -> event.withAmount(us ? number.value() * MM_OF_AN_INCH : number.value(), "mm"))
                        .orElse(event);
    }

    /** "Got down to 3", "frost, -2": the number alone is degrees. */
    private static Event bare(Event event, Passage passage, Clause clause) {
        return Passage.within(
                        passage.numbers(),
                        clause.action().start(),
                        clause.action().end())
                .stream()
                .filter(number -> event.what() != What.FROST || number.value() < 0) // "two frosts" counts them.
                .reduce((first, second) -> second)
                .map(number -> event.withAmount(number.value(), "°"))
                .orElse(event);
    }

    private static String place(Passage passage, Clause clause) {
        return Passage.within(passage.places(), clause.from(), clause.to()).stream()
                .filter(place -> !place.container())
                .map(PlaceSaid::name)
                .filter(name -> !name.equals("garden"))
                .findFirst()
                .orElse(null);
    }

    private static String note(Passage passage, Clause clause) {
        int at = Math.min(clause.action().end(), passage.size() - 1);
        int from = clause.action().end() < clause.sentence()[1]
                ? passage.tokens().get(at).from()
                : 0;
        String message = passage.message();
        // "Note: mesh on the kale. Anything else I should change?" asks behind the note.
        int to = passage.sentences().stream()
                .filter(later -> later[0] > clause.sentence()[0]
                        && passage.word(later[1]).equals("?"))
                .mapToInt(later -> passage.tokens().get(later[0]).from())
                .filter(asking -> asking > from)
                .findFirst()
                .orElse(message.length());
        String text = message.substring(Math.min(from, message.length()), Math.min(to, message.length()))
                .strip();
        String bare = text.replaceAll("^[:,\\-\\s]+", "");
        return bare.length() > 500 ? bare.substring(0, 500) : bare;
    }

    private static boolean says(Passage passage, int from, int to, String word) {
        for (int at = from; at < to; at++) {
            if (passage.word(at).equals(word)) {
                return true;
            }
        }
        return false;
    }

    /** Degrees without a scale are the grower's own; what cannot be in either is asked. */
    static Told degrees(Told told, Passage passage) {
        Event event = told.event();
        if (event.amount() == null || event.unit() == null) {
            return told;
        }
        String crossed = crossed(passage);
        if (crossed != null) {
            return told.doubting(Doubt.About.HOW_WARM, crossed);
        }
        double value = event.amount();
        if (event.unit().equals("°")) {
            boolean us = passage.situation().grower().units() == Units.US;
            double coolest = frosty(passage) ? WARM_FOR_FROST_C : COOLEST_F_LIKELY;
            boolean likely = us ? value > coolest && value < 130 : value > COLDEST_C && value <= 45;
            if (!us && lowest(passage) && value >= WARMEST_NIGHT_C) {
                return told.with(event.withAmount(celsius(value), "°C")).assuming("unit");
            }
            boolean air = !us && value >= WARM_AIR_F && value < HOTTEST_AIR_F && ofTheDay(passage);
            if (air) {
                return told.with(event.withAmount(celsius(value), "°C")).assuming("unit");
            }
            Event taken = event.withAmount(us ? celsius(value) : value, "°C");
            if (!likely && !possible(value) && !possible(celsius(value))) {
                return told.with(taken).doubting(Doubt.About.HOW_WARM, figures(value));
            }
            return likely
                    ? told.with(taken).assuming("unit")
                    : told.with(taken).doubting(Doubt.About.WHICH_DEGREES, figures(value));
        }
        return possible(value) ? told : inEither(told, passage, value);
    }

    /** What can be in the other scale is asked about; what can be in neither is refused. */
    private static Told inEither(Told told, Passage passage, double celsius) {
        Quantity measured = passage.quantities().stream()
                .filter(quantity -> quantity.degrees() && Math.abs(quantity.value() - celsius) < SAME)
                .findFirst()
                .orElse(null);
        double figure = measured == null ? celsius : measured.told();
        if (possible(figure) || possible(celsius(figure))) {
            return told.doubting(Doubt.About.WHICH_DEGREES, figures(figure));
        }
        boolean fahrenheit = measured != null && Math.abs(figure - celsius) > SAME;
        return told.doubting(Doubt.About.HOW_WARM, figures(figure) + (fahrenheit ? " °F" : ""));
    }

    /** "Min 15 max 8", "high of 5, low of 12": the lowest of a day is not above its highest; the words that say so, {@code null} for none. */
    private static String crossed(Passage passage) {
        for (int at = 0; at + 1 < passage.size(); at++) {
            boolean lowFirst = LOWS.contains(passage.word(at));
            NumberSaid first = lowFirst || HIGHS.contains(passage.word(at)) ? after(passage, at) : null;
            for (int next = first == null ? passage.size() : first.end(); next + 1 < passage.size(); next++) {
                NumberSaid second =
                        (lowFirst ? HIGHS : LOWS).contains(passage.word(next)) ? after(passage, next) : null;
                if (second != null) {
                    boolean crossed = lowFirst ? first.value() > second.value() : second.value() > first.value();
                    return crossed ? words(passage, at, second.end()) : null;
                }
            }
        }
        return null;
    }

    /** The number that a "min" or a "high of" stands before. */
    private static NumberSaid after(Passage passage, int at) {
        return passage.numbers().stream()
                .filter(number -> number.start() > at && number.start() <= at + NUMBER_REACH)
                .findFirst()
                .orElse(null);
    }

    private static String words(Passage passage, int from, int to) {
        return passage.message()
                .substring(
                        passage.tokens().get(from).from(),
                        Math.min(
                                passage.tokens().get(to - 1).to(),
                                passage.message().length()));
    }

    /** Whether frost, ice or snow is told of. */
    private static boolean frosty(Passage passage) {
        return Set.of(
                        "frost",
                        "frosts",
                        "frosty",
                        "frosted",
                        "freeze",
                        "freezing",
                        "froze",
                        "frozen",
                        "ice",
                        "icy",
                        "snow",
                        "snowed")
                .stream()
                .anyMatch(passage.words()::contains);
    }

    /** "Low of 38", "was 41 on the porch last night": no night is so warm but in Fahrenheit. */
    private static boolean lowest(Passage passage) {
        boolean night = passage.numbers().stream().anyMatch(number -> passage.end("night", number.start()) > 0);
        return night
                || LOWS.stream().anyMatch(passage.words()::contains)
                        && HIGHS.stream().noneMatch(passage.words()::contains);
    }

    /** "100 degrees today": the air of a day, which can be so only in Fahrenheit. */
    private static boolean ofTheDay(Passage passage) {
        return Set.of("today", "tomorrow", "outside", "weather", "forecast", "hot", "heat").stream()
                .anyMatch(passage.words()::contains);
    }

    /** Whether air or soil of a plot can be so warm, °C. */
    static boolean possible(double celsius) {
        return celsius > COLDEST_C && celsius < HOTTEST_C;
    }

    /** Degrees Fahrenheit in Celsius, to the tenth. */
    public static double celsius(double fahrenheit) {
        return Math.round((fahrenheit - 32) / 1.8 * 1e5) / 1e5;
    }

    static String figures(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }

    static boolean about(What what) {
        return what == What.TEMPERATURE || what == What.SOIL_CHECKED;
    }
}
