package bothy.reading.told;

import bothy.garden.Planting;
import bothy.garden.Situation;
import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.PlaceSaid;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Which of the grower's plantings a crop, a place or a "they" can mean. */
public final class PlantingsMeant {
    /** "Another long row of beans". */
    private static final int MORE_REACH = 4;

    /** What is done to a crop as a whole unless one planting of it is named. */
    private static final Set<What> OF_ALL = EnumSet.of(
            What.WATERED,
            What.FED,
            What.PROTECTED,
            What.SUPPORTED,
            What.NOTE,
            What.SOIL_CHECKED,
            What.TEMPERATURE,
            What.STORED,
            What.CURED);

    private PlantingsMeant() {}

    public static boolean ofAll(What what) {
        return OF_ALL.contains(what);
    }

    public static List<Planting> growing(Situation situation) {
        return situation.plantings().stream()
                .filter(planting -> !planting.over() && planting.begunAtAll())
                .toList();
    }

    /** "Fed them with the tomato feed": tomatoes, where they grow. */
    static List<Planting> byTheirFeed(Passage passage, Clause clause) {
        List<CropSaid> named = Passage.within(passage.crops(), clause.from(), clause.to());
        return named.size() != 1
                ? List.of()
                : growing(passage.situation()).stream()
                        .filter(planting -> named.get(0).canMean(planting.crop()))
                        .toList();
    }

    /** Those of a crop that a doing without a name can be about; what is sown is a lot of its own. */
    static List<Planting> lots(List<Planting> growing, String crop, What what) {
        return what == What.SOWN
                ? List.of()
                : growing.stream().filter(lot -> lot.crop().equals(crop)).toList();
    }

    /** The one kind that an ambiguous name meant before, when nothing of that name grows any more: "beans" sown again after the mice. */
    static Optional<String> grownBefore(CropSaid crop, Situation situation) {
        List<Planting> named = situation.plantings().stream()
                .filter(planting -> planting.begunAtAll() && crop.canMean(planting.crop()))
                .toList();
        List<String> kinds = named.stream().map(Planting::crop).distinct().toList();
        return kinds.size() == 1 && named.stream().allMatch(Planting::over)
                ? Optional.of(kinds.get(0))
                : Optional.empty();
    }

    /** "Sowed 20 more beans", "another row of beans": more of the only kind that was begun. */
    static Optional<String> moreOf(CropSaid crop, Passage passage) {
        boolean more = IntStream.range(Math.max(0, crop.start() - MORE_REACH), crop.start())
                .anyMatch(at -> Set.of("more", "another", "second").contains(passage.word(at)));
        List<String> kinds = passage.situation().plantings().stream()
                .filter(planting -> planting.begunAtAll() && crop.canMean(planting.crop()))
                .map(Planting::crop)
                .distinct()
                .toList();
        return more && kinds.size() == 1 ? Optional.of(kinds.get(0)) : Optional.empty();
    }

    /**
     * The one kind that an ambiguous name means because it was named in full before: "Nan gave me climbing beans, planted 10 of the
     * beans", or in what was talked about last.
     */
    static Optional<String> namedBefore(CropSaid crop, Passage passage) {
        Optional<String> here = passage.crops().stream()
                .filter(other -> other.end() <= crop.start() && (other.single() || other.certain()))
                .map(CropSaid::crop)
                .filter(crop.crops()::contains)
                .reduce((first, second) -> second);
        List<String> lately = passage.situation().crops().stream()
                .filter(crop.crops()::contains)
                .distinct()
                .toList();
        return here.isPresent() || lately.size() != 1 ? here : Optional.of(lately.get(0));
    }

    /** Plantings of a crop as far as the words tell them apart. */
    public static List<Planting> of(CropSaid crop, Passage passage, int from, int to, boolean placeTells) {
        List<Planting> ofCrop = growing(passage.situation()).stream()
                .filter(planting -> crop.canMean(planting.crop()))
                .toList();
        boolean firstGrown = crop.certain()
                && ofCrop.stream().anyMatch(planting -> planting.crop().equals(crop.crop()));
        List<Planting> fitting =
                firstGrown ? keep(ofCrop, planting -> planting.crop().equals(crop.crop())) : ofCrop;
        if (crop.variety() != null) {
            List<Planting> called = fitting.stream()
                    .filter(planting -> called(planting, crop.variety()))
                    .toList();
            boolean unnamed = fitting.size() == 1 && fitting.get(0).variety() == null;
            fitting = unnamed ? fitting : called;
        } else if (fitting.size() > 1) {
            // "The earlies": a name of the crop that names its kind as well.
            String name = IntStream.range(crop.start(), crop.end())
                    .mapToObj(passage::word)
                    .collect(Collectors.joining(" "));
            fitting = keep(
                    fitting,
                    planting -> planting.variety() != null && squeezed(name).contains(squeezed(planting.variety())));
        }
        return narrowed(fitting, passage, from, to, placeTells);
    }

