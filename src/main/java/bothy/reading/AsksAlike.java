package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Inquiry;
import bothy.garden.Planting;
import bothy.garden.Question;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.Span;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseBook.Found;
import bothy.reading.text.PhraseFile;
import bothy.reading.told.PlantingsMeant;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** "And onions?", "and for 40?", "what about in a 3 x 6 one?": asks of another crop, number or size what the last message asked. */
final class AsksAlike {
    private static final String FILE = "questions";

    /** What has no question of its own yet. */
    private static final Set<Question> OPEN =
            Set.of(Question.OTHER, Question.HOW_TO, Question.STATUS, Question.COMPARE, Question.HOW_MANY_FIT);

    /** Of these another crop is another question. */
    private static final Set<Question> NOT_OF_A_CROP = Set.of(Question.WHAT_TO_GROW, Question.COMPARE);

    private static final Set<Question> OF_ROOM = Set.of(Question.HOW_MANY_FIT, Question.SPACING);
    private static final Set<Question> OF_CANS = Set.of(Question.FEED_DOSE, Question.HOW_MUCH_WATER);
    private static final Set<String> JOINING = Set.of("and", "ok", "so", "thanks", "but");
    /** "How often": so many words name nothing of their own. */
    private static final int BARE = 2;

    /** So many words of a message that says that it goes on may be neither crop, figure nor filling. */
    private static final int STRANGE_WORDS = 1;

    private final PhraseBook<String> leads;
    private final Set<String> besides;
    private final Set<String> sameRoom;

    AsksAlike(Words words) {
        leads = new PhraseFile(words, FILE, Map.of()).book("/alike/leads", "lead");
        besides = Set.copyOf(words.list(FILE, "/alike/besides"));
        sameRoom = Set.copyOf(words.list(FILE, "/alike/same-room"));
    }

    Set<String> vocabulary() {
        Set<String> all = new HashSet<>(leads.vocabulary());
        all.addAll(besides);
        all.addAll(sameRoom);
        return all;
    }

    /** The questions of the message before with what this one names instead; empty when it asks or tells something of its own. */
    Optional<List<Inquiry>> in(Passage passage, Sentences.Gathered gathered) {
        List<Inquiry> before = passage.situation().asked();
        boolean tells = !gathered.told().isEmpty()
                || !gathered.plans().isEmpty()
                || !gathered.seen().isEmpty()
                || !gathered.set().isEmpty();
        if (before.isEmpty() || tells) {
            return Optional.empty();
        }
        Optional<Inquiry> room = gathered.asked().size() == 1
                ? inTheSameRoom(gathered.asked().get(0), before.get(0), passage)
                : Optional.empty();
        if (room.isPresent()) {
            return room.map(List::of);
        }
        Optional<Inquiry> onward = gathered.asked().size() == 1
                ? goingOn(gathered.asked().get(0), before.get(before.size() - 1), passage)
                : Optional.empty();
        if (onward.isPresent()) {
            return onward.map(List::of);
        }
        boolean open = gathered.asked().stream().allMatch(AsksAlike::open);
        if (!open || !onlyNames(passage)) {
            return Optional.empty();
        }
        List<Inquiry> alike = before.stream()
                .flatMap(inquiry -> ofCrops(with(inquiry, passage), passage))
                .distinct()
                .toList();
        return alike.equals(before) || alike.isEmpty() ? Optional.empty() : Optional.of(alike);
    }

    /** "How often?", "and when?": of the matter asked about before, another side. */
    private static Optional<Inquiry> goingOn(Inquiry own, Inquiry before, Passage passage) {
        int begins = JOINING.contains(passage.word(0)) ? 1 : 0;
        boolean bare = passage.tokens().stream().filter(token -> !token.mark()).count() <= begins + BARE;
        Inquiry onward = bare ? GoesOnAsking.from(before, own, passage, begins) : own;
        return onward.equals(own)
                ? Optional.empty()
                : Optional.of(onward.ofCrop(before.crop()).about(before.plantings()));
    }

    private static boolean open(Inquiry inquiry) {
        return OPEN.contains(inquiry.question()) && inquiry.topic() == null && inquiry.eaten() == null;
    }

    /** "How many in staggered rows", "and how many kale in the same bed": of the bed that was told before. */
    private Optional<Inquiry> inTheSameRoom(Inquiry own, Inquiry before, Passage passage) {
        boolean asks = OF_ROOM.contains(own.question())
                && own.topic() == null
                && own.length() == null
                && own.count() == null
                && passage.words().stream().anyMatch(sameRoom::contains);
        boolean sized = before.question() == Question.HOW_MANY_FIT && before.length() != null;
        return asks && sized
                ? Optional.of(
                        own.crop() == null ? before : before.ofCrop(own.crop()).about(own.plantings()))
                : Optional.empty();
    }

    /** Whether a message names crops and figures and hardly anything else. */
    private boolean onlyNames(Passage passage) {
        BitSet said = new BitSet();
        Stream.<List<? extends Span>>of(
                        passage.crops(), passage.numbers(), passage.quantities(), passage.days(), passage.places())
                .flatMap(List::stream)
                .forEach(span -> said.set(span.start(), span.end()));
        if (said.isEmpty()) {
            return false;
        }
        List<Found<String>> leading = leads.find(passage.tokens(), 0, passage.size(), passage);
        leading.forEach(lead -> said.set(lead.start(), lead.end()));
        int strange = 0;
        for (int at = said.nextClearBit(0); at < passage.size(); at = said.nextClearBit(at + 1)) {
            strange += passage.tokens().get(at).mark() || besides.contains(passage.word(at)) ? 0 : 1;
        }
        return strange <= (leading.isEmpty() ? 0 : STRANGE_WORDS);
    }

    private static Stream<Inquiry> ofCrops(Inquiry inquiry, Passage passage) {
        List<CropSaid> crops =
                passage.crops().stream().filter(crop -> !crop.thing()).toList();
        if (crops.isEmpty()) {
            return Stream.of(inquiry);
        }
        return NOT_OF_A_CROP.contains(inquiry.question())
                ? Stream.empty()
                : crops.stream().map(said -> {
                    List<Planting> plantings = PlantingsMeant.of(said, passage, 0, passage.size(), true);
                    return inquiry.ofCrop(Inquiries.name(said, plantings)).about(PlantingsMeant.ids(plantings));
                });
    }

    /** The same question with the figures that this message tells. */
    private static Inquiry with(Inquiry before, Passage passage) {
        Inquiry told = SizesAsked.in(Inquiry.of(before.question(), null, List.of()), passage, 0, passage.size());
        if (OF_CANS.contains(before.question())) {
            if (before.question() == Question.HOW_MUCH_WATER && "°C".equals(told.unit())) {
                return before.with(
                        before.count(), before.length(), told.amount(), told.unit()); // "And if it is 30 degrees?"
            }
            Inquiry fed = NumbersAsked.feed(before, passage);
            return fed.label() == null && before.label() != null ? fed.withFeed(before.label(), fed.amount()) : fed;
        }
        Inquiry potted = NumbersAsked.COMPOST.equals(before.topic()) ? PotsAsked.in(before, passage) : before;
        if (!potted.equals(before)) {
            return potted;
        }
        Integer count = told.count() == null ? before.count() : told.count();
        Inquiry counted = before.with(count, before.length(), before.amount(), before.unit());
        return told.length() == null ? counted : counted.sized(told.length(), told.width());
    }
}
