package bothy.conversation;

import bothy.garden.Amendment;
import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Finding;
import bothy.garden.SettingChange;
import bothy.garden.SignSeen;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Keeps a memory as JSON. What an older or newer version wrote and this one cannot read is forgotten, not an error. */
final class MemoryJson {
    private static final Logger LOG = LoggerFactory.getLogger(MemoryJson.class);
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .addModule(new JavaTimeModule())
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .addMixIn(Entry.class, EntryKinds.class)
            .build();

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "entry-kind")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = Event.class, name = "event"),
        @JsonSubTypes.Type(value = SignSeen.class, name = "sign"),
        @JsonSubTypes.Type(value = Finding.class, name = "finding"),
        @JsonSubTypes.Type(value = SettingChange.class, name = "setting"),
        @JsonSubTypes.Type(value = Amendment.class, name = "amendment")
    })
    private interface EntryKinds {}

    private MemoryJson() {}

    static Memory read(Optional<String> json) {
        if (json.isEmpty()) {
            return Memory.blank();
        }
        try {
            return MAPPER.readValue(json.get(), Memory.class);
        } catch (JsonProcessingException unreadable) {
            LOG.warn("A conversation's memory cannot be read and is forgotten: {}", Discretion.of(unreadable));
            return Memory.blank();
        }
    }

    static String write(Memory memory) {
        try {
            return MAPPER.writeValueAsString(memory);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
