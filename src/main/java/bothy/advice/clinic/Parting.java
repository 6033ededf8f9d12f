package bothy.advice.clinic;

import bothy.almanac.troubles.Troubles;
import bothy.garden.Diagnosis.HowSure;
import bothy.garden.Finding;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Tells the troubles of one planting apart: signs that no one cause can be behind are not of one trouble. */
final class Parting {
    /** An answer that speaks so much for a cause is of its trouble, log-odds score. By judgement. */
    private static final double POINTS_TO = 1;

    private final Troubles troubles;
    private final ZoneId zone;

    /** @param zone the time zone of the grower, which tells what does not live there */
    Parting(Troubles troubles, ZoneId zone) {
        this.troubles = troubles;
        this.zone = zone;
    }

    /** Whether a sign can be of a trouble; one that is known to have no cause at the crop can be of any. */
    boolean canBeOf(String sign, CaseFile file) {
        Set<String> own = causes(List.of(sign), file.crop());
        Set<String> ofFile = causes(file.signs(), file.crop());
        return own.isEmpty()
                || ofFile.isEmpty()
                || own.stream().anyMatch(ofFile::contains) && troubles.seen().contains(sign) == isSeen(file)
                || isCircumstance(sign)
                || file.signs().stream().allMatch(this::isCircumstance);
    }

    /** Whether a sign, told later than a trouble that is almost certain, is of another: what is behind that one does not show it. */
    boolean isOfAnother(String sign, CaseFile file) {
        if (!canBeOf(sign, file)) {
            return true;
        }
        if (!troubles.apart().contains(sign) || file.signs().contains(sign)) {
            return false;
        }
        Leading cause = leading(file);
        return cause.almostCertain() && !causes(List.of(sign), file.crop()).contains(cause.name());
    }

    private boolean isCircumstance(String sign) {
        return troubles.beside().containsKey(sign);
    }

    /** Whether an answer tells of a trouble: not where it speaks for causes of other ones alone. */
    boolean tellsOf(Finding finding, CaseFile file, List<CaseFile> all) {
        Troubles.Question question = troubles.questions().get(finding.about());
        List<String> pointedTo = question == null ? List.of() : question.pointsTo(finding.found(), POINTS_TO);
        return isOf(file, pointedTo) || all.stream().noneMatch(other -> isOf(other, pointedTo));
    }

    private boolean isOf(CaseFile file, List<String> pointedTo) {
        Set<String> causes = causes(file.signs(), file.crop());
        return pointedTo.stream().anyMatch(causes::contains);
    }

    /** The words of a description that tell more of one trouble's causes than of any other's. */
    String words(String told, CaseFile file, List<CaseFile> all) {
        return List.of(told.split(" ")).stream()
                .filter(word ->
                        all.stream().allMatch(other -> other.equals(file) || tells(word, file) >= tells(word, other)))
                .collect(Collectors.joining(" "));
    }

    private double tells(String word, CaseFile file) {
        Map<String, Double> chances = troubles.portraits().chances(List.of(word), List.of());
        return causes(file.signs(), file.crop()).stream()
                .mapToDouble(cause -> chances.getOrDefault(cause, 0.0))
                .max()
                .orElse(0);
    }

    private Set<String> causes(List<String> signs, String crop) {
        return signs.stream()
                .flatMap(sign -> troubles.rows(sign, crop).stream())
                .map(Troubles.Row::cause)
                .collect(Collectors.toSet());
    }

    /**
     * Whether two cases of a planting are one trouble: where one of them shows only what another trouble may do to the plant, unless
     * both are almost certain or one was seen itself, and where by all that was found and told they come to one cause.
     */
    boolean areOne(CaseFile one, CaseFile other) {
        Leading cause = leading(one);
        Leading otherCause = leading(other);
        Set<String> causes = causes(one.signs(), one.crop());
        Set<String> otherCauses = causes(other.signs(), other.crop());
        boolean seenItself = isSeen(one) && cause.almostCertain() || isSeen(other) && otherCause.almostCertain();
        boolean apart = isOfItsOwn(one) && isOfItsOwn(other) || cause.almostCertain() && otherCause.almostCertain();
        return !seenItself && (!apart || causes.stream().anyMatch(otherCauses::contains))
                || cause.standsOut() && otherCauses.contains(cause.name())
                || otherCause.standsOut() && causes.contains(otherCause.name())
                || cause.standsOut() && cause.name().equals(otherCause.name());
    }

    private boolean isOfItsOwn(CaseFile file) {
        return file.signs().stream().anyMatch(troubles.apart()::contains);
    }

    private boolean isSeen(CaseFile file) {
        return troubles.seen().containsAll(file.signs());
    }

    /** The likeliest cause before rules speak. */
    private record Leading(String name, double chance) {
        boolean standsOut() {
            return HowSure.of(chance).atLeast(HowSure.PERHAPS);
        }

        boolean almostCertain() {
            return HowSure.of(chance).atLeast(HowSure.ALMOST_CERTAIN);
        }
    }

    private Leading leading(CaseFile file) {
        Scales scales = new Scales(troubles, file, zone, null, List.of(), null);
        double[] chances = scales.chances();
        return IntStream.range(0, scales.causes().size())
                .boxed()
                .max(Comparator.comparingDouble(i -> chances[i]))
                .map(i -> new Leading(scales.causes().get(i), chances[i]))
                .orElse(new Leading("", 0));
    }
}
