package bothy.almanac;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Plain questions of the craft and what an experienced hand answers: what stands between the steps that the rules lead through. From
 * {@code notes/*.yaml}, one file for a crop, for several of a kind or for a theme.
 *
 * @param notes by their ids ("note-leek-trim-at-planting"), in the order of the files
 */
public record CraftNotes(Map<String, Note> notes) {
    /** What the ids of all notes begin with. */
    private static final String PREFIX = "note-";

    private static final String FOLDER = "notes/";
    private static final String SUFFIX = ".yaml";

    /**
     * One note.
     *
     * @param crops whose it is; empty for one of no single crop
     * @param asked ways in which growers ask it
     * @param say the answer, one to three sentences
     * @param because the reason, may be absent
     */
    public record Note(List<String> crops, List<String> asked, String say, String because) {
        public Note {
            crops = crops == null ? List.of() : List.copyOf(crops);
            asked = asked == null ? List.of() : List.copyOf(asked);
        }

        /** Whether it answers a question about a crop; one about no crop is answered by the notes of no single crop only. */
        public boolean of(String crop) {
            return crops.isEmpty() || crop != null && crops.contains(crop);
        }
    }

    /** A file as it is written. */
    record Sheaf(List<String> crops, Map<String, Note> notes) {
        Sheaf {
            crops = crops == null ? List.of() : List.copyOf(crops);
            notes = notes == null ? Map.of() : notes;
        }
    }

    static List<String> paths(RulesFolder folder) {
        return folder.paths(FOLDER, SUFFIX);
    }

    /**
     * Reads every file of notes.
     *
     * @throws RulesBroken with file and line
     */
    public static CraftNotes in(RulesFolder folder) {
        Map<String, Note> notes = new LinkedHashMap<>();
        for (String path : paths(folder)) {
            Sheaf sheaf = YamlFile.in(folder, path).as(Sheaf.class);
            String file = path.substring(FOLDER.length(), path.length() - SUFFIX.length());
            sheaf.notes()
                    .forEach((id, note) -> notes.put(
                            PREFIX + file + "-" + id,
                            new Note(
                                    note.crops().isEmpty() ? sheaf.crops() : note.crops(),
                                    note.asked(),
                                    note.say(),
                                    note.because())));
        }
        return new CraftNotes(notes);
    }

    /** How a note is said: by itself, as a guess at what was asked, or as all that is known of a crop that has no sheet. */
    public enum Said {
        PLAINLY("", null),
        AS_A_GUESS("nearest-", "nearest-note"),
        AS_ALL_THERE_IS("only-", "only-note");

        private final String before;
        private final String talk;

        Said(String before, String talk) {
            this.before = before;
            this.talk = talk;
        }

        /** The id of a note that is said so. */
        public String id(String note) {
            return before + note;
        }

        private boolean is(String id) {
            return id.startsWith(before + PREFIX);
        }
    }

    /** Whether an id or a topic is that of a note, however it is said. */
    public static boolean is(String id) {
        return id != null && Stream.of(Said.values()).anyMatch(said -> said.is(id));
    }

    /**
     * What is said of a note; empty when there is none of that id.
     *
     * @param talk the sentences around a note that is not said by itself, each with {@code {note}} in it
     */
    public Optional<Wording.Says> says(String id, Map<String, String> talk) {
        return Stream.of(Said.values()).filter(said -> said.is(id)).findFirst().flatMap(said -> Optional.ofNullable(
                        notes.get(id.substring(said.before.length())))
                .map(note -> new Wording.Says(
                        said.talk == null ? note.say() : talk.get(said.talk).replace("{note}", note.say()),
                        note.because(),
                        null,
                        null,
                        null,
                        null,
                        null)));
    }
}
