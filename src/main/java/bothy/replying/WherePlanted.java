package bothy.replying;

import bothy.almanac.Wording;
import bothy.garden.Inquiry;
import bothy.garden.Planting;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Where each planting stood and from when to when, those that are over too: what a rotation goes by. */
final class WherePlanted {
    static final String OF_A_CROP = "diary-where";
    static final String AT_A_PLACE = "diary-place";
    static final Set<String> MATTERS = Set.of(OF_A_CROP, AT_A_PLACE);

    private final Wording wording;
    private final Vocabulary vocabulary;
    private final Turn turn;

    WherePlanted(Wording wording, Vocabulary vocabulary, Turn turn) {
        this.wording = wording;
        this.vocabulary = vocabulary;
        this.turn = turn;
    }

    String list(Inquiry inquiry) {
        List<Planting> meant = turn.garden().plantings().stream()
                .filter(planting -> planting.begunAtAll() && asked(inquiry, planting))
                .toList();
        if (meant.isEmpty()) {
            return wording.talk().get(inquiry.topic().equals(AT_A_PLACE) ? "where-nothing" : "diary-silent");
        }
        return wording.talk().get("diary-says")
                + meant.stream()
                        .map(planting -> "\n• " + Phrasing.upper(line(planting)))
                        .collect(Collectors.joining());
    }

    private static boolean asked(Inquiry inquiry, Planting planting) {
        boolean ofAll = inquiry.topic().equals(OF_A_CROP)
                && inquiry.crop() == null
                && inquiry.plantings().isEmpty();
        return ofAll
                || planting.crop().equals(inquiry.crop())
                || inquiry.plantings().contains(planting.id());
    }

    private String line(Planting planting) {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("count", planting.sown() == null ? null : String.valueOf(planting.sown()));
        words.put("variety", planting.variety() == null ? null : Names.capitals(planting.variety()));
        words.put("crops", vocabulary.names().many(planting.crop()));
        words.put("place", planting.place());
        words.put(
                "begun",
                planting.begun() == null ? null : vocabulary.quantities().nearDay(planting.begun()));
        words.put(
                "ended",
                planting.ended() == null ? null : vocabulary.quantities().nearDay(planting.ended()));
        String wanted = planting.place() == null ? "where-not-told" : "where-line";
        return new Sentence(wording.talk().get(wanted))
                .fill(name -> Optional.ofNullable(words.get(name)))
                .orElse("");
    }
}
