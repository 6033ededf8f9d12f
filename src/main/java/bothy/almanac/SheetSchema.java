package bothy.almanac;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.PathType;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** The JSON Schema of crop sheets, with its findings put into a grower's words. */
final class SheetSchema {
    static final String PATH = CropSheets.FOLDER + "sheet.schema.json";
    private final JsonNode text;
    private final JsonSchema schema;

    private SheetSchema(JsonNode text) {
        this.text = text;
        SchemaValidatorsConfig config = SchemaValidatorsConfig.builder()
                .pathType(PathType.JSON_POINTER)
                .locale(Locale.ENGLISH)
                .build();
        this.schema =
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(text, config);
    }

    /**
     * The schema that lies beside the sheets.
     *
     * @throws RulesBroken when it is missing or no JSON
     */
    static SheetSchema in(RulesFolder folder) {
        try {
            return new SheetSchema(new ObjectMapper().readTree(folder.text(PATH)));
        } catch (JsonProcessingException broken) {
            int line = broken.getLocation() == null ? 0 : broken.getLocation().getLineNr();
            throw new RulesBroken(List.of(new Problem(PATH, line, "this is no JSON: " + broken.getOriginalMessage())));
        }
    }

    /** What does not fit the schema, one problem for each figure. */
    List<Problem> problems(YamlFile file) {
        Map<String, List<SchemaFinding>> byPlace = schema.validate(file.tree()).stream()
                .map(message -> SchemaFinding.of(message, text, file.tree()))
                .collect(Collectors.groupingBy(SchemaFinding::figure, LinkedHashMap::new, Collectors.toList()));
        List<Problem> problems = new ArrayList<>();
        byPlace.forEach((figure, findings) ->
                worst(findings).forEach(finding -> problems.add(file.problem(finding.place(), finding.text()))));
        return problems;
    }

    /** A figure of the wrong shape is one problem, whatever else follows from its shape. */
    private static List<SchemaFinding> worst(List<SchemaFinding> findings) {
        List<SchemaFinding> shape =
                findings.stream().filter(SchemaFinding::wrongShape).limit(1).toList();
        return shape.isEmpty() ? findings : shape;
    }
}
