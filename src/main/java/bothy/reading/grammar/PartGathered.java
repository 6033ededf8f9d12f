package bothy.reading.grammar;

import bothy.reading.said.ActionSaid;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is gathered by the name of its part: "pinched out the broad beans and picked the first pods" picks broad beans. */
final class PartGathered {
    private static final Set<String> PODDED =
            Set.of("pea", "broad-bean", "french-bean", "climbing-french-bean", "runner-bean", "okra", "chilli");
    private static final Set<String> COBBED = Set.of("sweetcorn");
    private static final Set<String> HEADED = Set.of(
            "broccoli",
            "cauliflower",
            "cabbage",
            "lettuce",
            "garlic",
            "celery",
            "fennel",
            "chicory",
            "radicchio",
            "pak-choi");
    private static final Set<String> BULBOUS = Set.of("onion", "garlic", "shallot", "fennel");
    private static final Set<String> ROOTED = Set.of(
            "carrot",
            "parsnip",
            "beetroot",
            "turnip",
            "swede",
            "radish",
            "celeriac",
            "potato",
            "sweet-potato",
            "kohlrabi");
    private static final Set<String> LEAFY = Set.of(
            "lettuce",
            "chard",
            "spinach",
            "kale",
            "basil",
            "parsley",
            "coriander",
            "rocket",
            "mint",
            "cabbage",
            "pak-choi",
            "sorrel");
    private static final Set<String> STALKED = Set.of("rhubarb", "celery", "chard");
    private static final Set<String> SPEARED = Set.of("asparagus", "broccoli");

    /** By the word for a part the crops of which it is what is eaten. */
    private static final Map<String, Set<String>> CROPS = Map.ofEntries(
            Map.entry("pods", PODDED),
            Map.entry("pod", PODDED),
            Map.entry("cobs", COBBED),
            Map.entry("cob", COBBED),
            Map.entry("ears", COBBED),
            Map.entry("heads", HEADED),
            Map.entry("head", HEADED),
            Map.entry("bulbs", BULBOUS),
            Map.entry("bulb", BULBOUS),
            Map.entry("roots", ROOTED),
            Map.entry("tubers", ROOTED),
            Map.entry("leaves", LEAFY),
            Map.entry("stalks", STALKED),
            Map.entry("sticks", STALKED),
            Map.entry("stems", STALKED),
            Map.entry("spears", SPEARED));

    private static final Set<String> LED = Set.of(
            "the", "our", "my", "a", "an", "few", "some", "first", "last", "more", "of", "another", "off", "out", "up",
            "couple", "fat", "big", "good", "nice", "little", "small", "ripe", "young", "lovely", "handful", "bowl",
            "bunch");
    /** Behind the part: it was taken away and not gathered. */
    private static final Set<String> AWAY = Set.of("off", "away", "out");

    /** "Emptied the potato bags: 64 potatoes": the bags are only called so. */
    private static final Set<String> BAGS =
            Set.of("bag", "bags", "sack", "sacks", "tub", "tubs", "bucket", "buckets", "bed", "pots");

    private PartGathered() {}

    /** "Corn is done, pulled 32 cobs": the cobs are no second crop. */
    static List<CropSaid> once(Passage passage, List<CropSaid> named) {
        return named.stream()
                .filter(crop -> !CROPS.containsKey(passage.word(crop.start()))
                        || named.stream()
                                .noneMatch(other -> other.end() <= crop.start()
                                        && other.crops().equals(crop.crops())))
                .filter(crop -> !BAGS.contains(passage.word(crop.end()))
                        || named.stream()
                                .noneMatch(other -> other.start() > crop.end()
                                        && other.crops().equals(crop.crops())))
                .toList();
    }

    /** The crop named before in the sentence of whose part a doing tells, empty where there is none or are several. */
    static List<CropSaid> of(Passage passage, ActionSaid action, int[] sentence) {
        if (!action.action().equals("harvested") || action.form() != Form.PAST) {
            return List.of();
        }
        int at = action.lastWord() + 1;
        while (at < sentence[1] && (LED.contains(passage.word(at)) || passage.end("n", at) > 0)) {
            at = Math.max(at + 1, passage.end("n", at));
        }
        Set<String> bearing = CROPS.getOrDefault(passage.word(at), Set.of());
        List<CropSaid> named = Passage.within(passage.crops(), sentence[0], action.start());
        boolean one = named.stream().map(CropSaid::crops).distinct().count() == 1;
        return one && !AWAY.contains(passage.word(at + 1))
                ? named.stream()
                        .filter(crop -> crop.crops().stream().allMatch(bearing::contains))
                        .limit(1)
                        .toList()
                : List.of();
    }
}
