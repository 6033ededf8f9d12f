package bothy.channel.telegram;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * What the service answered, as far as it has to be known before the updates in it are read: each is then read by itself, so that one that
 * cannot be read keeps back no other.
 *
 * @param ok whether it did as it was asked
 * @param results the parts of the result, as they came; empty when it is no list
 */
record Answer(boolean ok, List<String> results) {
    private static final JsonFactory JSON = new JsonFactory();

    /** An answer that is no whole JSON object is not "ok". */
    static Answer of(String body) {
        try (JsonParser json = JSON.createParser(body)) {
            return json.nextToken() == JsonToken.START_OBJECT ? of(json, body) : new Answer(false, List.of());
        } catch (JsonProcessingException e) {
            return new Answer(false, List.of());
        } catch (IOException e) {
            throw new IllegalStateException("A text in memory cannot be read", e);
        }
    }

    private static Answer of(JsonParser json, String body) throws IOException {
        boolean ok = false;
        List<String> results = new ArrayList<>();
        for (String field = json.nextFieldName(); field != null; field = json.nextFieldName()) {
            JsonToken value = json.nextToken();
            if (field.equals("ok")) {
                ok = value == JsonToken.VALUE_TRUE;
            } else if (field.equals("result") && value == JsonToken.START_ARRAY) {
                while (json.nextToken() != JsonToken.END_ARRAY) {
                    results.add(part(json, body));
                }
            }
            json.skipChildren();
        }
        return new Answer(ok, results);
    }

    private static String part(JsonParser json, String body) throws IOException {
        int begin = (int) json.currentTokenLocation().getCharOffset();
        json.skipChildren();
        json.finishToken();
        return body.substring(begin, (int) json.currentLocation().getCharOffset());
    }
}
