package bothy.reading;

import bothy.almanac.RulesBroken;
import bothy.almanac.Words;
import bothy.reading.said.Passage;
import bothy.reading.text.Together;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds signs of trouble by a part of the plant and what it shows, told in one sentence, whatever stands between. Less sure than the
 * phrases of signs, and only for messages in which those find nothing.
 */
final class LooseSigns {
    private static final String FILE = "loose-signs";
    private static final int MOST = 2;
    /** Further apart than so many words they hardly belong together. */
    private static final int APART = 14;

    private final Map<String, Told> told = new LinkedHashMap<>();

    private record Told(
            Set<String> of,
            Set<String> shows,
            Set<String> with,
            Set<String> unless,
            List<Together> near,
            boolean alone) {}

    LooseSigns(Words words) {
        for (String sign : words.names(FILE, "")) {
            told.put(
                    sign,
                    new Told(
                            Set.copyOf(words.list(FILE, "/" + sign + "/of")),
                            Set.copyOf(words.list(FILE, "/" + sign + "/shows")),
                            Set.copyOf(words.list(FILE, "/" + sign + "/with")),
                            Set.copyOf(words.list(FILE, "/" + sign + "/unless")),
                            near(words, sign),
                            !words.text(FILE, "/" + sign + "/alone", "").isEmpty()));
        }
    }

    private static List<Together> near(Words words, String sign) {
        String at = "/" + sign + "/near";
        List<Together> near = new ArrayList<>();
        for (String text : words.list(FILE, at)) {
            try {
                near.add(new Together(text, words.lists(CloserLook.GROUPS, "/groups")));
            } catch (IllegalArgumentException wrong) {
                throw new RulesBroken(List.of(
                        words.problem(FILE, at, "\"" + text + "\" cannot be read: " + wrong.getMessage() + ".")));
            }
        }
        return List.copyOf(near);
    }

    Set<String> vocabulary() {
        Set<String> all = new HashSet<>();
        told.values().forEach(one -> {
            one.near().forEach(together -> all.addAll(together.vocabulary()));
            all.addAll(one.of());
            all.addAll(one.shows());
            all.addAll(one.with());
            all.addAll(one.unless());
        });
        return all;
    }

    /**
     * The signs that fit, the first of the file first, at most two; those told within one sentence before those told over
     * several. A sign at large ("alone") counts only where no other was told.
     *
     * @param atLarge whether signs at large count at all
     */
    List<String> in(Passage passage, boolean atLarge) {
        Set<String> words = passage.words();
        List<String> signs = new ArrayList<>();
        told.forEach((sign, one) -> {
            boolean fits = passage.sentences().stream().anyMatch(sentence -> fits(passage, words, sentence, one));
            if (fits && signs.size() < MOST && (!one.alone() || atLarge && signs.isEmpty())) {
                signs.add(sign);
            }
        });
        if (signs.isEmpty()) {
            told.forEach((sign, one) -> {
                if (signs.isEmpty()
                        && !one.alone()
                        && one.unless().stream().noneMatch(words::contains)
                        && near(passage, words, 0, passage.size(), Together.IN_A_MESSAGE, one)) {
                    signs.add(sign);
                }
            });
        }
        return signs;
    }

    private static boolean near(Passage passage, Set<String> words, int from, int to, int apart, Told one) {
        return one.near().stream()
                .anyMatch(near -> near.possible(words) && near.in(passage.tokens(), from, to, apart) != null);
    }

    private static boolean fits(Passage passage, Set<String> words, int[] sentence, Told one) {
        if (one.unless().stream().anyMatch(words::contains)) {
            return false;
        }
        if (near(passage, words, sentence[0], sentence[1], Together.IN_A_SENTENCE, one)) {
            return true;
        }
        boolean with = one.with().isEmpty();
        boolean near = false;
        int of = -APART - 1;
        int shows = -APART - 1;
        for (int at = sentence[0]; at < sentence[1]; at++) {
            String word = passage.word(at);
            of = one.of().contains(word) ? at : of;
            shows = one.shows().contains(word) ? at : shows;
            with |= one.with().contains(word);
            near |= of >= sentence[0] && shows >= sentence[0] && of != shows && Math.abs(of - shows) <= APART;
        }
        return near && with;
    }
}
