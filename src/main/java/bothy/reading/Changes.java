package bothy.reading;

import bothy.garden.Entry;
import bothy.garden.Event;
import bothy.garden.Logged;
import bothy.garden.Planting;
import bothy.garden.SignSeen;
import bothy.garden.Situation;
import bothy.garden.What;
import bothy.reading.said.CropSaid;
import bothy.reading.said.DaySaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.Quantity;
import bothy.reading.told.PlantingsMeant;
import bothy.reading.told.Plausible;
import bothy.reading.told.Told;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What a correction puts in place of what: the parts that it names, those after "not" being what was wrong.
 *
 * @param on the right day
 * @param count the right count
 * @param wrongCount the count or, beside an amount, the figure that was wrong
 * @param wrongOn the day that was wrong
 * @param amount the right amount
 * @param crop the right crop
 * @param wrongCrop the crop that was wrong
 * @param planting the planting meant
 * @param what the right kind of entry
 * @param weighed the right figure of something weighed, told without its unit, {@code null} for none
 */
record Changes(
        LocalDate on,
        Integer count,
        Integer wrongCount,
        LocalDate wrongOn,
        Quantity amount,
        CropSaid crop,
        CropSaid wrongCrop,
        List<Planting> planting,
        What what,
        boolean contrast,
        BareWeight weighed) {

    private static final Set<String> OF_A_DAY = Set.of(
            "on", "the", "in", "at", "until", "till", "from", "since", "last", "this", "sown", "sowed", "sow",
            "planted", "plant", "picked", "pick", "done", "do", "did", "it", "them", "was", "up", "out");

    static Changes in(Passage passage, List<Told> told) {
        int not = contrastAt(passage);
        LocalDate on = day(passage, not, true);
        List<NumberSaid> numbers = passage.counts(0, passage.size()).stream()
                .filter(number -> !passage.word(number.start()).equals("one") && !saysWhy(passage, number))
                .toList();
        NumberSaid right = pick(numbers, not, true);
        NumberSaid wrong = pick(numbers, not, false);
        List<CropSaid> crops =
                passage.crops().stream().filter(crop -> !crop.thing()).toList();
        CropSaid crop = pick(crops, not, true);
        CropSaid wrongCrop = pick(crops, not, false);
        Quantity amount = possible(pick(passage.quantities(), not, true));
        // "16 beans not 14, my friend stuck 2 more in": a count is put right, not what was done.
        boolean recounts = right != null && wrong != null;
        What what = told.isEmpty() || recounts ? null : told.get(0).event().what();
        boolean contrast = not >= 0
                && (wrong != null && (right != null || amount != null)
                        || crop != null && wrongCrop != null && !tellsNot(passage, not)
                        || days(passage) > 1 && dayDenied(passage, not))
                && (told.isEmpty() || toldSo(passage.situation(), crop, wrong, right));
        return new Changes(
                on,
                whole(right),
                whole(wrong),
                day(passage, not, false),
                amount,
                crop,
                wrongCrop,
                plantings(passage, crop),
                what,
                contrast,
                BareWeight.in(passage, right));
    }

    /** "It was 24 potatoes I planted, not 20": whatever it would tell, where the diary has the wrong number of that crop. */
    private static boolean toldSo(Situation situation, CropSaid crop, NumberSaid wrong, NumberSaid right) {
        return crop != null
                && wrong != null
                && right != null
                && situation.earlier().stream()
                        .anyMatch(line -> line.entry() instanceof Event event
                                && crop.canMean(event.crop())
                                && event.count() != null
                                && event.count() == wrong.value());
    }

    /** "Beans aren't up, chard is" tells of both and puts nothing right. */
    private static boolean tellsNot(Passage passage, int not) {
        return Set.of("are", "is", "have", "has", "do", "did", "were").contains(passage.word(not - 1));
    }

    /** "It was 25, found another 5", "24 potatoes, two were rotten": how it came about. */
    private static boolean saysWhy(Passage passage, NumberSaid number) {
        String last = passage.word(number.start() - 1);
        return Set.of("another", "extra", "further").contains(last)
                || Set.of(",", "-", "(").contains(last)
                        && Set.of("were", "was", "had", "died", "rotted", "broke", "fell", "turned")
                                .contains(passage.word(number.end()));
    }

    /** "Not Tuesday", "not sown on Tuesday", "Sunday, not …"; "not the energy this week, maybe Saturday" tells of two days. */
    private static boolean dayDenied(Passage passage, int not) {
        return passage.days().stream()
                .filter(DaySaid::known)
                .anyMatch(day -> day.end() <= not && not - day.end() <= 2
                        || day.start() > not
                                && IntStream.range(not + 1, day.start())
                                        .allMatch(at -> OF_A_DAY.contains(passage.word(at))));
    }

    private static long days(Passage passage) {
        return passage.days().stream().filter(DaySaid::known).count();
    }

    private static int contrastAt(Passage passage) {
        for (int at = 0; at < passage.size(); at++) {
            boolean cannot =
                    Set.of("can", "could", "will", "would", "may", "might").contains(passage.word(at - 1));
            if (passage.word(at).equals("not") && !cannot || passage.word(at).equals("instead")) {
                return at;
            }
        }
        return -1;
    }

    /** "8 not 6" and "not 6, 8": what directly follows "not" is wrong, the other is right. */
    private static <T extends bothy.reading.said.Span> T pick(List<T> parts, int not, boolean right) {
        T wrong = not < 0
                ? null
                : parts.stream()
                        .filter(part -> part.start() > not && part.start() - not <= 4)
                        .findFirst()
                        .orElse(null);
        if (!right) {
            return wrong;
        }
        // "8 cauliflowers not 6. I had two in my pocket": what stands before the "not" that calls a part wrong.
        T before = wrong == null
                ? null
                : parts.stream()
                        .filter(part -> part.end() <= not)
                        .reduce((first, second) -> second)
                        .orElse(null);
        return before != null
                ? before
                : parts.stream()
                        .filter(part -> part != wrong)
                        .reduce((first, second) -> second)
                        .orElse(null);
    }

    private static LocalDate day(Passage passage, int not, boolean rightOne) {
        List<DaySaid> days = passage.days().stream()
                .filter(day -> day.known() && !recounted(passage, day))
                .toList();
        DaySaid said = pick(days, not, rightOne);
        return said == null || said.past().isAfter(passage.situation().today()) ? null : said.past();
    }

    /** "It was 58 leeks, I counted them again this morning": the day of the counting. */
    private static boolean recounted(Passage passage, DaySaid day) {
        for (int at = day.start() - 1; at >= 0 && !passage.tokens().get(at).endsSentence(); at--) {
            if (Set.of("counted", "recounted", "checked", "noticed", "realised", "remembered", "looked")
                    .contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    private static Integer whole(NumberSaid number) {
        return number == null || number.value() <= 0 || number.value() > 20_000
                ? null
                : Integer.valueOf((int) number.value());
    }

    private static List<Planting> plantings(Passage passage, CropSaid crop) {
        List<Planting> growing = PlantingsMeant.growing(passage.situation());
        if (crop != null) {
            return PlantingsMeant.of(crop, passage, crop.start(), passage.size(), true);
        }
        List<Planting> named = new ArrayList<>();
        passage.places().forEach(place -> growing.stream()
                .filter(planting -> PlantingsMeant.stands(planting, place))
                .forEach(named::add));
        growing.stream()
                .filter(planting -> planting.variety() != null && says(passage, planting.variety()))
                .forEach(named::add);
        return named.stream().distinct().toList();
    }

    private static boolean says(Passage passage, String variety) {
        String first = variety.toLowerCase(java.util.Locale.ROOT).split(" ")[0];
        return passage.tokens().stream().anyMatch(token -> token.is(first));
    }

    boolean none() {
        return on == null && count == null && amount == null && crop == null && planting.isEmpty() && weighed == null;
    }

    /** Whether the change is one that may hold for all lines at once. */
    boolean forAll() {
        return on != null && count == null && amount == null && crop == null;
    }

    /** The newest line that says what the change calls wrong, alone; empty when none does. */
    List<Logged> refuted(List<Logged> newestFirst) {
        return newestFirst.stream()
                .filter(line -> line.entry() instanceof Event event && refutes(event))
                .limit(1)
                .toList();
    }

    private boolean refutes(Event event) {
        boolean named = crop == null && wrongCrop == null
                || crop != null && crop.canMean(event.crop())
                || wrongCrop != null && wrongCrop.canMean(event.crop());
        return named && (wrongFigure(event) || wrongOn != null && wrongOn.equals(event.on()));
    }

    private boolean wrongFigure(Event event) {
        if (wrongCount == null) {
            return false;
        }
        if (amount == null) {
            return wrongCount.equals(event.count());
        }
        double told = wrongCount * amount.value() / amount.told();
        return event.amount() != null
                && amount.unit().equals(event.unit())
                && Math.abs(event.amount() - told) <= told / 100;
    }

    /** The lines that the change can be meant for: of the last message, or behind a sign of no number the newest of the day that has one. */
    List<Logged> lines(Situation situation) {
        boolean onlySigns =
                situation.lately().stream().noneMatch(line -> line.entry() instanceof Event || count(line) != null);
        List<Logged> counted = count == null || !onlySigns
                ? List.of()
                : situation.earlier().stream()
                        .filter(line -> line.entry() instanceof Event event
                                && event.count() != null
                                && line.at()
                                        .atZone(situation.grower().zone())
                                        .toLocalDate()
                                        .equals(situation.today()))
                        .limit(1)
                        .toList();
        return counted.isEmpty() ? lines(situation.lately()) : counted;
    }

    private List<Logged> lines(List<Logged> lately) {
        List<Logged> events = lately.stream()
                .filter(line -> line.entry() instanceof Event || amount == null && line.entry() instanceof SignSeen)
                .toList();
        List<Logged> named = keep(events, line -> wrongCrop != null && wrongCrop.canMean(crop(line)));
        named = keep(named, line -> wrongCount != null && wrongCount.equals(count(line)));
        named = keep(named, line -> what != null && line.entry() instanceof Event event && event.what() == what);
        named = keep(
                named,
                line -> crop != null
                        && wrongCrop == null
                        && (count != null || on != null || amount != null || weighed != null)
                        && crop.canMean(crop(line)));
        if (count != null && wrongCount == null) {
            named = keep(named, line -> count(line) != null);
        }
        if (count == null && amount == null && weighed != null) {
            return named.stream()
                    .filter(line ->
                            line.entry() instanceof Event event && event.amount() != null && event.count() == null)
                    .toList();
        }
        if (amount != null) {
            named = keep(
                    named,
                    line -> line.entry() instanceof Event event && amount.unit().equals(event.unit()));
        }
        return keep(
                named, line -> planting.size() == 1 && planting.get(0).crop().equals(crop(line)));
    }

    private static List<Logged> keep(List<Logged> lines, java.util.function.Predicate<Logged> wanted) {
        List<Logged> kept = lines.stream().filter(wanted).toList();
        return kept.isEmpty() ? lines : kept;
    }

    private static String crop(Logged line) {
        return line.entry() instanceof Event event
                ? event.crop()
                : line.entry() instanceof SignSeen sign ? sign.crop() : null;
    }

    private static Integer count(Logged line) {
        return line.entry() instanceof Event event
                ? event.count()
                : line.entry() instanceof SignSeen sign ? sign.count() : null;
    }

    /** The same where the crop named only says which entry is meant. */
    Changes besides(Entry entry) {
        boolean same = crop != null && entry instanceof Event event && crop.canMean(event.crop());
        return same
                ? new Changes(
                        on, count, wrongCount, wrongOn, amount, null, wrongCrop, List.of(), what, contrast, weighed)
                : this;
    }

    /** No correction puts in what no entry could tell. */
    private static Quantity possible(Quantity amount) {
        return amount == null || Plausible.amount(amount.value(), amount.unit()) ? amount : null;
    }

    /** The entry that stands from now on. */
    Entry applied(Entry entry) {
        return entry instanceof Event event ? applied(event) : entry instanceof SignSeen sign ? applied(sign) : entry;
    }

    private Event applied(Event event) {
        Event changed = on == null ? event : event.withOn(on);
        boolean onlyWeighed = weighed != null && amount == null && event.count() == null && event.amount() != null;
        changed = onlyWeighed ? weighed.instead(changed) : changed;
        changed = count == null || amount != null || onlyWeighed ? changed : changed.withCount(count);
        changed = amount == null ? changed : changed.withAmount(amount.value(), amount.unit());
        changed = what == null || what == What.NOTE ? changed : changed.withWhat(what);
        List<Planting> ofCrop = planting.size() > 1
                ? planting.stream()
                        .filter(one -> one.crop().equals(event.crop()))
                        .toList()
                : planting;
        if (ofCrop.size() == 1) {
            Planting meant = ofCrop.get(0);
            boolean begins = changed.what() == What.SOWN;
            changed = changed.withPlanting(begins ? event.planting() : meant.id(), meant.crop());
            return begins ? changed.withVariety(crop == null ? changed.variety() : crop.variety()) : changed;
        }
        if (crop != null && !Objects.equals(crop.crop(), event.crop())) {
            changed = changed.withPlanting(changed.what() == What.SOWN ? event.planting() : null, crop.crop());
        }
        return crop != null && crop.variety() != null ? changed.withVariety(crop.variety()) : changed;
    }

    private SignSeen applied(SignSeen sign) {
        String id = planting.size() == 1 ? planting.get(0).id() : sign.planting();
        String name = planting.size() == 1 ? planting.get(0).crop() : crop != null ? crop.crop() : sign.crop();
        return new SignSeen(
                sign.sign(),
                id,
                name,
                on == null ? sign.on() : on,
                sign.where(),
                count == null ? sign.count() : count,
                sign.seedAge());
    }
}
