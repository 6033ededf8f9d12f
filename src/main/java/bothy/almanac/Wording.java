package bothy.almanac;

import bothy.garden.English;
import java.util.List;
import java.util.Map;

/**
 * Every sentence that a grower reads. From {@code wording/en.yaml}. In a sentence {@code {name}} is filled in and {@code [part]} is
 * left out when something in it is not known.
 *
 * @param advice what each advice says, by its id
 * @param receipts what is said when an entry was written, by its kind
 * @param doubts what is asked when something is unclear, by what is in doubt
 * @param facts how a known fact is told in answer to "why", by the fact's kind
 * @param figures how a figure of a crop sheet is told there, by its path in the sheet
 * @param stages everyday words for the stages
 * @param topics what to do first for a how-to or a question that no rule answers, by question word
 * @param phrases short phrases for ids in sheets (cues, cuts, supports, feeds) and for parts of sentences
 * @param crops everyday names of crops
 * @param talk all else that is said
 * @param notes the notes of the craft, from their own files
 */
public record Wording(
        Map<String, Says> advice,
        Map<String, String> receipts,
        Map<String, String> doubts,
        Map<String, String> facts,
        Map<String, String> figures,
        Map<String, String> stages,
        Map<String, String> topics,
        Map<String, String> phrases,
        Map<String, Name> crops,
        Map<String, String> talk,
        CraftNotes notes) {

    /**
     * What one advice says.
     *
     * @param say what to do, one or two sentences
     * @param because the reason, a sentence
     * @param todo the same as a line of the weekly list; it may name several {@code {crops}}; absent for what is no task
     * @param ask a question that ends the reply
     * @param answers the answers to it
     * @param crops other words for single crops
     * @param done the kind of entry ("watered") that says that it was done; absent when no entry clearly does
     */
    public record Says(
            String say,
            String because,
            String todo,
            String ask,
            List<Answer> answers,
            Map<String, Says> crops,
            String done) {

        /** The words for one crop: its own where it has them. */
        public Says in(String crop) {
            Says own = crops == null || crop == null ? null : crops.get(crop);
            return own == null
                    ? this
                    : new Says(
                            own.say == null ? say : own.say,
                            own.because == null ? because : own.because,
                            own.todo == null ? todo : own.todo,
                            own.ask == null ? ask : own.ask,
                            own.answers == null ? answers : own.answers,
                            null,
                            own.done == null ? done : own.done);
        }
    }

    /**
     * An answer offered to an advice's question, and what it tells: an entry, a sign, or nothing.
     *
     * @param label what stands on the button
     * @param meaning "yes" or "no", so that a written yes or no is understood; may be absent
     * @param what kind of entry that it tells ("emerged"), absent for none
     * @param detail detail of that entry
     * @param sign sign that it tells, absent for none
     */
    public record Answer(String label, String meaning, String what, String detail, String sign) {}

    /**
     * A crop's everyday name.
     *
     * @param one a single one, or the crop as a mass ("garlic")
     * @param many several ("cucumbers")
     * @param us the American name of several, absent when it is the same
     * @param au the Australian and New Zealand name of several, absent when it is the same
     * @param in the Indian name of several, absent when it is the same
     */
    public record Name(String one, String many, String us, String au, String in) {

        /** What several are called in a sort of English; {@code null} when it is {@link #many}. */
        public String many(English english) {
            return switch (english) {
                case BRITISH -> null;
                case AMERICAN -> us;
                case AUSTRALIAN -> au;
                case INDIAN -> in;
            };
        }
    }

    /**
     * Reads the wording.
     *
     * @throws RulesBroken with file and line, of the notes as well
     */
    public static Wording in(RulesFolder folder) {
        return in(folder, CraftNotes.in(folder));
    }

    /** The same with notes that were read before. */
    public static Wording in(RulesFolder folder, CraftNotes notes) {
        Wording written = YamlFile.in(folder, "wording/en.yaml").as(Wording.class);
        return new Wording(
                written.advice,
                written.receipts,
                written.doubts,
                written.facts,
                written.figures,
                written.stages,
                written.topics,
                written.phrases,
                written.crops,
                written.talk,
                notes);
    }

    /** What an advice or a note of the craft says; {@code null} when nothing is written for it. */
    public Says says(String id) {
        return CraftNotes.is(id) ? notes.says(id, talk).orElse(null) : advice.get(id);
    }
}
