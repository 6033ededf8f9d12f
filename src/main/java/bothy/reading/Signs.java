package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Planting;
import bothy.garden.SignSeen;
import bothy.reading.grammar.Moods;
import bothy.reading.said.CropSaid;
import bothy.reading.said.DaySaid;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import bothy.reading.said.SeedSaid;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseBook.Found;
import bothy.reading.text.PhraseFile;
import bothy.reading.told.PlantingsMeant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;

/** Finds the signs of trouble that a message tells. */
final class Signs {

    private static final Set<String> OF_THE = Set.of("on", "of", "my", "the", "our", "his", "her", "their");
    private static final String FILE = "signs";
    static final String NO_EMERGENCE = "no-emergence";

    /** How many words before a sign a "no" may stand to take it back. */
    private static final int REACH = 4;
    /** How many words beside a sign tell what it is of. */
    private static final int BESIDE = 2;

    private final PhraseBook<String> signs = new PhraseBook<>();
    private final PhraseBook<String> where;
    private final PhraseBook<String> unseen;
    private final PhraseBook<String> quiet;
    private final Set<String> ofSeed;
    private final Map<String, String> wider = new HashMap<>();
    /** Words by sign that make a phrase of it tell something else: what is pale on a leaf is no scald of the fruit. */
    private final Map<String, Set<String>> unless = new HashMap<>();

    /** The crop that alone shows a sign: cobs are of sweetcorn, whatever was talked about last. */
    private final Map<String, String> onlyOf = new HashMap<>();

    private final Moods moods;
    private final Hearsay hearsay;

    Signs(Words words, Moods moods, Hearsay hearsay) {
        this.moods = moods;
        this.hearsay = hearsay;
        PhraseFile file = new PhraseFile(words, FILE, words.lists(FILE, "/groups"));
        for (String sign : words.names(FILE, "/signs")) {
            file.into(signs, "/signs/" + sign + "/phrases", sign);
            String kind = words.text(FILE, "/signs/" + sign + "/is", "");
            if (!kind.isEmpty()) {
                wider.put(sign, kind);
            }
        }
        for (String sign : words.names(FILE, "/also")) {
            file.into(signs, "/also/" + sign, sign);
        }
        words.names(FILE, "/only-of").forEach(sign -> onlyOf.put(sign, words.text(FILE, "/only-of/" + sign, "")));
        words.lists(FILE, "/unless").forEach((sign, telling) -> unless.put(sign, Set.copyOf(telling)));
        where = file.book("/where", "where");
        unseen = file.book("/unseen", "unseen");
        quiet = file.book("/quiet", "quiet");
        ofSeed = Set.copyOf(words.list(FILE, "/of-seed"));
    }

    Set<String> vocabulary() {
        return signs.vocabulary();
    }

    /** The wider sign that a sign is a case of, {@code null} when it is none. */
    String wider(String sign) {
        return wider.get(sign);
    }

    /** Signs found in a sentence, with the tokens that tell them. */
    List<Found<String>> in(Passage whole, int[] sentence) {
        Passage passage = hearsay.without(whole);
        List<Found<String>> seen = new ArrayList<>();
        List<Found<String>> found = signs.all(passage.tokens(), sentence[0], sentence[1], passage);
        found.removeIf(one -> ofSomethingElse(passage, sentence, one) || NoTrouble.overAnother(passage, sentence, one));
        Set<String> told = new HashSet<>();
        found.stream()
                .filter(one -> wider.containsKey(one.meaning()) && holds(passage, sentence, one))
                .forEach(one -> told.add(wider.get(one.meaning())));
        // "The edges of the leaves are turning yellow" says more of the leaves than that they turn yellow.
        found.removeIf(one -> told.contains(one.meaning()));
        for (Found<String> one : signs.withoutShared(found)) {
            if (holds(passage, sentence, one)) {
                seen.add(one);
            }
        }
        List<Found<String>> all = List.copyOf(seen);
        seen.removeIf(one -> within(one, all) || NoTrouble.ofTheirLength(passage, one, all));
        return seen;
    }

    /** Each once: "the kale is eaten to bits, holes everywhere, and the leeks …" tells twice of one crop. */
    static List<Found<String>> once(Passage passage, List<Found<String>> troubles) {
        List<Found<String>> once = new ArrayList<>();
        for (Found<String> trouble : troubles) {
            boolean again = once.stream()
                    .anyMatch(before -> before.meaning().equals(trouble.meaning())
                            && before.end() <= trouble.start()
                            && Passage.within(passage.crops(), before.end(), trouble.end())
                                    .isEmpty());
            if (!again) {
                once.add(trouble);
            }
        }
        return once;
    }

