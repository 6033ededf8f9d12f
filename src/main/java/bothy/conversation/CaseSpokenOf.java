package bothy.conversation;

import bothy.advice.clinic.Clinic;
import bothy.advice.clinic.OpenCases;
import bothy.almanac.troubles.Troubles;
import bothy.garden.Doubt;
import bothy.garden.Finding;
import bothy.garden.Planting;
import bothy.garden.SignSeen;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Which of the open cases a message is about, by the crops that it names and the question that waits. */
final class CaseSpokenOf {
    private static final Pattern EACH = Pattern.compile("(?i)\\b(both|everything|everyone|everybody|the lot)\\b");
    private static final Pattern ALL = Pattern.compile("(?i)^\\W*all\\b");

    private final OpenCases open;
    private final Doubt pending;
    private final List<String> crops;

    /** @param pending the question that waits, {@code null} for none */
    CaseSpokenOf(OpenCases open, Doubt pending, List<String> crops) {
        this.open = open;
        this.pending = pending;
        this.crops = crops;
    }

    /** The case that where and how many are told of. */
    List<SignSeen> talkedAbout() {
        if (pending != null) {
            return inPassing();
        }
        return crops.isEmpty() ? open.lately(false).stream().toList() : named();
    }

    /** The case of these days, whatever plant it is of. */
    List<SignSeen> lately() {
        return open.lately(pending != null && CaseNotes.ofACase(pending)).stream()
                .toList();
    }

    /** The case that what is told in passing is about: where no plant is named and no question waits, only one of these days. */
    List<SignSeen> inPassing() {
        boolean waits = pending != null && CaseNotes.ofACase(pending);
        if (waits && crops.isEmpty()) {
            return askedOf().stream().toList();
        }
        return crops.isEmpty() ? open.lately(waits).stream().toList() : named();
    }

    /** The case that the question that waits is about. */
    private Optional<SignSeen> askedOf() {
        String id = Clinic.subjectOf(pending.arguments().get(Doubt.CASE));
        Optional<Planting> planting = open.garden().planting(id);
        return planting.isPresent() ? open.of(id, null) : id.equals("plot") ? open.lately(true) : open.of(null, id);
    }

    /**
     * The open cases that an outcome is told of: "everything is fine again", "both better now" of all, else as {@link #named}. "All
     * better" after the question how one looks is of that one.
     */
    List<SignSeen> fared(String text) {
        boolean askedHow = pending != null
                && CaseNotes.ofACase(pending)
                && pending.choices().stream()
                        .anyMatch(choice -> choice.meaning().startsWith(Finding.OUTCOME));
        boolean ofAll =
                EACH.matcher(text).find() || !askedHow && ALL.matcher(text).find();
        return crops.isEmpty() && ofAll ? open.all() : named();
    }

    /** The open case of the one crop named, or of none. */
    List<SignSeen> named() {
        String crop = crops.size() == 1 ? crops.get(0) : null;
        if (crops.size() > 1) {
            return List.of();
        }
        return open.of(null, crop).stream().toList();
    }

    /**
     * Whether what was found on the plant is shown by no cause of the one case named: a sunken black end of the fruit, days after leaves
     * hung at noon, is a trouble of its own.
     */
    boolean anotherTrouble(List<Finding> found) {
        List<SignSeen> named = named();
        Troubles troubles = open.troubles();
        if (named.size() != 1 || !named.get(0).on().isBefore(open.today())) {
            return false;
        }
        SignSeen of = named.get(0);
        Set<String> causes = open.signsOf(of).stream()
                .flatMap(sign -> troubles.rows(sign, of.crop()).stream())
                .map(Troubles.Row::cause)
                .collect(Collectors.toSet());
        return !causes.isEmpty()
                && found.stream()
                        .filter(one -> troubles.tells(one.about(), one.found()))
                        .anyMatch(one -> troubles.questions().get(one.about()).pointsTo(one.found(), 1).stream()
                                .noneMatch(causes::contains));
    }
}
