package bothy;

import bothy.almanac.troubles.Troubles;
import bothy.conversation.Conversation;
import bothy.conversation.Conversation.Outcome;
import bothy.conversation.Knowledge;
import bothy.diary.Store;
import bothy.diary.sql.Shelf;
import bothy.garden.Diagnosis;
import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Grower;
import bothy.garden.Heard;
import bothy.garden.Message;
import bothy.garden.Planting;
import bothy.garden.SignSeen;
import bothy.garden.Situation;
import bothy.garden.Statement;
import bothy.garden.What;
import bothy.reading.PlantingLines;
import bothy.reading.Vocabulary;
import bothy.weather.WeatherSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Looks into troubles told as JSON lines and prints the causes and the reply as JSON lines. */
@Command(
        name = "diagnose",
        mixinStandardHelpOptions = true,
        description = {
            "Reads messages as JSON lines from standard input and prints signs, causes with their chances, the question asked",
            "next and the whole reply, a line each.",
            "A line in: {\"id\": 1, \"text\": \"holes in the kale\", \"today\": \"2027-06-01\", \"plantings\": [\"6 kale sown 2027-04-10\"]}"
        })
final class DiagnoseVerb implements Callable<Integer> {
    private static final int MOST_CAUSES = 6;

    @Mixin
    private RulesOption rules;

    private Knowledge knowledge;
    private Conversation conversation;
    private Store store;

    @Override
    public Integer call() throws IOException {
        knowledge = Workshop.knowledge(Workshop.folder(rules.folder), Workshop.cacheFolder(), WeatherSource.none());
        Path folder = Files.createTempDirectory("bothy-diagnose");
        try (Store opened = Shelf.open(folder.resolve("diary.db").toString())) {
            store = opened;
            conversation = new Conversation(store, knowledge);
            return JsonLines.answer(System.in, System.out, this::diagnosed) ? 0 : 1;
        } finally {
            try (Stream<Path> left = Files.list(folder)) {
                for (Path one : left.toList()) {
                    Files.deleteIfExists(one);
                }
            }
            Files.deleteIfExists(folder);
        }
    }

    private Map<String, Object> diagnosed(JsonLines.Line line) {
        LocalDate today = line.today();
        String grower = "line-" + line.number();
        begin(grower, line.plantings(), today);
        Instant noon = today.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC);
        Outcome outcome = conversation
                .handle(Message.text(grower + "-message", grower, noon, ZoneOffset.UTC, line.text()), null)
                .orElseThrow();
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("id", line.id());
        object.put("signs", signs(outcome));
        object.put("causes", causes(outcome));
        object.put("asks", asks(outcome));
        object.put("reply", outcome.reply().text());
        return object;
    }

    private List<String> signs(Outcome outcome) {
        Vocabulary vocabulary = new Vocabulary(knowledge.reading());
        List<SignSeen> seen = outcome.written().stream()
                .filter(line -> line.entry() instanceof SignSeen)
                .map(line -> (SignSeen) line.entry())
                .filter(sign -> !sign.sign().equals(Troubles.UNNAMED))
                .toList();
        return List.copyOf(vocabulary.signs(seen));
    }

    private static List<Map<String, Object>> causes(Outcome outcome) {
        List<Map<String, Object>> causes = new ArrayList<>();
        told(outcome).stream()
                .flatMap(diagnosis -> diagnosis.causes().stream())
                .sorted((a, b) -> Double.compare(b.chance(), a.chance()))
                .filter(likely ->
                        causes.stream().noneMatch(one -> one.get("cause").equals(likely.cause())))
                .limit(MOST_CAUSES)
                .forEach(likely -> {
                    Map<String, Object> cause = new LinkedHashMap<>();
                    cause.put("cause", likely.cause());
                    cause.put("chance", Math.round(likely.chance() * 1000) / 1000.0);
                    causes.add(cause);
                });
        return causes;
    }

    private static List<Diagnosis> told(Outcome outcome) {
        return outcome.diagnoses().stream().filter(Diagnosis::justTold).toList();
    }

    private static String asks(Outcome outcome) {
        String[] paragraphs = outcome.reply().text().split("\n\n");
        return outcome.asks() ? paragraphs[paragraphs.length - 1] : null;
    }

    /** Writes the plantings told into a diary of their own, with all else that their lines tell. */
    private void begin(String grower, List<String> texts, LocalDate today) {
        List<Entry> entries = new ArrayList<>();
        Grower settings = Grower.in(ZoneOffset.UTC);
        PlantingLines plantingLines = new PlantingLines(knowledge.reading());
        for (String text : texts) {
            for (Planting planting : plantingLines.read(List.of(text), today, settings)) {
                long before = entries.stream()
                        .filter(entry -> entry instanceof Event event
                                && event.crop().equals(planting.crop())
                                && event.what() == begun(planting))
                        .count();
                String id = planting.crop() + "-" + (before + 1);
                entries.add(beginning(planting, id));
                entries.addAll(besides(planting, id, text, today, settings));
            }
        }
        if (!entries.isEmpty()) {
            store.write(
                    grower,
                    page -> page.append(
                            grower + "-plantings",
                            today.minusDays(1).atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC),
                            entries));
        }
    }

    private static What begun(Planting planting) {
        return planting.start() == Planting.Start.PLANT ? What.PLANTED_OUT : What.SOWN;
    }

    private static Event beginning(Planting planting, String id) {
        return Event.of(begun(planting), id, planting.crop(), planting.begun())
                .withVariety(planting.variety())
                .withCount(planting.count())
                .withPlace(planting.place(), planting.container());
    }

    private List<Event> besides(Planting planting, String id, String text, LocalDate today, Grower settings) {
        Situation situation = new Situation(today, settings, List.of(), null, List.of(), List.of());
        Heard heard = knowledge.reading().read(text, situation);
        return heard.statements().stream()
                .map(Statement::event)
                .filter(event -> event.what() != What.SOWN && event.what() != begun(planting) && event.on() != null)
                .map(event -> event.withPlanting(id, planting.crop()))
                .toList();
    }
}
