package bothy;

import bothy.diary.Store;
import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.What;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** A garden of twenty plantings and five hundred entries, as the figures ask for. */
final class BenchmarkedGarden {
    static final LocalDate TODAY = LocalDate.of(2027, 7, 20);
    private static final String[] CROPS = {
        "tomato",
        "cucumber",
        "courgette",
        "winter-squash",
        "pumpkin",
        "runner-bean",
        "pea",
        "lettuce",
        "carrot",
        "onion"
    };
    private static final int PLANTINGS = 20;
    private static final int ENTRIES = 500;

    private BenchmarkedGarden() {}

    static void write(Store store, String grower) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < PLANTINGS; i++) {
            String crop = CROPS[i % CROPS.length];
            LocalDate sown = LocalDate.of(2027, 4, 1).plusDays(i);
            String id = crop + "-" + (i / CROPS.length + 1);
            String place = "bed " + i;
            entries.add(new Event(What.SOWN, id, crop, null, 12, null, null, sown, place, null, null));
            entries.add(Event.of(What.EMERGED, id, crop, sown.plusDays(12)));
            entries.add(
                    new Event(What.PLANTED_OUT, id, crop, null, 10, null, null, sown.plusDays(40), place, null, null));
            entries.add(Event.of(What.FLOWERING, id, crop, sown.plusDays(65)));
        }
        for (int i = entries.size(); i < ENTRIES; i++) {
            String crop = CROPS[i % CROPS.length];
            String id = crop + "-" + (i / CROPS.length % 2 + 1);
            entries.add(Event.of(i % 5 == 0 ? What.FED : What.WATERED, id, crop, TODAY.minusDays(1 + i % 60)));
        }
        store.write(
                grower,
                page -> page.append(
                        "before",
                        TODAY.minusDays(1).atStartOfDay(ZoneOffset.UTC).toInstant(),
                        entries));
    }

    /** Messages as a grower sends them: entries, questions, lists. */
    static final List<String> MESSAGES = List.of(
            "watered the tomatoes",
            "what do I do this week?",
            "picked 2 kg of runner beans",
            "when should I stop watering the onions?",
            "fed the cucumbers in bed 1",
            "first flowers on the pumpkins in bed 4",
            "are the carrots in bed 8 ready?",
            "how do I store squash?");

    static bothy.garden.Message message(int number, String grower) {
        return bothy.garden.Message.text(
                "bench-" + number,
                grower,
                TODAY.atTime(9, 0).toInstant(ZoneOffset.UTC),
                ZoneOffset.UTC,
                MESSAGES.get(number % MESSAGES.size()));
    }
}
