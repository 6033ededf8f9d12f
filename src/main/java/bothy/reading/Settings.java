package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.SettingChange;
import bothy.reading.said.ActionSaid;
import bothy.reading.said.Passage;
import bothy.reading.text.Phrase;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseBook.Found;
import bothy.reading.text.PhraseFile;
import bothy.reading.text.Token;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds what a grower tells about place, frosts, soil, units and the order of dates. */
final class Settings {
    private static final String FILE = "settings";
    /** No name of a place has more words than these. */
    private static final int LONGEST_NAME = 4;
    /** Nor has a message that only names one more than these. */
    private static final int LONGEST_NAMES = 8;

    private static final Pattern ZONE = Pattern.compile("\\b([A-Z][A-Za-z]+/[A-Z][A-Za-z_]+(?:/[A-Z][A-Za-z_]+)?)\\b");
    private static final String FROSTS = "frosts";
    private static final Set<String> OF_FROST = Set.of(FROSTS, "climate");
    /** USDA Plant Hardiness Zone Map: zone 10 and warmer have no winter colder than about −1 °C. */
    private static final Pattern HARDINESS =
            Pattern.compile("\\bzone\\s*(?:is\\s*)?1[0-3]\\s?[ab]?\\b(?![/:.]\\d)", Pattern.CASE_INSENSITIVE);

    private static final Pattern OTHER_ZONE =
            Pattern.compile("\\bzone\\s*(?:is\\s*)?[2-9]\\s?[ab]?\\b(?![/:.]\\d)", Pattern.CASE_INSENSITIVE);

    private static final Set<String> DIRECTIONS = Set.of("north", "south", "west", "east");
    private static final Set<String> CONTINENTS = Set.of("Europe", "America", "Australia", "Asia", "Africa", "Pacific");

    private static final Set<String> VISITING = Set.of("while", "whilst", "when", "whenever", "until", "till");

    private final PhraseBook<SettingChange> plain = new PhraseBook<>();
    /** So many words of a longer name may stand before one that is known: "St Paul Minnesota". */
    private static final int BEFORE_A_NAME = 2;

    private final FrostDates frostDates;
    private final PhraseBook<String> telling;
    private final PhraseBook<String> naming;
    private final Set<String> ordinary;
    private final Set<String> passingWords;
    private final Set<String> besideNames;
    private final Words words;
    private volatile PhraseBook<String> cities;
    private final ReminderWishes wishes;

    Settings(Words words) {
        PhraseFile file = new PhraseFile(words, FILE, Map.of());
        for (String setting : words.names(FILE, "/settings")) {
            for (String value : words.names(FILE, "/settings/" + setting)) {
                file.into(plain, "/settings/" + setting + "/" + value, new SettingChange(setting, value));
            }
        }
        frostDates = new FrostDates(words);
        wishes = new ReminderWishes(words);
        telling = file.book("/places/telling", "place");
        naming = file.book("/places/naming", "place");
        ordinary = Set.copyOf(words.list("language", "/ordinary"));
        passingWords = Set.copyOf(words.list(FILE, "/passing"));
        besideNames = Set.copyOf(words.list(FILE, "/places/beside"));
        this.words = words;
    }

    /** Cities by name, read when a place is first told. */
    private PhraseBook<String> cities() {
        PhraseBook<String> read = cities;
        if (read == null) {
            read = new PhraseBook<>();
            Set<String> told = new HashSet<>(words.names(FILE, "/cities"));
            told.addAll(words.names(FILE, "/regions"));
            for (String zone : ZoneId.getAvailableZoneIds()) {
                int slash = zone.indexOf('/');
                if (slash > 0 && CONTINENTS.contains(zone.substring(0, slash)) && zone.indexOf('/', slash + 1) < 0) {
                    String city = zone.substring(slash + 1).replace('_', ' ').toLowerCase(Locale.ROOT);
                    // What the file knows has degrees too; "south Texas" is in no state of Australia.
                    if (!told.contains(city) && !DIRECTIONS.contains(city)) {
                        read.add(new Phrase(city, Map.of()), zone);
                    }
                }
            }
            for (String sort : List.of("/cities", "/regions")) {
                for (String name : words.names(FILE, sort)) {
                    read.add(new Phrase(name, Map.of()), words.text(FILE, sort + "/" + name, ""));
                }
            }
            cities = read;
        }
        return read;
    }

    RemindersAsked reminders() {
        return wishes.reminders();
    }

