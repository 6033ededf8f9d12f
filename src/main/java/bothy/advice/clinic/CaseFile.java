package bothy.advice.clinic;

import bothy.almanac.troubles.Troubles;
import bothy.garden.Finding;
import bothy.garden.SignSeen;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A case as the diary tells it.
 *
 * @param planting id of the planting, {@code null} when not known
 * @param crop name of the crop, {@code null} when not told
 * @param signs signs told, the first first
 * @param findings answers by question, later ones over earlier ones
 * @param asked how many questions were answered on asking
 * @param opened the day of the first sign
 * @param latest the day of the last sign or answer; what was told in passing keeps no case open
 * @param outcome what became of it last, {@code null} when not told
 */
record CaseFile(
        String planting,
        String crop,
        List<String> signs,
        Map<String, String> findings,
        int asked,
        LocalDate opened,
        LocalDate latest,
        String outcome) {

    static CaseFile opened(SignSeen sign, LocalDate on) {
        return new CaseFile(sign.planting(), sign.crop(), List.of(sign.sign()), Map.of(), 0, on, on, null);
    }

    String id() {
        return planting != null ? planting : crop != null ? crop : "plot";
    }

    /** What the rules take the case to be about: a crop without a known planting stands in as one in its packet. */
    String subject() {
        return planting != null ? planting : crop != null ? "packet:" + crop : null;
    }

    boolean closed() {
        return "better".equals(outcome);
    }

    CaseFile with(SignSeen sign, LocalDate on) {
        List<String> more = new ArrayList<>(signs);
        if (!more.contains(sign.sign())) {
            more.add(sign.sign());
        }
        return new CaseFile(
                planting, crop == null ? sign.crop() : crop, more, findings, asked, opened, later(on), outcome);
    }

    CaseFile with(Finding finding, LocalDate on) {
        if (finding.about().equals(Finding.OUTCOME)) {
            return new CaseFile(planting, crop, signs, findings, asked, opened, later(on), finding.found());
        }
        Map<String, String> more = new LinkedHashMap<>(findings);
        // Words told add to those told before; another answer takes the place of the one before.
        more.merge(
                finding.about(),
                finding.found(),
                (old, fresh) -> finding.about().equals(Troubles.WORDS) ? old + " " + fresh : fresh);
        return new CaseFile(planting, crop, signs, more, asked + (finding.asked() ? 1 : 0), opened, later(on), outcome);
    }

    /** Circumstances beside a sign of its own are findings; alone they stay signs. */
    CaseFile without(Map<String, Map<String, String>> beside) {
        List<String> own =
                signs.stream().filter(sign -> !beside.containsKey(sign)).toList();
        if (own.isEmpty() || own.size() == signs.size()) {
            return this;
        }
        Map<String, String> more = new LinkedHashMap<>();
        signs.stream().filter(beside::containsKey).forEach(sign -> more.putAll(beside.get(sign)));
        more.putAll(findings);
        return new CaseFile(planting, crop, own, more, asked, opened, latest, outcome);
    }

    private LocalDate later(LocalDate on) {
        return on.isAfter(latest) ? on : latest;
    }
}
