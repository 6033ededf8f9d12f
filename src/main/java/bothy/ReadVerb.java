package bothy;

import bothy.almanac.RulesFolder;
import bothy.almanac.Words;
import bothy.garden.Grower;
import bothy.garden.Heard;
import bothy.garden.Planting;
import bothy.garden.Situation;
import bothy.reading.PlantingLines;
import bothy.reading.Reading;
import bothy.reading.Vocabulary;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Reads messages as JSON lines and prints what was understood as JSON lines. */
@Command(
        name = "read",
        mixinStandardHelpOptions = true,
        description = {
            "Reads messages as JSON lines from standard input and prints what was understood, a line each.",
            "A line in: {\"id\": 1, \"text\": \"sowed 6 peas\", \"today\": \"2027-05-01\", \"plantings\": [\"6 tomatoes sown 2027-03-10\"]}"
        })
final class ReadVerb implements Callable<Integer> {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    @Mixin
    private RulesOption rules;

    private Reading reading;
    private Vocabulary vocabulary;
    private PlantingLines plantingLines;

    @Override
    public Integer call() throws IOException {
        RulesFolder folder = Workshop.folder(rules.folder);
        reading = new Reading(Words.in(folder));
        vocabulary = new Vocabulary(reading);
        plantingLines = new PlantingLines(reading);
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        boolean well = true;
        int number = 0;
        for (String line = in.readLine(); line != null; line = in.readLine()) {
            number++;
            if (!line.isBlank()) {
                Map<String, Object> answer = answer(line, number);
                well &= !answer.containsKey("error");
                out.println(JSON.writeValueAsString(answer));
            }
        }
        return well ? 0 : 1;
    }

    /** A line that cannot be read is answered by an error in its place, so that lines out still pair with lines in. */
    private Map<String, Object> answer(String line, int number) {
        JsonNode asked;
        try {
            asked = JSON.readTree(line);
        } catch (JsonProcessingException broken) {
            return error(null, "line " + number + " is no JSON object: " + broken.getOriginalMessage());
        }
        Object id = JSON.convertValue(asked.get("id"), Object.class);
        if (!asked.path("text").isTextual()) {
            return error(id, "line " + number + " has no \"text\".");
        }
        try {
            LocalDate today = LocalDate.parse(asked.path("today").asText());
            return vocabulary.object(id, heard(asked, today));
        } catch (DateTimeParseException broken) {
            return error(id, "line " + number + ": \"today\" must be a date like 2027-05-01.");
        }
    }

    private Heard heard(JsonNode asked, LocalDate today) {
        Grower grower = Grower.in(ZoneOffset.UTC);
        List<String> lines = new ArrayList<>();
        asked.path("plantings").forEach(one -> lines.add(one.asText()));
        List<Planting> plantings = plantingLines.read(lines, today, grower);
        return reading.read(
                asked.path("text").asText(),
                new Situation(
                        today,
                        grower,
                        plantings,
                        null,
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        plantingLines.happened(lines, today, grower)));
    }

    private static Map<String, Object> error(Object id, String text) {
        Map<String, Object> error = new LinkedHashMap<>();
        error.put("id", id);
        error.put("error", text);
        return error;
    }
}
