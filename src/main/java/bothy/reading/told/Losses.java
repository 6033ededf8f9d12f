package bothy.reading.told;

import bothy.almanac.Words;
import bothy.garden.Event;
import bothy.garden.Planting;
import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * How many of a planting were lost. "Only 3 left" tells how many stand, not how many died; what an animal had a go at is seldom all, so
 * unless it is said to be the planting goes on.
 */
final class Losses {
    private static final Set<String> LIVE = Set.of("alive", "survived", "made", "through");
    private static final String FILE = "losses";
    /** So many words may stand between a number and "left" ("3 of the courgettes are left"). */
    private static final int REACH = 5;
    /** So many words may stand between how much was lost and the crop ("a load of the young carrots"). */
    private static final int NEAR = 4;

    private final Set<String> partly;
    private final Set<String> whole;
    private final Set<String> left;
    private final Set<String> weather;
    private final Set<String> except;
    private final Animals animals;

    Losses(Words words, Animals animals) {
        this.animals = animals;
        partly = Set.copyOf(words.list(FILE, "/partly"));
        whole = Set.copyOf(words.list(FILE, "/whole"));
        left = Set.copyOf(words.list(FILE, "/left"));
        weather = Set.copyOf(words.list(FILE, "/weather"));
        except = Set.copyOf(words.list(FILE, "/except"));
    }

    Set<String> vocabulary() {
        Set<String> all = new HashSet<>(partly);
        all.addAll(whole);
        all.addAll(left);
        all.addAll(weather);
        all.addAll(except);
        return all;
    }

    /** A loss with its count or with the mark that only some were lost; anything else as it is. */
    Told counted(Passage passage, Clause clause, Told told) {
        Event event = told.event();
        if (event.what() != What.DIED) {
            return told;
        }
        Optional<NumberSaid> fallen = survived(passage, clause) ? spared(passage, clause) : Optional.empty();
        if (fallen.isPresent()) {
            return told.with(event.withCount((int) fallen.get().value())); // "All alive except one".
        }
        Optional<NumberSaid> standing = standing(passage, clause);
        // "12 sown, 9 left": nothing but what is left tells of a loss, so no other number counts it.
        boolean byWhatIsLeft = clause.action().words().stream().anyMatch(at -> left.contains(passage.word(at)));
        boolean counted = !byWhatIsLeft
                && event.count() != null
                && standing.filter(left -> left.value() != event.count()).isPresent();
        Integer outOf = standing.map(left -> outOf(passage, clause, left)).orElse(null);
        if (outOf != null) {
            return told.with(event.withCount(outOf - (int) standing.get().value()));
        }
        if (standing.isPresent() && !counted) {
            return told.with(ofWhatStands(told, passage, (int) standing.get().value()));
        }
        Integer struck = event.count() == null ? struck(passage, clause) : null;
        if (struck != null) {
            return told.with(event.withCount(struck));
        }
        boolean halfOfOne = Integer.valueOf(1).equals(event.count()) && halfOfOne(passage, clause);
        return halfOfOne || event.count() == null && onlySome(passage, clause)
                ? told.with(event.withCount(null).withDetail(Event.SOME))
                : told;
    }

    /** "Mowed over 4 of my garlic, they're toast": "they" are the four just named, {@code null} when nothing says so. */
    private static Integer struck(Passage passage, Clause clause) {
        int verb = clause.action().start();
        if (!clause.crops().isEmpty()
                || !clause.action().state()
                || !passage.word(verb - 1).equals("they")) {
            return null;
        }
        CropSaid named = Passage.within(passage.crops(), clause.sentence()[0], verb).stream()
                .reduce((first, last) -> last)
                .orElse(null);
        return named == null
                ? null
                : passage.counts(clause.sentence()[0], named.start()).stream()
                        .filter(number -> IntStream.range(number.end(), named.start())
                                .allMatch(at -> Set.of(
                                                "of", "my", "the", "our", "those", "young", "little", "best", "good")
                                        .contains(passage.word(at))))
                        .map(number -> Integer.valueOf((int) number.value()))
                        .findFirst()
                        .orElse(null);
    }

    /** Whether the doing tells of those that live: "all alive bar one", "everything made it apart from 3". */
    private static boolean survived(Passage passage, Clause clause) {
        return clause.action().words().stream().anyMatch(at -> LIVE.contains(passage.word(at)));
    }

