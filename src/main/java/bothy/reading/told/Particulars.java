package bothy.reading.told;

import bothy.garden.Event;
import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.PlaceSaid;
import bothy.reading.said.Quantity;
import bothy.reading.text.Token;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** The count, amount, place and container that a clause gives for each of its crops. */
public final class Particulars {
    private static final Set<String> BIGGEST =
            Set.of("biggest", "largest", "heaviest", "smallest", "fattest", "longest", "best", "lightest");
    /** So many words lie between it and what it weighs. */
    private static final int TO_THE_BIGGEST = 5;

    private final Counts counts;
    private final Animals animals;
    private final Losses losses;

    public Particulars(bothy.almanac.Words words) {
        counts = new Counts(words);
        animals = new Animals(words);
        losses = new Losses(words, animals);
    }

    public Set<String> vocabulary() {
        Set<String> all = new HashSet<>(counts.vocabulary());
        all.addAll(losses.vocabulary());
        all.addAll(animals.vocabulary());
        return all;
    }

    /** The count told for a crop, {@code null} when none is. */
    Integer count(Passage passage, Clause clause, CropSaid crop) {
        return counts.of(passage, clause, crop);
    }

    /** A number of a clause that may count plants and was given to none, {@code null} when there is none. */
    Integer leftOver(Passage passage, Clause clause) {
        return counts.byThemselves().leftOver(passage, clause);
    }

    /** What animals did. */
    Animals animals() {
        return animals;
    }

    /** A loss with its count, where it can be told. */
    Told lost(Passage passage, Clause clause, Told told) {
        return losses.counted(passage, clause, told);
    }

    /** A number by itself: "potted on 6". */
    Integer loose(Passage passage, Clause clause) {
        return counts.byThemselves().of(passage, clause, passage.counts(clause.from(), clause.to()));
    }

    /** An event with the amount that is told for its crop. */
    Event withAmount(Event event, Passage passage, Clause clause, CropSaid crop) {
        Quantity amount = amount(event.what(), passage, clause, crop);
        if (amount == null) {
            return event;
        }
        if (Set.of(What.WATERED, What.FED).contains(event.what()) && each(passage, amount)) {
            return event.withAmount(amount.value(), amount.unit()).withDetail("each");
        }
        if (event.what() == What.RAIN && amount.unit().equals("m")) {
            return event.withAmount(Math.round(amount.value() * 100_000) / 100.0, "mm");
        }
        return event.withAmount(amount.value(), amount.unit());
    }

    /** "2 litres each", "a can per plant", "each got a litre": what one plant got. */
    private static boolean each(Passage passage, Quantity amount) {
        int after = passage.word(amount.end()).equals("of") ? amount.end() + 2 : amount.end();
        boolean behind = Set.of("each", "apiece").contains(passage.word(after))
                || Set.of("per", "a", "to", "for", "every").contains(passage.word(after))
                        && Set.of("plant", "pot", "each", "every", "one", "bag", "growbag", "tub", "vine", "bush")
                                .contains(passage.word(after + 1));
        behind |= Set.of("per", "each", "every").contains(passage.word(after)) && passage.end("crop", after + 1) > 0;
        behind |= Set.of("each", "apiece", "plant", "pot").contains(passage.word(amount.end() - 1));
        boolean before = false;
        for (int at = Math.max(0, amount.start() - 4); at < amount.start(); at++) {
            before |= Set.of("each", "every").contains(passage.word(at));
        }
        return behind || before;
    }

    private static Quantity amount(What what, Passage passage, Clause clause, CropSaid crop) {
        List<Quantity> fitting = Passage.within(passage.quantities(), clause.from(), clause.to()).stream()
                .filter(quantity -> fits(what, quantity) && !ofTheBiggest(passage, quantity))
                .toList();
        if (fitting.isEmpty()) {
            return null;
        }
        Quantity sum = clause.crops().size() > 1 ? null : WeightsListed.sum(what, passage, clause, fitting);
        if (sum != null) {
            return sum;
        }
        if (crop == null || clause.crops().size() < 2) {
            return fitting.stream()
                    .filter(quantity -> crop != null && rightBefore(passage, quantity, crop))
                    .findFirst()
                    .orElse(fitting.get(0));
        }
        Map<CropSaid, Quantity> told = AmountsBehind.of(passage, clause, fitting);
        if (told.containsKey(crop)) {
            return told.get(crop);
        }
        return besides(
                what,
                passage,
                clause,
                crop,
                fitting.stream()
                        .filter(quantity -> !told.containsValue(quantity))
                        .toList());
    }

    /** "Dug the last of them, 3.5 kg, plus 600 g of peas". */
    private static boolean rightBefore(Passage passage, Quantity quantity, CropSaid crop) {
        int at = passage.word(quantity.end()).equals("of") ? quantity.end() + 1 : quantity.end();
        return crop.start() == at;
    }

