package bothy.almanac;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * One sheet as it stands in its file: groups of figures, each figure beside its source. The figures become the record, the
 * sources its list of sources by path.
 */
final class SheetFile {
    private static final ObjectMapper MAPPER = YamlFile.treeMapper()
            .rebuild()
            .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
            .enable(DeserializationFeature.FAIL_ON_NUMBERS_FOR_ENUMS)
            .build();
    private final YamlFile file;
    private final ObjectNode plain = MAPPER.createObjectNode();
    private final Map<String, Source> sources = new LinkedHashMap<>();

    SheetFile(YamlFile file) {
        this.file = file;
    }

    /**
     * The sheet.
     *
     * @throws RulesBroken with file and line of the first thing that cannot be read
     */
    Sheet sheet() {
        JsonNode tree = file.tree();
        if (!tree.isObject()) {
            throw broken(
                    "",
                    "found no keys; a sheet begins with crop, botanical and family. Write the sheet or remove the file.");
        }
        tree.fields().forEachRemaining(entry -> copyTop(entry.getKey(), entry.getValue()));
        plain.set("sources", MAPPER.valueToTree(sources));
        Sheet sheet = read();
        String named = CropSheets.FOLDER + sheet.crop() + ".yaml";
        if (!named.equals(file.path())) {
            throw broken(
                    "/crop",
                    "the crop is \"" + sheet.crop() + "\"; a sheet is called like its crop. Rename the file to " + named
                            + " or correct the crop.");
        }
        return sheet;
    }

    private void copyTop(String key, JsonNode value) {
        if (value.isObject()) {
            ObjectNode group = plain.putObject(key);
            value.fields().forEachRemaining(figure -> copyFigure(group, key, figure.getKey(), figure.getValue()));
        } else {
            plain.set(key, value);
        }
    }

    private void copyFigure(ObjectNode group, String groupName, String name, JsonNode figure) {
        String pointer = "/" + groupName + "/" + name;
        String source = figure.path("source").asText("");
        String read = figure.path("read").asText("");
        if (source.isBlank() || read.isBlank()) {
            throw broken(pointer, unsourced(name, source.isBlank() ? "source" : "read"));
        }
        group.set(name, value(pointer, figure));
        sources.put(groupName + "." + name, new Source(source, read));
    }

    static String unsourced(String figure, String missing) {
        return figure + " has no " + missing
                + "; every figure is written with source (who says so) and read (copy or memory). Add it.";
    }

    private JsonNode value(String pointer, JsonNode figure) {
        if (figure.has("value")) {
            return figure.get("value");
        }
        if (figure.has("at")) {
            return figure.get("at");
        }
        if (figure.has("low") && figure.has("high")) {
            return MAPPER.createObjectNode()
                    .<ObjectNode>set("low", figure.get("low"))
                    .set("high", figure.get("high"));
        }
        throw broken(
                pointer, "no figure here; write value, or low and high, or at. Add the figure or remove the line.");
    }

    private Sheet read() {
        try {
            return MAPPER.treeToValue(plain, Sheet.class);
        } catch (UnrecognizedPropertyException unknown) {
            throw broken(
                    pointer(unknown),
                    "\"" + unknown.getPropertyName() + "\" is not known here; allowed are "
                            + known(unknown.getKnownPropertyIds()) + ". Correct or remove it.");
        } catch (JsonMappingException wrong) {
            String pointer = pointer(wrong);
            String name = pointer.substring(pointer.lastIndexOf('/') + 1);
            throw broken(pointer, name + " cannot be " + plain.at(pointer) + "; " + reason(wrong) + ". Correct it.");
        } catch (JsonProcessingException unreadable) {
            throw broken("", unreadable.getOriginalMessage());
        }
    }

    private static String known(Collection<Object> names) {
        return names.stream()
                .map(Object::toString)
                .filter(name -> !"sources".equals(name))
                .sorted()
                .collect(Collectors.joining(", "));
    }

    private static String reason(JsonMappingException wrong) {
        if (wrong.getCause() instanceof IllegalArgumentException refused) {
            return refused.getMessage();
        }
        return "it takes "
                + (wrong instanceof MismatchedInputException mismatch ? takes(mismatch.getTargetType()) : "another");
    }

    /** What a figure of a type takes, in a grower's words. */
    static String takes(Class<?> type) {
        if (type.isEnum()) {
            return "one of "
                    + Arrays.stream(type.getEnumConstants())
                            .map(word ->
                                    word.toString().toLowerCase(Locale.ROOT).replace('_', '-'))
                            .collect(Collectors.joining(", "));
        }
        return switch (type.getSimpleName()) {
            case "Double", "double" -> "a number";
            case "boolean" -> "true or false";
            case "Range" -> "low and high";
            case "String" -> "a word";
            case "Map", "LinkedHashMap" -> "at: {temperature: days}";
            default -> "a list in value: []";
        };
    }

    private static String pointer(JsonMappingException wrong) {
        return wrong.getPath().stream()
                .filter(step -> step.getFieldName() != null)
                .limit(2)
                .map(step -> "/" + step.getFieldName())
                .collect(Collectors.joining());
    }

    private RulesBroken broken(String pointer, String text) {
        return new RulesBroken(List.of(file.problem(pointer, text)));
    }
}
