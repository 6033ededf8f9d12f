package bothy.reading.told;

import bothy.garden.Event;
import bothy.garden.Planting;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.util.List;

/** Which crop a note in the grower's own words is about: the one that it names, else the one talked about last. */
final class Notes {
    private Notes() {}

    static Told told(Event note, Passage passage, Clause clause) {
        Told told = Told.of(note, Statements.from(passage, clause), Statements.to(passage, clause));
        List<String> named = Passage.within(passage.crops(), clause.from(), passage.size()).stream()
                .filter(crop -> !crop.thing() && (crop.single() || crop.certain()))
                .map(CropSaid::crop)
                .distinct()
                .toList();
        List<String> last = PlantingsMeant.mentioned(passage.situation()).stream()
                .map(Planting::crop)
                .distinct()
                .toList();
        List<String> crops = named.isEmpty() ? last : named;
        return crops.size() == 1 ? told.with(note.withPlanting(null, crops.get(0))) : told;
    }
}
