package bothy.almanac;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.exc.InvalidFormatException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.StringReader;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** One YAML file of the rules folder: its content as a tree or a record, and on which line each part stands. */
public final class YamlFile {
    private static final YAMLMapper MAPPER = YAMLMapper.builder(YAMLFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    // "on", "off" and "no" are words of growers.
                    .enable(YAMLParser.Feature.PARSE_BOOLEAN_LIKE_WORDS_AS_STRINGS)
                    .build())
            .addModule(new JavaTimeModule())
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
            .build();
    private final String path;
    private final String text;
    /** The same content parsed before, {@code null} when it was not. */
    private final JsonNode parsed;

    private Map<String, Integer> lines;

    public YamlFile(String path, String text) {
        this(path, text, null);
    }

    private YamlFile(String path, String text, JsonNode parsed) {
        this.path = path;
        this.text = text;
        this.parsed = parsed;
    }

    public static YamlFile in(RulesFolder folder, String path) {
        return new YamlFile(path, folder.text(path), folder.parsed(path));
    }

    public String path() {
        return path;
    }

    /**
     * The content as a tree.
     *
     * @throws RulesBroken when it is no YAML
     */
    public JsonNode tree() {
        if (parsed != null) {
            return parsed;
        }
        try {
            return MAPPER.readTree(text);
        } catch (JsonProcessingException broken) {
            throw broken(broken);
        }
    }

    /**
     * The content as a record. Unknown keys and wrong types are errors.
     *
     * @throws RulesBroken with the line
     */
    public <T> T as(Class<T> type) {
        try {
            return parsed == null ? MAPPER.readValue(text, type) : MAPPER.treeToValue(parsed, type);
        } catch (JsonProcessingException broken) {
            throw broken(broken);
        }
    }

    /** The line, counted from 1, on which the part at a JSON pointer ("/germination/minSoilTempC") or its nearest parent stands. */
    public int line(String pointer) {
        if (lines == null) {
            lines = new HashMap<>();
            try {
                Node root = new Yaml(new LoaderOptions()).compose(new StringReader(text));
                if (root != null) {
                    mark("", root);
                }
            } catch (MarkedYAMLException unreadable) {
                return unreadable.getProblemMark() == null
                        ? 0
                        : unreadable.getProblemMark().getLine() + 1;
            }
        }
        for (String at = pointer; !at.isEmpty(); at = at.substring(0, at.lastIndexOf('/'))) {
            Integer line = lines.get(at);
            if (line != null) {
                return line;
            }
        }
        return 1;
    }

    public Problem problem(String pointer, String text) {
        return new Problem(path, line(pointer), text);
    }

    private void mark(String pointer, Node node) {
        lines.putIfAbsent(pointer, node.getStartMark().getLine() + 1);
        if (node instanceof MappingNode mapping) {
            for (NodeTuple tuple : mapping.getValue()) {
                String key = tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "";
                String below = pointer + "/" + key;
                lines.put(below, tuple.getKeyNode().getStartMark().getLine() + 1);
                mark(below, tuple.getValueNode());
            }
        } else if (node instanceof SequenceNode sequence) {
            int index = 0;
            for (Node item : sequence.getValue()) {
                mark(pointer + "/" + index++, item);
            }
        }
    }

    private RulesBroken broken(JsonProcessingException error) {
        if (error instanceof UnrecognizedPropertyException unknown) {
            return new RulesBroken(List.of(problem(
                    pointer(unknown),
                    "\"" + unknown.getPropertyName() + "\" is not known here; known are "
                            + unknown.getKnownPropertyIds().stream()
                                    .map(String::valueOf)
                                    .sorted()
                                    .collect(Collectors.joining(", "))
                            + ".")));
        }
        int line = error instanceof JsonMappingException mapping
                        && !mapping.getPath().isEmpty()
                ? line(pointer(mapping))
                : error.getLocation() == null ? 0 : error.getLocation().getLineNr();
        return new RulesBroken(List.of(new Problem(path, line, plain(error))));
    }

    /** What is wrong without Java's own names for it. */
    private static String plain(JsonProcessingException error) {
        if (error instanceof InvalidFormatException wrong) {
            Class<?> wanted = wrong.getTargetType();
            String takes = wanted == LocalDateTime.class
                    ? "a day and time such as 2027-05-01T09:00"
                    : wanted == LocalDate.class
                            ? "a day such as 2027-05-01"
                            : Number.class.isAssignableFrom(wanted) || wanted.isPrimitive()
                                    ? "a number"
                                    : "another value";
            return "\"" + wrong.getValue() + "\" cannot be read here; it takes " + takes + ". Correct it.";
        }
        if (error instanceof MismatchedInputException) {
            return "what stands here is of another kind than it takes (a list, a text or parts of their own). "
                    + "Compare it with the same line in another file.";
        }
        return error.getOriginalMessage();
    }

    private static String pointer(JsonMappingException error) {
        StringBuilder pointer = new StringBuilder();
        error.getPath().forEach(step -> pointer.append('/')
                .append(step.getFieldName() == null ? String.valueOf(step.getIndex()) : step.getFieldName()));
        return pointer.toString();
    }

    /** A mapper with the same habits as the files, for turning a checked tree into a record. */
    public static JsonMapper treeMapper() {
        return JsonMapper.builder()
                .addModule(new JavaTimeModule())
                .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
                .build();
    }
}
