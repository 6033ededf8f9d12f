package bothy.reading;

import bothy.almanac.CraftNotes;
import bothy.almanac.RulesFolder;
import bothy.almanac.Words;
import java.io.IOException;
import java.nio.file.Path;

/**
 * Scores files of labelled messages that lie anywhere, for a first reading: only the figures, or with {@code -Dshow.wrong=true} the
 * messages read wrong.
 *
 * <pre>mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=bothy.reading.FreshVoices -Dexec.args="FILE…"</pre>
 */
final class FreshVoices {
    private FreshVoices() {}

    public static void main(String[] files) throws IOException {
        RulesFolder rules = RulesFolder.at(Path.of("rules"));
        Reading reading = new Reading(Words.in(rules), CraftNotes.in(rules));
        for (String file : files) {
            Score score = new Score(new Corpus(Path.of(file), reading), reading);
            System.out.println(score.table(file));
            if (Boolean.getBoolean("show.wrong")) {
                score.wrong().forEach(System.out::println);
            }
        }
    }
}
