package bothy.almanac;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.ValidationMessage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * One thing in a sheet that its schema does not allow.
 *
 * @param keyword keyword of the schema that refused it
 * @param pointer where it stands in the sheet
 * @param property missing or unknown key, {@code null} where it is not about a key
 * @param rule the part of the schema that the keyword stands in
 * @param found what stands in the sheet
 */
record SchemaFinding(String keyword, String pointer, String property, JsonNode rule, JsonNode found) {
    private static final Set<String> SHAPES = Set.of("value", "low", "high", "at");
    private static final int FIGURE = 2;

    static SchemaFinding of(ValidationMessage message, JsonNode schema, JsonNode sheet) {
        String at = message.getSchemaLocation().getFragment().toString();
        String pointer = message.getInstanceLocation().toString();
        return new SchemaFinding(
                message.getType(),
                pointer,
                message.getProperty(),
                schema.at(at.substring(0, at.lastIndexOf('/'))),
                sheet.at(pointer));
    }

    /** The key itself where one is not known, otherwise what holds the fault. */
    String place() {
        return "additionalProperties".equals(keyword) ? pointer + "/" + property : pointer;
    }

    private List<String> steps() {
        return pointer.isEmpty() ? List.of() : List.of(pointer.substring(1).split("/"));
    }

    /** The figure that it is about, or the key where it is about no figure. */
    String figure() {
        List<String> steps = steps();
        return steps.size() >= FIGURE ? String.join("/", steps.subList(0, FIGURE)) : pointer + "/" + property;
    }

    /** Whether the figure is a span in place of one value or the like, so that all else is beside the point. */
    boolean wrongShape() {
        return steps().size() == FIGURE
                && (!found.isObject() || "required".equals(keyword) && SHAPES.contains(property));
    }

    /** What is wrong and what to do. */
    String text() {
        if (wrongShape()) {
            return name() + " is written with " + listed(rule.get("required")) + "; found " + keysOrAll()
                    + ". Correct it.";
        }
        return switch (keyword) {
            case "required" -> missing();
            case "additionalProperties" ->
                "\"" + property + "\" is not known here; allowed are " + known() + ". Correct or remove it.";
            default -> name() + " cannot be " + found + "; it takes " + Allowed.by(rule, keyword) + ". Correct it.";
        };
    }

    private String name() {
        List<String> steps = steps();
        if (steps.isEmpty()) {
            return "a sheet";
        }
        String last = steps.get(Math.min(steps.size(), FIGURE) - 1);
        boolean isPart = steps.size() > FIGURE && !SHAPES.contains(steps.get(FIGURE));
        return isPart ? steps.get(FIGURE) + " of " + last : last;
    }

    private String missing() {
        return switch (steps().size()) {
            case 0 -> "there is no " + property + "; a sheet needs " + listed(rule.get("required")) + ". Add it.";
            case 1 -> name() + " has no " + property + ", which it needs. Add it with its source.";
            default -> SheetFile.unsourced(name(), property);
        };
    }

    private String known() {
        List<String> names = new ArrayList<>();
        rule.path("properties").fieldNames().forEachRemaining(names::add);
        names.sort(null);
        return String.join(", ", names);
    }

    private String keysOrAll() {
        if (!found.isObject()) {
            return found.toString();
        }
        List<String> keys = new ArrayList<>();
        found.fieldNames().forEachRemaining(keys::add);
        return String.join(", ", keys);
    }

    private static String listed(JsonNode names) {
        List<String> words = new ArrayList<>();
        names.forEach(name -> words.add(name.asText()));
        return String.join(", ", words);
    }
}
