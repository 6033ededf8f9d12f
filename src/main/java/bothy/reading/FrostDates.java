package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.SettingChange;
import bothy.reading.said.DaySaid;
import bothy.reading.said.Passage;
import bothy.reading.text.PhraseBook;
import bothy.reading.text.PhraseBook.Found;
import bothy.reading.text.PhraseFile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** Reads when the last frost of spring and the first of autumn usually come; a frost that came is none of these. */
final class FrostDates {
    private static final String FILE = "settings";
    private static final Set<String> BESIDE_ITS_DAY = Set.of("last", "final", "first");

    private final PhraseBook<String> frosts = new PhraseBook<>();
    private final PhraseBook<String> bothFrosts;
    private final PhraseBook<String> seasons;
    private final PhraseBook<String> usual;
    private final PhraseBook<String> happened;
    /** A day told by one of these is of these weeks. */
    private final Set<String> lately = new HashSet<>(Set.of("yesterday", "night", "ago", "morning"));

    FrostDates(Words words) {
        PhraseFile file = new PhraseFile(words, FILE, Map.of());
        words.names(FILE, "/frosts").forEach(frost -> file.into(frosts, "/frosts/" + frost, frost));
        bothFrosts = file.book("/both", "both");
        seasons = file.book("/season", "season");
        usual = file.book("/usual", "usual");
        happened = file.book("/happened", "happened");
        words.lists("calendar", "/weekdays").values().forEach(lately::addAll);
    }

    Set<String> vocabulary() {
        Set<String> all = new HashSet<>(frosts.vocabulary());
        all.addAll(bothFrosts.vocabulary());
        return all;
    }

    /** Whether a last or first frost is named from a place of the message on. */
    boolean named(Passage passage, int from) {
        return !frosts.find(passage.tokens(), from, passage.size(), passage).isEmpty();
    }

    /** The dates that a sentence tells. */
    List<SettingChange> in(Passage passage, int[] sentence) {
        List<Found<String>> found = frosts.find(passage.tokens(), sentence[0], sentence[1], passage);
        List<DaySaid> days = Passage.within(passage.days(), sentence[0], sentence[1]).stream()
                .filter(day -> day.known() && !oneNight(passage, day))
                .toList();
        boolean past = !happened.all(passage.tokens(), sentence[0], sentence[1], passage)
                .isEmpty();
        boolean last = found.stream().anyMatch(frost -> Set.of("last", "final").contains(passage.word(frost.start())));
        boolean habit = last
                || !usual.all(passage.tokens(), sentence[0], sentence[1], passage)
                        .isEmpty();
        boolean season = found.isEmpty()
                && days.size() == 2
                && !seasons.find(passage.tokens(), sentence[0], sentence[1], passage)
                        .isEmpty();
        if (season) {
            return List.of(
                    new SettingChange("lastSpringFrost", monthDay(days.get(0))),
                    new SettingChange("firstAutumnFrost", monthDay(days.get(1))));
        }
        boolean both = days.size() == 2 && ofBoth(passage, sentence);
        if (both && (!past || found.size() == 2 && last)) {
            return both(passage, sentence, days);
        }
        if (found.isEmpty() || days.isEmpty() || past || !habit) {
            return List.of();
        }
        List<SettingChange> told = new ArrayList<>();
        for (int i = 0; i < found.size() && i < days.size(); i++) {
            told.add(new SettingChange(found.get(i).meaning(), monthDay(days.get(i))));
        }
        return told;
    }

    /** "First frost on Wednesday": a night of these days, no date of every year. */
    private boolean oneNight(Passage passage, DaySaid day) {
        return IntStream.range(day.start(), day.end()).mapToObj(passage::word).anyMatch(lately::contains);
    }

    private boolean ofBoth(Passage passage, int[] sentence) {
        return !bothFrosts
                .all(passage.tokens(), sentence[0], sentence[1], passage)
                .isEmpty();
    }

    /** "Frost dates last 28 April first 10 October": two days for one mention of frost, the spring's before the autumn's unless told. */
    private List<SettingChange> both(Passage passage, int[] sentence, List<DaySaid> days) {
        int start = sentence[0];
        for (int at = start; at < days.get(0).start(); at++) {
            start = BESIDE_ITS_DAY.contains(passage.word(at)) ? at : start;
        }
        boolean told = BESIDE_ITS_DAY.contains(passage.word(start));
        boolean springFirst =
                days.get(0).past().getMonthValue() < days.get(1).past().getMonthValue()
                        ^ passage.situation().grower().southern();
        boolean autumnFirst = told ? passage.word(start).equals("first") : !springFirst;
        return List.of(
                new SettingChange("lastSpringFrost", monthDay(days.get(autumnFirst ? 1 : 0))),
                new SettingChange("firstAutumnFrost", monthDay(days.get(autumnFirst ? 0 : 1))));
    }

    private static String monthDay(DaySaid said) {
        LocalDate day = said.past();
        return String.format(Locale.ROOT, "%02d-%02d", day.getMonthValue(), day.getDayOfMonth());
    }
}
