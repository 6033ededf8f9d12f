package bothy.conversation;

import bothy.almanac.troubles.TroubleBook;
import bothy.almanac.troubles.Troubles;
import bothy.garden.Finding;
import bothy.garden.Heard;
import bothy.garden.Kind;
import bothy.garden.Question;
import bothy.garden.SignSeen;
import bothy.garden.Statement;
import bothy.garden.What;
import bothy.reading.Description;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;

/** The signs of a trouble that was told in words of the grower's own, where reading found no sign that tells of a cause. */
final class LooselyTold {

    /** A description of fewer telling words is none. By judgement. */
    private static final int LEAST_WORDS = 3;
    /** From this likeness on a description is like the portrait of a cause. By judgement. */
    private static final double LIKE_A_CAUSE = 0.25;
    /** From this likeness on one word of complaint is enough. By judgement, tried on messages that tell of no trouble. */
    private static final double STRIKING = 0.55;
    /** A description of so many telling words is long enough to strike. By judgement. */
    private static final int MANY_WORDS = 5;
    /** So many different words of complaint make a description plain: of messages that tell of no trouble 0.6 % hold them. By judgement. */
    private static final int PLAIN = 2;

    /** Whoever describes a trouble takes more words than these. By judgement. */
    static final int BRIEF = 10;
    /** Whoever is asked about a trouble may take so many. By judgement. */
    private static final int LONG_ANSWER = 20;
    /** A message of a crop that tells and asks nothing else, and so many telling words. By judgement, tried on messages of no trouble. */
    private static final int AT_LENGTH = 6;
    /** Such a message describes a trouble from this likeness on, without a word of complaint. By judgement, tried likewise. */
    private static final double LIKE_AT_LENGTH = 0.3;

    /** So sure of one cause are words that tell of a trouble. By judgement, tried likewise. */
    private static final double POINTING = 0.8;

    /** The sign of what startles though it is natural: told without a word of complaint. */
    private static final String ODD = "odd-growth";

    private static final String AILS = "ails";
    private static final Pattern WHAT_IS_WRONG =
            Pattern.compile("(?i)\\bwhat('?s| is) (wrong|up|amiss|the (matter|trouble|problem)) w");

    /** "2 to a hole, 12 holes", "the sort with the bulb, in small pots". */
    private static final Set<String> OF_THE_SOWING = Set.of("holes-in-leaves", "small-bulbs");

    private final Description description;
    private final Function<String, Description> reading;
    private final TroubleBook book;
    private final String text;

    /**
     * @param reading looks at any part of the message as a description
     */
    LooselyTold(Description description, TroubleBook book, String text, Function<String, Description> reading) {
        this.description = description;
        this.reading = reading;
        this.book = book;
        this.text = text;
    }

    /**
     * The signs: those told loosely, else an unnamed one when something was found on the plant or the words describe a trouble.
     *
     * @param found what the message tells of a closer look
     * @return names of signs, empty when the message tells of none or of something else
     */
    List<String> signs(Heard heard, List<Finding> found) {
        boolean named = heard.signs().stream()
                .anyMatch(sign -> !book.tables().beside().containsKey(sign.sign())
                        && !book.tables().rows(sign.sign(), sign.crop()).isEmpty());
        if (new SoundsLikeTrouble(description, text, reading).toldIn(heard)) {
            return List.of();
        }
        if (!named && asksWhatAils(heard)) {
            return List.of(Troubles.UNNAMED);
        }
        if (!looksWrong(heard, found) || onlyOfRipeness(heard)) {
            return List.of();
        }
        boolean nothingElse = tellsNothingElse(heard);
        boolean plainly = plainly(nothingElse && !ofABeginning(heard), found) || !named && besideDoings(heard);
        boolean hardly = description.plans() || !nothingElse && description.complaints() < 1;
        if (named || !plainly && (hardly || asksElse(heard) && !complains())) {
            return List.of();
        }
        List<String> names = new ArrayList<>(description.looseSigns(nothingElse));
        boolean complains = complainsAtAll();
        if (names.isEmpty() && complains && (tells(nothingElse, found) || describes(nothingElse))) {
            names.add(Troubles.UNNAMED);
        }
        if (names.isEmpty() && nothingElse && atLength(heard)) {
            names.add(Troubles.UNNAMED);
        }
        names.removeIf(name -> toldAsDone(name, heard));
        return names.isEmpty() && plainly ? List.of(Troubles.UNNAMED) : names;
    }

