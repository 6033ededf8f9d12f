package bothy.advice.clinic;

import bothy.advice.Day;
import bothy.advice.facts.Answered;
import bothy.advice.facts.Case;
import bothy.advice.facts.Evidence;
import bothy.advice.facts.Lately;
import bothy.advice.facts.Suspect;
import bothy.advice.facts.Verdict;
import bothy.advice.reckoned.NothingUpChance;
import bothy.almanac.troubles.TroubleBook;
import bothy.almanac.troubles.Troubles;
import bothy.garden.Diagnosis;
import bothy.garden.Diagnosis.Likely;
import bothy.garden.Finding;
import bothy.garden.SignSeen;
import bothy.garden.Stage;
import bothy.garden.WeatherDay;
import bothy.garden.What;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The cases of one day: first as facts for the rules, then weighed with what the rules found. For one run by one thread. */
public final class Clinic {
    /** Stands for a case in what a message tells of no plant at all. */
    public static final String MESSAGE = "message";

    /** What is told of a person who wants help now, not of a plant. */
    public static final Set<String> OF_A_PERSON = Set.of("person-unwell", "person-burned");

    /** What is told of people beside the plants: it gets its caution, and the plants their answer. */
    public static final Set<String> OF_PEOPLE = Set.of("person-ate", "animal-mess", "pregnancy");

    /** Matters that a whole year is asked of. */
    private static final Set<String> LOOKING_BACK = Set.of("year-review", "next-year");

    private static final int WEATHER_DAYS = 10;
    private final TroubleBook book;
    private final Day day;
    private final List<CaseFile> files;

    /**
     * @param book the tables, opened only when there is a case
     * @param day the day
     */
    public Clinic(TroubleBook book, Day day) {
        this.book = book;
        this.day = day;
        this.files = (looksBack(day)
                        ? Cases.ofTheYear(day.garden(), day.today(), book.tables())
                        : Cases.of(day.garden(), day.today(), book.tables()))
                .stream()
                        .map(file -> file.without(book.tables().beside()))
                        .filter(file -> !onlyFeltTheSoil(file))
                        .toList();
    }

    /** Whoever asks what the year taught is told of the troubles that are long over too. */
    private static boolean looksBack(Day day) {
        return day.inquiries().stream().anyMatch(asked -> LOOKING_BACK.contains(String.valueOf(asked.topic())));
    }

    /** Soil told as dry or wet is an entry with advice of its own; it opens no case. */
    private boolean onlyFeltTheSoil(CaseFile file) {
        return book.tables().beside().keySet().containsAll(file.signs())
                && day.garden().events().stream()
                        .anyMatch(event -> event.what() == What.SOIL_CHECKED
                                && file.opened().equals(event.on()));
    }

    /**
     * Something a rule found, with the rule's sentence and source.
     *
     * @param fact an {@link Evidence} or an {@link Answered}
     */
    public record Found(Object fact, String rule, String source) {}

    /** The planting or crop that a case, by its name, is of; "plot" for that of none. */
    public static String subjectOf(String id) {
        int aside = id.indexOf(Cases.ASIDE);
        return aside < 0 ? id : id.substring(0, aside);
    }

    /** Whether a finding is of people and no evidence in any case. */
    public static boolean ofNoPlant(String about) {
        return OF_A_PERSON.contains(about) || OF_PEOPLE.contains(about);
    }

    private ZoneId zone() {
        return day.garden().grower().zone();
    }

    /** The crops that the cases are about. */
    public Set<String> crops() {
        Set<String> crops = new LinkedHashSet<>();
        files.stream().map(CaseFile::crop).filter(Objects::nonNull).forEach(crops::add);
        return crops;
    }

    /** The plantings that the cases are about. */
    public Set<String> plantings() {
        return files.stream().map(CaseFile::planting).filter(Objects::nonNull).collect(Collectors.toSet());
    }

    /** The facts of the cases for the rules. */
    public List<Object> facts() {
        List<Object> facts = new ArrayList<>();
        lately().ifPresent(facts::add);
        day.findings().stream()
                .filter(finding -> ofNoPlant(finding.about()))
                .map(finding -> new Answered(MESSAGE, finding.about(), finding.found()))
                .distinct()
                .forEach(facts::add);
        for (CaseFile file : files) {
            facts.add(new Case(
                    file.id(),
                    file.subject(),
                    file.crop(),
                    file.crop() == null ? List.of() : book.tables().groupsOf(file.crop()),
                    file.signs(),
                    file.opened(),
                    justTold(file),
                    outcomeJustTold(file)));
            file.findings().forEach((about, answer) -> facts.add(new Answered(file.id(), about, answer)));
            suspects(file).forEach(facts::add);
        }
        return facts;
    }

    /** The causes are those that the scales weigh; the rules know only these. */
    private List<Suspect> suspects(CaseFile file) {
        return new Scales(book.tables(), file, zone(), null, List.of(), null)
                .causes().stream()
                        .map(cause -> new Suspect(file.id(), file.subject(), file.crop(), cause))
                        .toList();
    }

    private boolean justTold(CaseFile file) {
        List<SignSeen> seen = day.signs().stream()
                .filter(sign -> of(file, sign.planting(), sign.crop()))
                .toList();
        if (!alone(file) && !seen.isEmpty()) {
            return seen.stream().anyMatch(sign -> file.signs().contains(sign.sign()));
        }
        return !seen.isEmpty()
                || day.findings().stream()
                        .anyMatch(finding -> !finding.about().equals(Finding.OUTCOME)
                                && !ofNoPlant(finding.about())
                                && of(file, finding.planting(), finding.crop())
                                && (alone(file) || tells(finding, file)));
    }

