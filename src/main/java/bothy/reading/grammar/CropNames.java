package bothy.reading.grammar;

import bothy.almanac.Words;
import bothy.garden.Planting;
import bothy.reading.said.CropSaid;
import bothy.reading.text.Phrase;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseBook.Found;
import bothy.reading.text.Token;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Finds the crops that a message names, with the variety where one is named beside. */
public final class CropNames {
    private final PhraseBook<Name> book = new PhraseBook<>();
    private final Map<String, String> called = new HashMap<>();
    private final Set<String> plantedSown = new HashSet<>();
    private final Set<String> mendable = new HashSet<>();
    private final Set<String> pairs = new HashSet<>();
    private final Set<String> fruiting;
    private final Set<String> berries;
    private final Set<String> beside;
    private final Map<String, Set<String>> begunFrom = new HashMap<>();
    private final Set<String> hung;
    private final Set<String> dug;
    private final Set<String> things;
    private final Set<String> ordinary;
    private final Set<String> varietyNames = new HashSet<>();
    private final Set<String> varietyWords = new HashSet<>();

    /** Of these none but a crop's are told. */
    private static final Set<String> YOUNG = Set.of("seed", "seeds", "seedling", "seedlings", "plugs");

    /** What a name stands for. */
    private record Name(List<String> crops, boolean certain, boolean variety, boolean careful) {}

    public CropNames(Words words, Set<String> ordinary) {
        this.ordinary = ordinary;
        for (String crop : words.names("crops", "/crops")) {
            String at = "/crops/" + crop;
            List<String> names = words.list("crops", at + "/names");
            called.put(crop, names.isEmpty() ? crop.replace('-', ' ') : names.get(0));
            List<String> meant = new ArrayList<>(List.of(crop));
            meant.addAll(words.list("crops", "/loosely/" + crop));
            add(names, new Name(meant, true, false, false));
            add(words.list("crops", at + "/kinds"), new Name(List.of(crop), true, true, false));
            add(words.list("crops", at + "/careful"), new Name(List.of(crop), true, false, true));
            List<String> varieties = words.list("varieties", "/" + crop);
            varietyNames.addAll(varieties);
            varieties.forEach(name -> varietyWords.addAll(List.of(name.split(" "))));
            add(varieties, new Name(List.of(crop), true, true, true));
            add(
                    varieties.stream()
                            .filter(name -> !name.endsWith("s"))
                            .map(name -> name + "s")
                            .toList(),
                    new Name(List.of(crop), true, true, true));
            for (String sort : List.of("/names", "/kinds", "/careful")) {
                words.list("crops", at + sort).forEach(text -> mendable.addAll(List.of(text.split("[ '-]+"))));
            }
            if (words.text("crops", at + "/planted", "").equals("sown")) {
                plantedSown.add(crop);
            }
        }
        for (String group : words.names("crops", "/collectives")) {
            String at = "/collectives/" + group;
            String otherwise = words.text("crops", at + "/otherwise", "");
            List<String> crops = new ArrayList<>(words.list("crops", at + "/of"));
            if (crops.remove(otherwise)) {
                crops.add(0, otherwise);
            }
            add(words.list("crops", at + "/names"), new Name(crops, !otherwise.isEmpty(), false, false));
            words.list("crops", at + "/names").forEach(text -> mendable.addAll(List.of(text.split("[ '-]+"))));
        }
        things = new HashSet<>(words.list("crops", "/things"));
        fruiting = Set.copyOf(words.list("crops", "/fruiting"));
        berries = Set.copyOf(words.list("crops", "/berries"));
        beside = Set.copyOf(words.list("crops", "/beside"));
        words.names("crops", "/begun-from")
                .forEach(word -> begunFrom.put(word, Set.copyOf(words.list("crops", "/begun-from/" + word))));
        hung = Set.copyOf(words.list("crops", "/hung"));
        dug = Set.copyOf(words.list("crops", "/dug"));
    }

    private void add(List<String> names, Name name) {
        for (String text : names) {
            book.add(new Phrase(text, Map.of()), name);
            if (text.indexOf(' ') > 0 && text.indexOf(' ') == text.lastIndexOf(' ')) {
                pairs.add(text);
            }
        }
    }

    /** The names in two words. */
    Set<String> pairs() {
        return pairs;
    }

    public Set<String> vocabulary() {
        return book.vocabulary();
    }

    /** Words that a misspelled word may be meant for: not those of varieties, which are like too many ordinary ones. */
    Set<String> mendable() {
        return mendable;
    }

    /** Whether planting this crop is sowing it: cloves, tubers, sets, and seeds that go straight into the ground. */
    public boolean plantedIsSown(String crop) {
        return plantedSown.contains(crop);
    }

