package bothy.garden;

import java.util.Set;

/** Crops that stand for years where they were set, by the names that the diary gives them. Common practice. */
public final class Perennials {
    private static final Set<String> CROPS = Set.of(
            "strawberry",
            "rhubarb",
            "asparagus",
            "chives",
            "mint",
            "thyme",
            "rosemary",
            "sage",
            "oregano",
            "raspberry",
            "blueberry",
            "globe-artichoke",
            "horseradish");

    private Perennials() {}

    public static boolean has(String crop) {
        return crop != null && CROPS.contains(crop);
    }
}
