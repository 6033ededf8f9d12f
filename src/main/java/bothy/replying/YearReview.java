package bothy.replying;

import bothy.almanac.Wording;
import bothy.almanac.troubles.TroubleWording;
import bothy.garden.Diagnosis;
import bothy.garden.Diagnosis.HowSure;
import bothy.garden.Event;
import bothy.garden.Finding;
import bothy.garden.Logged;
import bothy.garden.Picked;
import bothy.garden.SignSeen;
import bothy.garden.What;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** The year in the diary's own words: what each crop gave, what was lost, what went wrong and how it ended, what was noted. */
final class YearReview {
    private static final int MOST_TROUBLES = 8;
    private static final int MOST_NOTES = 6;

    private final Wording wording;
    private final Vocabulary vocabulary;
    private final TroubleWording worded;
    private final Turn turn;
    private final LocalDate since;

    /** @param worded what signs are called and how causes are prevented */
    YearReview(Wording wording, Vocabulary vocabulary, TroubleWording worded, Turn turn) {
        this.worded = worded;
        this.wording = wording;
        this.vocabulary = vocabulary;
        this.turn = turn;
        this.since = turn.today().minusYears(1);
    }

    String text() {
        List<String> parts = new ArrayList<>();
        part("year-harvest", harvests()).ifPresent(parts::add);
        part("year-losses", losses()).ifPresent(parts::add);
        part("year-troubles", newest(troubles(), MOST_TROUBLES)).ifPresent(parts::add);
        part("year-notes", newest(notes(), MOST_NOTES)).ifPresent(parts::add);
        if (parts.isEmpty()) {
            return wording.talk().get("diary-silent");
        }
        parts.add(wording.talk().get("year-end"));
        return String.join("\n\n", parts);
    }

    String harvest() {
        return part("year-harvest", harvests()).orElse(wording.talk().get("diary-silent"));
    }

    private Optional<String> part(String heading, List<String> lines) {
        return lines.isEmpty()
                ? Optional.empty()
                : Optional.of(wording.talk().get(heading)
                        + lines.stream()
                                .map(line -> "\n• " + Phrasing.upper(line))
                                .collect(Collectors.joining()));
    }

    private static List<String> newest(List<String> lines, int most) {
        return lines.subList(Math.max(0, lines.size() - most), lines.size());
    }

    private List<String> harvests() {
        Map<String, List<Event>> byCrop = new LinkedHashMap<>();
        events(What.HARVESTED).forEach(event -> crop(event.planting(), event.crop())
                .ifPresent(crop ->
                        byCrop.computeIfAbsent(crop, key -> new ArrayList<>()).add(event)));
        List<String> lines = new ArrayList<>();
        byCrop.forEach((crop, events) -> lines.add(line(crop, events)));
        return lines;
    }

    private String line(String crop, List<Event> events) {
        String many = vocabulary.names().many(crop);
        return events.size() < 2
                ? many + ": " + amount(events)
                : fill("year-line", words("crops", many, "amount", amount(events)));
    }

    private String amount(List<Event> events) {
        Picked all = Picked.in(events);
        List<String> amounts = new ArrayList<>();
        if (all.kg() != null) {
            amounts.add(vocabulary.quantities().write("Kg", all.kg()));
        }
        if (all.pieces() != null) {
            amounts.add(
                    all.pieces() + (all.kg() == null ? "" : " " + wording.talk().get("year-pieces")));
        }
        return amounts.isEmpty()
                ? fill("year-times", Map.of("count", String.valueOf(events.size())))
                : String.join(" " + wording.talk().get("year-and") + " ", amounts);
    }

    private List<String> losses() {
        return events(What.DIED).stream()
                .flatMap(event -> crop(event.planting(), event.crop()).stream()
                        .map(crop -> fill(
                                "year-loss",
                                words(
                                        "count", event.count() == null ? null : String.valueOf(event.count()),
                                        "crops",
                                                Integer.valueOf(1).equals(event.count())
                                                        ? vocabulary.names().one(crop)
                                                        : vocabulary.names().many(crop),
                                        "on", vocabulary.quantities().nearDay(event.on())))))
                .distinct()
                .toList();
    }