    /** Whether the crop is a fruit: pulling the plant up ends it. */
    public boolean fruiting(String crop) {
        return fruiting.contains(crop);
    }

    /** Whether fruit can be seen to set on the crop. */
    public boolean bears(String crop) {
        return fruiting.contains(crop) || berries.contains(crop);
    }

    /** Whether the crop is strung up to keep. */
    public boolean hung(String crop) {
        return hung.contains(crop);
    }

    /** Whether the crop is dug up or lifted to be had. */
    public boolean dug(String crop) {
        return dug.contains(crop);
    }

    /** What to call a crop in a question. */
    public String called(String crop) {
        return called.getOrDefault(crop, crop.replace('-', ' '));
    }

    /** The crops that a single word names; empty when it names none. */
    public List<String> named(String word) {
        Token token = new Token(word, Token.Sort.WORD, Double.NaN, 0, word.length(), false, false);
        return book.find(List.of(token), 0, 1, (slot, at) -> -1).stream()
                .flatMap(found -> found.meaning().crops().stream())
                .toList();
    }

    public boolean known(String crop) {
        return called.containsKey(crop);
    }

    /** All crops named in a message in order. */
    public List<CropSaid> in(List<Token> tokens, String message, List<Planting> plantings) {
        List<CropSaid> said = new ArrayList<>();
        List<Found<Name>> found = book.find(tokens, 0, tokens.size(), (slot, at) -> -1);
        for (int i = 0; i < found.size(); i++) {
            if (counts(found, i, tokens, plantings)) {
                said.add(said(found.get(i), tokens, message));
            }
        }
        said.addAll(ownVarieties(tokens, message, plantings, said));
        said.sort(java.util.Comparator.comparingInt(CropSaid::start));
        List<CropSaid> listed = new VarietyLists(tokens, message, this::knownWord).with(said);
        return new VarietyNames(tokens, message, this::knownWord).joined(listed);
    }

    /** Whether a word is used for nothing but in names of varieties. */
    public boolean onlyOfVarieties(String word) {
        return varietyWords.contains(word) && !ordinary.contains(word) && !mendable.contains(word);
    }

    private boolean knownWord(String word) {
        return ordinary.contains(word) || book.vocabulary().contains(word);
    }

    /** A careful name counts only in company. */
    private boolean counts(List<Found<Name>> found, int index, List<Token> tokens, List<Planting> plantings) {
        Found<Name> name = found.get(index);
        if (!name.meaning().careful()) {
            return true;
        }
        boolean person =
                tokens.get(name.start()).is("tom") && tokens.get(name.start()).capital();
        if (person || Company.eaten(tokens, name.start())) {
            return false;
        }
        if (!name.meaning().variety()
                && !tokens.get(name.start()).is("salad")
                && name.end() < tokens.size()
                && YOUNG.contains(tokens.get(name.end()).word())) {
            return true; // "8 tom seeds".
        }
        if (tokens.get(name.start()).is("salad") && Company.grownOrGathered(tokens, name.start())) {
            return true;
        }
        if (beside.contains(tokens.get(name.start()).word())
                && !tokens.get(name.start()).is("plums")
                && !tokens.get(name.start()).is("cherries")
                && Company.tended(tokens, name.start())) {
            return true;
        }
        if (tokens.get(Math.max(0, name.start() - 1)).is("chitted")) {
            return true; // "Chitted earlies went in."
        }
        if (beside.contains(tokens.get(name.start()).word())
                && (Company.handled(tokens, name.start()) || Company.carriedOn(tokens, name.start(), name.end()))) {
            return true;
        }
        if (beside(found, index, index - 1) || beside(found, index, index + 1)) {
            return true;
        }
        if (name.meaning().variety()) {
            boolean several = name.place().length() > 1;
            boolean named = tokens.get(name.start()).capital()
                    && name.start() > 0
                    && !tokens.get(name.start() - 1).endsSentence();
            boolean strange = !ordinary.contains(tokens.get(name.start()).word());
            return several
                    || named
                    || (strange && Company.ledByNumber(tokens, name.start()))
                    || strange && (growing(name, plantings) || Company.pointedOut(tokens, name.start()));
        }
        String crop = name.meaning().crops().get(0);
        boolean variety = beside.contains(tokens.get(name.start()).word())
                && found.stream()
                        .anyMatch(other -> other.meaning().variety()
                                && other.meaning().crops().contains(crop));
        if (variety) {
            return true; // "Canes for the runners, then sowed 32 scarlet emperor".
        }
        boolean grown = plantings.stream().anyMatch(planting -> planting.crop().equals(crop));
        boolean named = found.stream().anyMatch(other -> !other.meaning().careful());
        if (ofAnother(name, found, tokens)) {
            return false;
        }
        if (named && !grown) {
            return beside.contains(tokens.get(name.start()).word())
                    && (Company.ledByNumber(tokens, name.start()) || inList(found, index, tokens));
        }
        return plantings.stream().anyMatch(planting -> planting.crop().equals(crop))
                || Company.ledByNumber(tokens, name.start())
                || Company.toldOf(tokens, name.start(), name.end());
    }