    private boolean holds(Passage passage, int[] sentence, Found<String> found) {
        return !unseen(passage, sentence, found)
                && moods.here(passage, sentence, found.start())
                && !NoTrouble.noneThisYear(passage, sentence, found)
                && !NoTrouble.named(passage, found);
    }

    /** A slighter phrase in the stretch of a fuller one tells the same trouble again. */
    private static boolean within(Found<String> found, List<Found<String>> all) {
        return all.stream()
                .anyMatch(other -> other != found
                        && other.place().length() > found.place().length()
                        && other.start() < found.end()
                        && found.start() < other.end());
    }

    /** "Nothing much happening up here, dark by 4": of the place and no seed that was sown. */
    private boolean quiet(Passage passage, int[] sentence, Found<String> sign) {
        return sign.meaning().equals(NO_EMERGENCE)
                && Passage.within(passage.crops(), sentence[0], sentence[1]).isEmpty()
                && IntStream.range(sentence[0], sentence[1])
                        .mapToObj(passage::word)
                        .noneMatch(ofSeed::contains)
                && !quiet.all(passage.tokens(), sentence[0], sentence[1], passage)
                        .isEmpty();
    }

    private boolean ofSomethingElse(Passage passage, int[] sentence, Found<String> sign) {
        if (NoTrouble.madeToPlantIn(passage, sentence, sign)
                || NoTrouble.growsNone(passage, sentence, sign)
                || NoTrouble.onlyCalledSo(passage, sign)
                || NoTrouble.bulbsRipening(passage, sentence, sign)
                || NoTrouble.ofTheGround(passage, sentence, sign)
                || NoTrouble.ofInsects(passage, sentence, sign)
                || NoTrouble.byOneself(passage, sign)
                || NoTrouble.noTubers(passage, sign)
                || quiet(passage, sentence, sign)
                || NoTrouble.notSoEarly(passage, sign)) {
            return true;
        }
        Set<String> telling = unless.getOrDefault(sign.meaning(), Set.of());
        int to = Math.min(sentence[1], sign.end() + BESIDE);
        int from = sign.start();
        while (from > sentence[0] && OF_THE.contains(passage.word(from - 1))) {
            from--; // "The first leaves on my toms are going yellow".
        }
        for (int at = Math.max(sentence[0], from - BESIDE); at < to; at++) {
            boolean whereRipe = passage.word(at).startsWith("vine")
                    && passage.word(at - 1).equals("the")
                    && passage.word(at - 2).equals("on"); // "Splitting on the vine".
            if (telling.contains(passage.word(at)) && !whereRipe && !ofTheirLeaves(passage, sign, at)) {
                return true;
            }
        }
        return false;
    }

    /** "The edges of the cucumber leaves": a crop's name tells of its fruit only where no leaf is named. */
    private static boolean ofTheirLeaves(Passage passage, Found<String> sign, int at) {
        return passage.crops().stream().anyMatch(crop -> crop.covers(at))
                && sign.place().words().stream()
                        .anyMatch(word -> Set.of("leaf", "leaves", "foliage").contains(passage.word(word)));
    }

    private boolean unseen(Passage passage, int[] sentence, Found<String> sign) {
        int from = Math.max(sentence[0], sign.start() - REACH);
        return unseen.all(passage.tokens(), from, sign.start(), passage).stream()
                        .noneMatch(found -> comma(passage, found.end(), sign.start()))
                && !unseen.all(passage.tokens(), from, sign.start(), passage).isEmpty();
    }

