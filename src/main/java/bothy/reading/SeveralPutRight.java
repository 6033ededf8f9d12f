package bothy.reading;

import bothy.garden.Amendment;
import bothy.garden.Event;
import bothy.garden.Heard;
import bothy.garden.Logged;
import bothy.garden.What;
import bothy.reading.said.CropSaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.PlaceSaid;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** "No sorry 6 toms and 8 chillies", "the peas were bed 2, the carrots bed 1": each crop with what is right of it. */
final class SeveralPutRight {
    private static final Set<What> PLACED =
            EnumSet.of(What.SOWN, What.PLANTED_OUT, What.POTTED_ON, What.MOVED, What.PRICKED_OUT);

    private static final Set<String> BETWEEN =
            Set.of("was", "were", "is", "are", "x", ":", "-", "(", "the", "of", "only", "just", "in", "about");
    /** So many words may stand between a crop and its number. */
    private static final int REACH = 3;

    private static final int MOST_WORDS = 12;

    private SeveralPutRight() {}

    /** The corrections of what the last message told, empty where the message is not of that kind. */
    static Optional<Heard> of(Passage passage) {
        List<CropSaid> crops =
                passage.crops().stream().filter(crop -> !crop.thing()).toList();
        if (crops.isEmpty()
                || passage.words().contains("not")
                || passage.message().contains("?")) {
            return Optional.empty();
        }
        List<Amendment> amendments = new ArrayList<>();
        boolean placed = false;
        for (int at = 0; at < crops.size(); at++) {
            int end = at + 1 < crops.size() ? crops.get(at + 1).start() : passage.size();
            Integer count = count(passage, crops.get(at), end);
            PlaceSaid place = place(passage, crops.get(at), end);
            Logged line = line(passage, crops.get(at), count, place);
            if (line == null) {
                return Optional.empty();
            }
            Event event = (Event) line.entry();
            Event right = count == null ? event : event.withCount(count);
            amendments.add(new Amendment(line.number(), place == null ? right : in(place, right)));
            placed |= place != null;
        }
        return amendments.size() > 1 || placed ? Optional.of(Heard.correcting(amendments)) : Optional.empty();
    }

    /** Whether a message counts by the vessel and does not say how many of these there were. */
    static boolean ofEachOnly(Passage passage) {
        List<NumberSaid> numbers = passage.counts(0, passage.size());
        return numbers.size() == 1
                && passage.size() <= MOST_WORDS
                && IntStream.range(numbers.get(0).end(), numbers.get(0).end() + 2)
                        .anyMatch(at -> Set.of("each", "per").contains(passage.word(at)));
    }

    private static Event in(PlaceSaid place, Event event) {
        return place.container()
                ? event.withPlace(event.place(), place.name())
                : event.withPlace(place.name(), event.container());
    }

    /** Of the last message the line of the crop that has what is put right, {@code null} for none. */
    private static Logged line(Passage passage, CropSaid crop, Integer count, PlaceSaid place) {
        return passage.situation().lately().stream()
                .filter(line -> line.entry() instanceof Event event
                        && crop.canMean(event.crop())
                        && (count != null || place != null)
                        && (count == null || event.count() != null && event.amount() == null)
                        && (place == null || PLACED.contains(event.what()) && !same(place, event)))
                .findFirst()
                .orElse(null);
    }

    private static boolean same(PlaceSaid place, Event event) {
        return Objects.equals(place.name(), place.container() ? event.container() : event.place());
    }

    /** The number right before a crop, or behind it with nothing but a "were" between. */
    private static Integer count(Passage passage, CropSaid crop, int end) {
        return passage.counts(0, passage.size()).stream()
                .filter(number -> before(passage, number, crop) || behind(passage, number, crop, end))
                .filter(number -> number.value() >= 1 && number.value() % 1 == 0)
                .map(number -> Integer.valueOf((int) number.value()))
                .findFirst()
                .orElse(null);
    }

    private static boolean before(Passage passage, NumberSaid number, CropSaid crop) {
        return number.end() <= crop.start()
                && crop.start() - number.end() <= 2
                && IntStream.range(number.end(), crop.start()).allMatch(at -> BETWEEN.contains(passage.word(at)));
    }

    private static boolean behind(Passage passage, NumberSaid number, CropSaid crop, int end) {
        return number.start() >= crop.end()
                && number.end() <= end
                && number.start() - crop.end() <= REACH
                && passage.cropAt(number.end()).isEmpty()
                && !Set.of("each", "per").contains(passage.word(number.end()))
                && !Set.of("each", "per").contains(passage.word(number.end() + 1))
                && IntStream.range(crop.end(), number.start()).allMatch(at -> BETWEEN.contains(passage.word(at)));
    }

    private static PlaceSaid place(Passage passage, CropSaid crop, int end) {
        return Passage.within(passage.places(), crop.end(), end).stream()
                .findFirst()
                .orElse(null);
    }
}
