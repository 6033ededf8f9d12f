package bothy.conversation;

import bothy.garden.Finding;
import bothy.garden.SignSeen;
import bothy.garden.Situation;
import bothy.reading.Description;
import bothy.reading.Reading;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** "The tomatoes are splitting and the courgettes have white powder on": what a message tells of each of several crops. */
final class PartsByCrop {
    private static final String PARTS = "(?<=[.;!?,\\n])|(?i)\\b(?:and|but|while|whereas)\\b";

    private final Reading reading;
    private final Situation situation;
    private final String text;
    private final Description whole;

    /** @param whole the whole message, which tells of each crop where they are not told apart */
    PartsByCrop(Reading reading, Situation situation, String text, Description whole) {
        this.reading = reading;
        this.situation = situation;
        this.text = text;
        this.whole = whole;
    }

    /** What is found for each subject of some signs, in what is told of it. */
    List<Finding> of(List<SignSeen> signs, Function<Description, List<Finding>> found) {
        Map<String, Description> apart = apart(signs);
        return LooselyTold.distinct(signs).stream()
                .flatMap(sign -> found.apply(apart.getOrDefault(String.valueOf(sign.crop()), whole)).stream()
                        .map(one ->
                                new Finding(sign.planting(), sign.crop(), one.about(), one.found(), false, one.on())))
                .toList();
    }

    /** The description of each crop that has a trouble of its own; empty where one trouble is told of them together. */
    private Map<String, Description> apart(List<SignSeen> signs) {
        Map<String, Set<String>> byCrop = new LinkedHashMap<>();
        signs.forEach(sign -> byCrop.computeIfAbsent(String.valueOf(sign.crop()), first -> new HashSet<>())
                .add(sign.sign()));
        boolean eachItsOwn = byCrop.size() > 1
                && signs.stream().map(SignSeen::sign).distinct().count()
                        == byCrop.values().stream().mapToInt(Set::size).sum();
        return eachItsOwn ? described(byCrop.keySet()) : Map.of();
    }

    /** By what is told from the name of each to that of the next; empty where one has no part of its own. */
    private Map<String, Description> described(Collection<String> crops) {
        Map<String, List<String>> parts = new LinkedHashMap<>();
        String told = null;
        for (String part : text.split(PARTS)) {
            List<String> named = reading.description(part, situation).crops().stream()
                    .filter(crops::contains)
                    .toList();
            if (named.size() > 1) {
                return Map.of();
            }
            told = named.isEmpty() ? told : named.get(0);
            if (told != null) {
                parts.computeIfAbsent(told, first -> new ArrayList<>()).add(part);
            }
        }
        if (!parts.keySet().containsAll(crops)) {
            return Map.of();
        }
        Map<String, Description> described = new LinkedHashMap<>();
        parts.forEach((crop, own) -> described.put(crop, reading.description(String.join(" ", own), situation)));
        return described;
    }
}
