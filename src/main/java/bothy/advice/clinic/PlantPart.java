package bothy.advice.clinic;

import java.util.Set;

/** Where on the plant a sign shows, as far as its name tells: what shows elsewhere and is told later is a trouble of its own. */
enum PlantPart {
    LEAVES(Set.of(
            "brown-leaves",
            "holes-in-leaves",
            "leaf-curl",
            "leaf-drop",
            "leaf-spots",
            "leaf-tunnels",
            "leaves-bleached",
            "mottled-leaves",
            "purple-leaves",
            "rust",
            "sick-leaves",
            "sticky-leaves",
            "white-on-leaves",
            "yellow-leaves",
            "yellow-leaves-between-veins",
            "yellow-leaves-edges",
            "yellow-leaves-lower",
            "yellow-leaves-upper")),
    FLOWERS_AND_FRUIT(Set.of(
            "bitter-fruit",
            "blossom-end-rot",
            "flowers-dropping",
            "fruit-holes",
            "fruit-misshapen",
            "fruit-rot",
            "fruit-rotting-small",
            "fruit-splitting",
            "fruit-spots",
            "gaps-in-cobs",
            "green-shoulders",
            "leafy-no-fruit",
            "maggots-in-pods",
            "not-ripening",
            "only-male-flowers",
            "smut",
            "sunscald")),
    UNDERGROUND(Set.of(
            "forked-roots",
            "green-tubers",
            "hollow-tubers",
            "maggots-in-roots",
            "no-cloves",
            "root-eaten",
            "root-marks",
            "scabby-tubers",
            "short-roots",
            "small-bulbs",
            "swollen-roots",
            "woody-roots")),
    /** The whole plant, or a sign that may show anywhere. */
    ANY(Set.of());

    private final Set<String> signs;

    PlantPart(Set<String> signs) {
        this.signs = signs;
    }

    static PlantPart of(String sign) {
        for (PlantPart part : values()) {
            if (part.signs.contains(sign)) {
                return part;
            }
        }
        return ANY;
    }

    /** Whether two signs show on different parts, both known. */
    boolean apartFrom(PlantPart other) {
        return this != ANY && other != ANY && this != other;
    }
}
