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
import java.util.stream.Stream;

/** The cases of a diary that are open on a day, each by its first sign: what answers and talk in passing can be about. */
public final class OpenCases {
    /** A case not spoken of for longer is not what a passing word is about. By judgement. */
    private static final int LATELY_DAYS = 7;
    /** A question is answered late, on a third weekend, or not at all. By judgement. */
    private static final int ASKED_DAYS = 21;

    private final Garden garden;
    private final LocalDate today;
    private final Troubles troubles;
    /** Of the day, those that today's entries closed among them. */
    private final List<CaseFile> files;

    /** @param troubles the tables, which tell troubles of one planting apart */
    public OpenCases(Garden garden, LocalDate today, Troubles troubles) {
        this.garden = garden;
        this.today = today;
        this.troubles = troubles;
        this.files = Cases.of(garden, today, troubles);
    }

    public Garden garden() {
        return garden;
    }

    public LocalDate today() {
        return today;
    }

    public Troubles troubles() {
        return troubles;
    }

    /**
     * The case that words of no plant, told in passing, can be about: the one spoken of in these days.
     *
     * @param asked whether a question about it waits for an answer
     */
    public Optional<SignSeen> lately(boolean asked) {
        int days = asked ? ASKED_DAYS : LATELY_DAYS;
        return latestFirst(open(null, null).filter(file -> ChronoUnit.DAYS.between(file.latest(), today) <= days))
                .findFirst();
    }

    /** All of them, the one last spoken of first. */
    public List<SignSeen> all() {
        return latestFirst(open(null, null)).toList();
    }

    /** The case that an answer belongs to: that of the planting or crop spoken of, else the one last spoken of. */
    public Optional<SignSeen> of(String planting, String crop) {
        return latestFirst(open(planting, crop)).findFirst();
    }

    /** The case that shows a sign, of the planting or crop that it was told of, by that sign. */
    public Optional<SignSeen> showing(SignSeen sign) {
        return open(sign.planting(), sign.crop())
                .filter(file -> file.signs().contains(sign.sign()))
                .findFirst()
                .map(file -> by(sign.sign(), file));
    }

    /** The signs of the cases of a planting or crop, by one that was told of it. */
    public List<String> signsOf(SignSeen told) {
        return files.stream()
                .filter(file ->
                        Objects.equals(file.planting(), told.planting()) && Objects.equals(file.crop(), told.crop()))
                .flatMap(file -> file.signs().stream())
                .distinct()
                .toList();
    }

    /** The open ones of a planting and a crop, each {@code null} for any. */
    private Stream<CaseFile> open(String planting, String crop) {
        return files.stream()
                .filter(file -> !file.closed())
                .filter(file -> planting == null || planting.equals(file.planting()))
                .filter(file -> crop == null || crop.equals(file.crop()));
    }

    private static Stream<SignSeen> latestFirst(Stream<CaseFile> open) {
        return open.sorted(Comparator.comparing(CaseFile::latest).reversed())
                .map(file -> by(file.signs().get(0), file));
    }

    private static SignSeen by(String sign, CaseFile file) {
        return new SignSeen(sign, file.planting(), file.crop(), file.opened(), null, null);
    }
}
