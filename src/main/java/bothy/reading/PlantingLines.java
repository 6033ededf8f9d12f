package bothy.reading;

import bothy.garden.Grower;
import bothy.garden.Planting;
import bothy.garden.Planting.Start;
import bothy.garden.Situation;
import bothy.garden.What;
import bothy.reading.said.CropSaid;
import bothy.reading.said.DaySaid;
import bothy.reading.said.Passage;
import bothy.reading.said.PlaceSaid;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads plantings told in plain English, one a line: "6 tomatoes sown 2027-03-10, in pots, windowsill". */
public final class PlantingLines {
    private final Reading reading;

    public PlantingLines(Reading reading) {
        this.reading = reading;
    }

    /** The plantings that the lines tell, in their order; a line that names no crop gives none. */
    public List<Planting> read(List<String> lines, LocalDate today, Grower grower) {
        List<Planting> plantings = new ArrayList<>();
        Map<String, Integer> numbers = new HashMap<>();
        Situation bare = new Situation(today, grower, List.of(), null, List.of(), List.of());
        for (String line : lines) {
            Passage passage = reading.passage(line, bare);
            if (!passage.crops().isEmpty()) {
                CropSaid crop = passage.crops().get(0);
                int number = numbers.merge(crop.crop(), 1, Integer::sum);
                plantings.add(planting(passage, crop, number));
            }
        }
        return plantings;
    }

    /** What the lines tell as having happened, by the ids that {@link #read} gives. */
    public Map<String, Set<What>> happened(List<String> lines, LocalDate today, Grower grower) {
        Map<String, Set<What>> happened = new HashMap<>();
        Map<String, Integer> numbers = new HashMap<>();
        Situation bare = new Situation(today, grower, List.of(), null, List.of(), List.of());
        for (String line : lines) {
            Passage passage = reading.passage(line, bare);
            if (!passage.crops().isEmpty()) {
                String crop = passage.crops().get(0).crop();
                Set<What> told = passage.actions().stream()
                        .flatMap(action -> What.of(action.action()).stream())
                        .collect(Collectors.toSet());
                happened.put(crop + "-" + numbers.merge(crop, 1, Integer::sum), told);
            }
        }
        return happened;
    }

    private Planting planting(Passage passage, CropSaid crop, int number) {
        Integer count = count(passage, crop);
        return new Planting(
                crop.crop() + "-" + number,
                crop.crop(),
                crop.variety(),
                place(passage, false),
                place(passage, true),
                start(passage, crop),
                day(passage, false),
                count,
                count,
                day(passage, true));
    }

    private static Integer count(Passage passage, CropSaid crop) {
        return passage.counts(0, passage.size()).stream()
                .filter(number -> number.value() >= 0 && number.value() < 1_000_000)
                .filter(number -> number.start() < crop.start() || number.start() - crop.end() <= 2)
                .map(number -> Integer.valueOf((int) number.value()))
                .findFirst()
                .orElse(null);
    }

    private static String place(Passage passage, boolean container) {
        return passage.places().stream()
                .filter(place -> place.container() == container)
                .map(PlaceSaid::name)
                .reduce((first, second) -> second)
                .orElse(null);
    }

    private Start start(Passage passage, CropSaid crop) {
        if (says(passage, "packet", "packets")) {
            return Start.PACKET;
        }
        if (says(passage, "set", "sets")) {
            return Start.SET;
        }
        if (says(passage, "clove", "cloves") || crop.canMean("garlic")) {
            return Start.CLOVE;
        }
        if (says(passage, "tuber", "tubers", "chitted") || crop.canMean("potato")) {
            return Start.TUBER;
        }
        boolean bought = says(passage, "bought", "plug", "plugs", "plants", "transplants");
        return bought && !says(passage, "sown", "sowed", "seed", "seeds") ? Start.PLANT : Start.SEED;
    }

    private static boolean says(Passage passage, String... words) {
        Set<String> wanted = Set.of(words);
        return passage.tokens().stream().anyMatch(token -> wanted.contains(token.word()));
    }

    private static LocalDate day(Passage passage, boolean end) {
        for (DaySaid day : passage.days()) {
            boolean ends = Set.of("ended", "died", "cleared", "finished", "over", "harvested", "on")
                            .contains(passage.word(day.start() - 1))
                    && says(passage, "ended", "died", "cleared", "finished")
                    && day != passage.days().get(0);
            if (day.known() && ends == end) {
                return day.past();
            }
        }
        return null;
    }
}
