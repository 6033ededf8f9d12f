package bothy.conversation;

import bothy.advice.clinic.Clinic;
import bothy.garden.Entry;
import bothy.garden.Finding;
import bothy.garden.Heard;
import bothy.garden.SignSeen;
import bothy.garden.Statement;
import bothy.garden.What;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Doings that a description of a trouble mentions, told without a day and without how many: "cut one open and it was brown" tells of no
 * harvest, "always fed and watered" of no feeding today. They stay in the description; the diary takes none of them.
 */
final class DoingsMentioned {
    /** What a description may mention; weather it tells of is weather all the same. */
    private static final Set<What> MENTIONED = EnumSet.of(
            What.EMERGED,
            What.PRICKED_OUT,
            What.POTTED_ON,
            What.PLANTED_OUT,
            What.THINNED,
            What.SUPPORTED,
            What.PROTECTED,
            What.WATERED,
            What.FED,
            What.FLOWERING,
            What.FRUIT_SET,
            What.COLOUR_TURNED,
            What.HARVESTED,
            What.CURED,
            What.STORED,
            What.DIED,
            What.MOVED);

    /** Whoever burned an eye at picking has picked all the same. */
    private static final String BURNED = "person-burned";

    /** "Ate a courgette last night" of whoever is ill is told of the supper. */
    private static final Set<What> AT_TABLE = EnumSet.of(What.HARVESTED, What.DIED);

    /** Of these what the plants do by themselves: whoever tells that at length may be telling of a trouble. */
    private static final Set<What> SEEN = EnumSet.of(
            What.EMERGED, What.FLOWERING, What.FRUIT_SET, What.COLOUR_TURNED, What.CURED, What.DIED, What.RAIN);

    /** What is done against a trouble, told last. */
    private static final Set<What> HELP = EnumSet.of(What.PROTECTED, What.SUPPORTED);

    /** What is found at the plants rather than done to them. */
    private static final Set<What> SHOWN = EnumSet.of(What.DIED, What.SOIL_CHECKED, What.TEMPERATURE);

    private static final String SENTENCE_ENDS = ".!?;";
    /** A sentence of so few words tells that and nothing else. */
    private static final int BRIEF = 8;

    private static final Pattern FIRST = Pattern.compile("(?i)^\\W*(and |our |my |the )*first\\b");
    /** "… and put a net over them". */
    private static final Pattern AND = Pattern.compile("(?i)\\band \\w+( \\w+){1,5}\\W*$");

    private DoingsMentioned() {}

    /**
     * The same without them.
     *
     * @param closerLook what the message adds to a case
     * @param described whether the message is, by its words, a description of a trouble
     * @param text the message
     */
    static Heard without(Heard heard, List<Entry> closerLook, boolean described, String text) {
        boolean ofTrouble =
                !heard.signs().isEmpty() || closerLook.stream().anyMatch(entry -> entry instanceof SignSeen);
        // "Had some of the potatoes, they were green": supper is no harvest, and the caution comes first.
        boolean ofPeople = closerLook.stream()
                .anyMatch(entry -> entry instanceof Finding finding
                        && Clinic.ofNoPlant(finding.about())
                        && !finding.about().equals(BURNED));
        if (!ofPeople && !(ofTrouble && described)) {
            return heard;
        }
        return heard.telling(heard.statements().stream()
                .filter(told -> !(mentioned(told) && (ofPeople || !forItself(told, text)))
                        && !(ofPeople && AT_TABLE.contains(told.event().what()) && inPassing(told)))
                .toList());
    }

    /** "Cukes flowering. Yellow bugs in them", "first handful of mangetout, some were brown", "picked them off and put a net over". */
    private static boolean forItself(Statement told, String text) {
        int from = Math.min(told.from(), text.length());
        int to = Math.max(from, Math.min(told.to(), text.length()));
        String before = text.substring(0, from).strip();
        String after = text.substring(to).strip();
        String own = text.substring(from, to);
        boolean sentence = (before.isEmpty() || SENTENCE_ENDS.indexOf(before.charAt(before.length() - 1)) >= 0)
                && (after.isEmpty() ? !before.isEmpty() : SENTENCE_ENDS.indexOf(after.charAt(0)) >= 0)
                && own.split("\\s+").length <= BRIEF;
        boolean helped = HELP.contains(told.event().what())
                && after.isEmpty()
                && AND.matcher(text.substring(0, to)).find();
        return sentence || helped || FIRST.matcher(own).find();
    }

    /** Whether a statement tells only in passing what plants or weather did. */
    static boolean seenInPassing(Statement told) {
        return SEEN.contains(told.event().what()) && inPassing(told);
    }

    /** Whether a statement tells a doing of its own and no loss: what describes no trouble, however it is worded. */
    static boolean aDoing(Statement told) {
        return told.sure()
                && !SHOWN.contains(told.event().what())
                && !told.event().what().ofThePlot()
                && !mentioned(told);
    }

    /** "Peppers have their first small fruits": of good news what is small is no trouble. */
    static boolean inBloom(Statement told) {
        return told.sure()
                && (told.event().what() == What.FLOWERING || told.event().what() == What.FRUIT_SET);
    }

    private static boolean mentioned(Statement told) {
        return MENTIONED.contains(told.event().what()) && inPassing(told);
    }

    private static boolean inPassing(Statement told) {
        return told.assumed().contains("date")
                && told.event().count() == null
                && told.event().amount() == null;
    }
}
