package bothy.channel.telegram;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** All that the program writes, at the most talkative log level and through every trouble, is searched for the token. */
@Timeout(60)
class TokenStaysSecretTest {
    private static final List<String> TALKATIVE =
            List.of("-Djava.util.logging.config.file=src/test/resources/logging/everything.properties");
    private static final String SECRET = BotApiServer.TOKEN.substring(BotApiServer.TOKEN.indexOf(':') + 1);

    @TempDir
    Path folder;

    private String diary() {
        return folder.resolve("diary.db").toString();
    }

    private static CompletableFuture<String> output(Process program) {
        return CompletableFuture.supplyAsync(() -> {
            try {
                return new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        });
    }

    @Test
    void no_trouble_brings_the_token_into_the_output_and_a_stopped_program_ends_by_itself() throws Exception {
        try (BotApiServer api = new BotApiServer()) {
            api.fail("getMe", BotApiServer.badGateway());
            api.fail("deleteWebhook", BotApiServer.dropped());
            api.fail("setMyCommands", BotApiServer.brokenOff());
            api.fail("getUpdates", BotApiServer.dropped(), BotApiServer.brokenOff(), BotApiServer.tooFast(1));
            api.fail("sendMessage", BotApiServer.dropped(), BotApiServer.badGateway(), BotApiServer.tooFast(1));
            api.fail("answerCallbackQuery", BotApiServer.brokenOff());
            Process program =
                    ChannelProgram.start(TALKATIVE, diary(), api.address().toString(), BotApiServer.TOKEN, "stop");
            CompletableFuture<String> output = output(program);
            api.push(Said.text(12, "sowed beans"));
            api.push(Said.tap("cb1", "1.0"));
            api.push("{\"message\":{\"message_id\":\"twelve\"}}");
            while (api.texts().isEmpty()) {
                Rig.sleep(20);
            }

            program.getOutputStream().close();

            assertThat(program.waitFor(20, TimeUnit.SECONDS)).isTrue();
            assertThat(output.get())
                    .contains("Telegram gives no updates")
                    .contains("A reply waits until")
                    .contains("Ended: stopped")
                    .doesNotContain(SECRET);
            assertThat(program.exitValue()).isZero();
        }
    }

    @Test
    void a_service_out_of_reach_and_a_refused_token_do_not_either() throws Exception {
        try (BotApiServer api = new BotApiServer()) {
            api.fail("getMe", BotApiServer.silence(1_500), BotApiServer.dropped());
            api.fail("getUpdates", BotApiServer.refuse(401, "Unauthorized", ""));
            Process program =
                    ChannelProgram.start(TALKATIVE, diary(), api.address().toString(), BotApiServer.TOKEN);
            CompletableFuture<String> output = output(program);

            assertThat(program.waitFor(30, TimeUnit.SECONDS)).isTrue();
            assertThat(output.get())
                    .contains("Telegram cannot be reached")
                    .contains("Ended: " + Ending.TOKEN_REFUSED)
                    .doesNotContain(SECRET);
        }
    }
}
