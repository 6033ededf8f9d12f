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
 * @param aside the first sign of a trouble beside another of the same planting, {@code null} for the planting's first or only one
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
        String aside,
        List<String> signs,
        Map<String, String> findings,
        int asked,
        LocalDate opened,
        LocalDate latest,
        String outcome) {

    /** @param beside whether another trouble of the same planting stands open */
    static CaseFile opened(SignSeen sign, LocalDate on, boolean beside) {
        String aside = beside ? sign.sign() : null;
        return new CaseFile(sign.planting(), sign.crop(), aside, List.of(sign.sign()), Map.of(), 0, on, on, null);
    }

    String id() {
        return Cases.id(planting, crop) + (aside == null ? "" : Cases.ASIDE + aside);
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
                planting, crop == null ? sign.crop() : crop, aside, more, findings, asked, opened, later(on), outcome);
    }

    CaseFile with(Finding finding, LocalDate on) {
        if (finding.about().equals(Finding.OUTCOME)) {
            return new CaseFile(planting, crop, aside, signs, findings, asked, opened, later(on), finding.found());
        }
        Map<String, String> more = new LinkedHashMap<>(findings);
        // Words told add to those told before; another answer takes the place of the one before.
        more.merge(
                finding.about(),
                finding.found(),
                (old, fresh) -> finding.about().equals(Troubles.WORDS) ? old + " " + fresh : fresh);
        return new CaseFile(
                planting, crop, aside, signs, more, asked + (finding.asked() ? 1 : 0), opened, later(on), outcome);
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
        return new CaseFile(planting, crop, aside, own, more, asked, opened, latest, outcome);
    }

    /** The words that it was described with, in the order told. */
    List<String> words() {
        String words = findings.get(Troubles.WORDS);
        return words == null ? List.of() : List.of(words.split(" "));
    }

    /** One trouble out of two that turn out to be one. */
    CaseFile with(CaseFile other) {
        List<String> both = new ArrayList<>(signs);
        other.signs().stream().filter(sign -> !both.contains(sign)).forEach(both::add);
        Map<String, String> all = new LinkedHashMap<>(findings);
        other.findings()
                .forEach((about, answer) ->
                        all.merge(about, answer, (own, more) -> about.equals(Troubles.WORDS) ? own + " " + more : own));
        return new CaseFile(
                planting,
                crop,
                aside,
                both,
                all,
                asked + other.asked(),
                opened.isBefore(other.opened()) ? opened : other.opened(),
                later(other.latest()),
                outcome);
    }

    boolean isOf(String planting, String crop) {
        return Cases.id(planting, crop).equals(Cases.id(this.planting, this.crop));
    }

    private LocalDate later(LocalDate on) {
        return on.isAfter(latest) ? on : latest;
    }
}