    /** The amount of a crop of several, among those that are not told to be another's. */
    private static Quantity besides(What what, Passage passage, Clause clause, CropSaid crop, List<Quantity> fitting) {
        Quantity listed = fitting.stream()
                .filter(quantity -> behind(passage, crop, quantity))
                .findFirst()
                .orElse(null);
        if (listed != null) {
            return listed;
        }
        Quantity before = fitting.stream()
                .filter(quantity -> quantity.end() <= crop.start() && !ofAnotherDay(passage, quantity, crop))
                .filter(quantity -> clause.crops().stream().noneMatch(other -> behind(passage, other, quantity)))
                .filter(quantity -> clause.crops().stream()
                        .noneMatch(other -> other.start() >= quantity.end() && other.end() <= crop.start()))
                .reduce((first, second) -> second)
                .orElse(null);
        Quantity again = before == null && fitting.size() == 1 ? again(passage, clause, crop, fitting.get(0)) : null;
        boolean forAll = before == null
                && again == null
                && fitting.size() == 1
                && what == What.WATERED
                && passage.counts(clause.from(), clause.to()).isEmpty();
        return forAll ? fitting.get(0) : again != null ? again : before;
    }

    /** "Tomatoes on Saturday and 1 kg more today, plus 4 aubergines": more of what was weighed before. */
    private static boolean ofAnotherDay(Passage passage, Quantity quantity, CropSaid crop) {
        boolean counted = passage.numbers().stream()
                .anyMatch(number -> number.start() >= quantity.end() && number.end() == crop.start());
        return counted && passage.word(quantity.end()).equals("more");
    }

    /** "19 swedes, biggest is 4 lb", "the heaviest one weighed 2 kg": of one of them. */
    private static boolean ofTheBiggest(Passage passage, Quantity quantity) {
        return IntStream.range(Math.max(0, quantity.start() - TO_THE_BIGGEST), quantity.start())
                .anyMatch(at -> BIGGEST.contains(passage.word(at))
                        && IntStream.range(at, quantity.start())
                                .noneMatch(
                                        between -> passage.tokens().get(between).endsSentence()));
    }

    /** "Courgettes 5, beans 1.2 kg": right behind the name, and the list goes on or ends behind it. */
    private static boolean behind(Passage passage, CropSaid crop, Quantity quantity) {
        int gap = quantity.start() - crop.end();
        if (gap == 1 && passage.word(crop.end()).equals(",")) {
            return weighsOne(passage, crop, quantity);
        }
        boolean verbBetween = gap > 0
                && gap <= 2
                && IntStream.range(crop.end(), quantity.start()).allMatch(at -> passage.actions().stream()
                        .anyMatch(action -> action.words().get(at))); // "Beans picked 2 kg, lettuces 4".
        boolean next = gap == 0
                || verbBetween
                || gap == 1 && Set.of(":", "-", "(", "=", "with").contains(passage.word(crop.end()));
        return next
                && (quantity.end() >= passage.size()
                        // "Toms 2 kg picked yesterday and courgettes 5".
                        || passage.actions().stream().anyMatch(action -> action.start() == quantity.end())
                        || passage.days().stream().anyMatch(day -> day.start() == quantity.end())
                        || listedOn(passage, quantity.end())
                        || Set.of(",", ")", "and", "&", ";", ".", "\n", "!").contains(passage.word(quantity.end())));
    }

    /** "Okra 1.2 kg tomatoes 800 g": the next of the list with an amount of its own. */
    private static boolean listedOn(Passage passage, int at) {
        return passage.crops().stream()
                .filter(next -> next.start() == at)
                .anyMatch(next -> passage.quantities().stream().anyMatch(own -> own.start() == next.end()));
    }

    /** "6 celery, 3.4 kg trimmed, and 850 g chard": counted before and weighed after, the next crop has a weight of its own. */
    private static boolean weighsOne(Passage passage, CropSaid crop, Quantity quantity) {
        boolean counted = passage.numbers().stream()
                .anyMatch(number -> number.end() <= crop.start() && crop.start() - number.end() <= 2);
        boolean ofNext = passage.crops().stream()
                .anyMatch(other -> other.start() >= quantity.end() && other.start() - quantity.end() <= 2);
        return counted && !ofNext;
    }

    /** "Three cans on the courgettes, two on the beans": the unit goes on, {@code null} when no number does. */
    private static Quantity again(Passage passage, Clause clause, CropSaid crop, Quantity first) {
        return passage.counts(clause.from(), clause.to()).stream()
                .filter(number -> number.start() > first.end()
                        && (number.end() < crop.start()
                                        && crop.start() - number.end() <= 2
                                        && Set.of("on", "for", "to", "over").contains(passage.word(number.end()))
                                || first.unit().equals("L") && goesOn(passage, crop, number)))
                .map(number -> new Quantity(
                        number.start(),
                        number.end(),
                        number.value() * first.value() / first.told(),
                        first.unit(),
                        number.value()))
                .findFirst()
                .orElse(null);
    }

