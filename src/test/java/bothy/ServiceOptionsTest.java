package bothy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bothy.conversation.Door;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class ServiceOptionsTest {
    private static final String SECRET = "a-secret-of-the-school-plot_2027";

    @TempDir
    Path folder;

    private static ServiceOptions told(Map<String, String> environment, String... arguments) {
        ServiceOptions options = new ServiceOptions(new Secrets(environment::get));
        new CommandLine(options).setCaseInsensitiveEnumValuesAllowed(true).parseArgs(arguments);
        return options;
    }

    private static ServiceOptions told(String... arguments) {
        return told(Map.of(), arguments);
    }

    @Test
    void without_options_everybody_is_let_in_and_nothing_is_served() {
        ServiceOptions options = told();

        assertThat(options.door().mode()).isEqualTo(Door.Mode.OPEN);
        assertThat(options.door().perMinute()).isEqualTo(30);
        assertThat(options.http()).isNull();
        assertThat(options.webhook()).isNull();
        assertThat(options.keepDays()).isEqualTo(30);
    }

    @Test
    void an_invited_door_needs_a_code() {
        assertThatThrownBy(() -> told("--door", "invited").door())
                .isInstanceOf(Complaints.MisUse.class)
                .hasMessage("--door invited needs at least one code in BOTHY_INVITE_CODES (apart by commas).");

        Door door = told(Map.of("BOTHY_INVITE_CODES", "rhubarb, , medlar"), "--door", "invited")
                .door();
        assertThat(door.codes()).containsExactlyInAnyOrder("rhubarb", "medlar");
    }

    @Test
    void chats_are_numbers() {
        Door door = told("--door", "listed", "--let-in", "4711,-100200", "--operators", "5")
                .door();
        assertThat(door.listed()).containsExactlyInAnyOrder("telegram:4711", "telegram:-100200");
        assertThat(door.operators()).containsExactly("telegram:5");

        assertThatThrownBy(() -> told("--let-in", "@ida").door())
                .hasMessage("--let-in @ida is no chat: give its number; groups begin with -.");
        assertThatThrownBy(() -> told("--operators", "ida").door())
                .hasMessageStartingWith("--operators ida is no chat");
    }

    @Test
    void a_pace_below_nothing_and_too_short_a_memory_are_refused() {
        assertThatThrownBy(() -> told("--messages-per-minute", "-1").door())
                .hasMessage("--messages-per-minute -1 is less than 0; 0 is any number.");
        assertThatThrownBy(() -> told("--keep-days", "1").keepDays())
                .hasMessageStartingWith("--keep-days 1 is too short");
    }

    @Test
    void the_pace_of_sending_can_be_shared_out() {
        assertThat(told().sending().perSecond()).isEqualTo(25);
        assertThat(told("--sends-per-second", "9").sending().perSecond()).isEqualTo(9);
        assertThatThrownBy(() -> told("--sends-per-second", "0").sending())
                .hasMessage("--sends-per-second 0 is too few: at least 1.");
    }

    @Test
    void the_address_to_serve_at_is_a_port_with_or_without_a_host() {
        assertThat(told("--http", "8080").http()).isEqualTo(new InetSocketAddress("127.0.0.1", 8080));
        assertThat(told("--http", "0.0.0.0:80").http()).isEqualTo(new InetSocketAddress("0.0.0.0", 80));
        for (String wrong : new String[] {"here", "host:", "70000", "host:-1"}) {
            assertThatThrownBy(() -> told("--http", wrong).http())
                    .hasMessageStartingWith("--http " + wrong + " has no port");
        }
    }

    @Test
    void a_webhook_needs_https_a_place_to_listen_and_a_secret() {
        assertThatThrownBy(() ->
                        told("--webhook", "http://plot.example", "--http", "80").webhook())
                .hasMessageStartingWith("--webhook http://plot.example is no https:// address");
        assertThatThrownBy(() -> told("--webhook", "https://plot.example").webhook())
                .hasMessageStartingWith("--webhook needs --http as well");
        assertThatThrownBy(() -> told().webhookSecret()).hasMessageStartingWith("--webhook needs BOTHY_WEBHOOK_SECRET");
        assertThatThrownBy(() -> told(Map.of("BOTHY_WEBHOOK_SECRET", "short")).webhookSecret())
                .hasMessageNotContaining("short");

        ServiceOptions options =
                told(Map.of("BOTHY_WEBHOOK_SECRET", SECRET), "--webhook", "https://plot.example/", "--http", "80");
        assertThat(options.webhook()).isEqualTo(URI.create("https://plot.example/telegram"));
        assertThat(options.webhookSecret()).isEqualTo(SECRET);
    }

    @Test
    void a_secret_may_stand_in_a_file_that_the_environment_names() throws IOException {
        Path file = Files.writeString(folder.resolve("secret"), SECRET + "\n");

        assertThat(told(Map.of("BOTHY_WEBHOOK_SECRET_FILE", file.toString())).webhookSecret())
                .isEqualTo(SECRET);
        assertThatThrownBy(() ->
                        told(Map.of("BOTHY_WEBHOOK_SECRET_FILE", file + "s")).webhookSecret())
                .isInstanceOf(Complaints.MisUse.class)
                .hasMessageStartingWith("BOTHY_WEBHOOK_SECRET_FILE names " + file + "s, which cannot be read.");
    }
}
