package bothy.diary.sql;

import bothy.garden.Amendment;
import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Finding;
import bothy.garden.Normals;
import bothy.garden.Reply;
import bothy.garden.SettingChange;
import bothy.garden.SignSeen;
import bothy.garden.What;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializerBase;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;

/**
 * Entries and replies as JSON text. Names that are stored are spelled here, not taken from class names, so that renaming a class
 * leaves old diaries readable: {@code {"kind":"event","what":"planted-out","on":"2027-05-20"}}. What was not told is left out; a field
 * that is not known is passed over.
 */
final class Json {
    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .addModule(new JavaTimeModule())
            .addModule(whatByWord())
            .addMixIn(Entry.class, ByKind.class)
            .serializationInclusion(JsonInclude.Include.NON_NULL)
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    private Json() {}

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = Event.class, name = "event"),
        @JsonSubTypes.Type(value = SignSeen.class, name = "sign"),
        @JsonSubTypes.Type(value = Finding.class, name = "finding"),
        @JsonSubTypes.Type(value = SettingChange.class, name = "setting"),
        @JsonSubTypes.Type(value = Amendment.class, name = "amendment")
    })
    private interface ByKind {}

    static String of(Entry entry) {
        return written(Entry.class, entry);
    }

    static String of(Reply reply) {
        return written(Reply.class, reply);
    }

    static Entry entry(String json) throws JsonProcessingException {
        return MAPPER.readValue(json, Entry.class);
    }

    static Reply reply(String json) throws JsonProcessingException {
        return MAPPER.readValue(json, Reply.class);
    }

    static String of(Normals normals) {
        return written(Normals.class, normals);
    }

    /** @throws IllegalArgumentException when the text is none that this class wrote */
    static Normals normals(String json) {
        try {
            return MAPPER.readValue(json, Normals.class);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("These normals cannot be read: " + json, e);
        }
    }

    private static String written(Class<?> as, Object value) {
        try {
            return MAPPER.writerFor(as).writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("This cannot be kept in a diary: " + value, e);
        }
    }

    private static SimpleModule whatByWord() {
        return new SimpleModule().addSerializer(What.class, new ToWord()).addDeserializer(What.class, new FromWord());
    }

    private static final class ToWord extends ToStringSerializerBase {
        private static final long serialVersionUID = 1;

        ToWord() {
            super(What.class);
        }

        @Override
        public String valueToString(Object what) {
            return ((What) what).word();
        }
    }

    private static final class FromWord extends StdDeserializer<What> {
        private static final long serialVersionUID = 1;

        FromWord() {
            super(What.class);
        }

        @Override
        public What deserialize(JsonParser json, DeserializationContext context) throws IOException {
            String word = json.getValueAsString();
            return What.of(word)
                    .orElseThrow(
                            () -> context.weirdStringException(word, What.class, "not a kind of entry known here"));
        }
    }
}