    private static boolean comma(Passage passage, int from, int to) {
        for (int at = from; at < to; at++) {
            if (Set.of(",", "but", "and", "just", "only").contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    SignSeen seen(Passage passage, int[] sentence, Found<String> found) {
        CropSaid said = crop(passage, sentence, found);
        String own = onlyOf.get(found.meaning());
        boolean ofItsOwn = own != null && (said == null || !said.canMean(own));
        List<Planting> there = said == null ? PlantingsMeant.standingIn(passage, sentence[0], sentence[1]) : List.of();
        List<Planting> talkedOf = there.isEmpty() ? PlantingsMeant.mentioned(passage.situation()) : there;
        List<Planting> plantings = ofItsOwn
                ? passage.situation().plantings().stream()
                        .filter(one -> !one.over() && one.crop().equals(own))
                        .toList()
                : said == null ? talkedOf : PlantingsMeant.of(said, passage, sentence[0], sentence[1], true);
        List<String> crops = plantings.stream().map(Planting::crop).distinct().toList();
        String crop = ofItsOwn
                ? own
                : crops.size() == 1
                        ? crops.get(0)
                        : said != null && (said.single() || said.certain() || plantings.isEmpty()) ? said.crop() : null;
        return new SignSeen(
                found.meaning(),
                plantings.size() == 1 ? plantings.get(0).id() : null,
                crop,
                sownInIt(passage, sentence, found) ? passage.situation().today() : day(passage, sentence),
                place(passage, sentence, found),
                count(passage, sentence),
                SignSeen.ofSeed(found.meaning()) ? seedAge(passage) : null);
    }

    /** "Sowed carrots 3 weeks ago, nothing up": the day is that of the sowing; that they are not up is seen now. */
    private static boolean sownInIt(Passage passage, int[] sentence, Found<String> found) {
        return SignSeen.ofSeed(found.meaning())
                && passage.actions().stream()
                        .anyMatch(action -> action.start() >= sentence[0]
                                && action.end() <= sentence[1]
                                && Set.of("sown", "planted-out").contains(action.action()));
    }

    /** "Seedlings fell over, stems thin and mushy": what fells seedlings so rots their stems, and no rot of grown plants is told besides. */
    static boolean rotOfSeedlings(SignSeen sign, List<SignSeen> seen) {
        return sign.sign().equals("stem-rot")
                && seen.stream()
                        .anyMatch(other -> other.sign().equals("damping-off")
                                && (other.crop() == null
                                        || sign.crop() == null
                                        || other.crop().equals(sign.crop())));
    }

    private static Integer seedAge(Passage passage) {
        return passage.seeds().stream()
                .map(SeedSaid::years)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    /** Of several crops in its sentence the one that stands in the sign's phrase or nearest to it. */
    private static CropSaid crop(Passage passage, int[] sentence, Found<String> sign) {
        List<CropSaid> inside = Passage.within(passage.crops(), sentence[0], sentence[1]);
        List<CropSaid> meant =
                inside.stream().filter(crop -> !Likened.is(passage, crop)).toList();
        if (!meant.isEmpty()) {
            return meant.stream()
                    .min(Comparator.comparingInt(crop -> apart(crop, sign)))
                    .orElseThrow();
        }
        List<CropSaid> before = Passage.within(passage.crops(), 0, sentence[0]);
        if (!before.isEmpty()) {
            return before.get(before.size() - 1);
        }
        return passage.crops().isEmpty() ? null : passage.crops().get(0);
    }

    private static int apart(CropSaid crop, Found<String> sign) {
        return Math.max(0, Math.max(sign.start() - crop.end(), crop.start() - sign.end()));
    }

    private static LocalDate day(Passage passage, int[] sentence) {
        LocalDate today = passage.situation().today();
        return Passage.within(passage.days(), sentence[0], sentence[1]).stream()
                .filter(DaySaid::known)
                .map(DaySaid::past)
                .filter(day -> !day.isAfter(today))
                .reduce((first, second) -> second)
                .orElse(today);
    }

    private String place(Passage passage, int[] sentence, Found<String> sign) {
        return where.find(passage.tokens(), sentence[0], sentence[1], passage).stream()
                .findFirst()
                .map(found -> words(passage, found.place().words()))
                .orElse(null);
    }

    private static String words(Passage passage, BitSet words) {
        StringBuilder text = new StringBuilder();
        words.stream().forEach(at -> text.append(text.isEmpty() ? "" : " ").append(passage.word(at)));
        return text.toString();
    }

    private static Integer count(Passage passage, int[] sentence) {
        for (NumberSaid number : passage.counts(sentence[0], sentence[1])) {
            String next = passage.word(number.end());
            boolean plants = Set.of("of", "plants", "plant", "seedlings", "out", "are", "have", "leaves")
                            .contains(next)
                    || passage.crops().stream().anyMatch(crop -> crop.start() == number.end());
            // "It is 98 out, tomatoes droopy".
            boolean heat =
                    next.equals("out") && Set.of("is", "its", "was", "hit").contains(passage.word(number.start() - 1));
            if (plants
                    && !heat
                    && number.value() >= 1
                    && number.value() < 10_000
                    && !passage.word(number.start()).equals("one")) {
                return (int) number.value();
            }
        }
        return null;
    }
}