    static boolean called(Planting planting, String variety) {
        return planting.variety() != null
                && (squeezed(planting.variety()).contains(squeezed(variety))
                        || squeezed(variety).contains(squeezed(planting.variety())));
    }

    private static String squeezed(String name) {
        return name.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\d]", "")
                .replaceAll("ies$", "y")
                .replaceAll("(es|s)$", "");
    }

    /** Those that a named place or day of sowing picks out; all of them when it picks none. */
    private static List<Planting> narrowed(
            List<Planting> plantings, Passage passage, int from, int to, boolean placeTells) {
        List<Planting> narrowed = plantings;
        if (placeTells) {
            for (PlaceSaid place : Passage.within(passage.places(), from, to)) {
                narrowed = keep(narrowed, planting -> stands(planting, place));
            }
        }
        return narrowed;
    }

    public static boolean stands(Planting planting, PlaceSaid place) {
        String where = place.container() ? planting.container() : planting.place();
        if (where == null) {
            return false;
        }
        String known = where.toLowerCase(Locale.ROOT);
        return known.contains(place.name())
                || place.name().contains(known)
                || (place.container() && known.contains(lastWord(place.name())));
    }

    private static String lastWord(String name) {
        return name.substring(name.lastIndexOf(' ') + 1);
    }

    public static List<Planting> keep(List<Planting> plantings, Predicate<Planting> wanted) {
        List<Planting> kept = plantings.stream().filter(wanted).toList();
        return kept.isEmpty() ? plantings : kept;
    }

    /** "What have I got in bed 2?", "no sign of anything in bed 3": what stands where the words say. */
    public static List<Planting> standingIn(Passage passage, int from, int to) {
        List<Planting> growing = growing(passage.situation());
        return Passage.within(passage.places(), from, to).stream()
                .filter(place -> !place.container())
                .map(place -> growing.stream()
                        .filter(planting -> stands(planting, place))
                        .toList())
                .filter(there -> !there.isEmpty())
                .findFirst()
                .orElse(List.of());
    }

    /** The plantings talked about last that still grow. */
    public static List<Planting> mentioned(Situation situation) {
        return growing(situation).stream()
                .filter(planting -> situation.mentioned().contains(planting.id()))
                .toList();
    }

    /** A planting in a few words: "tomatoes in the greenhouse". */
    static String label(Planting planting, String called, List<Planting> among) {
        String name = planting.variety() == null ? called : planting.variety() + " " + called;
        boolean sameName = among.stream()
                .filter(other -> other != planting)
                .anyMatch(other -> java.util.Objects.equals(other.variety(), planting.variety())
                        && other.crop().equals(planting.crop()));
        if (!sameName) {
            return name;
        }
        boolean samePlace = among.stream()
                .filter(other -> other != planting)
                .anyMatch(other -> java.util.Objects.equals(other.place(), planting.place()));
        if (planting.place() != null && !samePlace) {
            return name + " in the " + planting.place();
        }
        return planting.begun() == null
                ? name + (planting.place() == null ? "" : " in the " + planting.place())
                : name + " begun " + planting.begun().getDayOfMonth() + " "
                        + planting.begun().getMonth().getDisplayName(java.time.format.TextStyle.SHORT, Locale.ENGLISH);
    }

    public static List<String> ids(List<Planting> plantings) {
        return plantings.stream().map(Planting::id).toList();
    }

    /** The clause's own stretch. */
    public static List<Planting> of(CropSaid crop, Passage passage, Clause clause, boolean placeTells) {
        List<Planting> fitting = of(crop, passage, clause.from(), clause.to(), placeTells);
        return Passage.within(passage.days(), clause.from(), clause.to()).stream()
                .filter(day -> clause.inRelative(day.start()) && day.known())
                .findFirst()
                .map(day -> keep(fitting, planting -> begunAbout(planting, day.past())))
                .orElse(fitting);
    }

    /** "The carrots I sowed on 3 April": a day or two either way is the same sowing. */
    private static boolean begunAbout(Planting planting, java.time.LocalDate day) {
        return planting.begun() != null
                && Math.abs(java.time.temporal.ChronoUnit.DAYS.between(planting.begun(), day)) <= 2;
    }
}
