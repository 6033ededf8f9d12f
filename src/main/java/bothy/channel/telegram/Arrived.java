package bothy.channel.telegram;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.core.JsonProcessingException;
import org.telegram.telegrambots.meta.api.objects.Update;

/** An update together with the JSON that it was read from, which goes into the inbox as it came. */
final class Arrived extends Update {
    private static final long serialVersionUID = 1;

    @JsonIgnore
    private String json;

    static Arrived of(String json) throws JsonProcessingException {
        Arrived arrived = UpdatesAsJson.MAPPER.readValue(json, Arrived.class);
        if (arrived != null) {
            arrived.json = json;
        }
        return arrived;
    }

    /** One that nothing is known of but its number. */
    static Arrived numbered(int number) {
        Arrived arrived = new Arrived();
        arrived.setUpdateId(number);
        arrived.json = "{\"update_id\":" + number + "}";
        return arrived;
    }

    String json() {
        return json;
    }

    /** The JSON is no part of what it is compared by: the same update may be written in more than one way. */
    @Override
    public boolean equals(Object other) {
        return super.equals(other);
    }

    @Override
    public int hashCode() {
        return super.hashCode();
    }
}
