package bothy;

import bothy.almanac.CraftNotes;
import bothy.almanac.RulesFolder;
import bothy.almanac.Words;
import bothy.garden.Grower;
import bothy.garden.Heard;
import bothy.garden.Planting;
import bothy.garden.Situation;
import bothy.reading.PlantingLines;
import bothy.reading.Reading;
import bothy.reading.Vocabulary;
import java.io.IOException;
import java.time.ZoneOffset;
import java.util.List;
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
    @Mixin
    private RulesOption rules;

    private Reading reading;
    private Vocabulary vocabulary;
    private PlantingLines plantingLines;

    @Override
    public Integer call() throws IOException {
        RulesFolder folder = Workshop.folder(rules.folder);
        reading = new Reading(Words.in(folder), CraftNotes.in(folder));
        vocabulary = new Vocabulary(reading);
        plantingLines = new PlantingLines(reading);
        boolean well = JsonLines.answer(System.in, System.out, line -> vocabulary.object(line.id(), heard(line)));
        return well ? 0 : 1;
    }

    private Heard heard(JsonLines.Line line) {
        Grower grower = Grower.in(ZoneOffset.UTC);
        List<Planting> plantings = plantingLines.read(line.plantings(), line.today(), grower);
        return reading.read(
                line.text(),
                new Situation(
                        line.today(),
                        grower,
                        plantings,
                        null,
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        plantingLines.happened(line.plantings(), line.today(), grower),
                        List.of()));
    }
}
