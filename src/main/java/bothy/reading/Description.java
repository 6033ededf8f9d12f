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

    private final CloserLook closerLook;
    private final LooseSigns looseSigns;
    private final Set<String> complaints;
    private final Set<String> faint;
    private final Set<String> plans;
    private final Set<String> whereabouts;
    private final Supplier<List<CropSaid>> crops;
    private final Set<String> growing;
    private final Passage plain;
    private final Passage whole;
    private List<String> signs;

    Description(
            CloserLook closerLook,
            LooseSigns looseSigns,
            Set<String> complaints,
            Set<String> faint,
            Set<String> plans,
            Set<String> whereabouts,
            Supplier<List<CropSaid>> crops,
            Set<String> growing,
            Passage plain,
            Passage whole) {
        this.closerLook = closerLook;
        this.looseSigns = looseSigns;
        this.complaints = complaints;
        this.faint = faint;
        this.plans = plans;
        this.whereabouts = whereabouts;
        this.crops = crops;
        this.growing = growing;
        this.plain = plain;
        this.whole = whole;
    }

    /**
     * What it tells of a closer look at a trouble, whether it was asked for or not; of no planting, since that is for the one who knows
     * the open cases to say.
     */
    public List<Finding> findings() {
        List<Finding> found = closerLook.in(plain);
        if (whole == plain) {
            return found;
        }
        List<Finding> all = new ArrayList<>(found);
        closerLook.in(whole).stream()
                .filter(one -> EATEN.equals(one.about()) && !found.contains(one))
                .forEach(all::add);
        return all;
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
                + plain.words().stream().filter(faint::contains).limit(1).count();
    }

    /** How many different words it holds that complain by themselves. */
    public long clearComplaints() {
        return plain.words().stream().filter(complaints::contains).count();
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
