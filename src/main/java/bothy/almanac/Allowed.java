package bothy.almanac;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** What a part of a schema allows, in a grower's words. */
final class Allowed {
    private Allowed() {}

    /**
     * @param rule the part of the schema
     * @param keyword the keyword in it that refused something
     */
    static String by(JsonNode rule, String keyword) {
        return switch (keyword) {
            case "enum" -> "one of " + listed(rule.get("enum"));
            case "minItems" -> "at least " + rule.get("minItems").asText() + " word";
            case "uniqueItems" -> "each word only once";
            case "minLength" -> "at least " + rule.get("minLength").asText() + " letters";
            case "minProperties" -> "at least " + rule.get("minProperties").asText() + " temperatures";
            case "pattern" -> rule.path("description").asText("another spelling");
            case "propertyNames" ->
                rule.path("propertyNames").path("description").asText("other keys");
            default -> typed(rule);
        };
    }

    private static String typed(JsonNode rule) {
        return switch (rule.path("type").asText()) {
            case "number" -> "a number" + limits(rule);
            case "boolean" -> "true or false";
            case "string" -> "text";
            case "array" -> "a list";
            default -> "a group of figures";
        };
    }

    private static String limits(JsonNode rule) {
        if (rule.has("exclusiveMinimum")) {
            return " above " + rule.get("exclusiveMinimum") + " and at most " + rule.get("maximum");
        }
        return rule.has("minimum") ? " from " + rule.get("minimum") + " to " + rule.get("maximum") : "";
    }

    private static String listed(JsonNode words) {
        List<String> texts = new ArrayList<>();
        words.forEach(word -> texts.add(word.asText()));
        return String.join(", ", texts);
    }
}
