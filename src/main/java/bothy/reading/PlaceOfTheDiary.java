package bothy.reading;

import bothy.garden.Inquiry;
import bothy.garden.Planting;
import bothy.reading.said.Passage;
import bothy.reading.said.PlaceSaid;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** "What was in bed 2": asks the diary for what stood in the place named, cleared or not. */
final class PlaceOfTheDiary {
    private static final String AT_A_PLACE = "diary-place";

    private PlaceOfTheDiary() {}

    /**
     * The question about what stood there.
     *
     * @param otherwise what is asked where no place is named: "what is on the list"
     */
    static Inquiry asked(Inquiry inquiry, Inquiry otherwise, Passage passage, int[] sentence) {
        if (!AT_A_PLACE.equals(inquiry.topic())) {
            return inquiry;
        }
        Set<String> places = Passage.within(passage.places(), sentence[0], sentence[1]).stream()
                .map(PlaceSaid::name)
                .collect(Collectors.toSet());
        List<String> there = passage.situation().plantings().stream()
                .filter(planting -> planting.begunAtAll() && places.contains(planting.place()))
                .map(Planting::id)
                .toList();
        return places.isEmpty() ? otherwise : inquiry.ofCrop(null).about(there);
    }
}
