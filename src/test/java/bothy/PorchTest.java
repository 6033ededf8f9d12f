package bothy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bothy.channel.telegram.Handler;
import bothy.channel.telegram.TelegramChannel;
import bothy.channel.telegram.TelegramSettings;
import bothy.garden.Message;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.InstantSource;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class PorchTest {
    private static final InetSocketAddress ANY = new InetSocketAddress(InetAddress.getLoopbackAddress(), 0);

    private final HttpClient http = HttpClient.newHttpClient();
    private final Porch porch = Porch.at(ANY);
    private String wrong = "";

    @AfterEach
    void close() {
        porch.close();
    }

    private HttpResponse<String> ask(String method, String path) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://localhost:" + porch.port() + path))
                .method(method, BodyPublishers.ofString("{}"))
                .build();
        return http.send(request, BodyHandlers.ofString());
    }

    @Test
    void health_says_well_or_what_is_wrong() throws IOException, InterruptedException {
        porch.open(() -> wrong, () -> "");

        assertThat(ask("GET", "/health").statusCode()).isEqualTo(200);
        assertThat(ask("GET", "/health").body()).isEqualTo("well\n");
        wrong = "No PostgreSQL answers.";
        assertThat(ask("GET", "/health").statusCode()).isEqualTo(503);
        assertThat(ask("GET", "/health").body()).isEqualTo("No PostgreSQL answers.\n");
    }

    @Test
    void metrics_are_shown_in_the_format_of_prometheus() throws IOException, InterruptedException {
        porch.open(() -> "", () -> "bothy_growers 3.0\n");

        HttpResponse<String> shown = ask("GET", "/metrics");

        assertThat(shown.body()).isEqualTo("bothy_growers 3.0\n");
        assertThat(shown.headers().firstValue("Content-Type")).contains("text/plain; version=0.0.4; charset=utf-8");
    }

    @Test
    void nothing_else_is_there_and_no_other_way_to_ask() throws IOException, InterruptedException {
        porch.open(() -> "", () -> "");

        for (String path : new String[] {"/", "/health/more", "/metricsx", "/telegram"}) {
            assertThat(ask("GET", path).statusCode()).as(path).isEqualTo(404);
        }
        assertThat(ask("POST", "/health").statusCode()).isEqualTo(404);
    }

    @Test
    void an_update_without_the_secret_is_refused() throws IOException, InterruptedException {
        Handler nobody = new Handler() {
            @Override
            public void handle(Message message, String channel, String chat) {
                throw new AssertionError("it came in");
            }

            @Override
            public void apologise(Message message, String channel, String chat, RuntimeException why) {
                throw new AssertionError("it came in");
            }
        };
        TelegramSettings settings = TelegramSettings.of("1:token", Map.of(), "Past.");
        try (TelegramChannel channel = new TelegramChannel(settings, Stores.empty(), nobody, InstantSource.system())) {
            porch.receiveFor(channel);
            porch.open(() -> "", () -> "");

            assertThat(ask("POST", "/telegram").statusCode()).isEqualTo(401);
            assertThat(ask("GET", "/telegram").statusCode()).isEqualTo(404);
        }
    }

    @Test
    void a_port_that_is_taken_is_named() throws IOException {
        try (ServerSocket other = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            InetSocketAddress taken = new InetSocketAddress(InetAddress.getLoopbackAddress(), other.getLocalPort());

            assertThatThrownBy(() -> Porch.at(taken))
                    .isInstanceOf(Complaints.MisUse.class)
                    .hasMessageStartingWith("Nothing can be served at --http ")
                    .hasMessageEndingWith("Name a free port.");
        }
    }
}
