package bothy.almanac.troubles;

import bothy.almanac.Problem;
import bothy.almanac.RulesBroken;
import bothy.almanac.RulesFolder;
import bothy.almanac.YamlFile;
import bothy.almanac.troubles.Troubles.Cause;
import bothy.almanac.troubles.Troubles.Question;
import bothy.almanac.troubles.Troubles.Row;
import bothy.garden.Stage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Reads the files of troubles into one book: each sign, cause, question and group stands in one file only. */
final class TroubleFiles {
    private static final String FOLDER = "troubles/";
    private final Map<String, List<Row>> signs = new LinkedHashMap<>();
    private final Map<String, Cause> causes = new LinkedHashMap<>();
    private final Map<String, Question> questions = new LinkedHashMap<>();
    private final Map<String, List<String>> groups = new LinkedHashMap<>();
    private final Map<String, List<Stage>> stages = new LinkedHashMap<>();
    private final Map<String, List<String>> wider = new LinkedHashMap<>();
    private final Map<String, Map<String, String>> beside = new LinkedHashMap<>();
    private final Map<String, String> portraits = new LinkedHashMap<>();
    private final Map<String, Map<String, List<String>>> tellings = new LinkedHashMap<>();
    private final Set<String> apart = new TreeSet<>();
    private final Set<String> seen = new TreeSet<>();
    private final List<String> overlooked = new ArrayList<>();
    private final Map<String, Time> spheres = new LinkedHashMap<>();
    private final Map<String, List<String>> regions = new LinkedHashMap<>();
    private final Map<String, List<String>> lives = new LinkedHashMap<>();
    private final Map<String, YamlFile> home = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    /** A sphere as written. */
    private record Time(List<String> signs, String words) {}

    /** One file as written. */
    private record Sheet(
            Map<String, List<Row>> signs,
            Map<String, Cause> causes,
            Map<String, Question> questions,
            Map<String, List<String>> groups,
            Map<String, List<Stage>> stages,
            Map<String, List<String>> wider,
            Map<String, Map<String, String>> beside,
            List<String> apart,
            List<String> seen,
            Map<String, String> portraits,
            Map<String, Map<String, List<String>>> tellings,
            List<String> overlooked,
            Map<String, Time> spheres,
            Map<String, List<String>> regions,
            Map<String, List<String>> lives) {}

    private TroubleFiles() {}

    static Troubles read(RulesFolder folder) {
        TroubleFiles files = new TroubleFiles();
        folder.paths(FOLDER, ".yaml").forEach(path -> files.take(YamlFile.in(folder, path)));
        files.widen();
        files.hold();
        if (!files.problems.isEmpty()) {
            throw new RulesBroken(files.problems);
        }
        return new Troubles(
                files.signs,
                files.causes,
                files.questions,
                files.groups,
                files.stages,
                files.beside,
                files.apart,
                files.seen,
                files.portraits(),
                files.spheres.values().stream().map(files::sphere).toList(),
                new Regions(files.regions, files.lives));
    }

    private Sphere sphere(Time time) {
        Set<String> own = new HashSet<>();
        Set<String> elsewhere = new HashSet<>();
        signs.forEach(
                (sign, rows) -> rows.forEach(row -> (time.signs().contains(sign) ? own : elsewhere).add(row.cause())));
        Set<String> ofOtherTimes = new HashSet<>(elsewhere);
        ofOtherTimes.removeAll(own);
        own.removeAll(elsewhere);
        return new Sphere(time.signs(), time.words(), own, ofOtherTimes);
    }

    private void take(YamlFile file) {
        Sheet sheet = file.as(Sheet.class);
        add("signs", sheet.signs(), signs, file);
        add("causes", sheet.causes(), causes, file);
        add("questions", sheet.questions(), questions, file);
        add("groups", sheet.groups(), groups, file);
        add("stages", sheet.stages(), stages, file);
        add("wider", sheet.wider(), wider, file);
        add("beside", sheet.beside(), beside, file);
        add("portraits", sheet.portraits(), portraits, file);
        addTellings(sheet.tellings());
        add("spheres", sheet.spheres(), spheres, file);
        add("regions", sheet.regions(), regions, file);
        add("lives", sheet.lives(), lives, file);
        signs("apart", sheet.apart(), apart, file);
        signs("seen", sheet.seen(), seen, file);
        overlooked.addAll(sheet.overlooked() == null ? List.of() : sheet.overlooked());
    }

    private void signs(String part, List<String> from, Set<String> to, YamlFile file) {
        if (from != null) {
            to.addAll(from);
            home.put("/" + part, file);
        }
    }

