package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Inquiry;
import bothy.garden.Plan;
import bothy.garden.Question;
import bothy.garden.Units;
import bothy.garden.What;
import bothy.reading.said.ActionSaid;
import bothy.reading.said.DaySaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** Frost that is told to come ("low of 35 tonight", "forecast says minus 1"): nothing to write down, but a reason to cover. */
final class FrostToCome {
    /** Radiation frost on leaves comes with air at 4 °C (40 °F) some way above them. */
    private static final double RISKY_C = 4.5;

    private static final double RISKY_F = 40;
    /** No night that anybody warns of is as warm in Celsius. */
    private static final double NO_NIGHT_C = 28;

    /** Degrees and a day with hardly a word beside speak of the weather. */
    private static final int FEW_WORDS = 4;

    private static final String FILE = "forecast";
    private static final Set<String> WEATHER = Set.of("frost", "temperature", "rain");

    private final Set<String> frost;
    private final Set<String> cold;
    private final Set<String> toCome;
    private final Set<String> been;
    private final Set<String> being;
    private final Set<String> night;
    private final Set<String> leading;
    private final Set<String> wished;

    FrostToCome(Words words) {
        frost = Set.copyOf(words.list(FILE, "/frost"));
        cold = Set.copyOf(words.list(FILE, "/cold"));
        toCome = Set.copyOf(words.list(FILE, "/to-come"));
        been = Set.copyOf(words.list(FILE, "/been"));
        being = Set.copyOf(words.list(FILE, "/being"));
        night = Set.copyOf(words.list(FILE, "/night"));
        leading = Set.copyOf(words.list(FILE, "/leading"));
        wished = Set.copyOf(words.list(FILE, "/wished"));
    }

    Set<String> vocabulary() {
        Set<String> vocabulary = new HashSet<>(frost);
        vocabulary.addAll(cold);
        vocabulary.addAll(toCome);
        vocabulary.addAll(been);
        vocabulary.addAll(night);
        return vocabulary;
    }

    boolean in(Passage passage, int[] sentence) {
        return says(passage, sentence, toCome)
                && !says(passage, sentence, been)
                && !says(passage, sentence, wished)
                && (says(passage, sentence, frost)
                        || (says(passage, sentence, cold) || brief(sentence)) && cold(passage, sentence)
                        || nightOf(passage, sentence));
    }

    /** "Gonna be 31 tonight": bare degrees of a night. */
    private boolean nightOf(Passage passage, int[] sentence) {
        return Passage.within(passage.numbers(), sentence[0], sentence[1]).stream()
                .filter(number -> number.start() > sentence[0] && number.end() < sentence[1])
                .filter(number ->
                        being.contains(passage.word(number.start() - 1)) && night.contains(passage.word(number.end())))
                .anyMatch(number -> risky(number.value(), passage) || inFahrenheit(number, passage));
    }

    private boolean cold(Passage passage, int[] sentence) {
        List<Quantity> degrees = Passage.within(passage.quantities(), sentence[0], sentence[1]).stream()
                .filter(Quantity::degrees)
                .toList();
        if (!degrees.isEmpty()) {
            return degrees.stream()
                    .anyMatch(one -> one.unit().equals("°") ? risky(one.value(), passage) : one.value() <= RISKY_C);
        }
        return Passage.within(passage.numbers(), sentence[0], sentence[1]).stream()
                .anyMatch(number -> risky(number.value(), passage) || inFahrenheit(number, passage));
    }

    /** Bare degrees are the grower's own. */
    private static boolean risky(double degrees, Passage passage) {
        boolean fahrenheit = passage.situation().grower().units() == Units.US;
        return degrees <= (fahrenheit ? RISKY_F : RISKY_C);
    }

    /** "Get down to 38 tonight": no night comes down to that in Celsius. "Sowed 30 beans, cold tonight" counts beans. */
    private boolean inFahrenheit(NumberSaid number, Passage passage) {
        return number.value() >= NO_NIGHT_C
                && number.value() <= RISKY_F
                && (leading.contains(passage.word(number.start() - 1)) || night.contains(passage.word(number.end())));
    }

    /** "-2 tonight". */
    private static boolean brief(int[] sentence) {
        return sentence[1] - sentence[0] <= FEW_WORDS;
    }

    private static boolean says(Passage passage, int[] sentence, Set<String> words) {
        for (int at = sentence[0]; at < sentence[1]; at++) {
            if (words.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    /** The message without the weather of this sentence, which has not been. */
    static Passage unwritten(Passage passage, int[] sentence) {
        List<ActionSaid> kept = new ArrayList<>(passage.actions());
        Predicate<ActionSaid> weather = action ->
                WEATHER.contains(action.action()) && action.start() >= sentence[0] && action.end() <= sentence[1];
        kept.removeIf(weather);
        return passage.with(kept);
    }

    /** Weather to come stands beside what the grower means to do. */
    static Plan plan(Passage passage, int[] sentence) {
        LocalDate on = Passage.within(passage.days(), sentence[0], sentence[1]).stream()
                .filter(DaySaid::known)
                .map(DaySaid::future)
                .findFirst()
                .orElse(passage.situation().today());
        return new Plan(What.FROST, null, List.of(), on);
    }

    /** "Frost on Monday, can the basil go out?": what is asked of going out hangs on it. */
    static List<Plan> beside(List<Inquiry> asked, Passage passage, int[] sentence) {
        return asked.stream().anyMatch(one -> one.question() == Question.WHEN_PLANT_OUT)
                ? List.of(plan(passage, sentence))
                : List.of();
    }

    /** The question of a sentence that also asks, as one about frost unless it asks of something else. */
    static Inquiry asked(Inquiry own, Passage passage, int[] sentence) {
        Inquiry frost = asked(own);
        boolean named =
                !Passage.within(passage.crops(), sentence[0], sentence[1]).isEmpty();
        // "Do I have to do something about it?" asks about the frost.
        return !frost.equals(own) && !named && aboutIt(passage, sentence)
                ? frost.ofCrop(null).about(List.of())
                : frost;
    }

    private static boolean aboutIt(Passage passage, int[] sentence) {
        for (int at = sentence[0]; at + 1 < sentence[1]; at++) {
            if (Set.of("about", "for", "against").contains(passage.word(at))
                    && passage.word(at + 1).equals("it")) {
                return true;
            }
        }
        return false;
    }

    private static Inquiry asked(Inquiry own) {
        boolean whetherBad = own.question() == Question.OTHER
                && (own.topic() == null || own.topic().equals("normal"));
        // "Frost on Thursday, what should I pick" asks of the picking.
        boolean whetherSafe = own.question() == Question.SAFE && !"ripening-off".equals(own.topic()) || whetherBad;
        boolean whatToCover = own.question() == Question.HOW_TO
                && (own.topic() == null || own.topic().equals("protecting"));
        boolean whatNow = own.question() == Question.NEXT; // "They are up, frost tonight, what now?"
        return whetherSafe || whatToCover || whatNow ? own.asking(Question.SAFE).withTopic("frost") : own;
    }
}