    /** "Put my shallots in, 25 sets": those are not onions. */
    private boolean ofAnother(Found<Name> name, List<Found<Name>> found, List<Token> tokens) {
        Set<String> begunSo = begunFrom.getOrDefault(tokens.get(name.start()).word(), Set.of());
        String own = name.meaning().crops().get(0);
        return found.stream()
                        .filter(other -> !other.meaning().careful())
                        .map(other -> other.meaning().crops().get(0))
                        .anyMatch(crop -> !crop.equals(own) && begunSo.contains(crop))
                && found.stream()
                        .noneMatch(other -> !other.meaning().careful()
                                && other.meaning().crops().contains(own));
    }

    private static boolean growing(Found<Name> name, List<Planting> plantings) {
        return plantings.stream()
                .anyMatch(planting -> name.meaning().crops().contains(planting.crop()) && !planting.over());
    }

    /** "Kale, cabbage and sprouts". */
    private static boolean inList(List<Found<Name>> found, int index, List<Token> tokens) {
        int start = found.get(index).start();
        int joint = start > 0
                        && Set.of("the", "some", "my", "our")
                                .contains(tokens.get(start - 1).word())
                ? start - 2
                : start - 1;
        return index > 0
                && joint > 0
                && found.get(index - 1).end() == joint
                && (tokens.get(joint).is("and") || tokens.get(joint).is(","));
    }

    private static boolean beside(List<Found<Name>> found, int index, int other) {
        if (other < 0 || other >= found.size()) {
            return false;
        }
        Found<Name> a = found.get(Math.min(index, other));
        Found<Name> b = found.get(Math.max(index, other));
        boolean sameCrop = a.meaning().crops().stream().anyMatch(b.meaning().crops()::contains);
        return sameCrop && b.start() - a.end() <= 1;
    }

    /** "Romas" are of the variety Roma. */
    private String variety(String words) {
        String one = words.replaceFirst("(?i)s$", "");
        boolean several = !varietyNames.contains(words.toLowerCase(Locale.ROOT))
                && varietyNames.contains(one.toLowerCase(Locale.ROOT));
        return several ? one : words;
    }

    private CropSaid said(Found<Name> found, List<Token> tokens, String message) {
        Name name = found.meaning();
        String words = message.substring(
                tokens.get(found.start()).from(), tokens.get(found.end() - 1).to());
        String last = tokens.get(found.end() - 1).word();
        boolean plural = last.endsWith("s") || last.equals("garlic") || last.equals("sweetcorn");
        CropSaid said = new CropSaid(
                found.start(),
                found.end(),
                name.crops(),
                name.certain(),
                name.variety() ? variety(VarietyNames.bare(words)) : null,
                plural,
                false);
        boolean measure = found.end() < tokens.size()
                && tokens.get(found.end()).is("size")
                && (found.end() + 1 == tokens.size()
                        || !tokens.get(found.end() + 1).is("of"));
        return measure
                        || Company.compared(tokens, found.start())
                        || found.end() < tokens.size()
                                && things.contains(tokens.get(found.end()).word())
                ? said.asThing()
                : said;
    }

    /** Varieties that only this grower's diary knows. */
    private List<CropSaid> ownVarieties(
            List<Token> tokens, String message, List<Planting> plantings, List<CropSaid> said) {
        PhraseBook<Planting> own = new PhraseBook<>();
        for (Planting planting : plantings) {
            if (planting.variety() != null && planting.variety().matches("[\\p{L}\\d' -]{3,40}")) {
                own.add(new Phrase(planting.variety(), Map.of()), planting);
                own.add(new Phrase(planting.variety() + "s", Map.of()), planting);
                for (String word : planting.variety().toLowerCase(Locale.ROOT).split(" ")) {
                    if (word.length() > 3 && !word.equals(planting.variety()) && !ordinary.contains(word)) {
                        own.add(new Phrase(word, Map.of()), planting); // "Dug the Sarpo" of Sarpo Mira.
                    }
                }
            }
        }
        List<CropSaid> more = new ArrayList<>();
        for (Found<Planting> found : own.find(tokens, 0, tokens.size(), (slot, at) -> -1)) {
            CropSaid crop = new CropSaid(
                    found.start(),
                    found.end(),
                    List.of(found.meaning().crop()),
                    true,
                    found.meaning().variety(),
                    true,
                    false);
            if (said.stream().noneMatch(crop::overlaps)) {
                more.add(crop);
            }
        }
        return more;
    }
}
