package bothy.reading;

import bothy.garden.Event;
import bothy.garden.Logged;
import bothy.garden.SignSeen;
import bothy.garden.What;
import bothy.reading.said.ActionSaid;
import bothy.reading.said.CropSaid;
import bothy.reading.said.DaySaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.PlaceSaid;
import bothy.reading.said.Quantity;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * An entry as a grower speaks of it: "the 6 beetroot", "the bit about Saturday", "the garlic I planted in May". What is named must all
 * be true of the entry; what is not named tells nothing.
 *
 * @param month the month that was named without a day, {@code null} for none
 */
record EntryDescribed(
        List<CropSaid> crops,
        Set<What> doings,
        Set<Integer> counts,
        List<Quantity> amounts,
        Set<LocalDate> days,
        Month month,
        List<PlaceSaid> places) {
    private static final Set<What> BEGUN = EnumSet.of(What.SOWN, What.PLANTED_OUT, What.MOVED, What.POTTED_ON);
    private static final Map<String, Set<What>> NOUNS = new HashMap<>();

    static {
        List.of("sowing", "sowings", "sow", "sown", "sowed").forEach(noun -> NOUNS.put(noun, BEGUN));
        List.of("planting", "plantings", "planted", "plant").forEach(noun -> NOUNS.put(noun, BEGUN));
        List.of("watering", "waterings", "watered").forEach(noun -> NOUNS.put(noun, EnumSet.of(What.WATERED)));
        List.of("feeding", "feed", "fed").forEach(noun -> NOUNS.put(noun, EnumSet.of(What.FED)));
        List.of("harvest", "harvests", "picking", "pickings", "pick", "picked", "lifting", "digging")
                .forEach(noun -> NOUNS.put(noun, EnumSet.of(What.HARVESTED)));
        List.of("frost", "frosts").forEach(noun -> NOUNS.put(noun, EnumSet.of(What.FROST)));
        List.of("rain", "rainfall").forEach(noun -> NOUNS.put(noun, EnumSet.of(What.RAIN)));
        List.of("temperature", "reading").forEach(noun -> NOUNS.put(noun, EnumSet.of(What.TEMPERATURE)));
        List.of("note", "notes").forEach(noun -> NOUNS.put(noun, EnumSet.of(What.NOTE)));
        List.of("loss", "losses", "death", "deaths").forEach(noun -> NOUNS.put(noun, EnumSet.of(What.DIED)));
        List.of("thinning", "thinned").forEach(noun -> NOUNS.put(noun, EnumSet.of(What.THINNED)));
        List.of("potting", "repotting").forEach(noun -> NOUNS.put(noun, EnumSet.of(What.POTTED_ON)));
    }

    /** Where the words that name an entry end: with the first sentence that names one, else with the message. */
    static int ends(Passage passage, int from) {
        return passage.sentences().stream()
                .filter(one -> one[1] > from
                        && !in(passage, Math.max(from, one[0]), one[1]).none())
                .mapToInt(one -> one[1])
                .findFirst()
                .orElse(passage.size());
    }

    /** What a stretch of a message tells of the entry it means. */
    static EntryDescribed in(Passage passage, int from, int to) {
        Set<What> doings = EnumSet.noneOf(What.class);
        for (ActionSaid action : Passage.within(passage.actions(), from, to)) {
            doings.addAll(doings(action.action()));
        }
        for (int at = from; at < to; at++) {
            doings.addAll(NOUNS.getOrDefault(passage.word(at), Set.of()));
        }
        Set<LocalDate> days = new HashSet<>();
        Passage.within(passage.days(), from, to).stream()
                .filter(DaySaid::known)
                .map(DaySaid::past)
                .forEach(days::add);
        Set<Integer> counts = new HashSet<>();
        passage.counts(from, to).stream()
                .filter(number -> !passage.word(number.start()).equals("one"))
                .map(NumberSaid::value)
                .forEach(value -> counts.add(value.intValue()));
        return new EntryDescribed(
                Passage.within(passage.crops(), from, to),
                doings,
                counts,
                Passage.within(passage.quantities(), from, to),
                days,
                days.isEmpty() ? month(passage, from, to) : null,
                Passage.within(passage.places(), from, to));
    }

    private static Set<What> doings(String action) {
        return action.equals("planted") || action.equals("sown")
                ? BEGUN
                : What.of(action).map(EnumSet::of).orElse(EnumSet.noneOf(What.class));
    }

    private static Month month(Passage passage, int from, int to) {
        for (int at = from + 1; at < to; at++) {
            for (Month month : Month.values()) {
                boolean named = passage.word(at)
                        .equals(month.getDisplayName(TextStyle.FULL, Locale.ENGLISH)
                                .toLowerCase(Locale.ROOT));
                if (named
                        && Set.of("in", "of", "from", "last", "since", "during").contains(passage.word(at - 1))) {
                    return month;
                }
            }
        }
        return null;
    }

    boolean none() {
        return crops.isEmpty() && bare();
    }

    /** Whether nothing is told but perhaps a crop. */
    boolean bare() {
        return doings.isEmpty() && counts.isEmpty() && amounts.isEmpty() && days.isEmpty() && month == null;
    }

    /** The same with what else was called wrong. */
    EntryDescribed with(Changes wrong) {
        List<CropSaid> allCrops = new ArrayList<>(crops);
        Set<Integer> allCounts = new HashSet<>(counts);
        Set<LocalDate> allDays = new HashSet<>(days);
        if (wrong.wrongCrop() != null) {
            allCrops.add(wrong.wrongCrop());
        }
        if (wrong.wrongCount() != null && wrong.amount() == null) {
            allCounts.add(wrong.wrongCount());
        }
        if (wrong.wrongOn() != null) {
            allDays.add(wrong.wrongOn());
        }
        return new EntryDescribed(allCrops, doings, allCounts, amounts, allDays, month, places);
    }

    EntryDescribed with(CropSaid crop) {
        return crop == null || !crops.isEmpty()
                ? this
                : new EntryDescribed(List.of(crop), doings, counts, amounts, days, month, places);
    }

    EntryDescribed doing(Set<What> others) {
        return doings.isEmpty() && !others.isEmpty()
                ? new EntryDescribed(crops, others, counts, amounts, days, month, places)
                : this;
    }

    /** The lines of which all that was named is true. */
    List<Logged> among(List<Logged> lines) {
        List<Logged> fitting = lines.stream().filter(this::fits).toList();
        List<Logged> there =
                fitting.stream().filter(line -> tellsPlace(line.entry())).toList();
        return there.isEmpty() ? fitting : there;
    }

    private boolean tellsPlace(bothy.garden.Entry entry) {
        return entry instanceof Event event
                && places.stream().anyMatch(place -> (place.container() ? event.container() : event.place()) != null);
    }

    private boolean fits(Logged line) {
        if (line.entry() instanceof SignSeen sign) {
            return doings.isEmpty()
                    && counts.isEmpty()
                    && amounts.isEmpty()
                    && places.isEmpty()
                    && ofCrop(sign.crop())
                    && !crops.isEmpty()
                    && onDay(sign.on());
        }
        return line.entry() instanceof Event event
                && ofCrop(event.crop())
                && (doings.isEmpty() || doings.contains(event.what()))
                && (counts.isEmpty() || event.count() != null && counts.contains(event.count()))
                && amounts.stream().allMatch(amount -> weighs(event, amount))
                && onDay(event.on())
                && places.stream().allMatch(place -> stood(event, place));
    }

    private boolean ofCrop(String crop) {
        return crops.isEmpty() || crops.stream().anyMatch(named -> named.canMean(crop));
    }

    private boolean onDay(LocalDate day) {
        boolean any = days.isEmpty() && month == null;
        return any || day != null && (days.contains(day) || month != null && day.getMonth() == month);
    }

    private static boolean weighs(Event event, Quantity amount) {
        return event.amount() != null
                && amount.unit().equals(event.unit())
                && Math.abs(event.amount() - amount.value()) <= Math.abs(amount.value()) / 100;
    }

    /** A place that the entry does not tell is no reason against it. */
    private static boolean stood(Event event, PlaceSaid place) {
        String where = place.container() ? event.container() : event.place();
        return where == null || where.contains(place.name()) || place.name().contains(where);
    }
}