    private boolean alone(CaseFile file) {
        return files.stream()
                .noneMatch(other -> other != file
                        && Objects.equals(other.planting(), file.planting())
                        && Objects.equals(other.crop(), file.crop()));
    }

    /** Whether an answer speaks for or against a cause of one trouble among several of its planting. */
    private boolean tells(Finding finding, CaseFile file) {
        Troubles.Question question = book.tables().questions().get(finding.about());
        return question != null
                && question.countsAt(file.signs())
                && file.signs().stream()
                        .flatMap(sign -> book.tables().rows(sign, file.crop()).stream())
                        .anyMatch(row -> question.named().contains(row.cause()));
    }

    private boolean of(CaseFile file, String planting, String crop) {
        if (planting == null && crop == null) {
            return file.equals(ofToday());
        }
        return planting != null ? planting.equals(file.planting()) : crop.equals(file.crop());
    }

    /** What names no plant is about one case of the day at most: that of the plot, else the newest. */
    private CaseFile ofToday() {
        List<CaseFile> ofToday =
                files.stream().filter(file -> file.latest().equals(day.today())).toList();
        return ofToday.stream()
                .filter(file -> file.subject() == null)
                .findFirst()
                .orElse(ofToday.isEmpty() ? null : ofToday.get(ofToday.size() - 1));
    }

    private String outcomeJustTold(CaseFile file) {
        return day.findings().stream()
                .filter(finding -> finding.about().equals(Finding.OUTCOME))
                .filter(finding -> of(file, finding.planting(), finding.crop()))
                .filter(finding -> finding.trouble() == null || file.signs().contains(finding.trouble()))
                .map(Finding::found)
                .findFirst()
                .orElse(null);
    }

    private Optional<Lately> lately() {
        LocalDate from = day.today().minusDays(WEATHER_DAYS);
        List<WeatherDay> last = day.weather().stream()
                .filter(one -> one.date().isAfter(from) && !one.date().isAfter(day.today()))
                .filter(one -> one.tmin() != null && one.tmax() != null)
                .toList();
        if (last.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Lately(
                last.stream().mapToDouble(WeatherDay::tmin).min().orElseThrow(),
                last.stream().mapToDouble(WeatherDay::tmax).max().orElseThrow(),
                last.stream()
                        .mapToDouble(one -> (one.tmin() + one.tmax()) / 2)
                        .average()
                        .orElseThrow(),
                rain(last, from),
                rain(last, day.today().minusDays(3)),
                last.size()));
    }

    private static double rain(List<WeatherDay> days, LocalDate after) {
        return days.stream()
                .filter(one -> one.date().isAfter(after) && one.rain() != null)
                .mapToDouble(WeatherDay::rain)
                .sum();
    }

    /**
     * Weighs every case.
     *
     * @param found what the rules found
     * @param stages the stage of each planting
     * @param seedbeds what is reckoned of seed that is not up
     */
    public List<Diagnosis> diagnoses(List<Found> found, Map<String, Stage> stages, List<NothingUpChance> seedbeds) {
        List<Diagnosis> diagnoses = new ArrayList<>();
        for (CaseFile file : files) {
            Scales scales = new Scales(
                    book.tables(),
                    file,
                    zone(),
                    stages.get(String.valueOf(file.planting())),
                    found,
                    Seedbed.of(file, seedbeds).orElse(null));
            if (!scales.empty()) {
                diagnoses.add(new Consultation(book.tables(), book.askable(), scales, file)
                        .diagnosis(day.today(), justTold(file)));
            }
        }
        return diagnoses;
    }

    /** The verdicts for the rules that say what to do about them. */
    public static List<Verdict> verdicts(List<Diagnosis> diagnoses) {
        List<Verdict> verdicts = new ArrayList<>();
        for (Diagnosis diagnosis : diagnoses) {
            int rank = 0;
            for (Likely likely : diagnosis.causes()) {
                rank++;
                verdicts.add(new Verdict(
                        diagnosis.of(),
                        subject(diagnosis),
                        diagnosis.crop(),
                        likely.cause(),
                        likely.chance(),
                        rank,
                        diagnosis.decided(),
                        likely.harmless(),
                        diagnosis.nextCheck(),
                        diagnosis.justTold()));
            }
        }
        return verdicts;
    }

    /** What is likely of seed that is not up, with the chances of its case where there is one. */
    public static List<NothingUpChance> seedbeds(List<NothingUpChance> reckoned, List<Diagnosis> diagnoses) {
        return reckoned.stream()
                .map(chance -> diagnoses.stream()
                        .filter(diagnosis -> chance.planting().equals(diagnosis.planting())
                                && diagnosis.signs().stream().anyMatch(SignSeen::ofSeed))
                        .findFirst()
                        .map(diagnosis -> Seedbed.after(chance, diagnosis))
                        .orElse(chance))
                .toList();
    }

    private static String subject(Diagnosis diagnosis) {
        return diagnosis.planting() != null
                ? diagnosis.planting()
                : diagnosis.crop() != null ? "packet:" + diagnosis.crop() : null;
    }
}
