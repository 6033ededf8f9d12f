package bothy.reading;

import bothy.garden.Amendment;
import bothy.garden.Doubt;
import bothy.garden.Event;
import bothy.garden.Heard;
import bothy.garden.Logged;
import bothy.garden.SignSeen;
import bothy.garden.What;
import bothy.reading.grammar.CropNames;
import bothy.reading.said.CropSaid;
import bothy.reading.said.Passage;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Takes back or puts right an entry that the message describes, wherever it stands in the diary: "scrap the 6 beetroot, it was 8", "the
 * garlic of 8 May was a mistake", "I never planted any shallots". Such a message writes nothing new of its own.
 */
final class TakingBack {
    private static final int MOST_CHOICES = 6;
    /** Verbs that nobody uses of plants. */
    private static final Set<String> FIRM = Set.of("scrap", "delete", "undo", "erase", "scratch");
    /** Verbs that may be said of plants too: more must tell that an entry is meant. */
    private static final Set<String> SOFT =
            Set.of("remove", "forget", "ignore", "disregard", "wipe", "cancel", "strike", "drop");

    private static final Set<String> OF_A_DIARY =
            Set.of("entry", "entries", "bit", "line", "record", "log", "diary", "note", "sowing", "planting");
    private static final Set<String> MISTAKEN =
            Set.of("mistake", "wrong", "error", "accident", "duplicate", "mistaken", "typo", "rubbish", "false");
    private static final Set<String> BE = Set.of("was", "were", "is", "are", "has", "have");
    private static final Set<String> LATER = Set.of(
            "yet",
            "today",
            "again",
            "enough",
            "this",
            "because",
            "until",
            "till",
            "since",
            "why",
            "too",
            "as",
            "if",
            "when",
            "so",
            "much",
            "many",
            "well",
            "properly");
    private static final Set<String> KINDS = Set.of("name", "variety", "kind", "type", "sort");
    private static final Set<What> BEGUN = EnumSet.of(What.SOWN, What.PLANTED_OUT, What.MOVED, What.POTTED_ON);

    private final Passage passage;
    private final Function<String, Passage> read;
    private final CropNames cropNames;
    private final Set<String> leading;
    private final List<Logged> all;

    /**
     * @param read reads a part of the message by itself
     * @param leading what may stand before the words that take something back
     */
    TakingBack(Passage passage, Function<String, Passage> read, CropNames cropNames, Set<String> leading) {
        this.leading = leading;
        this.passage = passage;
        this.read = read;
        this.cropNames = cropNames;
        this.all = passage.situation().earlier();
    }

    /** @param tells whether the message, read as news, tells or asks something */
    Optional<Heard> heard(boolean tells) {
        if (passage.size() < 2 || all.isEmpty()) {
            return Optional.empty();
        }
        int verb = opening();
        String word = passage.word(verb);
        if (FIRM.contains(word) || SOFT.contains(word)) {
            return ordered(verb);
        }
        return mistaken().or(() -> tells ? Optional.empty() : neverDone());
    }

    private int opening() {
        int at = 0;
        while (at < passage.size() && (passage.tokens().get(at).mark() || leading.contains(passage.word(at)))) {
            at++;
        }
        return at;
    }

