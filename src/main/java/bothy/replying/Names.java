package bothy.replying;

import bothy.almanac.Wording;
import bothy.garden.English;
import bothy.garden.Garden;
import bothy.garden.Given;
import bothy.garden.Planting;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** What crops and plantings are called. */
final class Names {
    private final Wording wording;
    private final Garden garden;

    Names(Wording wording, Garden garden) {
        this.wording = wording;
        this.garden = garden;
    }

    String one(String crop) {
        Wording.Name name = wording.crops().get(crop);
        if (name == null) {
            return crop.replace('-', ' ');
        }
        String there = name.many(English.of(garden.grower()));
        return there != null ? there.replaceFirst("(?<=[^s])s$", "") : name.one();
    }

    String many(String crop) {
        Wording.Name name = wording.crops().get(crop);
        if (name == null) {
            return crop.replace('-', ' ');
        }
        String there = name.many(English.of(garden.grower()));
        return there != null ? there : name.many();
    }

    /** Whether a crop is spoken of as a mass: "garlic is", not "garlic are". */
    boolean mass(String crop) {
        Wording.Name name = wording.crops().get(crop);
        return name != null && name.one().equals(name.many()) && !many(crop).endsWith("s");
    }

    /** What an advice is about; "plants" where that is none of the grower's plantings. */
    String plants(Given given) {
        return given.planting() == null ? wording.talk().get("any-plants") : planting(given.planting());
    }

    /** "tomatoes", or with what tells it from the grower's other tomatoes. */
    String planting(String id) {
        return garden.planting(id)
                .map(this::planting)
                .orElseGet(() -> many(id.substring(id.indexOf(':') + 1).replaceFirst("-\\d+$", "")));
    }

    private String planting(Planting planting) {
        List<Planting> same = garden.growing().stream()
                .filter(other ->
                        other.crop().equals(planting.crop()) && !other.id().equals(planting.id()))
                .toList();
        String name = many(planting.crop());
        if (same.isEmpty()) {
            return name;
        }
        if (planting.variety() != null
                && same.stream().noneMatch(other -> planting.variety().equals(other.variety()))) {
            return capitals(planting.variety()) + " " + name;
        }
        if (planting.place() != null
                && same.stream().noneMatch(other -> planting.place().equals(other.place()))) {
            return name + " (" + planting.place() + ")";
        }
        return planting.begun() == null
                ? name
                : name + " of " + planting.begun().getDayOfMonth() + " "
                        + planting.begun()
                                .getMonth()
                                .getDisplayName(java.time.format.TextStyle.SHORT, java.util.Locale.UK);
    }

    /** Varieties are names, whichever way a grower types them: "Crown Prince". */
    static String capitals(String variety) {
        return Arrays.stream(variety.split(" ")).map(Phrasing::upper).collect(Collectors.joining(" "));
    }

    /** "tomatoes, beans and peas". */
    static String list(List<String> names) {
        List<String> distinct = names.stream().distinct().toList();
        if (distinct.size() < 2) {
            return String.join("", distinct);
        }
        return distinct.subList(0, distinct.size() - 1).stream().collect(Collectors.joining(", ")) + " and "
                + distinct.get(distinct.size() - 1);
    }
}
