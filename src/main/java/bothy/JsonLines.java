package bothy;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Answers messages given as JSON lines with JSON lines; a line that cannot be read is answered by an error in its place. */
final class JsonLines {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private JsonLines() {}

    /**
     * One message of a line.
     *
     * @param id as it was given, {@code null} when there was none
     * @param number which line it stands on
     */
    record Line(Object id, int number, String text, LocalDate today, List<String> plantings) {}

    /** Makes the answer to a line, to be printed as a JSON object. */
    interface Answering {
        Map<String, Object> answer(Line line);
    }

    /**
     * Reads all lines and prints their answers.
     *
     * @return whether all lines could be read
     */
    static boolean answer(InputStream from, PrintStream to, Answering answering) throws IOException {
        PrintWriter out = new PrintWriter(to, true, StandardCharsets.UTF_8);
        BufferedReader in = new BufferedReader(new InputStreamReader(from, StandardCharsets.UTF_8));
        boolean well = true;
        int number = 0;
        for (String line = in.readLine(); line != null; line = in.readLine()) {
            number++;
            if (!line.isBlank()) {
                Map<String, Object> answer = answer(line, number, answering);
                well &= !answer.containsKey("error");
                out.println(JSON.writeValueAsString(answer));
            }
        }
        return well;
    }

    private static Map<String, Object> answer(String line, int number, Answering answering) {
        JsonNode asked;
        try {
            asked = JSON.readTree(line);
        } catch (JsonProcessingException broken) {
            return error(null, "line " + number + " is no JSON object; write each line as {\"id\": 1, \"text\": …}.");
        }
        Object id = JSON.convertValue(asked.get("id"), Object.class);
        if (!asked.path("text").isTextual()) {
            return error(id, "line " + number + " has no \"text\".");
        }
        LocalDate today;
        try {
            today = LocalDate.parse(asked.path("today").asText());
        } catch (DateTimeParseException broken) {
            return error(id, "line " + number + ": \"today\" must be a date like 2027-05-01.");
        }
        List<String> plantings = new ArrayList<>();
        asked.path("plantings").forEach(one -> plantings.add(one.asText()));
        return answering.answer(new Line(id, number, asked.path("text").asText(), today, plantings));
    }

    private static Map<String, Object> error(Object id, String text) {
        Map<String, Object> error = new LinkedHashMap<>();
        error.put("id", id);
        error.put("error", text);
        return error;
    }
}
