package bothy.advice;

import bothy.almanac.Problem;
import bothy.almanac.RulesFolder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsParserException;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.Message;
import org.kie.internal.builder.conf.LanguageLevelOption;

/**
 * Finds out which rule is ill. The rule compiler names neither file nor line for many mistakes, so the rules of each file are
 * compiled apart, with the package, imports and declared facts of all files, and those of an ill file by halves.
 */
final class RuleDoctor {
    private static final List<Plainer> PLAINER = List.of(
            new Plainer(
                    "mismatched input '([^']*)'.*|no viable alternative at input '([^']*)'.*|extraneous input '([^']*)'.*",
                    "“%s” was not expected here. A rule stands as: rule \"its sentence\", its @source, when, then, end. Check the "
                            + "spelling and whether something before it is missing."),
            new Plainer(
                    "The method (\\w+)\\(.*\\) is undefined for the type Lambda.*",
                    "“%s” is nothing that a rule can do: check the spelling. A rule ends in insertLogical(new Advice(…));"),
            new Plainer(
                    "The method (\\w+\\(.*\\) is undefined for the type \\w+).*", "The method %s: check the spelling."),
            new Plainer(
                    "(\\$?\\w+) cannot be resolved.*", "“%s” is not known here: check the spelling, or bind it above."),
            new Plainer("Syntax error, insert \"(.*)\" to complete.*", "a “%s” is missing."));

    private final RulesFolder folder;

    RuleDoctor(RulesFolder folder) {
        this.folder = folder;
    }

    /**
     * Problems with file and line.
     *
     * @param reported what the compiler said of all files together, for when no single rule is at fault
     */
    List<Problem> examine(List<String> reported) {
        List<Problem> problems = new ArrayList<>();
        StringBuilder declarations = new StringBuilder();
        List<Part> parts = new ArrayList<>();
        for (String path : folder.paths("", ".drl")) {
            Part.split(path, folder.text(path), parts, declarations);
            syntax(path, problems);
        }
        if (problems.isEmpty()) {
            duplicates(parts, problems);
        }
        if (problems.isEmpty()) {
            parts.stream()
                    .collect(Collectors.groupingBy(Part::path, TreeMap::new, Collectors.toList()))
                    .values()
                    .forEach(file -> ill(declarations.toString(), file, problems));
        }
        if (problems.isEmpty()) {
            reported.stream()
                    .filter(text -> !text.contains("null Package"))
                    .map(text -> new Problem("*.drl", 0, plain(text)))
                    .forEach(problems::add);
        }
        return problems;
    }

    private void syntax(String path, List<Problem> problems) {
        DrlParser parser = new DrlParser(LanguageLevelOption.DRL6);
        try {
            parser.parse(null, folder.text(path));
            parser.getErrors().stream()
                    .filter(error -> !error.getMessage().contains("null Package"))
                    .forEach(error -> problems.add(new Problem(
                            path, error.getLines().length > 0 ? error.getLines()[0] : 0, plain(error.getMessage()))));
        } catch (DroolsParserException unparsable) {
            problems.add(new Problem(path, 0, plain(String.valueOf(unparsable.getMessage()))));
        }
    }

    private static void duplicates(List<Part> parts, List<Problem> problems) {
        for (int i = 0; i < parts.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (parts.get(i).name().equals(parts.get(j).name())) {
                    problems.add(new Problem(
                            parts.get(i).path(),
                            parts.get(i).line(),
                            "a rule named \"" + parts.get(i).name() + "\" stands already at "
                                    + parts.get(j).path() + ":" + parts.get(j).line()
                                    + "; give one of them another name."));
                }
            }
        }
    }

    /** Rules that compile together are well; of those that do not, each half is looked at, down to the single rule. */
    private static void ill(String declarations, List<Part> parts, List<Problem> problems) {
        String fault = fault(declarations, parts);
        if (fault == null) {
            return;
        }
        if (parts.size() == 1) {
            Part part = parts.get(0);
            problems.add(new Problem(part.path(), part.line(), "rule \"" + part.name() + "\": " + plain(fault)));
            return;
        }
        int half = parts.size() / 2;
        ill(declarations, parts.subList(0, half), problems);
        ill(declarations, parts.subList(half, parts.size()), problems);
    }

    private static String fault(String declarations, List<Part> parts) {
        String rules = parts.stream().map(Part::text).collect(Collectors.joining("\n"));
        RulesFolder alone =
                RulesFolder.of(Map.of("alone.drl", "package " + RuleBook.PACKAGE + "\n" + declarations + "\n" + rules));
        try {
            KieBuilder builder = RuleBook.build(
                    List.of("alone.drl"), alone, KieServices.get().newReleaseId("bothy", "alone", "1"));
            return builder.getResults().getMessages(Message.Level.ERROR).stream()
                    .map(Message::getText)
                    .filter(text -> !text.contains("Java source of") && !text.contains("null Package"))
                    .findFirst()
                    .orElse(null);
        } catch (RuntimeException | LinkageError thrown) {
            Throwable cause = thrown;
            while (cause.getCause() != null) {
                cause = cause.getCause();
            }
            return String.valueOf(cause.getMessage());
        }
    }

    /** What the compiler said, in words that a gardener can act on. */
    private static String plain(String compilerText) {
        String text = compilerText
                .replaceAll("\\[ERR \\d+]\\s*", "")
                .replaceAll("^\\s*Line \\d+:\\d+\\s*", "")
                .replaceAll("\\s+", " ")
                .strip();
        if (text.startsWith("Unable to find class")) {
            return text + ". No fact has this name: see the facts listed in DEVELOPERS.md, or declare it.";
        }
        if (text.contains("Unable to parse left part") || text.contains("Unable to create")) {
            return text + ". The fact has no such part: check the spelling.";
        }
        return PLAINER.stream()
                .flatMap(plainer -> plainer.of(text).stream())
                .findFirst()
                .orElse(text);
    }

    /** A sentence of the compiler and how a gardener would say it, with the word that is at fault. */
    private record Plainer(Pattern said, String words) {
        private Plainer(String said, String words) {
            this(Pattern.compile(said), words);
        }

        private Optional<String> of(String text) {
            Matcher matcher = said.matcher(text);
            return matcher.matches()
                    ? IntStream.rangeClosed(1, matcher.groupCount())
                            .mapToObj(matcher::group)
                            .filter(Objects::nonNull)
                            .findFirst()
                            .map(words::formatted)
                    : Optional.empty();
        }
    }

    /** One rule of a file, with the line of its name. */
    private record Part(String path, String name, int line, String text) {

        static void split(String path, String text, List<Part> parts, StringBuilder declarations) {
            String[] lines = text.split("\n", -1);
            StringBuilder current = null;
            String name = null;
            int start = 0;
            for (int i = 0; i < lines.length; i++) {
                String line = lines[i];
                if (line.startsWith("rule ")) {
                    current = new StringBuilder();
                    name = line.substring(5).strip().replaceAll("^\"|\"$", "");
                    start = i + 1;
                }
                if (current != null) {
                    current.append(line).append('\n');
                } else if (!line.startsWith("package ")) {
                    declarations.append(line).append('\n');
                }
                if (current != null && line.strip().equals("end")) {
                    parts.add(new Part(path, name, start, current.toString()));
                    current = null;
                }
            }
        }
    }
}