    /** The number of those that are left. */
    private Optional<NumberSaid> standing(Passage passage, Clause clause) {
        for (int at = clause.from(); at < clause.to(); at++) {
            if (passage.word(at).equals("down") && passage.word(at + 1).equals("to")) {
                return passage.counts(at, clause.to()).stream().findFirst();
            }
            boolean none = Set.of("nothing", "none", "nowt", "not").contains(passage.word(at - 1));
            if (left.contains(passage.word(at)) && !none) {
                int behind = at;
                return passage.counts(clause.from(), at).stream()
                        .filter(number -> behind - number.end() <= REACH && !ofNumber(passage, number))
                        // "4 lettuces gone, just slime left".
                        .filter(number -> IntStream.range(number.end(), behind)
                                .noneMatch(mark -> passage.tokens().get(mark).mark()))
                        .reduce((first, last) -> last);
            }
        }
        return spared(passage, clause);
    }

    /** "30 of the 40 leeks left", "30 leeks left out of 40": how many there were, {@code null} when it is not told. */
    private static Integer outOf(Passage passage, Clause clause, NumberSaid standing) {
        return passage.counts(clause.from(), clause.to()).stream()
                .filter(number -> number.start() > standing.start()
                        && number.value() > standing.value()
                        && ofNumber(passage, number))
                .map(number -> Integer.valueOf((int) number.value()))
                .findFirst()
                .orElse(null);
    }

    /** A number behind "of", "out of the" or "from". */
    private static boolean ofNumber(Passage passage, NumberSaid number) {
        int at = number.start() - 1;
        while (Set.of("the", "my", "our", "about", "original", "those").contains(passage.word(at))) {
            at--;
        }
        return passage.word(at).equals("of") || passage.word(at).equals("from");
    }

    /** "All bar 3": the number behind what excepts from all. */
    private Optional<NumberSaid> spared(Passage passage, Clause clause) {
        boolean all = false;
        for (int at = clause.sentence()[0]; at < clause.sentence()[1]; at++) {
            all |= whole.contains(passage.word(at));
            int number =
                    passage.word(at).equals("apart") && passage.word(at + 1).equals("from") ? at + 2 : at + 1;
            if (all && except.contains(passage.word(at))) {
                return passage.counts(number, clause.sentence()[1]).stream()
                        .filter(one -> one.start() - number <= 1)
                        .findFirst();
            }
        }
        return Optional.empty();
    }

    /** What was picked or thinned out is gone too, but was not lost; where it cannot be told how many were, the number left is a note. */
    private static Event ofWhatStands(Told told, Passage passage, int standing) {
        List<Planting> meant = passage.situation().plantings().stream()
                .filter(planting -> told.plantings().contains(planting.id()))
                .toList();
        Planting one = meant.size() == 1 ? meant.get(0) : null;
        Integer before = one == null ? null : one.count() == null ? one.sown() : one.count();
        boolean picked = one != null && passage.situation().has(one, Set.of(What.HARVESTED))
                || passage.actions().stream().anyMatch(action -> Set.of(What.HARVESTED.word(), What.THINNED.word())
                        .contains(action.action()));
        Event event = told.event();
        return before == null || before <= standing || picked
                ? Event.of(What.NOTE, event.planting(), event.crop(), event.on())
                        .withDetail(standing + " left")
                : event.withCount(before - standing);
    }

    /** "Ate half a tomato plant". */
    private static boolean halfOfOne(Passage passage, Clause clause) {
        for (int at = clause.from(); at + 1 < clause.to(); at++) {
            if (passage.word(at).equals("half")
                    && Set.of("a", "an", "one", "of").contains(passage.word(at + 1))) {
                return true;
            }
        }
        return false;
    }

    private boolean onlySome(Passage passage, Clause clause) {
        boolean all = false;
        boolean some = animals.does(passage, clause)
                || animals.by(passage, clause)
                || animals.begins(passage, clause)
                || weather.contains(passage.word(clause.action().words().nextSetBit(0)));
        for (int at = clause.sentence()[0]; at < clause.sentence()[1]; at++) {
            int here = at;
            // "Lost a few of them" names no crop.
            boolean ofCrop = clause.crops().isEmpty()
                    || clause.crops().stream()
                            .map(CropSaid::start)
                            .anyMatch(start -> here < start && start - here <= NEAR);
            boolean theLot =
                    passage.word(at).equals("lot") && !passage.word(at - 1).equals("the");
            all |= whole.contains(passage.word(at)) && !theLot;
            some |= ofCrop && (partly.contains(passage.word(at)) || theLot);
        }
        return some && !all;
    }
}