    private <T> void add(String part, Map<String, T> from, Map<String, T> to, YamlFile file) {
        if (from == null) {
            return;
        }
        from.forEach((name, value) -> {
            String at = "/" + part + "/" + name;
            YamlFile other = home.putIfAbsent(at, file);
            if (other != null) {
                problems.add(file.problem(at, "\"" + name + "\" stands in " + other.path() + " too: keep one."));
            }
            to.put(name, value);
        });
    }

    /** The tellings of a cause may stand in several files: what is told in one voice is kept together. */
    private void addTellings(Map<String, Map<String, List<String>>> from) {
        if (from != null) {
            from.forEach((cause, byCrops) ->
                    byCrops.forEach((crops, texts) -> tellings.computeIfAbsent(cause, first -> new LinkedHashMap<>())
                            .merge(crops, texts, TroubleFiles::both)));
        }
    }

    private static List<String> both(List<String> some, List<String> more) {
        List<String> all = new ArrayList<>(some);
        all.addAll(more);
        return all;
    }

    /** A wider sign can have all causes of the narrower ones. */
    private void widen() {
        wider.forEach((sign, narrower) -> signs.put(
                sign,
                narrower.stream()
                        .flatMap(one -> signs.getOrDefault(one, List.of()).stream())
                        .toList()));
    }

    /** Holds the parts against each other: every name that is used must be known. */
    private void hold() {
        signs.forEach((sign, rows) -> rows.forEach(row -> row(sign, row)));
        lives.forEach((cause, where) -> {
            known(cause, "/lives/" + cause);
            where.stream()
                    .filter(region -> !regions.containsKey(region))
                    .forEach(region -> say(
                            "/lives/" + cause,
                            "there is no region \"" + region + "\": use one of " + new TreeSet<>(regions.keySet())));
        });
        portraits.keySet().forEach(cause -> known(cause, "/portraits/" + cause));
        tellings.keySet().forEach(cause -> known(cause, "/tellings/" + cause));
        spheres.forEach((name, time) -> time.signs().stream()
                .filter(sign -> !signs.containsKey(sign))
                .forEach(sign -> say("/spheres/" + name, "there is no sign \"" + sign + "\": mend its spelling.")));
        knownSigns("apart", apart);
        knownSigns("seen", seen);
        questions.forEach((id, question) -> {
            String at = "/questions/" + id;
            if (question.answers() == null || question.answers().size() < 2) {
                say(at, "the question \"" + id + "\" needs two answers or more.");
                return;
            }
            question.named().forEach(cause -> known(cause, at));
            if (question.signs() != null) {
                question.signs().stream()
                        .filter(sign -> !signs.containsKey(sign))
                        .forEach(sign -> say(at, "there is no sign \"" + sign + "\": add its causes, or take it out."));
            }
        });
    }

    private void knownSigns(String part, Set<String> named) {
        named.stream()
                .filter(sign -> !signs.containsKey(sign))
                .forEach(sign -> say("/" + part, "there is no sign \"" + sign + "\": mend its spelling."));
    }

    private Portraits portraits() {
        List<Portraits.Telling> told = new ArrayList<>();
        tellings.forEach((cause, byCrops) -> byCrops.forEach((crops, texts) ->
                texts.forEach(text -> told.add(new Portraits.Telling(cause, List.of(crops.split(",\\s*")), text)))));
        return new Portraits(portraits, told, overlooked);
    }

    private void row(String sign, Row row) {
        String at = "/signs/" + sign;
        if (row.cause() == null || row.how() == null || row.crops() == null || row.stages() == null) {
            say(at, "each row wants cause, how (common, occasional, rare), crops, stages, source and read.");
            return;
        }
        known(row.cause(), at);
        if (row.source() == null || row.source().isBlank()) {
            say(at, "the cause \"" + row.cause() + "\" has no source: name it, or say \"common practice\".");
        }
        row.stages().stream()
                .filter(stage -> !stage.equals("any") && !stages.containsKey(stage))
                .forEach(stage -> say(
                        at,
                        "there is no stretch \"" + stage + "\": use any or one of " + new TreeSet<>(stages.keySet())));
    }

    private void known(String cause, String at) {
        if (!causes.containsKey(cause)) {
            say(at, "the cause \"" + cause + "\" is not known: add it under causes:, or mend its spelling.");
        }
    }

    private void say(String at, String text) {
        YamlFile file = home.get(at);
        problems.add(file == null ? new Problem(FOLDER, 0, text) : file.problem(at, text));
    }
}