    /** Each sign of each crop once, with the day it was first told and what was last told of its end. */
    private List<String> troubles() {
        Map<String, String> lines = new LinkedHashMap<>();
        for (SignSeen seen : turn.garden().signs()) {
            Optional<String> cause = cause(seen);
            TroubleWording.Sign sign = worded.signs().get(seen.sign());
            // What could not be named by its sign goes by its cause.
            String name = sign != null && sign.name() != null ? sign.name() : cause.orElse(null);
            Optional<String> crop = crop(seen.planting(), seen.crop());
            if (name != null && crop.isPresent() && inTheYear(seen.on())) {
                lines.putIfAbsent(
                        crop.get() + " " + name,
                        fill(
                                "year-trouble",
                                words(
                                        "crops", vocabulary.names().many(crop.get()),
                                        "sign", name,
                                        "on", vocabulary.quantities().nearDay(seen.on()),
                                        "outcome", outcome(seen),
                                        "lesson",
                                                cause.map(one -> prevented(one, crop.get()))
                                                        .orElse(null))));
            }
        }
        return List.copyOf(lines.values());
    }

    /** The likeliest cause of it, where one is likely enough to learn from. */
    private Optional<String> cause(SignSeen seen) {
        return turn.diagnoses().stream()
                .filter(diagnosis -> diagnosis.signs().contains(seen.sign())
                        && Objects.equals(diagnosis.planting(), seen.planting())
                        && (seen.planting() != null || Objects.equals(diagnosis.crop(), seen.crop())))
                .map(diagnosis -> diagnosis.causes().get(0))
                .filter(cause -> HowSure.of(cause.chance()).atLeast(HowSure.PERHAPS))
                .map(Diagnosis.Likely::cause)
                .findFirst();
    }

    private String prevented(String cause, String crop) {
        TroubleWording.Cause known = worded.causes().get(cause);
        return known == null ? null : known.at(crop).prevent();
    }

    private String outcome(SignSeen seen) {
        return turn.garden().standing().stream()
                .map(Logged::entry)
                .filter(Finding.class::isInstance)
                .map(Finding.class::cast)
                .filter(finding -> finding.about().equals(Finding.OUTCOME) && finding.on() != null)
                .filter(finding -> seen.on() == null || !finding.on().isBefore(seen.on()))
                .filter(finding ->
                        Objects.equals(crop(finding.planting(), finding.crop()), crop(seen.planting(), seen.crop())))
                .reduce((earlier, later) -> later)
                .map(finding -> wording.talk().get("year-outcome-" + finding.found()))
                .orElse(null);
    }

    private List<String> notes() {
        return events(What.NOTE).stream()
                .map(event -> event.detail() == null
                        ? null
                        : crop(event.planting(), event.crop())
                                        .map(crop -> vocabulary.names().many(crop) + ": ")
                                        .orElse("")
                                + event.detail())
                .filter(Objects::nonNull)
                .distinct()
                .toList();
    }

    private List<Event> events(What what) {
        return turn.garden().events().stream()
                .filter(event -> event.what() == what && inTheYear(event.on()))
                .toList();
    }

    private boolean inTheYear(LocalDate on) {
        return on != null && on.isAfter(since);
    }

    private Optional<String> crop(String planting, String crop) {
        return planting == null
                ? Optional.ofNullable(crop)
                : turn.garden().planting(planting).map(bothy.garden.Planting::crop);
    }

    private static Map<String, String> words(String... pairs) {
        Map<String, String> words = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            words.put(pairs[i], pairs[i + 1]);
        }
        return words;
    }

    private String fill(String id, Map<String, String> words) {
        return new Sentence(wording.talk().get(id))
                .fill(name -> Optional.ofNullable(words.get(name)))
                .orElse("");
    }
}
