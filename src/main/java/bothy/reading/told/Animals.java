package bothy.reading.told;

import bothy.almanac.Words;
import bothy.reading.said.Clause;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import java.util.Set;
import java.util.stream.IntStream;

/** What animals did: "a pigeon pulled up 12 of my onions" gathers none. */
final class Animals {
    private static final Set<String> BEFORE_THE_VERB =
            Set.of("has", "have", "had", "are", "is", "been", "just", "all", "were", "was", "keep");

    private static final Set<String> PRONOUNS = Set.of("it", "they", "he", "she");

    private static final Set<String> BEFORE_THE_NAME =
            Set.of("the", "a", "an", "some", "our", "my", "those", "these", "two", "three", "bloody", "damn", "that");

    /** So many words stand between "picked" and the caterpillars. */
    private static final int GATHERED_REACH = 4;

    private final Set<String> names;

    Animals(Words words) {
        names = Set.copyOf(words.list("losses", "/animals"));
    }

    Set<String> vocabulary() {
        return names;
    }

    /** "Picking them bugs off into a bucket", "picked 20 caterpillars off": animals are gathered, no crop. */
    boolean gathered(Passage passage, Clause clause) {
        int verb = clause.action().words().nextSetBit(0);
        boolean cropToo = clause.crops().stream()
                .anyMatch(crop -> passage.numbers().stream().anyMatch(number -> number.end() == crop.start()));
        boolean named = IntStream.rangeClosed(verb + 1, verb + GATHERED_REACH)
                .takeWhile(at -> passage.cropAt(at).isEmpty())
                .anyMatch(at -> names.contains(passage.word(at)));
        return !cropToo && (named || takenOff(passage, clause));
    }

    /** "Beetles all over the potatoes, picked a whole jarful off": what was named first is what was picked off. */
    private boolean takenOff(Passage passage, Clause clause) {
        int verb = clause.action().start();
        boolean off = IntStream.rangeClosed(verb, verb + GATHERED_REACH)
                .anyMatch(at -> passage.word(at).equals("off"));
        boolean cropBehind = clause.crops().stream().anyMatch(crop -> crop.start() > verb);
        int[] before = passage.sentenceBefore(clause.sentence());
        boolean goesOn = verb == clause.sentence()[0] && before != null; // "Caterpillars on the kale. Picked off 23".
        return off
                && !cropBehind
                && IntStream.range(goesOn ? before[0] : clause.sentence()[0], verb)
                        .anyMatch(at -> names.contains(passage.word(at)));
    }

    /** Whether an animal did what a clause tells as done. */
    boolean did(Passage passage, Clause clause) {
        return clause.action().form() == Form.PAST && does(passage, clause);
    }

    /** The same whenever it is done: "birds are nipping the tops off". */
    boolean does(Passage passage, Clause clause) {
        int at = clause.action().words().nextSetBit(0) - 1;
        while (at > clause.from() && BEFORE_THE_VERB.contains(passage.word(at))) {
            at--;
        }
        return at < clause.from() && wentIn(passage, clause)
                || at >= clause.from()
                        && (names.contains(passage.word(at)) || standsForOne(passage, clause.sentence()[0], at))
                || wentOn(passage, clause);
    }

    /** What an animal does and costs no counted plant: "slugs are picking off the beans" gathers none and has killed none yet. */
    boolean goesOn(Passage passage, Clause clause) {
        Form form = clause.action().form();
        boolean taken =
                switch (clause.action().action()) {
                    case "harvested" -> form == Form.PAST;
                    case "died" -> true;
                    default -> false;
                };
        return form != null && !taken && does(passage, clause);
    }

    /**
     * "Sheep got in on Friday and ate 8 of them": who did the first did the second. Only an animal with which the sentence begins did it:
     * "netted the kale against the pigeons and picked 3 cabbages" tells of a person.
     */
    private boolean wentOn(Passage passage, Clause clause) {
        int verb = clause.action().words().nextSetBit(0);
        int at = clause.sentence()[0];
        while (at < verb && BEFORE_THE_NAME.contains(passage.word(at))) {
            at++;
        }
        boolean begun = at < verb - 1 && names.contains(passage.word(at));
        return begun
                && Set.of("and", "then").contains(passage.word(verb - 1))
                && IntStream.range(at, verb)
                        .noneMatch(between -> Set.of("i", "we").contains(passage.word(between)));
    }

    /** "Goats came in at night. Ate all the spinach": a sentence that begins with its eating goes on from the one before. */
    private boolean wentIn(Passage passage, Clause clause) {
        int verb = clause.action().words().nextSetBit(0);
        int[] before = passage.sentenceBefore(clause.sentence());
        return before != null
                && verb == clause.sentence()[0]
                && Set.of("ate", "eaten", "took", "dug", "pulled", "trampled", "flattened", "had")
                        .contains(passage.word(verb))
                && IntStream.range(before[0], Math.min(before[0] + 2, before[1]))
                        .anyMatch(at -> names.contains(passage.word(at)));
    }

    /** "One has been pulled up, birds I think": done to the plants, and an animal is named in the message. */
    boolean done(Passage passage, Clause clause) {
        int verb = clause.action().words().nextSetBit(0);
        return Set.of("been", "was", "were", "got", "being").contains(passage.word(verb - 1))
                && passage.words().stream().anyMatch(names::contains);
    }

    /** "Lost two courgettes to the cat, it dug them up". */
    private boolean standsForOne(Passage passage, int from, int at) {
        return PRONOUNS.contains(passage.word(at))
                && passage.tokens().subList(from, at).stream().anyMatch(token -> names.contains(token.word()));
    }

    /** "Kale eaten by caterpillars". */
    boolean by(Passage passage, Clause clause) {
        return IntStream.range(clause.action().start(), clause.to())
                .filter(at -> passage.word(at).equals("by"))
                .map(at -> BEFORE_THE_NAME.contains(passage.word(at + 1)) ? at + 2 : at + 1)
                .anyMatch(at -> names.contains(passage.word(at)));
    }

    /** Whether the words of a state begin with an animal: "deer got the beans". */
    boolean begins(Passage passage, Clause clause) {
        return names.contains(passage.word(clause.action().words().nextSetBit(0)));
    }
}
