package bothy.diary.sql;

import bothy.diary.Store;
import bothy.garden.Reply;
import java.util.List;

/** A program of its own that writes into a diary until it is killed, and says after each message that it is kept. */
final class Scribe {
    private Scribe() {}

    /** @param args the address of the diary and the number of the first message to write */
    public static void main(String[] args) {
        Store store = Shelf.open(args[0]);
        for (int number = Integer.parseInt(args[1]); ; number++) {
            String message = "m" + number;
            int count = number;
            store.write(StoreSuite.SCHOOL, page -> {
                page.append(
                        message,
                        StoreSuite.NOON,
                        List.of(StoreSuite.sown("bean", count), StoreSuite.sown("pea", count)));
                page.markHandled(message, StoreSuite.NOON);
                page.send("telegram", "4711", new Reply(message, List.of()), StoreSuite.NOON);
                return null;
            });
            System.out.println(number);
        }
    }
}
