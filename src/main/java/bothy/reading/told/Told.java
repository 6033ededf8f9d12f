package bothy.reading.told;

import bothy.garden.Doubt;
import bothy.garden.Event;
import bothy.garden.Planting;
import bothy.garden.Statement;
import java.util.ArrayList;
import java.util.List;

/**
 * A statement in the making.
 *
 * @param event what was told, so far
 * @param plantings ids of the plantings it is about
 * @param open what is not clear yet, {@code null} when all is
 * @param among the plantings or, by their crop, the crops that it may be about when that is what is open
 * @param found the grower's words or figures that are in doubt, {@code null} for none
 */
public record Told(
        Event event,
        List<String> plantings,
        int from,
        int to,
        List<String> assumed,
        Doubt.About open,
        List<Planting> among,
        List<String> crops,
        String found) {

    static Told of(Event event, int from, int to) {
        return new Told(event, List.of(), from, to, List.of(), null, List.of(), List.of(), null);
    }

    Told with(Event changed) {
        return new Told(changed, plantings, from, to, assumed, open, among, crops, found);
    }

    Told about(List<String> ids) {
        return new Told(event, ids, from, to, assumed, open, among, crops, found);
    }

    Told assuming(String what) {
        List<String> more = new ArrayList<>(assumed);
        more.add(what);
        return new Told(event, plantings, from, to, more, open, among, crops, found);
    }

    Told doubting(Doubt.About about, String words) {
        return open != null ? this : new Told(event, plantings, from, to, assumed, about, among, crops, words);
    }

    Told oneOf(List<Planting> several) {
        return open != null
                ? this
                : new Told(event, plantings, from, to, assumed, Doubt.About.WHICH_PLANTING, several, crops, null);
    }

    Told oneOfCrops(List<String> several) {
        return open != null
                ? this
                : new Told(event, plantings, from, to, assumed, Doubt.About.WHICH_CROP, among, several, null);
    }

    /** The same doubt under another head, with the words that raised it. */
    Told wondering(Doubt.About about, String words) {
        return new Told(event, plantings, from, to, assumed, about, among, crops, words);
    }

    public Statement statement() {
        return new Statement(event, plantings, open == null, from, to, assumed);
    }

    Statement settled(Event changed, List<String> ids) {
        return new Statement(changed, ids, true, from, to, assumed);
    }
}
