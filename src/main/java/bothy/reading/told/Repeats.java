package bothy.reading.told;

import bothy.garden.Event;
import bothy.garden.What;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** Leaves out what a message says twice ("in flower, first flowers are open"). */
final class Repeats {
    /** What is done with a planting once, so that who tells it twice tells of one day. */
    private static final Set<What> ONCE =
            Set.of(What.STORED, What.CURED, What.EMERGED, What.HARDENING_STARTED, What.PLANTED_OUT);

    private Repeats() {}

    static List<Told> without(List<Told> told) {
        List<Told> kept = new ArrayList<>();
        for (Told next : told) {
            int earlier = same(kept, next);
            if (earlier < 0) {
                kept.add(next);
            } else {
                Told one = kept.get(earlier);
                boolean fuller = fuller(next.event(), one.event());
                Event more = filled(fuller ? next.event() : one.event(), fuller ? one.event() : next.event());
                kept.set(earlier, (fuller ? next : one).with(more));
            }
        }
        kept.removeIf(one -> one.event().what() == What.MOVED
                && kept.stream()
                        .anyMatch(other -> other.event().what() == What.STORED
                                && Objects.equals(
                                        other.event().crop(), one.event().crop())));
        oneRain(kept);
        firstPicked(kept);
        degreesOfFrost(kept);
        oneLoss(kept);
        onceOnly(kept);
        scapesOnly(kept);
        OfTheWeather.settle(kept);
        // "Took 4 beans out of the porch and put them in the ground" is one doing.
        List<Told> put = kept.stream()
                .filter(one ->
                        one.event().what() == What.PLANTED_OUT || one.event().what() == What.POTTED_ON)
                .toList();
        for (Told one : put) {
            for (Told moved : List.copyOf(kept)) {
                boolean same = moved.event().what() == What.MOVED
                        && moved.from() < one.from()
                        && Objects.equals(moved.event().on(), one.event().on())
                        && moved.event().crop() != null
                        && moved.event().crop().equals(one.event().crop());
                if (same) {
                    kept.remove(moved);
                    kept.replaceAll(old -> old == one ? one.with(filled(one.event(), moved.event())) : old);
                }
            }
        }
        // "Out for the day to harden off, brought them in at four": that is what hardening off is.
        kept.removeIf(one -> (one.event().what() == What.MOVED
                        || one.event().what() == What.HARVESTED
                                && one.event().count() == null
                                && one.event().amount() == null)
                && kept.stream()
                        .anyMatch(other -> other.event().what() == What.HARDENING_STARTED
                                && (one.assumed().contains("date")
                                        || Objects.equals(
                                                other.event().on(), one.event().on()))
                                && Objects.equals(
                                        other.event().crop(), one.event().crop())));
        // "Pulled them up and composted them": the last of the crop, told once.
        kept.removeIf(one -> one.event().what() == What.DIED
                && kept.stream()
                        .anyMatch(other -> other.event().what() == What.HARVESTED
                                && "last".equals(other.event().detail())
                                && Objects.equals(
                                        other.event().crop(), one.event().crop())));
        finishedAndPulled(kept);
        List<Told> named = List.copyOf(kept);
        kept.removeIf(one -> unnamed(one)
                && named.stream()
                        .anyMatch(other -> other != one
                                && other.event().crop() != null
                                && other.event().what() == one.event().what()
                                && Objects.equals(
                                        other.event().on(), one.event().on())));
        return kept;
    }

    /** "First okra, 11 pods picked on the 12th": cried out and told once. */
    private static void firstPicked(List<Told> kept) {
        for (int at = 0; at + 1 < kept.size(); at++) {
            Told cried = kept.get(at);
            Told dated = kept.get(at + 1);
            boolean one = cried.event().what() == What.HARVESTED
                    && dated.event().what() == What.HARVESTED
                    && Objects.equals(cried.event().crop(), dated.event().crop())
                    && cried.assumed().contains("date")
                    && !dated.assumed().contains("date")
                    && dated.from() - cried.to() <= 2
                    && (dated.event().count() == null
                            || Integer.valueOf(1).equals(cried.event().count()));
            if (one) {
                kept.set(at + 1, dated.with(filled(dated.event(), cried.event())));
                kept.remove(at);
            }
        }
    }