    /**
     * Whether something that looks wrong is told at all, or asked about: in the message without the words of its doings, since "dug 4 lb,
     * floury as you like" tells of supper. Likeness to what others told of a trouble is no trouble.
     */
    private boolean looksWrong(Heard heard, List<Finding> found) {
        List<Statement> doings =
                heard.statements().stream().filter(DoingsMentioned::aDoing).toList();
        Description rest = doings.isEmpty() ? description : reading.apply(beside(text, doings));
        if (heard.kind() == Kind.CHORE && description.clearComplaints() < PLAIN && !atSomeLength()) {
            return false;
        }
        boolean seen = doings.isEmpty()
                && rest.ofPlants()
                && found.stream().anyMatch(one -> book.tables().tellsMuch(one.about(), one.found()));
        boolean asksOfIt =
                text.contains("?") && !description.plans() && (!asksElse(heard) || known().size() > 2 * AT_LENGTH);
        return seen
                || asksOfIt
                || rest.complainsOfPlants()
                || rest.complainsMildlyOfPlants()
                        && heard.statements().stream().noneMatch(DoingsMentioned::inBloom)
                        && likeSomeCause(known().size() >= MANY_WORDS ? LIKE_AT_LENGTH : STRIKING)
                || atSomeLength() && !description.looseSigns(false).isEmpty()
                || description.clearComplaints() >= PLAIN && atSomeLength()
                || !rest.looseSigns(doings.isEmpty()).isEmpty();
    }

    /**
     * Whether the message may go on with a trouble that is open: a few words may, and whoever writes at length of it complains. "Nobody
     * watered for six days while we were away, but there was rain" tells of something else.
     *
     * @param asked whether a question about it waits
     */
    boolean goesOnWithATrouble(boolean asked) {
        return text.split("\\s+").length <= (asked ? LONG_ANSWER : BRIEF) || description.complainsOfPlants();
    }

    /** "The rest of the bed is empty, it threw it down": what plants and weather did is of the trouble, told at length. */
    private boolean tellsNothingElse(Heard heard) {
        boolean atLength = text.split("\\s+").length > BRIEF && known().size() > AT_LENGTH;
        return heard.statements().stream()
                .filter(Statement::sure)
                .allMatch(told -> atLength && DoingsMentioned.seenInPassing(told));
    }

    /** "Only one long row along the path. Peeled the first and it's like my nan's teeth": told without a word that complains. */
    private boolean atLength(Heard heard) {
        boolean only = heard.kind() == Kind.CHAT || heard.kind() == Kind.QUESTION;
        return (only || known().size() > AT_LENGTH + 1)
                && !asksElse(heard)
                && text.split("\\s+").length > BRIEF
                && !description.crops().isEmpty()
                && known().size() >= AT_LENGTH
                && likeSomeCause(LIKE_AT_LENGTH);
    }

    /**
     * "Pulled the beans now that they are over, and the roots are covered in pink pellets": what a message tells beside its doings points
     * to one cause more surely than messages of doings do.
     */
    private boolean besideDoings(Heard heard) {
        if (heard.statements().isEmpty()
                || description.plans()
                || text.split("\\s+").length <= BRIEF
                || description.crops().isEmpty()) {
            return false;
        }
        List<String> words = book.tables()
                .portraits()
                .known(reading.apply(beside(text, heard.statements())).words());
        return words.size() >= MANY_WORDS
                && book.tables().portraits().chances(words, description.crops()).values().stream()
                        .anyMatch(chance -> chance >= POINTING);
    }

    /** A message without the words of some statements. */
    static String beside(String text, List<Statement> statements) {
        StringBuilder beside = new StringBuilder(text);
        for (Statement told : statements) {
            int to = Math.min(told.to(), text.length());
            for (int at = Math.min(told.from(), to); at < to; at++) {
                beside.setCharAt(at, ' ');
            }
        }
        return beside.toString();
    }

    /** Whether the words describe a trouble, not only name one beside something else. */
    boolean describedAtLength() {
        return description.complaints() >= PLAIN && atSomeLength();
    }

    /** "Stalks going brown and corky, when do I cut them?": what shows that it is ripe is no trouble, however it sounds. */
    private boolean onlyOfRipeness(Heard heard) {
        return heard.inquiries().stream()
                        .anyMatch(inquiry -> inquiry.question() == Question.READY
                                && !inquiry.cues().isEmpty())
                && description.looseSigns(false).isEmpty();
    }

    private boolean atSomeLength() {
        return text.split("\\s+").length > BRIEF && known().size() >= MANY_WORDS && likeSomeCause(LIKE_AT_LENGTH);
    }

    /** "A balcony that faces north, I want chillies and basil": nothing grows yet. */
    private static boolean ofABeginning(Heard heard) {
        return heard.inquiries().stream()
                .anyMatch(inquiry ->
                        inquiry.question() == Question.WHEN_SOW || inquiry.question() == Question.WHAT_TO_GROW);
    }