    /** "Scrap the 6 beetroot", "scrap that it's 3". */
    private Optional<Heard> ordered(int verb) {
        int figure = passage.end("n", passage.word(verb + 2).equals(",") ? verb + 3 : verb + 2);
        boolean figureOnly = Set.of("that", "it").contains(passage.word(verb + 1))
                && figure > 0
                && (passage.crops().isEmpty() || Set.of("on", "for").contains(passage.word(figure)));
        if (figureOnly) {
            return Optional
                    .empty(); // "Scratch that 16 lb", "scrap that, 2.5 on the beans": what was told last is put right.
        }
        int right = rightAt(verb + 1);
        int denied = deniedAt(verb + 1);
        int end = Math.min(
                right < 0 ? EntryDescribed.ends(passage, verb + 1) : right, denied < 0 ? passage.size() : denied);
        EntryDescribed meant = EntryDescribed.in(passage, verb + 1, end);
        boolean ofDiary = !meant.bare() && !meant.doings().contains(What.FED)
                || denied >= 0
                || says(verb + 1, end, OF_A_DIARY)
                || isMistake(end)
                || wentIn(meant, end);
        if (SOFT.contains(passage.word(verb)) && (!ofDiary || meant.none())) {
            return Optional.empty();
        }
        if (denied >= 0 || isMistake(end)) {
            right = -1;
        }
        if (right < 0) {
            return meant.none() ? Optional.empty() : Optional.of(takenBack(meant, verb));
        }
        return putRight(meant, right);
    }

    /** "Forget the potatoes on the windowsill, they all went in the ground": that they stood there no longer matters. */
    private boolean wentIn(EntryDescribed meant, int end) {
        boolean unsown = passage.situation().plantings().stream()
                .anyMatch(planting -> !planting.over()
                        && planting.begun() == null
                        && meant.crops().stream().anyMatch(crop -> crop.canMean(planting.crop())));
        return !meant.places().isEmpty()
                && !meant.crops().isEmpty()
                && says(0, passage.size(), Set.of("went", "gone", "planted"))
                && (!unsown || otherLotPlanted(meant));
    }

    private boolean otherLotPlanted(EntryDescribed meant) {
        return passage.situation().plantings().stream()
                .anyMatch(planting -> !planting.over()
                        && planting.begun() != null
                        && meant.crops().stream().anyMatch(crop -> crop.canMean(planting.crop())));
    }

    /** Where what is right begins: "it was 8", "its 3", "should be Tuesday"; −1 when nothing is put in the place. */
    private int rightAt(int from) {
        for (int at = from; at < passage.size() - 1; at++) {
            String word = passage.word(at);
            String next = passage.word(at + 1);
            boolean pronoun = Set.of("it", "that", "they", "there", "this").contains(word)
                    && (BE.contains(next) || next.equals("should"));
            boolean said = Set.of("its", "thats", "it's").contains(word)
                    || word.equals("should") && Set.of("be", "have", "of").contains(next)
                    || word.equals("i") && Set.of("meant", "mean").contains(next)
                    || word.equals("make") && Set.of("it", "that").contains(next)
                    || Set.of("was", "were").contains(word) && at > from && !relative(from, at) && putsIn(at + 1);
            boolean relates = pronoun
                    && word.equals("that")
                    && at > from
                    && !passage.tokens().get(at - 1).mark()
                    && passage.cropAt(at - 1).isPresent();
            if ((pronoun || said) && !relates) {
                return at;
            }
        }
        return -1;
    }

    /** "Was 8", "were really runner beans", but not "were from the shop". */
    private boolean putsIn(int behind) {
        int at = behind;
        while (Set.of("actually", "really", "only", "just", "about", "in", "fact", "on", "the", "not", "more", "like")
                .contains(passage.word(at))) {
            at++;
        }
        int next = at;
        return passage.end("n", next) > 0
                || passage.end("date", next) > 0
                || passage.cropAt(next).isPresent()
                || passage.actions().stream().anyMatch(action -> action.start() == next);
    }

    /** "The beans that were sown". */
    private boolean relative(int from, int at) {
        return at - 1 >= from && Set.of("that", "which", "i", "we", "you").contains(passage.word(at - 1));
    }

    private boolean isMistake(int from) {
        return says(Math.max(0, from), passage.size(), MISTAKEN);
    }

    /** "I never did that", "that did not happen": where the denial begins. */
    private int deniedAt(int from) {
        for (int at = from; at < passage.size(); at++) {
            boolean never = passage.word(at).equals("never");
            boolean not = passage.word(at).equals("not")
                    && Set.of("did", "have", "was", "were", "has", "had").contains(passage.word(at - 1));
            if (never || not) {
                int start = never ? at : at - 1;
                return Set.of("i", "we", "it", "that", "they").contains(passage.word(start - 1)) ? start - 1 : start;
            }
        }
        return -1;
    }

