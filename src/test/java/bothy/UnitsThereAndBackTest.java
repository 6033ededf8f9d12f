package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import bothy.almanac.RulesFolder;
import bothy.conversation.Conversation;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Event;
import bothy.garden.Message;
import bothy.garden.SettingChange;
import bothy.weather.WeatherSource;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is told in US units is kept in SI and comes back as it was told. Definitions: 1 US gallon = 3.785411784 L, 1 inch = 25.4 mm,
 * 1 pound = 0.45359237 kg (NIST Handbook 44, appendix C, from memory); °F = 1.8 °C + 32.
 */
class UnitsThereAndBackTest {
    private static final Instant NOW = Instant.parse("2027-07-20T18:00:00Z");
    private static Knowledge knowledge;

    @TempDir
    Path folder;

    private Store store;
    private Conversation conversation;
    private int messages;

    @BeforeAll
    static void make_ready() {
        knowledge = Workshop.knowledge(RulesFolder.at(Path.of("rules")), null, WeatherSource.none());
    }

    @BeforeEach
    void plant_tomatoes() {
        store = Shelf.open(folder.resolve("diary.db").toString());
        store.write("g", page -> page.append("us", NOW.minusSeconds(9), List.of(new SettingChange("units", "us"))));
        conversation = new Conversation(store, knowledge);
        said("planted out 6 tomatoes in the bed on May 20");
    }

    @AfterEach
    void close() {
        store.close();
    }

    private Conversation.Outcome said(String text) {
        messages++;
        return conversation
                .handle(Message.text(String.valueOf(messages), "g", NOW, ZoneOffset.UTC, text), null)
                .orElseThrow();
    }

    private void comesBack(String text, String told, double inSi, String unit) {
        Conversation.Outcome outcome = said(text);
        assertThat(outcome.written()).as(text).hasSize(1);
        Event event = (Event) outcome.written().get(0).entry();
        assertThat(event.unit()).as(text).isEqualTo(unit);
        // reading rounds to five decimals
        assertThat(event.amount()).as(text).isCloseTo(inSi, org.assertj.core.api.Assertions.within(0.06));
        assertThat(outcome.reply().text()).as(text).contains(told);
    }

    @Test
    void gallons_come_back() {
        halves().forEach(gallons -> comesBack(
                "watered the tomatoes with " + gallons + " gallons",
                gallons + " gal",
                3.785411784 * number(gallons),
                "L"));
    }

    @Test
    void pounds_come_back() {
        halves().forEach(pounds ->
                comesBack("picked " + pounds + " lb of tomatoes", pounds + " lb", 0.45359237 * number(pounds), "kg"));
    }

    @Test
    void degrees_fahrenheit_come_back() {
        IntStream.iterate(40, degrees -> degrees <= 90, degrees -> degrees + 7)
                .forEach(degrees -> comesBack(
                        "it is " + degrees + "F in the bed of the tomatoes",
                        degrees + " °F",
                        (degrees - 32) / 1.8,
                        "°C"));
    }

    private static Stream<String> halves() {
        return IntStream.rangeClosed(1, 20)
                .mapToObj(half ->
                        half % 2 == 0 ? String.valueOf(half / 2) : String.format(Locale.ROOT, "%.1f", half / 2.0));
    }

    private static double number(String told) {
        return Double.parseDouble(told);
    }
}
