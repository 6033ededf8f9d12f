package bothy;

import bothy.advice.Advisor;
import bothy.advice.RuleBook;
import bothy.almanac.Climates;
import bothy.almanac.CraftNotes;
import bothy.almanac.CropSheets;
import bothy.almanac.Places;
import bothy.almanac.RulesFolder;
import bothy.almanac.Sheet;
import bothy.almanac.SowingCalendars;
import bothy.almanac.Wording;
import bothy.almanac.Words;
import bothy.almanac.troubles.TroubleBook;
import bothy.conversation.Knowledge;
import bothy.reading.Reading;
import bothy.replying.Replier;
import bothy.weather.WeatherSource;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.CompletableFuture;

/** Makes all that a conversation needs from a rules folder. */
final class Workshop {
    private Workshop() {}

    static RulesFolder folder(Path rules) {
        return rules == null ? RulesFolder.inside() : RulesFolder.at(rules);
    }

    /**
     * Reads and compiles a rules folder; rules and words are made ready side by side, since a grower waits. The tables of troubles of the
     * rules that come with the program wait for the first trouble: the build has checked them.
     *
     * @throws bothy.almanac.RulesBroken when something in it cannot be used
     */
    static Knowledge knowledge(RulesFolder written, Path cache, WeatherSource weather) {
        CompletableFuture<RuleBook> rules = CompletableFuture.supplyAsync(() -> RuleBook.of(written, cache));
        RulesFolder folder = cache == null ? written : written.readyFrom(cache);
        CompletableFuture<CraftNotes> notes = CompletableFuture.supplyAsync(() -> CraftNotes.in(folder));
        CompletableFuture<Reading> reading = notes.thenApplyAsync(read -> new Reading(Words.in(folder), read));
        Map<String, Sheet> sheets = CropSheets.quickly(folder, cache);
        Wording wording = Wording.in(folder, join(notes));
        TroubleBook troubles = TroubleBook.at(folder);
        if (!written.shipped()) {
            troubles.read();
        }
        Advisor advisor = new Advisor(
                join(rules), sheets, Places.in(folder), troubles, Climates.in(folder), SowingCalendars.in(folder));
        Replier replier = new Replier(wording, sheets, troubles);
        return new Knowledge(join(reading), advisor, replier, sheets, weather);
    }

    static <T> T join(CompletableFuture<T> made) {
        try {
            return made.join();
        } catch (java.util.concurrent.CompletionException failed) {
            if (failed.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw failed;
        }
    }

    /** Where compiled rules and the chat's history are kept: the user's own cache folder. */
    static Path cacheFolder() {
        String home = System.getenv("XDG_CACHE_HOME");
        Path caches =
                home == null || home.isBlank() ? Path.of(System.getProperty("user.home"), ".cache") : Path.of(home);
        return caches.resolve("bothy");
    }
}
