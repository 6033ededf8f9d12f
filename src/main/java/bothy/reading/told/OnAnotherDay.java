package bothy.reading.told;

import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.DaySaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** "Cut 7 today and 4 yesterday": the same doing again, with a count and a day of its own. */
final class OnAnotherDay {
    private static final Set<What> BY_DAYS =
            EnumSet.of(What.HARVESTED, What.SOWN, What.PLANTED_OUT, What.POTTED_ON, What.PRICKED_OUT, What.DIED);
    private static final Set<String> BETWEEN = Set.of(
            "ears", "cobs", "heads", "pods", "bulbs", "roots", "fruits", "more", "on", "of", "off", "from", "the",
            "same", "plants", "them", "another", "last", "-", "in", "out");
    /** What stands between two days of one kind of weather. */
    private static final Set<String> STRINGING =
            Set.of("and", ",", "&", "on", "again", "then", "both", "the", "another", "also");

    private static final Set<String> AFTER_FROST = Set.of(
            "and",
            "but",
            "so",
            "night",
            "nights",
            "morning",
            "mornings",
            "both",
            "here",
            "that",
            "which",
            "now",
            "again",
            "too");
    private static final int REACH = 4;
    /** So many words behind a weight may name its crop: "1 kg of the tomatoes". */
    private static final int CROP_REACH = 3;

    private OnAnotherDay() {}

    /** The first of several doings without the count that belongs to a later day: "sown 8/5, then 10 more on 15/5". */
    static Told first(Passage passage, Clause clause, Told first) {
        List<DaySaid> days = Passage.within(passage.days(), clause.from(), clause.to());
        if (days.size() < 2 || first.event().count() == null) {
            return first;
        }
        boolean later = passage.counts(clause.from(), clause.to()).stream()
                .filter(number -> (int) number.value() == first.event().count())
                .anyMatch(number -> number.start() >= days.get(0).end()
                        && days.get(1).start() - number.end() >= 0
                        && days.get(1).start() - number.end() <= 2);
        boolean alone = passage.counts(clause.from(), clause.to()).stream()
                .noneMatch(number -> number.end() <= days.get(0).start()
                        && (int) number.value() == first.event().count());
        return later && alone && !days.get(1).past().equals(days.get(0).past())
                ? first.with(first.event().withCount(null))
                : first;
    }

    /** "4 mm Tuesday and 11 mm Wednesday": as many rains as there are amounts and days. */
    static List<Told> rains(Passage passage, Clause clause, Told first) {
        List<DaySaid> days = Passage.within(passage.days(), clause.from(), clause.to());
        List<Quantity> depths = Passage.within(passage.quantities(), clause.from(), clause.to()).stream()
                .filter(quantity -> quantity.unit().equals("mm"))
                .toList();
        List<Told> rains = new ArrayList<>();
        boolean paired = depths.size() > 1 && days.size() == depths.size();
        for (int i = 0; paired && i < depths.size(); i++) {
            Told rain = first.with(first.event().withAmount(depths.get(i).value(), "mm"));
            rains.add(WhenTold.dated(rain, days.get(i), passage));
        }
        if (depths.size() == 1 && days.size() == 2) {
            Quantity depth = depths.get(0);
            passage.numbers().stream() // "20 mm Monday, another 14 Tuesday".
                    .filter(number -> number.start() >= days.get(0).end()
                            && !number.overlaps(depth)
                            && days.get(1).start() - number.end() >= 0
                            && days.get(1).start() - number.end() <= 1)
                    .findFirst()
                    .map(number -> number.value() * depth.value() / depth.told())
                    .ifPresent(more -> {
                        rains.add(WhenTold.dated(first, days.get(0), passage));
                        rains.add(
                                WhenTold.dated(first.with(first.event().withAmount(more, "mm")), days.get(1), passage));
                    });
        }
        if (rains.isEmpty() && depths.size() == 1 && days.size() == 2) {
            return gaugedOnOne(passage, days, depths.get(0), first);
        }
        return rains.isEmpty() ? List.of(first) : rains;
    }