    /** "One of the tomatoes looks off, what ails it?" of what grows, with nothing told of how it looks. */
    private boolean asksWhatAils(Heard heard) {
        return heard.inquiries().stream()
                        .anyMatch(inquiry -> AILS.equals(inquiry.topic())
                                || !inquiry.plantings().isEmpty()
                                        && inquiry.question() == Question.WHY
                                        && WHAT_IS_WRONG.matcher(text).find())
                && description.looseSigns(false).isEmpty()
                && description.clearComplaints() <= 1
                && text.split("\\s+").length <= 2 * BRIEF;
    }

    /** A message without a question mark that complains twice and shows a sign asks nothing else, whatever its words. */
    private boolean complains() {
        return !text.contains("?")
                && description.complaints() >= 2
                && !description.looseSigns(false).isEmpty();
    }

    /** A trouble described at some length is one, whatever else was told or asked with it. */
    private boolean plainly(boolean aloneSaid, List<Finding> found) {
        boolean odd = description.looseSigns(false).contains(ODD);
        boolean clearly = odd || complainsAtAll() && likeSomeCause(LIKE_A_CAUSE);
        // Most messages complain of nothing; the tables of troubles are not opened for them.
        boolean strikingly = !description.plans()
                && (complainsAtAll()
                        || aloneSaid // "Sowed 16 beans in the bed, 2 to a hole" shows none.
                                && (!description.looseSigns(false).isEmpty() || known().size() > MANY_WORDS))
                && known().size() >= MANY_WORDS
                && likeSomeCause(STRIKING);
        return strikingly || clearly && complainsEnough(odd, found);
    }

    private boolean complainsAtAll() {
        return description.clearComplaints() >= 1 || description.complainsMildlyOfPlants();
    }

    /** Two complaints, three where something is planned; what tells much makes up for one, and what startles for both. */
    private boolean complainsEnough(boolean odd, List<Finding> found) {
        long complaints = description.complaints();
        if (complaints >= PLAIN || description.plans()) {
            return complaints > PLAIN || !description.plans();
        }
        return odd
                || complaints == 1
                        && found.stream().anyMatch(one -> book.tables().tellsMuch(one.about(), one.found()));
    }

    /** Whether something seen on the plant was told, in a message that tells nothing else. */
    private boolean tells(boolean nothingElse, List<Finding> found) {
        return nothingElse
                && known().size() >= LEAST_WORDS
                && found.stream().anyMatch(one -> book.tables().tells(one.about(), one.found()));
    }

    /**
     * Whether a message describes a trouble by its words alone: it complains, and is like the portrait of some cause.
     *
     * @param nothingElse whether it tells nothing else; else it must complain more than once
     */
    private boolean describes(boolean nothingElse) {
        if (description.complaints() < (nothingElse ? 1 : 2)) {
            return false;
        }
        return likeSomeCause(LIKE_A_CAUSE);
    }

    private boolean likeSomeCause(double least) {
        List<String> known = known();
        return known.size() >= LEAST_WORDS
                && book.tables().portraits().likenesses(known, crops -> true).values().stream()
                        .anyMatch(alike -> alike >= least);
    }

    private List<String> known() {
        return book.tables().portraits().known(description.words());
    }

    /** "In flower" and "up" are events first, and only then signs of bolting or of nothing coming up. */
    private boolean toldAsDone(String sign, Heard heard) {
        What done = sign.equals("bolting")
                ? What.FLOWERING
                : sign.equals("no-emergence")
                        ? What.EMERGED
                        : sign.equals("not-ripening")
                                ? What.COLOUR_TURNED
                                : sign.equals("fruit-spots")
                                        ? What.FRUIT_SET
                                        : OF_THE_SOWING.contains(sign) ? What.SOWN : null;
        boolean unnamed = sign.equals(Troubles.UNNAMED)
                && heard.statements().stream().anyMatch(Statement::sure)
                && !describes(false);
        return unnamed
                || heard.statements().stream()
                        .anyMatch(statement -> statement.event().what() == done);
    }

    static boolean asksElse(Heard heard) {
        return !heard.settings().isEmpty()
                || heard.inquiries().stream()
                        .anyMatch(
                                inquiry -> inquiry.question() != Question.WHY && inquiry.question() != Question.OTHER);
    }

    /** One sign for each subject. */
    static List<SignSeen> distinct(List<SignSeen> signs) {
        List<SignSeen> distinct = new ArrayList<>();
        for (SignSeen sign : signs) {
            if (distinct.stream()
                    .noneMatch(one -> java.util.Objects.equals(one.planting(), sign.planting())
                            && java.util.Objects.equals(one.crop(), sign.crop()))) {
                distinct.add(sign);
            }
        }
        return distinct;
    }
}
