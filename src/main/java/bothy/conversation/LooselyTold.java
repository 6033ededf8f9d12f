package bothy.conversation;

import bothy.almanac.troubles.Portraits;
import bothy.almanac.troubles.TroubleBook;
import bothy.almanac.troubles.Troubles;
import bothy.garden.Finding;
import bothy.garden.Heard;
import bothy.garden.Question;
import bothy.garden.SignSeen;
import bothy.garden.Statement;
import bothy.garden.What;
import bothy.reading.Description;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The signs of a trouble that was told in words of the grower's own, where reading found no sign that tells of a cause. */
final class LooselyTold {
    /** A description of fewer telling words is none. By judgement. */
    private static final int LEAST_WORDS = 3;
    /** From this likeness on a description is like the portrait of a cause. By judgement. */
    private static final double LIKE_A_CAUSE = 0.25;
    /** So many different words of complaint make a description plain. By judgement: of messages that tell of no trouble 0.6 % hold them. */
    private static final int PLAIN = 2;

    private static final Set<What> BEGINNINGS =
            Set.of(What.SOWN, What.PLANTED_OUT, What.POTTED_ON, What.PRICKED_OUT, What.THINNED, What.HARVESTED);

    private final Description description;
    private final TroubleBook book;
    private final String text;

    LooselyTold(Description description, TroubleBook book, String text) {
        this.description = description;
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
        boolean plainly = plainly(found);
        if (named || !plainly && (asksElse(heard) && !complains() || begins(heard) && description.complaints() < 1)) {
            return List.of();
        }
        boolean nothingElse = heard.statements().stream().noneMatch(Statement::sure);
        List<String> names = new ArrayList<>(description.looseSigns(nothingElse));
        if (names.isEmpty() && (tells(nothingElse, found) || describes(nothingElse))) {
            names.add(Troubles.UNNAMED);
        }
        names.removeIf(name -> toldAsDone(name, heard));
        return names.isEmpty() && plainly ? List.of(Troubles.UNNAMED) : names;
    }

    /** A message without a question mark that complains twice and shows a sign asks nothing else, whatever its words. */
    private boolean complains() {
        return !text.contains("?")
                && description.complaints() >= 2
                && !description.looseSigns(false).isEmpty();
    }

    /** A trouble described at some length is one, whatever else was told or asked with it. */
    private boolean plainly(List<Finding> found) {
        boolean telling = found.stream().anyMatch(one -> book.tables().tellsMuch(one.about(), one.found()));
        return description.complaints() >= (telling ? 0 : PLAIN) && likeSomeCause();
    }

    /** Whether something seen on the plant was told, in a message that tells nothing else. */
    private boolean tells(boolean nothingElse, List<Finding> found) {
        return nothingElse && found.stream().anyMatch(one -> book.tables().tells(one.about(), one.found()));
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
        return likeSomeCause();
    }

    private boolean likeSomeCause() {
        Portraits portraits = book.tables().portraits();
        List<String> known = portraits.known(description.words());
        return known.size() >= LEAST_WORDS
                && portraits.likenesses(known, crops -> true).values().stream()
                        .anyMatch(alike -> alike >= LIKE_A_CAUSE);
    }

    /** "In flower" and "up" are events first, and only then signs of bolting or of nothing coming up. */
    private boolean toldAsDone(String sign, Heard heard) {
        What done = sign.equals("bolting")
                ? What.FLOWERING
                : sign.equals("no-emergence") ? What.EMERGED : sign.equals("not-ripening") ? What.COLOUR_TURNED : null;
        boolean unnamed = sign.equals(Troubles.UNNAMED)
                && heard.statements().stream().anyMatch(Statement::sure)
                && !describes(false);
        return unnamed
                || heard.statements().stream()
                        .anyMatch(statement -> statement.event().what() == done);
    }

    /** Whoever tells of sowing or planting names seed, holes and cold without any trouble. */
    private static boolean begins(Heard heard) {
        return heard.statements().stream()
                .map(statement -> statement.event().what())
                .anyMatch(BEGINNINGS::contains);
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