    private boolean says(int from, int to, Set<String> words) {
        for (int at = from; at < to; at++) {
            if (words.contains(passage.word(at))) {
                return true;
            }
        }
        return false;
    }

    /** "The garlic of 8 May was a mistake, remove it". */
    private Optional<Heard> mistaken() {
        for (int at = 1; at < passage.size() - 1; at++) {
            int next = at + 1;
            while (Set.of("a", "an", "all", "my", "just", "by", "in", "entered", "put")
                    .contains(passage.word(next))) {
                next++;
            }
            if (!BE.contains(passage.word(at)) || !MISTAKEN.contains(passage.word(next))) {
                continue;
            }
            EntryDescribed meant = EntryDescribed.in(passage, 0, at);
            boolean plain = meant.bare()
                    && !says(0, at, OF_A_DIARY)
                    && !says(next, passage.size(), FIRM)
                    && !says(next, passage.size(), Set.of("remove"));
            if (meant.none()
                    || plain
                    || meant.crops().isEmpty() && meant.doings().isEmpty()) {
                return Optional.empty();
            }
            int right = rightAt(next + 1);
            return right < 0 ? Optional.of(takenBack(meant, 0)) : putRight(meant, right);
        }
        return Optional.empty();
    }

    /** "I never planted any shallots", "I didn't sow rocket, rocket is the name of the potato". */
    private Optional<Heard> neverDone() {
        int denied = deniedAt(0);
        if (denied < 0
                || denied > 3
                || says(0, passage.size(), LATER)
                || !passage.days().isEmpty()) {
            return Optional.empty();
        }
        int end = denied;
        while (end < passage.size() && !passage.tokens().get(end).mark()) {
            end++;
        }
        EntryDescribed meant = EntryDescribed.in(passage, denied, end);
        boolean once =
                !meant.doings().isEmpty() && (BEGUN.containsAll(meant.doings()) || says(denied, end, Set.of("never")));
        if (!once || meant.crops().isEmpty() || meant.among(all).isEmpty()) {
            return Optional.empty();
        }
        Heard back = takenBack(meant, 0);
        return Optional.of(back.amendments().isEmpty() ? back : withVariety(back));
    }

    /** "Rocket is the name of the potato": what was taken for a crop is the other's variety. */
    private Heard withVariety(Heard back) {
        for (int at = 1; at < passage.size(); at++) {
            if (!KINDS.contains(passage.word(at))) {
                continue;
            }
            int kind = at;
            Optional<CropSaid> name =
                    passage.crops().stream().filter(crop -> crop.end() <= kind).reduce((earlier, later) -> later);
            Optional<CropSaid> of =
                    passage.crops().stream().filter(crop -> crop.start() > kind).findFirst();
            if (name.isPresent() && of.isPresent()) {
                String written = passage.message()
                        .substring(
                                passage.tokens().get(name.get().start()).from(),
                                passage.tokens().get(name.get().end() - 1).to());
                String variety = written.substring(0, 1).toUpperCase(Locale.ROOT) + written.substring(1);
                List<Amendment> amended = new ArrayList<>(back.amendments());
                all.stream()
                        .filter(line -> line.entry() instanceof Event event
                                && BEGUN.contains(event.what())
                                && of.get().canMean(event.crop()))
                        .findFirst()
                        .ifPresent(line ->
                                amended.add(new Amendment(line.number(), ((Event) line.entry()).withVariety(variety))));
                return Heard.correcting(amended);
            }
        }
        return back;
    }

    /** What was done, where something was; else the troubles told. */
    private static List<Logged> doings(List<Logged> found) {
        List<Logged> doings =
                found.stream().filter(line -> line.entry() instanceof Event).toList();
        return doings.isEmpty() ? found : doings;
    }