    /** "The courgettes 10 litres and the lettuces 4". */
    private static boolean goesOn(Passage passage, CropSaid crop, NumberSaid number) {
        int behind = passage.word(crop.end()).equals("with") ? crop.end() + 1 : crop.end();
        return number.start() == behind
                && (number.end() >= passage.size()
                        || passage.tokens().get(number.end()).mark()
                        || Set.of("and", "today", "yesterday").contains(passage.word(number.end())));
    }

    private static boolean fits(What what, Quantity quantity) {
        return switch (what) {
            case SOWN -> quantity.unit().equals("kg");
            case HARVESTED -> quantity.unit().equals("kg") || quantity.unit().equals("L");
            case STORED, CURED -> quantity.unit().equals("kg");
            case WATERED, FED -> quantity.unit().equals("L");
            case RAIN -> quantity.unit().equals("mm") || quantity.unit().equals("m");
            case TEMPERATURE, FROST -> quantity.degrees();
            default -> false;
        };
    }

    /** An event with the place and container that are told for its crop. */
    static Event withPlace(Event event, Passage passage, Clause clause, CropSaid crop) {
        String place = name(passage, clause, crop, false);
        String container = name(passage, clause, crop, true);
        return event.withPlace(place, container);
    }

    private static String name(Passage passage, Clause clause, CropSaid crop, boolean container) {
        List<PlaceSaid> all = Passage.within(passage.places(), clause.from(), clause.to());
        List<PlaceSaid> places = all.stream()
                .filter(place -> place.container() == container)
                .filter(place -> !container || leadsIn(passage, place) && !leavesIt(passage, place))
                .toList();
        if (places.isEmpty()) {
            return null;
        }
        if (crop != null && clause.crops().size() > 1) {
            Optional<PlaceSaid> holding =
                    places.stream().filter(place -> holds(passage, place, crop)).findFirst();
            if (holding.isPresent()) {
                return holding.get().name();
            }
            List<PlaceSaid> own = own(passage, all, clause, crop);
            if (!own.isEmpty()) {
                return own.stream()
                        .filter(places::contains)
                        .map(PlaceSaid::name)
                        .findFirst()
                        .orElse(null);
            }
            places = places.stream()
                    .filter(place -> clause.crops().stream().noneMatch(other -> holds(passage, place, other)))
                    .toList();
            if (places.isEmpty()) {
                return null;
            }
        }
        if (crop == null || places.size() == 1) {
            return places.get(0).name();
        }
        return places.stream()
                .filter(place -> place.start() >= crop.end())
                .findFirst()
                .orElse(places.get(places.size() - 1))
                .name();
    }

    /** "Chard in the front bed and coriander in a pot": what stands between a crop and the next is its own. */
    private static List<PlaceSaid> own(Passage passage, List<PlaceSaid> all, Clause clause, CropSaid crop) {
        int next = clause.crops().stream()
                .mapToInt(CropSaid::start)
                .filter(start -> start > crop.start())
                .min()
                .orElse(Integer.MAX_VALUE);
        boolean last = next == Integer.MAX_VALUE;
        boolean others = all.stream()
                .anyMatch(place -> place.end() <= crop.start()
                        && clause.crops().stream().anyMatch(other -> other.end() <= place.start()));
        return last && !others
                ? List.of()
                : all.stream()
                        .filter(place -> place.start() >= crop.end() && place.end() <= next)
                        .filter(place -> clause.crops().stream().noneMatch(other -> holds(passage, place, other)))
                        .toList();
    }

    /** "A pot of coriander", "2 trays of leeks". */
    private static boolean holds(Passage passage, PlaceSaid place, CropSaid crop) {
        return place.container()
                && passage.word(place.end()).equals("of")
                && crop.start() > place.end()
                && crop.start() - place.end() <= 3;
    }

    /** "Out of the seed tray into cells": where they stood before. */
    private static boolean leavesIt(Passage passage, PlaceSaid place) {
        int at = place.start() - 1;
        while (Set.of("the", "my", "our", "their", "its", "a").contains(passage.word(at))) {
            at--;
        }
        boolean stays = Set.of("in", "on").contains(passage.word(at))
                && Set.of("left", "stay", "stayed", "remain", "still").contains(passage.word(at - 1));
        return stays // "15 kale planted, 2 left in the tray".
                || passage.word(at).equals("from")
                || passage.word(at).equals("of") && passage.word(at - 1).equals("out");
    }

    /** "in modules", "12 modules of peas", "into 9 cm pots". */
    private static boolean leadsIn(Passage passage, PlaceSaid place) {
        for (int at = place.start() - 1; at >= Math.max(0, place.start() - 5); at--) {
            if (Set.of("in", "into", "to", "on", "of", "per").contains(passage.word(at))
                    || passage.tokens().get(at).sort() == Token.Sort.NUMBER) {
                return true;
            }
        }
        return passage.word(place.end()).equals("of") || place.end() == passage.size();
    }
}
