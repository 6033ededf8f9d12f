package bothy.reading;

import bothy.garden.Event;
import bothy.garden.Heard;
import bothy.garden.Logged;
import bothy.garden.Situation;
import bothy.garden.Statement;
import bothy.garden.What;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.told.PlantingsMeant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** "Same for the beans": what was told last, for another crop. */
final class SameFor {
    private SameFor() {}

    static Optional<Heard> in(Passage passage) {
        Situation situation = passage.situation();
        List<Event> events = situation.lately().stream()
                .map(Logged::entry)
                .filter(Event.class::isInstance)
                .map(Event.class::cast)
                .filter(event -> !event.what().ofThePlot())
                .toList();
        if (events.isEmpty() || passage.crops().isEmpty()) {
            return Optional.empty();
        }
        List<Statement> statements = new ArrayList<>();
        for (CropSaid crop : passage.crops()) {
            List<String> ids = PlantingsMeant.ids(PlantingsMeant.of(crop, passage, 0, passage.size(), true));
            String name = ids.isEmpty()
                    ? crop.crop()
                    : situation.plantings().stream()
                            .filter(planting -> planting.id().equals(ids.get(0)))
                            .findFirst()
                            .orElseThrow()
                            .crop();
            events.stream().map(event -> event.what()).distinct().forEach(what -> {
                Event first = events.stream()
                        .filter(event -> event.what() == what)
                        .findFirst()
                        .orElseThrow();
                Event copy = Event.of(what, null, name, first.on())
                        .withPlace(first.place(), first.container())
                        .withVariety(crop.variety())
                        .withCount(GoingOn.count(passage, crop));
                boolean begins = what == What.SOWN;
                boolean clear = ids.size() == 1
                        || PlantingsMeant.ofAll(what)
                        || begins
                        || ids.isEmpty() && (crop.single() || crop.certain());
                statements.add(new Statement(
                        copy,
                        begins ? List.of() : ids,
                        clear,
                        0,
                        passage.message().length(),
                        List.of("date")));
            });
        }
        return Optional.of(Heard.of(statements));
    }
}