    /** "Frost on Sunday night, minus two": a frost, and a temperature that is told once. */
    private static void degreesOfFrost(List<Told> kept) {
        for (Told frost : List.copyOf(kept)) {
            Event event = frost.event();
            if (event.what() != What.FROST || event.amount() == null) {
                continue;
            }
            boolean told = kept.stream()
                    .anyMatch(other -> other.event().what() == What.TEMPERATURE
                            && Objects.equals(other.event().on(), event.on()));
            kept.replaceAll(one -> one == frost ? frost.with(event.withAmount(null, null)) : one);
            if (!told) {
                kept.add(frost.with(
                        Event.of(What.TEMPERATURE, null, null, event.on()).withAmount(event.amount(), event.unit())));
            }
        }
    }

    /** "Courgette finished, pulled it last weekend": one end, on the day that the second doing tells. */
    private static void finishedAndPulled(List<Told> kept) {
        for (Told over : List.copyOf(kept)) {
            boolean asked = over.open() == bothy.garden.Doubt.About.WHICH_DATE
                    && over.assumed().contains("day");
            boolean ofToday = over.open() == null && over.assumed().contains("date");
            boolean undated = (asked || ofToday)
                    && Set.of(What.HARVESTED, What.DIED).contains(over.event().what())
                    && over.event().count() == null
                    && over.event().amount() == null;
            Told pulled = !undated
                    ? null
                    : kept.stream()
                            .filter(one -> one != over
                                    && one.open() == null
                                    && one.event().on().isBefore(over.event().on())
                                    && one.event().what() == What.HARVESTED
                                    && one.event().count() == null
                                    && one.event().amount() == null
                                    && one.event().crop() != null
                                    && one.event().crop().equals(over.event().crop()))
                            .findFirst()
                            .orElse(null);
            if (pulled != null) {
                kept.remove(over);
                kept.replaceAll(
                        old -> old == pulled ? pulled.with(pulled.event().withDetail("last")) : old);
            }
        }
    }

    private static boolean unnamed(Told told) {
        return told.event().crop() == null
                && told.plantings().isEmpty()
                && told.open() != null
                && told.crops().isEmpty()
                // "Beans 900 g, tomatoes 2 kg": which beans is asked.
                && (told.among().isEmpty() || told.event().amount() == null)
                && told.event().count() == null;
    }

    private static int same(List<Told> kept, Told next) {
        for (int i = 0; i < kept.size(); i++) {
            Event one = kept.get(i).event();
            Event other = next.event();
            boolean alike = one.what() == other.what()
                    && Objects.equals(one.crop(), other.crop())
                    && Objects.equals(one.on(), other.on())
                    && (one.variety() == null
                            || other.variety() == null
                            || one.variety().equalsIgnoreCase(other.variety()))
                    && (one.count() == null
                            || other.count() == null
                            || one.count().equals(other.count()))
                    && (one.amount() == null
                            || other.amount() == null
                            || one.amount().equals(other.amount()))
                    && !elsewhere(one, other);
            if (alike) {
                return i;
            }
        }
        return -1;
    }

    /** "3 in growbags and 3 in the border". */
    private static boolean elsewhere(Event one, Event other) {
        return one.place() != null && other.place() != null
                ? !one.place().equals(other.place())
                : onlyContained(one, other) || onlyContained(other, one);
    }

    private static boolean onlyContained(Event one, Event placed) {
        return one.place() == null && one.container() != null && placed.place() != null && placed.container() == null;
    }

    /** "Heavy rain last night, 18 mm in the gauge": the amount is of the rain that has the day. */
    private static void oneRain(List<Told> kept) {
        for (Told dated : List.copyOf(kept)) {
            for (Told measured : List.copyOf(kept)) {
                boolean one = dated.event().what() == What.RAIN
                        && measured.event().what() == What.RAIN
                        && dated.event().amount() == null
                        && measured.event().amount() != null
                        && !dated.assumed().contains("date")
                        && measured.assumed().contains("date");
                if (one) {
                    kept.remove(measured);
                    kept.replaceAll(old -> old == dated
                            ? dated.with(dated.event()
                                    .withAmount(
                                            measured.event().amount(),
                                            measured.event().unit()))
                            : old);
                    return;
                }
            }
        }
    }