    private Heard takenBack(EntryDescribed meant, int from) {
        List<Logged> found = doings(meant.among(all));
        if (found.isEmpty()) {
            return unfound(meant);
        }
        List<Logged> lately = meant.among(passage.situation().lately());
        boolean newest = says(from, passage.size(), Set.of("last", "latest", "newest"));
        if (!lately.isEmpty()) {
            return Heard.takingBack(lately);
        }
        return found.size() == 1 || newest
                ? Heard.takingBack(found.subList(0, 1))
                : which(found, line -> Heard.takingBack(List.of(line)));
    }

    /** Nothing is quite as described: what there is of the crop is offered. */
    private Heard unfound(EntryDescribed meant) {
        List<Logged> ofCrop = meant.crops().isEmpty()
                ? List.of()
                : new EntryDescribed(meant.crops(), Set.of(), Set.of(), List.of(), Set.of(), null, List.of())
                        .among(all);
        return ofCrop.isEmpty() ? Heard.correcting(List.of()) : which(ofCrop, line -> Heard.takingBack(List.of(line)));
    }

    private Optional<Heard> putRight(EntryDescribed described, int right) {
        Passage said = read.apply(
                passage.message().substring(passage.tokens().get(right).from()));
        Changes changes = Changes.in(said, List.of());
        if (changes.none()) {
            return described.none() ? Optional.empty() : Optional.of(takenBack(described, 0));
        }
        Set<What> doings = EntryDescribed.in(said, 0, said.size()).doings();
        EntryDescribed meant = described.with(changes);
        EntryDescribed closer = meant.with(changes.crop()).doing(doings);
        List<Logged> found = new ArrayList<>();
        for (EntryDescribed one : List.of(closer, meant.with(changes.crop()), meant.doing(doings), meant)) {
            if (found.isEmpty()) {
                found.addAll(one.none() ? changes.lines(passage.situation()) : one.among(all));
            }
        }
        List<Logged> lately =
                found.stream().filter(passage.situation().lately()::contains).toList();
        List<Logged> wanted = lately.isEmpty() ? found : lately;
        if (wanted.isEmpty()) {
            return Optional.of(Heard.correcting(List.of()));
        }
        if (wanted.size() > 1 && !(changes.forAll() && !lately.isEmpty())) {
            return Optional.of(which(wanted, line -> amended(List.of(line), changes)));
        }
        return Optional.of(amended(wanted, changes));
    }

    private static Heard amended(List<Logged> lines, Changes changes) {
        return Heard.correcting(lines.stream()
                .map(line -> new Amendment(
                        line.number(), changes.besides(line.entry()).applied(line.entry())))
                .toList());
    }

    private Heard which(List<Logged> lines, Function<Logged, Heard> then) {
        List<Doubt.Choice> choices = lines.stream()
                .limit(MOST_CHOICES)
                .map(line -> new Doubt.Choice(label(line), String.valueOf(line.number()), then.apply(line)))
                .toList();
        return Heard.correcting(List.of())
                .withDoubt(new Doubt(Doubt.About.WHICH_ENTRY, new HashMap<>(Map.of()), choices, null));
    }

    /** "Sown 10 garlic, 3 May". */
    private String label(Logged line) {
        if (line.entry() instanceof SignSeen sign) {
            return sign.sign().replace('-', ' ');
        }
        if (!(line.entry() instanceof Event event)) {
            return "the entry before";
        }
        String count = event.count() == null ? "" : event.count() + " ";
        String crop = event.crop() == null ? "" : " " + count + cropNames.called(event.crop());
        String day = event.on() == null
                ? ""
                : ", " + event.on().getDayOfMonth() + " "
                        + event.on().getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
        String weight = "kg".equals(event.unit()) ? " {" + Math.round(event.amount() * 100) / 100.0 + " kg}" : "";
        return event.what().word().replace('-', ' ') + crop + weight + day;
    }
}
