package bothy.almanac.troubles;

import bothy.almanac.Problem;
import bothy.almanac.RulesBroken;
import bothy.almanac.RulesFolder;
import bothy.almanac.YamlFile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The words for troubles, from {@code wording/en-troubles*.yaml}.
 *
 * @param signs what each sign is called and what is safe to do while it is not clear
 * @param causes what to do, by cause
 * @param questions how each question is asked; a question without words is never asked, only understood when told
 * @param talk sentences around them
 */
public record TroubleWording(
        Map<String, Sign> signs, Map<String, Cause> causes, Map<String, Asked> questions, Map<String, String> talk) {

    /**
     * @param name what the sign is called in a sentence ("yellow lower leaves")
     * @param meanwhile what does no harm and may help, a sentence
     */
    public record Sign(String name, String meanwhile) {}

    /**
     * @param first first action, one or two sentences
     * @param not what not to do
     * @param prevent prevention next time
     * @param crops the same for crops at which it is another matter; absent where there is none
     */
    public record Cause(String first, String not, String prevent, Map<String, Cause> crops) {

        /** What is said of it at a crop; {@code null} where the crop is not known. */
        public Cause at(String crop) {
            return crops == null || crop == null ? this : crops.getOrDefault(crop, this);
        }
    }

    /**
     * @param ask the question
     * @param thing what it asks for, after "no" too ("fur under the leaves"), for questions of yes and no
     * @param answers labels of the answers by id; absent for yes and no
     * @param told what an answer shows, by id, absent where {@code thing} says it
     */
    public record Asked(String ask, String thing, Map<String, String> answers, Map<String, String> told) {

        /** What stands on the button of an answer. */
        public String label(String answer) {
            if (answers != null && answers.containsKey(answer)) {
                return answers.get(answer);
            }
            return Character.toUpperCase(answer.charAt(0)) + answer.substring(1).replace('-', ' ');
        }

        /** What an answer shows, as a part of a sentence. */
        public String shows(String answer) {
            if (told != null && told.containsKey(answer)) {
                return told.get(answer);
            }
            if (thing != null) {
                return answer.equals("no") ? "no " + thing : thing;
            }
            String label = label(answer);
            return Character.toLowerCase(label.charAt(0)) + label.substring(1);
        }
    }

    /**
     * Reads the words.
     *
     * @throws RulesBroken with file and line
     */
    public static TroubleWording in(RulesFolder folder) {
        TroubleWording all = none();
        List<Problem> problems = new ArrayList<>();
        for (String path : folder.paths("wording/en-troubles", ".yaml")) {
            YamlFile file = YamlFile.in(folder, path);
            TroubleWording one = file.as(TroubleWording.class);
            add("signs", one.signs, all.signs, file, problems);
            add("causes", one.causes, all.causes, file, problems);
            add("questions", one.questions, all.questions, file, problems);
            add("talk", one.talk, all.talk, file, problems);
        }
        if (!problems.isEmpty()) {
            throw new RulesBroken(problems);
        }
        return all;
    }

    /** Ids of the questions that have words to be asked with. */
    public Set<String> askable() {
        return questions.entrySet().stream()
                .filter(entry -> entry.getValue().ask() != null)
                .map(Map.Entry::getKey)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** No words at all. */
    public static TroubleWording none() {
        return new TroubleWording(
                new LinkedHashMap<>(), new LinkedHashMap<>(), new LinkedHashMap<>(), new LinkedHashMap<>());
    }

    private static <T> void add(
            String part, Map<String, T> from, Map<String, T> to, YamlFile file, List<Problem> problems) {
        if (from != null) {
            from.forEach((name, words) -> {
                if (to.putIfAbsent(name, words) != null) {
                    problems.add(file.problem("/" + part + "/" + name, "\"" + name + "\" is worded twice: keep one."));
                }
            });
        }
    }
}