    /** "Rain this morning, 20 mm yesterday": two rains, of which the depth of the second is told. */
    private static List<Told> gaugedOnOne(Passage passage, List<DaySaid> days, Quantity depth, Told first) {
        boolean ofTheSecond = depth.start() == days.get(0).end() + 1
                && Set.of(",", "and", "-", ";", "&")
                        .contains(passage.word(days.get(0).end()))
                && (days.get(1).start() == depth.end()
                        || days.get(1).start() == depth.end() + 1
                                && Set.of("on", "of").contains(passage.word(depth.end())));
        return ofTheSecond
                ? List.of(
                        WhenTold.dated(first.with(first.event().withAmount(null, null)), days.get(0), passage),
                        WhenTold.dated(first, days.get(1), passage))
                : List.of(first);
    }

    /** "Frosts on Thursday and Friday", "frost Monday and again on Wednesday": as many frosts as days are strung together. */
    static List<Told> frosts(Passage passage, Clause clause, Told first) {
        List<DaySaid> days = Passage.within(passage.days(), clause.from(), clause.sentence()[1]).stream()
                .filter(day -> day.known() && day.end() > clause.action().start())
                .toList();
        List<Told> frosts = new ArrayList<>();
        for (int i = 0; i < days.size(); i++) {
            boolean strung = i == 0
                    || IntStream.range(days.get(i - 1).end(), days.get(i).start())
                            .allMatch(at -> STRINGING.contains(passage.word(at)));
            if (!strung || i > 0 && goesOn(passage, days.get(i).end())) {
                break; // "Frost on Monday and on Tuesday I sowed the peas".
            }
            frosts.add(WhenTold.dated(first, days.get(i), passage));
        }
        return frosts.size() < 2 ? List.of(first) : frosts;
    }

    /** Whether something else is told behind a day. */
    private static boolean goesOn(Passage passage, int behind) {
        return behind < passage.size()
                && !passage.tokens().get(behind).mark()
                && !AFTER_FROST.contains(passage.word(behind));
    }

    /**
     * "3 lb yesterday and 2 lb today", "1.2 kg picked Saturday, another 900 g picked today": as many pickings of one crop as there are weights
     * in the sentence, each with a day of its own behind it; else only the first.
     */
    static List<Told> pickings(Passage passage, Clause clause, Told first) {
        int from = clause.sentence()[0];
        int to = clause.sentence()[1];
        List<DaySaid> days = Passage.within(passage.days(), from, to);
        List<Quantity> weights = Passage.within(passage.quantities(), from, to).stream()
                .filter(weight -> weight.unit().equals("kg"))
                .toList();
        if (weights.size() < 2 || !ofOneCrop(passage, weights)) {
            return List.of(first);
        }
        if (turned(passage, days, weights)) {
            return IntStream.range(0, 2)
                    .mapToObj(i -> WhenTold.dated(weighing(first, weights.get(i)), days.get(i), passage))
                    .toList();
        }
        List<Told> each = new ArrayList<>();
        for (Quantity weight : weights) {
            DaySaid day = days.stream()
                    .filter(behind -> behind.known() && behind.start() >= weight.end())
                    .filter(behind -> IntStream.range(weight.end(), behind.start())
                            .allMatch(at -> BETWEEN.contains(passage.word(at)) || namesWhatWasDone(passage, at)))
                    .findFirst()
                    .orElse(null);
            if (day == null) {
                return List.of(first);
            }
            each.add(WhenTold.dated(weighing(first, weight), day, passage));
        }
        return each;
    }

    private static Told weighing(Told first, Quantity weight) {
        return first.with(first.event().withCount(null).withAmount(weight.value(), "kg"));
    }

    /** "1 kg today and yesterday about half a kilo": two weights, the first before its day and the second behind it. */
    private static boolean turned(Passage passage, List<DaySaid> days, List<Quantity> weights) {
        return weights.size() == 2
                && days.size() == 2
                && days.stream().allMatch(DaySaid::known)
                && weights.get(0).end() <= days.get(0).start()
                && days.get(1).end() <= weights.get(1).start()
                && Set.of("and", ",", "but", "plus", "-")
                        .contains(passage.word(days.get(1).start() - 1))
                && IntStream.range(days.get(1).end(), weights.get(1).start()).allMatch(at -> Set.of(
                                "about", "around", "nearly", "only", "just", "another", "was", "over", ":")
                        .contains(passage.word(at)));
    }

