package bothy.almanac;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The words that growers use, from {@code words/*.yaml}. Each file is a tree whose leaves are words, phrases or numbers; what a
 * phrase may hold besides plain words (choices, gaps) is the reader's business. Immutable and safe to share.
 */
public final class Words {
    private final Map<String, YamlFile> files;
    private final Map<String, JsonNode> trees = new LinkedHashMap<>();

    private Words(Map<String, YamlFile> files) {
        this.files = files;
        files.forEach((name, file) -> trees.put(name, file.tree()));
    }

    /**
     * Reads every file under {@code words/}.
     *
     * @throws RulesBroken when a file is no YAML
     */
    public static Words in(RulesFolder folder) {
        Map<String, YamlFile> files = new LinkedHashMap<>();
        for (String path : folder.paths("words/", ".yaml")) {
            String name = path.substring("words/".length(), path.length() - ".yaml".length());
            files.put(name, YamlFile.in(folder, path));
        }
        return new Words(files);
    }

    /** The names under a place of a file, in order; empty when there is no such place. */
    public List<String> names(String file, String pointer) {
        List<String> names = new ArrayList<>();
        at(file, pointer).fieldNames().forEachRemaining(names::add);
        return names;
    }

    /**
     * The words listed at a place of a file ("/tomato/names"); a text is taken apart at its commas, and no such place holds no words.
     *
     * @throws RulesBroken when something else than words is listed there
     */
    public List<String> list(String file, String pointer) {
        JsonNode node = at(file, pointer);
        if (node.isMissingNode() || node.isNull()) {
            return List.of();
        }
        if (node.isValueNode()) {
            return atCommas(node.asText());
        }
        List<String> words = new ArrayList<>();
        for (JsonNode item : node) {
            if (!item.isValueNode() || node.isObject()) {
                throw new RulesBroken(List.of(problem(
                        file,
                        pointer,
                        "a list of words is wanted here; put each word or phrase on a line after \"- \".")));
            }
            words.add(item.asText());
        }
        return words;
    }

    /** One word or number at a place of a file, or {@code otherwise} when there is none. */
    public String text(String file, String pointer, String otherwise) {
        JsonNode node = at(file, pointer);
        return node.isValueNode() && !node.isNull() ? node.asText() : otherwise;
    }

    /** Every name under a place with the words listed under it, in order. */
    public Map<String, List<String>> lists(String file, String pointer) {
        Map<String, List<String>> lists = new LinkedHashMap<>();
        names(file, pointer).forEach(name -> lists.put(name, list(file, pointer + "/" + escaped(name))));
        return lists;
    }

    /** A problem at a place of a file, with its line. */
    public Problem problem(String file, String pointer, String text) {
        YamlFile yaml = files.get(file);
        return yaml == null ? new Problem("words/" + file + ".yaml", 0, text) : yaml.problem(pointer, text);
    }

    private JsonNode at(String file, String pointer) {
        JsonNode tree = trees.get(file);
        if (tree == null) {
            throw new RulesBroken(
                    List.of(new Problem("words/" + file + ".yaml", 0, "this file of words is missing; put it back.")));
        }
        return tree.at(pointer);
    }

    /** Commas within brackets belong to the phrase. */
    private static List<String> atCommas(String text) {
        List<String> words = new ArrayList<>();
        int depth = 0;
        int start = 0;
        for (int i = 0; i <= text.length(); i++) {
            char c = i == text.length() ? ',' : text.charAt(i);
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (c == ',' && (depth <= 0 || i == text.length())) {
                String word = text.substring(start, i).strip();
                if (!word.isEmpty()) {
                    words.add(word);
                }
                start = i + 1;
            }
        }
        return words;
    }

    private static String escaped(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }
}