    /** "Scapes curling, cut them all off": the stalks were cut, not the bulbs lifted. */
    private static void scapesOnly(List<Told> kept) {
        boolean scapes = kept.stream()
                .anyMatch(one -> one.event().what() == What.NOTE
                        && "scapes".equals(one.event().detail()));
        kept.removeIf(one -> scapes
                && one.event().what() == What.HARVESTED
                && one.event().amount() == null
                && one.event().count() == null);
    }

    /** "Spuds in. 24 seed potatoes went down on Saturday". */
    private static boolean setOnce(Event event) {
        return event.what() == What.SOWN
                && Set.of("potato", "garlic", "shallot", "onion").contains(String.valueOf(event.crop()));
    }

    /** "The onions are in sacks now, put them away on Sunday": one doing, on the day that is told. */
    private static void onceOnly(List<Told> kept) {
        for (Told dated : List.copyOf(kept)) {
            kept.removeIf(now -> now != dated
                    && (ONCE.contains(now.event().what()) || setOnce(now.event()))
                    && now.event().what() == dated.event().what()
                    && now.event().crop() != null
                    && now.event().crop().equals(dated.event().crop())
                    && now.assumed().contains("date")
                    && !dated.assumed().contains("date")
                    && now.event().count() == null
                    && (now.event().what() != What.PLANTED_OUT || now.event().place() == null));
        }
    }

    /** What the one telling leaves out, from the other. */
    private static Event filled(Event event, Event other) {
        Event counted = event.count() == null && event.amount() == null ? event.withCount(other.count()) : event;
        return counted.amount() == null && counted.count() == null && other.amount() != null
                ? counted.withAmount(other.amount(), other.unit())
                : counted;
    }

    private static boolean fuller(Event one, Event other) {
        return known(one) > known(other);
    }

    private static int known(Event event) {
        int known = 0;
        for (Object part : new Object[] {
            event.count(), event.amount(), event.place(), event.variety(), event.container(), event.detail()
        }) {
            known += part == null ? 0 : 1;
        }
        return known;
    }

    /** "The dog dug up 2 cucumbers, both dead", "blight took the lot, ripped all 8 toms out": lost once. */
    private static void oneLoss(List<Told> kept) {
        // "Only 13 runners left, the other 3 snapped on Friday".
        for (Told dated : List.copyOf(kept)) {
            kept.removeIf(now -> now != dated
                    && now.event().what() == What.DIED
                    && dated.event().what() == What.DIED
                    && now.event().crop() != null
                    && now.event().crop().equals(dated.event().crop())
                    && now.event().count() != null
                    && now.event().count().equals(dated.event().count())
                    && now.assumed().contains("date")
                    && !dated.assumed().contains("date"));
        }
        kept.removeIf(one -> one.event().what() == What.DIED
                && one.event().crop() == null
                && one.event().count() == null
                && kept.stream()
                        .anyMatch(other -> other.event().what() == What.DIED
                                && other.event().crop() != null
                                && other.from() > one.from()
                                && other.open() == null));
        for (Told one : List.copyOf(kept)) {
            Told counted = one.event().what() != What.DIED || one.event().count() != null
                    ? null
                    : kept.stream()
                            .filter(other -> other.event().what() == What.DIED
                                    && other.event().count() != null
                                    && other.from() < one.from()
                                    && Objects.equals(
                                            other.event().crop(), one.event().crop()))
                            .findFirst()
                            .orElse(null);
            if (counted != null) {
                kept.remove(one);
                // "The cat sat on one and it died yesterday": on the day that is told.
                boolean day =
                        counted.assumed().contains("date") && !one.assumed().contains("date");
                kept.replaceAll(old -> old != counted || !day
                        ? old
                        : one.with(counted.event().withOn(one.event().on())));
            }
        }
    }
}