    /** Whether no other crop is named between the first weight and the last. */
    private static boolean ofOneCrop(Passage passage, List<Quantity> weights) {
        int first = weights.get(0).start();
        int last = weights.get(weights.size() - 1).end() + CROP_REACH;
        return Passage.within(passage.crops(), first, Math.min(last, passage.size())).stream()
                        .map(CropSaid::crop)
                        .distinct()
                        .count()
                <= 1;
    }

    private static boolean namesWhatWasDone(Passage passage, int at) {
        return passage.crops().stream().anyMatch(crop -> crop.covers(at))
                || passage.actions().stream()
                        .anyMatch(action -> action.action().equals("harvested")
                                && action.words().get(at));
    }

    /** "600 g then 450": a second weighing in the unit of the first. */
    static List<Told> weighings(Passage passage, Clause clause, Told first) {
        List<Quantity> weights = Passage.within(passage.quantities(), clause.from(), clause.to());
        if (weights.size() != 1 || !"kg".equals(first.event().unit())) {
            return List.of();
        }
        Quantity weight = weights.get(0);
        return Passage.within(passage.numbers(), weight.end(), clause.to()).stream()
                .filter(number -> Set.of("then", "plus", "another").contains(passage.word(number.start() - 1))
                        && (number.end() >= passage.size()
                                || passage.tokens().get(number.end()).mark()
                                || Set.of("more", "today", "after", "later").contains(passage.word(number.end()))))
                .limit(1)
                .map(number -> first.with(first.event()
                        .withCount(null)
                        .withAmount(number.value() * weight.value() / weight.told(), weight.unit())))
                .toList();
    }

    /** "Courgettes: 4 Monday, 3 more picked today": as many counts as there are days, each before its day. */
    static List<Told> counted(Passage passage, Clause clause, Told first) {
        List<DaySaid> days = Passage.within(passage.days(), clause.from(), clause.to());
        List<NumberSaid> counts = passage.counts(clause.from(), clause.to());
        List<Told> each = new ArrayList<>();
        boolean paired = BY_DAYS.contains(first.event().what())
                && first.event().amount() == null
                && days.size() > 1
                && days.size() == counts.size();
        for (int i = 0; paired && i < days.size(); i++) {
            DaySaid day = days.get(i);
            NumberSaid count = counts.get(i);
            paired = day.known()
                    && count.end() <= day.start()
                    && day.start() - count.end() <= REACH
                    && (i == 0 || count.start() >= days.get(i - 1).end())
                    && IntStream.range(count.end(), day.start())
                            .allMatch(at -> BETWEEN.contains(passage.word(at))
                                    || clause.action().words().get(at));
            Told told = first.with(first.event().withCount((int) count.value()));
            each.add(WhenTold.dated(told, day, passage));
        }
        return paired ? each : List.of();
    }

    /** "Cut 7 today and 4 yesterday", "spinach sown 13/5 and some more today". */
    static List<Told> of(Passage passage, Clause clause, Told first) {
        if (!BY_DAYS.contains(first.event().what())) {
            return List.of();
        }
        List<Told> again = new ArrayList<>();
        for (DaySaid day : Passage.within(passage.days(), clause.from(), clause.to())) {
            if (!day.known() || day.past().equals(first.event().on())) {
                continue;
            }
            NumberSaid number = first.event().count() == null ? null : countBefore(passage, clause, day);
            boolean someMore = passage.word(day.start() - 1).equals("more")
                    && Set.of("some", "few", "bit", "lots", "loads").contains(passage.word(day.start() - 2));
            if (number != null || someMore) {
                Integer count = number == null ? null : (int) number.value();
                again.add(WhenTold.dated(first.with(first.event().withCount(count)), day, passage));
            }
        }
        return again;
    }

    private static NumberSaid countBefore(Passage passage, Clause clause, DaySaid day) {
        return passage.counts(clause.from(), clause.to()).stream()
                .filter(told -> day.start() - told.end() >= 0 && day.start() - told.end() <= 2)
                .filter(told -> Set.of("and", ",", "plus", "then", "another").contains(passage.word(told.start() - 1)))
                .reduce((one, two) -> two)
                .orElse(null);
    }
}