    Set<String> vocabulary() {
        Set<String> all = new HashSet<>(plain.vocabulary());
        all.addAll(telling.vocabulary());
        all.addAll(naming.vocabulary());
        all.addAll(wishes.vocabulary());
        words.names(FILE, "/cities").forEach(city -> all.addAll(List.of(city.split(" "))));
        words.names(FILE, "/regions").forEach(region -> all.addAll(List.of(region.split(" "))));
        all.addAll(frostDates.vocabulary());
        return all;
    }

    /**
     * The settings told in a sentence.
     *
     * @param end where the sentence ends, or where a question begins in it
     */
    List<SettingChange> in(Passage passage, int[] sentence, int end) {
        List<SettingChange> told = new ArrayList<>();
        List<Found<SettingChange>> set = new ArrayList<>(plain.find(passage.tokens(), sentence[0], end, passage));
        set.removeIf(found -> OF_FROST.contains(found.meaning().setting()) && passing(passage, sentence));
        if (passage.actions().stream()
                .noneMatch(action -> doing(action.action())
                        && action.start() >= sentence[0]
                        && action.end() <= end
                        && !setBy(set, action))) {
            set.forEach(found -> told.add(found.meaning()));
            told.addAll(places(passage, sentence));
            told.addAll(hardinessZone(passage, sentence));
        }
        told.addAll(frostDates.in(passage, sentence));
        told.addAll(wishes.in(passage, sentence));
        return told.stream().distinct().toList();
    }

    /** Whether a sentence on frost is about a time or one night: "no frost until May", "no frost last night". */
    private boolean passing(Passage passage, int[] sentence) {
        boolean timed = false;
        for (int at = sentence[0]; at < sentence[1]; at++) {
            timed |= passingWords.contains(passage.word(at));
        }
        return timed
                || passage.word(sentence[1]).equals("?")
                || !Passage.within(passage.days(), sentence[0], sentence[1]).isEmpty();
    }

    /** In zones 10 and up of the hardiness map winters hardly ever freeze; the others tell nothing of dates. */
    private static List<SettingChange> hardinessZone(Passage passage, int[] sentence) {
        Matcher zone = HARDINESS.matcher(text(passage, sentence));
        return zone.find() ? List.of(new SettingChange(FROSTS, "frost-free")) : List.of();
    }

    /** "Set units to US" sets no fruit: a doing with no word but a setting's. */
    private static boolean setBy(List<Found<SettingChange>> set, ActionSaid action) {
        return !action.words().isEmpty()
                && set.stream().anyMatch(found -> action.words().stream()
                        .allMatch(found.place().words()::get));
    }

    /** The message without doings that only the words of a setting seem to tell. */
    Passage apart(Passage passage, int[] sentence) {
        List<Found<SettingChange>> set = plain.find(passage.tokens(), sentence[0], sentence[1], passage);
        List<ActionSaid> kept = new ArrayList<>(passage.actions());
        kept.removeIf(action -> doing(action.action()) && setBy(set, action));
        return kept.size() == passage.actions().size() ? passage : passage.with(kept);
    }

    private static boolean doing(String action) {
        return !Set.of(
                        "frost",
                        "soil-checked",
                        "temperature",
                        "rain",
                        "moved",
                        "planted",
                        "stored",
                        "emerged",
                        "fruit-set")
                .contains(action);
    }

    private List<SettingChange> places(Passage passage, int[] sentence) {
        List<SettingChange> told = new ArrayList<>();
        String words = text(passage, sentence);
        Matcher zone = ZONE.matcher(words);
        if (zone.find() && ZoneId.getAvailableZoneIds().contains(zone.group(1))) {
            told.add(new SettingChange("zone", zone.group(1)));
        }
        List<Found<String>> leads = atHome(passage, sentence[0], sentence[1]);
        told.addAll(Degrees.in(words, !leads.isEmpty()));
        if (leads.isEmpty()) {
            nameAlone(passage, sentence)
                    .or(() -> nameAtTheHead(passage, sentence))
                    .ifPresent(city -> told.addAll(city(city)));
        }
        List<SettingChange> behind = behind(leads, passage, sentence);
        told.addAll(
                behind.isEmpty()
                        ? behind(naming.find(passage.tokens(), sentence[0], sentence[1], passage), passage, sentence)
                        : behind);
        return told;
    }

    /** The words that lead to a place where the grower is; "while we are in Wales" tells of a place to visit. */
    private List<Found<String>> atHome(Passage passage, int from, int to) {
        return telling.find(passage.tokens(), from, to, passage).stream()
                .filter(lead -> !VISITING.contains(passage.word(lead.start() - 1)))
                .toList();
    }

