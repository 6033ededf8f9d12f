package bothy.channel.telegram;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AnswerTest {
    @Test
    void the_parts_of_a_list_are_found_as_they_came() {
        Answer answer = Answer.of(
                "{\"result\" : [ {\"update_id\":7, \"text\":\"]}\\\"[ü🌱\"} ,[1, [2]],\"a\" , 12 ],\"ok\":true}");

        assertThat(answer.ok()).isTrue();
        assertThat(answer.results())
                .containsExactly("{\"update_id\":7, \"text\":\"]}\\\"[ü🌱\"}", "[1, [2]]", "\"a\"", "12");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "null",
                "[]",
                "<html><body>502</body></html>",
                "{}",
                "{\"ok\":false,\"result\":[]}",
                "{\"ok\":1,\"result\":[]}",
                "{\"ok\":true,\"result\":[{\"upd",
                "{\"ok\":true,\"result\":[{},",
                "{\"ok\":true"
            })
    void what_is_refused_or_broken_off_is_not_ok(String body) {
        assertThat(Answer.of(body)).isEqualTo(new Answer(false, java.util.List.of()));
    }

    @Test
    void a_result_that_is_no_list_has_no_parts() {
        assertThat(Answer.of("{\"ok\":true,\"result\":{\"id\":[1,2]},\"more\":{\"ok\":false}}"))
                .isEqualTo(new Answer(true, java.util.List.of()));
    }
}
