package bothy.almanac;

import bothy.almanac.CraftNotes.Note;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Looks whether the notes of the craft can be found and said: what each lacks, and what two of them say alike. */
public final class NotesCheck {
    private static final Pattern BRACES = Pattern.compile("\\{([^{}]*)}");
    private static final Pattern FIGURE =
            Pattern.compile("-?[\\d.]+(?:(?:–| to )-?[\\d.]+)? (?:mm|cm|m|km|°C|degrees|litres?|ml|kg|g)");
    private static final int SHORTEST = 2;

    private NotesCheck() {}

    /** @param crops every crop that is known by name */
    public static List<Problem> problems(RulesFolder folder, Set<String> crops) {
        List<Problem> problems = new ArrayList<>(namedInVain(folder));
        Map<String, String> asked = new HashMap<>();
        for (String path : CraftNotes.paths(folder)) {
            YamlFile file = YamlFile.in(folder, path);
            CraftNotes.Sheaf sheaf = file.as(CraftNotes.Sheaf.class);
            sheaf.crops().stream()
                    .filter(crop -> !crops.contains(crop))
                    .forEach(crop -> problems.add(file.problem("/crops", "no crop is called \"" + crop + "\".")));
            sheaf.notes().forEach((id, note) -> {
                String at = "/notes/" + id;
                note.crops().stream()
                        .filter(crop -> !crops.contains(crop))
                        .forEach(crop -> problems.add(file.problem(at, "no crop is called \"" + crop + "\".")));
                note(note).forEach(text -> problems.add(file.problem(at, text)));
                for (String line : note.asked()) {
                    String other = asked.put(sheaf.crops() + line.strip().toLowerCase(Locale.ROOT), id);
                    if (other != null) {
                        problems.add(file.problem(
                                at, "\"" + line + "\" is asked of the note \"" + other + "\" as well: keep one."));
                    }
                }
            });
        }
        return problems;
    }

    /** Matters may name a note by its id; there must be one of that name. */
    private static List<Problem> namedInVain(RulesFolder folder) {
        if (folder.paths("words/matters", ".yaml").isEmpty()) {
            return List.of();
        }
        Words words = Words.in(folder);
        Map<String, Note> notes = CraftNotes.in(folder).notes();
        return words.names("matters", "").stream()
                .flatMap(section -> words.names("matters", "/" + section).stream()
                        .filter(name -> CraftNotes.is(name) && !notes.containsKey(name))
                        .map(name -> words.problem(
                                "matters", "/" + section + "/" + name, "there is no note \"" + name + "\".")))
                .toList();
    }

    private static List<String> note(Note note) {
        List<String> problems = new ArrayList<>();
        if (note.say() == null || note.say().isBlank()) {
            problems.add("the note says nothing: add say:.");
            return problems;
        }
        if (note.asked().stream().filter(line -> !line.isBlank()).count() < SHORTEST) {
            problems.add("the note is asked in fewer than two ways: it will hardly be found; add some under asked:.");
        }
        Matcher braces = BRACES.matcher(note.say() + (note.because() == null ? "" : note.because()));
        while (braces.find()) {
            if (!FIGURE.matcher(braces.group(1)).matches()) {
                problems.add("{" + braces.group(1) + "} is no figure with a unit, such as {5–10 cm}.");
            }
        }
        return problems;
    }
}
