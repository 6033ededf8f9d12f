package bothy.almanac;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The YAML files of a rules folder as JSON, which is read many times faster: kept in the user's cache under the hash of the whole
 * folder, and packed with the program for its own rules. Whatever changed is parsed from the YAML again.
 */
final class ParsedFiles {
    private static final Logger LOG = LoggerFactory.getLogger(ParsedFiles.class);
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private static final int KEPT = 8;

    private ParsedFiles() {}

    /** Name of the file that holds the parsed form of a folder. */
    static String name(RulesFolder folder) {
        return "tree-" + folder.fingerprint() + ".json";
    }

    /** The parsed files by path, each as JSON to be read when it is wanted; empty when one of them is no YAML, so that its own reading tells what is wrong. */
    static Map<String, String> of(RulesFolder folder, Path cache) {
        String name = name(folder);
        Path kept = cache.resolve(name);
        try {
            if (Files.isReadable(kept)) {
                return texts(JSON.readTree(Files.readAllBytes(kept)));
            }
            try (InputStream packed = ParsedFiles.class.getResourceAsStream(name)) {
                if (packed != null) {
                    return texts(JSON.readTree(packed));
                }
            }
            JsonNode parsed = parse(folder);
            new KeptFiles(cache, "tree-[0-9a-f]{64}\\.json", KEPT).write(name, bytes(parsed));
            return texts(parsed);
        } catch (RulesBroken broken) {
            return Map.of();
        } catch (IOException unusable) {
            LOG.warn("Parsed rules in {} cannot be used: {}", kept, unusable.toString());
            return Map.of();
        }
    }

    /** All YAML files of a folder in one object, by path. */
    static JsonNode parse(RulesFolder folder) {
        ObjectNode all = JSON.createObjectNode();
        for (String path : folder.paths("", ".yaml")) {
            all.put(path, new YamlFile(path, folder.text(path)).tree().toString());
        }
        return all;
    }

    static byte[] bytes(JsonNode parsed) throws JsonProcessingException {
        return JSON.writeValueAsBytes(parsed);
    }

    private static Map<String, String> texts(JsonNode all) {
        Map<String, String> texts = new HashMap<>();
        all.fields()
                .forEachRemaining(
                        entry -> texts.put(entry.getKey(), entry.getValue().asText()));
        return texts;
    }

    /** The tree of one file. */
    static JsonNode tree(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException broken) {
            throw new IllegalStateException("a parsed file of the rules was damaged", broken);
        }
    }
}
