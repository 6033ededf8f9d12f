package bothy.reading.told;

import bothy.garden.What;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.Token;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** "Main crop went in on Sunday. Sarpo. 3 rows.": a name that stands by itself behind a sowing is the variety of what was sown. */
final class VarietyBehind {
    private static final Set<What> BEGUN = Set.of(What.SOWN, What.PLANTED_OUT);
    /** Kinds of potato by their season, beside which a variety may be named too. */
    private static final Set<String> SEASONS = Set.of(
            "early",
            "earlies",
            "first early",
            "first earlies",
            "second early",
            "second earlies",
            "maincrop",
            "main crop");

    private static final int MOST_WORDS = 3;
    private final Predicate<String> known;

    /** @param known whether a word is one that growers use for anything else */
    VarietyBehind(Predicate<String> known) {
        this.known = known;
    }

    /** The same with the variety, where the message begins one planting only and names none for it. */
    List<Told> with(Passage passage, List<Told> told) {
        List<Told> begun =
                told.stream().filter(one -> BEGUN.contains(one.event().what())).toList();
        Told sown = begun.size() == 1 ? begun.get(0) : null;
        String kind = sown == null ? null : sown.event().variety();
        if (sown == null
                || sown.event().crop() == null
                || kind != null && !SEASONS.contains(kind.toLowerCase(Locale.ROOT))) {
            return told;
        }
        for (int[] sentence : passage.sentences()) {
            boolean behind = sentence[0] < sentence[1]
                    && passage.tokens().get(sentence[0]).from() >= sown.to();
            String name = behind ? name(passage, sentence, sown) : null;
            if (name != null) {
                return told.stream()
                        .map(one -> one == sown
                                ? one.with(one.event().withVariety(kind == null ? name : kind + " " + name))
                                : one)
                        .toList();
            }
        }
        return told;
    }

    private String name(Passage passage, int[] sentence, Told sown) {
        CropSaid whole = Passage.within(passage.crops(), sentence[0], sentence[1]).stream()
                .filter(crop -> crop.variety() != null
                        && crop.canMean(sown.event().crop())
                        && crop.start() == sentence[0]
                        && crop.end() == sentence[1])
                .findFirst()
                .orElse(null);
        if (whole != null) {
            return whole.variety();
        }
        List<Token> words = passage.tokens().subList(sentence[0], sentence[1]);
        boolean strange = words.size() <= MOST_WORDS
                && words.stream().allMatch(Token::aWord)
                && words.stream().noneMatch(Token::picture)
                && words.stream()
                        .anyMatch(token ->
                                !known.test(token.word()) && token.word().length() > 3)
                && words.stream().allMatch(token -> !known.test(token.word()) || token.capital())
                && IntStream.range(sentence[0], sentence[1])
                        .noneMatch(at -> passage.cropAt(at).isPresent());
        return strange
                ? passage.message()
                        .substring(
                                words.get(0).from(), words.get(words.size() - 1).to())
                : null;
    }
}
