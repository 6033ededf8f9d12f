package bothy.advice.clinic;

import bothy.almanac.troubles.Troubles;
import bothy.garden.Garden;
import bothy.garden.SignSeen;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The cases of a diary that are open on a day, each by its first sign: what answers and talk in passing can be about.
 *
 * @param troubles the tables, which tell troubles of one planting apart
 */
public record OpenCases(Garden garden, LocalDate today, Troubles troubles) {
    /** A case not spoken of for longer is not what a passing word is about. By judgement. */
    private static final int LATELY_DAYS = 7;

    private static final int ASKED_DAYS = 21;

    /**
     * The case that words of no plant, told in passing, can be about: the one spoken of in these days.
     *
     * @param asked whether a question about it waits for an answer
     */
    public Optional<SignSeen> lately(boolean asked) {
        return open(null, null, asked ? ASKED_DAYS : LATELY_DAYS).stream().findFirst();
    }

    /** All of them, the one last spoken of first. */
    public List<SignSeen> all() {
        return open(null, null, Integer.MAX_VALUE);
    }

    /** The case that an answer belongs to: that of the planting or crop spoken of, else the one last spoken of. */
    public Optional<SignSeen> of(String planting, String crop) {
        return open(planting, crop, Integer.MAX_VALUE).stream().findFirst();
    }

    /** The case that shows a sign, of the planting or crop that it was told of, by that sign. */
    public Optional<SignSeen> showing(SignSeen sign) {
        return Cases.of(garden, today, troubles).stream()
                .filter(file -> !file.closed() && file.signs().contains(sign.sign()))
                .filter(file -> sign.planting() == null || sign.planting().equals(file.planting()))
                .filter(file -> sign.crop() == null || sign.crop().equals(file.crop()))
                .findFirst()
                .map(file -> new SignSeen(sign.sign(), file.planting(), file.crop(), file.opened(), null, null));
    }

    /** The signs of the open cases of a planting or crop, by one that was told of it. */
    public List<String> signsOf(SignSeen told) {
        return Cases.of(garden, today, troubles).stream()
                .filter(file ->
                        Objects.equals(file.planting(), told.planting()) && Objects.equals(file.crop(), told.crop()))
                .flatMap(file -> file.signs().stream())
                .distinct()
                .toList();
    }

    private List<SignSeen> open(String planting, String crop, int days) {
        return Cases.of(garden, today, troubles).stream()
                .filter(file -> !file.closed() && ChronoUnit.DAYS.between(file.latest(), today) <= days)
                .filter(file -> planting == null || planting.equals(file.planting()))
                .filter(file -> crop == null || crop.equals(file.crop()))
                .sorted(Comparator.comparing(CaseFile::latest).reversed())
                .map(file -> new SignSeen(file.signs().get(0), file.planting(), file.crop(), file.opened(), null, null))
                .toList();
    }
}