    /** The places that stand right behind words that lead to one. */
    private List<SettingChange> behind(List<Found<String>> leads, Passage passage, int[] sentence) {
        List<SettingChange> told = new ArrayList<>();
        for (Found<String> lead : leads) {
            cities().find(passage.tokens(), lead.end(), sentence[1], passage).stream()
                    .filter(city -> city.start() - lead.end() <= 1)
                    .findFirst()
                    .ifPresent(city -> told.addAll(city(city.meaning())));
        }
        return told;
    }

    /** "Adelaide, South Australia": a message that is a name and nothing else. Of two the nearer town comes first. */
    private Optional<String> nameAlone(Passage passage, int[] sentence) {
        boolean frostsToo = frostDates.named(passage, sentence[1]);
        boolean first = sentence[0] == 0 && passage.situation().grower().latitude() == null;
        boolean whole =
                (passage.sentences().size() == 1 || frostsToo || first) && sentence[1] - sentence[0] <= LONGEST_NAMES;
        if (!whole || passage.word(sentence[1]).equals("?")) {
            return Optional.empty();
        }
        List<Found<String>> named = cities().find(passage.tokens(), sentence[0], sentence[1], passage);
        for (int at = sentence[0]; at < sentence[1]; at++) {
            int word = at;
            Token token = passage.tokens().get(at);
            boolean beside = !token.aWord() || besideNames.contains(token.word());
            if (!beside && named.stream().noneMatch(name -> name.start() <= word && word < name.end())) {
                return Optional.empty();
            }
        }
        return named.stream().map(Found::meaning).findFirst();
    }

    /** "Bristol, last frost 30 April": a name before what is told of its frosts. */
    private Optional<String> nameAtTheHead(Passage passage, int[] sentence) {
        return frostDates.in(passage, sentence).isEmpty()
                ? Optional.empty()
                : cities().find(passage.tokens(), sentence[0], sentence[1], passage).stream()
                        .filter(city -> city.start() - sentence[0] <= BEFORE_A_NAME)
                        .map(Found::meaning)
                        .findFirst();
    }

    /** Degrees told that are no place on earth, as told. */
    Optional<String> nowhere(Passage passage) {
        boolean lead = !atHome(passage, 0, passage.size()).isEmpty();
        return Degrees.nowhere(passage.message(), lead);
    }

    /** Whether a doing's words are those that tell a place: "we are in Leeds" planted nothing. */
    boolean tellsPlace(Passage passage, ActionSaid action) {
        return telling.all(passage.tokens(), 0, passage.size(), passage).stream()
                .anyMatch(lead -> lead.place().words().intersects(action.words())
                        && (cities().all(passage.tokens(), lead.end(), passage.size(), passage).stream()
                                        .anyMatch(city -> city.start() - lead.end() <= 1)
                                || unknownPlace(passage).isPresent()));
    }

    /** A place that was told by a name that is not known: "we are in Little Wenlock", or by a zone that tells no dates. */
    Optional<String> unknownPlace(Passage passage) {
        Matcher zone = OTHER_ZONE.matcher(passage.message());
        if (zone.find()) {
            return Optional.of(zone.group().strip());
        }
        for (Found<String> lead : atHome(passage, 0, passage.size())) {
            int end = lead.end();
            while (end < passage.size() && end < lead.end() + LONGEST_NAME && nameless(passage, end)) {
                end++;
            }
            boolean whole = end == passage.size() || passage.tokens().get(end).mark();
            if (end > lead.end() && whole) {
                return Optional.of(passage.message()
                        .substring(
                                passage.tokens().get(lead.end()).from(),
                                passage.tokens().get(end - 1).to()));
            }
        }
        return Optional.empty();
    }

    /** A word of a name: none of the language's own, nor of what grows and where. */
    private boolean nameless(Passage passage, int at) {
        Token token = passage.tokens().get(at);
        boolean found = passage.crops().stream().anyMatch(crop -> crop.start() == at)
                || passage.places().stream().anyMatch(place -> place.start() == at)
                || passage.days().stream().anyMatch(day -> day.start() == at);
        return token.aWord() && !found && (token.capital() || !ordinary.contains(token.word()));
    }

    private static List<SettingChange> city(String known) {
        String[] parts = known.split(" ");
        List<SettingChange> told = new ArrayList<>();
        told.add(new SettingChange("zone", parts[0]));
        if (parts.length == 3) {
            told.add(new SettingChange("latitude", parts[1]));
            told.add(new SettingChange("longitude", parts[2]));
        }
        return told;
    }

    private static String text(Passage passage, int[] sentence) {
        int from = passage.tokens().get(sentence[0]).from();
        int to = passage.tokens().get(sentence[1] - 1).to();
        return passage.message().substring(from, Math.min(to, passage.message().length()));
    }
}
