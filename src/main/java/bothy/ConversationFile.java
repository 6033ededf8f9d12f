package bothy;

import bothy.almanac.Problem;
import bothy.almanac.RulesBroken;
import bothy.almanac.YamlFile;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;

/**
 * A chat with dates: what the grower says and what must follow.
 *
 * @param title what the story is about
 * @param source where what is expected comes from
 * @param grower what is settled about the grower
 * @param weather what a weather source would report
 * @param record a station's record taken in before the chat, as {@code import-weather} reads it; its path as seen from this file's folder
 * @param turns the messages, in order of time
 */
record ConversationFile(
        String title, String source, Grower grower, List<Weather> weather, String record, List<Turn> turns) {

    record Grower(
            String zone,
            Double latitude,
            Double longitude,
            String lastSpringFrost,
            String firstAutumnFrost,
            String units,
            String soil) {}

    record Weather(
            LocalDate date,
            Double tmin,
            Double tmax,
            Double rain,
            @JsonProperty("humid-hours") Double humidHours,
            Double wind) {}

    record Turn(LocalDateTime at, String grower, String press, boolean photo, List<Double> location, Expect expect) {}

    /** What must follow. Absent parts are not looked at. */
    record Expect(
            List<Map<String, Object>> entries,
            @JsonProperty("no-entries") boolean noEntries,
            List<String> says,
            @JsonProperty("not-says") List<String> notSays,
            List<String> advice,
            @JsonProperty("not-advice") List<String> notAdvice,
            @JsonProperty("next-check") JsonNode nextCheck,
            Boolean asks) {}

    /**
     * Reads a file.
     *
     * @throws RulesBroken with file and line when it is no conversation file
     */
    static ConversationFile read(Path path) throws IOException {
        YamlFile file = new YamlFile(path.toString(), Files.readString(path));
        ConversationFile read = file.as(ConversationFile.class);
        if (read == null || read.turns == null || read.turns.isEmpty()) {
            throw new RulesBroken(
                    List.of(new Problem(path.toString(), 1, "there are no turns; begin with turns: and a first at:.")));
        }
        for (int i = 0; i < read.turns.size(); i++) {
            check(file, read.turns.get(i), i);
        }
        return read.record == null ? read : read.recordBeside(path);
    }

    private ConversationFile recordBeside(Path path) {
        return new ConversationFile(
                title, source, grower, weather, path.resolveSibling(record).toString(), turns);
    }

    private static void check(YamlFile file, Turn turn, int index) {
        String at = "/turns/" + index;
        if (turn.at == null) {
            throw new RulesBroken(
                    List.of(file.problem(at, "this turn has no at: give its date and time, as 2027-04-03T09:00.")));
        }
        if (turn.grower != null && turn.press != null) {
            throw new RulesBroken(
                    List.of(file.problem(at, "a turn either says (grower:) or taps (press:), not both.")));
        }
        if (turn.location != null && turn.location.size() != 2) {
            throw new RulesBroken(List.of(file.problem(at + "/location", "a location is [latitude, longitude].")));
        }
        if (turn.expect != null && turn.expect.entries != null) {
            for (Map<String, Object> entry : turn.expect.entries) {
                entry.keySet().stream()
                        .filter(key -> !Expectation.ENTRY_KEYS.contains(key))
                        .findFirst()
                        .ifPresent(key -> {
                            throw new RulesBroken(List.of(file.problem(
                                    at + "/expect/entries",
                                    "an entry has no \"" + key + "\"; it may have " + Expectation.ENTRY_KEYS + ".")));
                        });
            }
        }
    }
}
