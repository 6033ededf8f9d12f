package bothy.reading;

import bothy.garden.Finding;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What a message tells of a trouble beside the signs that reading names: looked at once, asked many things. For one thread. */
public final class Description {
    /** A trouble named tells no more than its sign: "blossom" and "end" describe nothing there. */
    private static final Pattern NAMED = Pattern.compile("\\b(?:blossom|bottom) end rot\\b");

    /** "Not sure if the little one ate any, is it poisonous?": what was eaten is told in the question. */
    private static final String EATEN = "person-ate";

    /** Words for plants that were named before. */
    private static final Set<String> POINTING = Set.of(
            "it",
            "they",
            "them",
            "their",
            "its",
            "these",
            "those",
            "mine",
            "this",
            "that",
            "one",
            "ones",
            "seedlings",
            "seedling",
            "others");

    /** What is told of people has its caution, whoever they are. */
    private static final Pattern OF_PEOPLE = Pattern.compile("person-|animal-mess|pregnancy");

    private final CloserLook closerLook;
    private final LooseSigns looseSigns;
    private final Set<String> complaints;
    private final Set<String> faint;
    private final Set<String> mild;
    private final Set<String> plans;
    private final Set<String> whereabouts;
    private final Supplier<List<CropSaid>> crops;
    private final Set<String> growing;
    private final Passage plain;
    private final Passage told;
    private final Passage whole;
    private List<String> signs;

    /**
     * @param plain what it tells of the plants that grow here now
     * @param told the same with what it tells of others and of earlier years, without good food that was eaten
     * @param whole the same with what it only asks
     */
    Description(
            CloserLook closerLook,
            LooseSigns looseSigns,
            Set<String> complaints,
            Set<String> faint,
            Set<String> mild,
            Set<String> plans,
            Set<String> whereabouts,
            Supplier<List<CropSaid>> crops,
            Set<String> growing,
            Passage plain,
            Passage told,
            Passage whole) {
        this.closerLook = closerLook;
        this.looseSigns = looseSigns;
        this.complaints = complaints;
        this.faint = faint;
        this.mild = mild;
        this.plans = plans;
        this.whereabouts = whereabouts;
        this.crops = crops;
        this.growing = growing;
        this.plain = plain;
        this.told = told;
        this.whole = whole;
    }

    /**
     * What it tells of a closer look at a trouble, whether it was asked for or not; of no planting, since that is for the one who knows
     * the open cases to say.
     */
    public List<Finding> findings() {
        List<Finding> all = new ArrayList<>(closerLook.in(plain));
        if (told != plain) {
            all.removeIf(Description::ofPeople);
            closerLook.in(told).stream().filter(Description::ofPeople).forEach(all::add);
        }
        if (whole != told) {
            closerLook.in(whole).stream()
                    .filter(one -> EATEN.equals(one.about()) && !all.contains(one))
                    .forEach(all::add);
        }
        return List.copyOf(all);
    }

    private static boolean ofPeople(Finding finding) {
        return OF_PEOPLE.matcher(finding.about()).lookingAt();
    }

    /**
     * Signs told in words that no phrase fits: less sure, for a message in which {@link Reading#read} found none.
     *
     * @param atLarge whether "the plants look poorly" counts, for a message that tells nothing else
     */
    public List<String> looseSigns(boolean atLarge) {
        if (atLarge) {
            return looseSigns.in(plain, true);
        }
        if (signs == null) {
            signs = looseSigns.in(plain, false);
        }
        return signs;
    }

    /** Its words in order, their spelling set right and plainer words put for some. */
    public String words() {
        return NAMED.matcher(plain.tokens().stream()
                        .filter(Token::aWord)
                        .map(Token::word)
                        .collect(Collectors.joining(" ")))
                .replaceAll(" ")
                .strip();
    }

    /** How many different words of complaint it holds; those that complain only beside others count once at most. */
    public long complaints() {
        return clearComplaints()
                + plain.words().stream().filter(mild::contains).count()
                + plain.words().stream().filter(faint::contains).limit(1).count();
    }

    /** How many different words it holds that complain by themselves. */
    public long clearComplaints() {
        return plain.words().stream().filter(complaints::contains).count();
    }

    /**
     * Whether some sentence complains of plants: it holds a clear complaint, and it or the one before names a crop or a part of a plant, or
     * points back to one.
     */
    public boolean complainsOfPlants() {
        return complainOfPlants(complaints);
    }

    /** The same by words that complain of plants only beside what else tells of a trouble. */
    public boolean complainsMildlyOfPlants() {
        return complainOfPlants(mild);
    }

    private boolean complainOfPlants(Set<String> words) {
        boolean before = false;
        for (int[] sentence : plain.sentences()) {
            boolean ofPlants = holds(sentence, whereabouts)
                    || holds(sentence, POINTING)
                    || !Passage.within(plain.crops(), sentence[0], sentence[1]).isEmpty();
            if ((ofPlants || before) && holds(sentence, words)) {
                return true;
            }
            before = ofPlants;
        }
        return false;
    }

    /** Whether it names a crop, a part of a plant or how many of them. */
    public boolean ofPlants() {
        return !plain.crops().isEmpty() || whereabouts() > 0;
    }

    private boolean holds(int[] sentence, Set<String> words) {
        for (int at = sentence[0]; at < sentence[1]; at++) {
            if (words.contains(plain.word(at))) {
                return true;
            }
        }
        return false;
    }

    /** How many different words say where on the plants, how many of them or how fast. */
    public long whereabouts() {
        return plain.words().stream().filter(whereabouts::contains).count();
    }

    /** Whether it speaks of what is meant to be done rather than of what is seen. */
    public boolean plans() {
        String words = " " + words() + " ";
        return plans.stream().anyMatch(plan -> words.contains(" " + plan + " "));
    }

    /** The crops that it names: of the meanings of each the one that grows, else the likeliest. */
    public List<String> crops() {
        return crops.get().stream()
                .filter(crop -> !crop.thing())
                .map(this::meant)
                .distinct()
                .toList();
    }

    private String meant(CropSaid said) {
        return said.crops().stream().filter(growing::contains).findFirst().orElse(said.crop());
    }
}
