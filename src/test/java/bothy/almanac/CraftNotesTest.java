package bothy.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The notes of the craft as they are written and checked. */
class CraftNotesTest {
    @Test
    void every_note_can_be_found_and_says_something() {
        RulesFolder rules = RulesFolder.at(Path.of("rules"));
        Set<String> crops = Set.copyOf(Words.in(rules).names("crops", "/crops"));

        assertThat(CraftNotes.in(rules).notes()).hasSizeGreaterThan(1000);
        assertThat(NotesCheck.problems(rules, crops)).isEmpty();
    }

    @Test
    void a_note_that_cannot_be_used_is_told_with_its_line() {
        RulesFolder rules = RulesFolder.of(
                Map.of(
                        "notes/leek.yaml",
                        """
                crops: [leek, leak]
                notes:
                  trim:
                    asked: [do I trim leeks, cut the roots of leeks]
                    say: "Shorten roots to {3 thumbs}."
                  silent:
                    asked: [do I trim leeks]
                    say: ""
                """));

        assertThat(NotesCheck.problems(rules, Set.of("leek")))
                .extracting(Problem::toString)
                .containsExactly(
                        "notes/leek.yaml:1: no crop is called \"leak\".",
                        "notes/leek.yaml:3: {3 thumbs} is no figure with a unit, such as {5–10 cm}.",
                        "notes/leek.yaml:6: the note says nothing: add say:.",
                        "notes/leek.yaml:6: \"do I trim leeks\" is asked of the note \"trim\" as well: keep one.");
    }

    @Test
    void a_matter_that_names_a_note_that_is_not_there_is_told() {
        RulesFolder rules = RulesFolder.of(Map.of("words/matters.yaml", "asked:\n  note-soil-gone: what about soil\n"));

        assertThat(NotesCheck.problems(rules, Set.of()))
                .extracting(Problem::toString)
                .containsExactly("words/matters.yaml:2: there is no note \"note-soil-gone\".");
    }

    @Test
    void a_note_on_a_crop_answers_for_that_crop_only_and_one_on_none_for_all() {
        CraftNotes.Note leek = new CraftNotes.Note(List.of("leek"), List.of(), "", null);
        CraftNotes.Note any = new CraftNotes.Note(null, null, "", null);

        assertThat(leek.of("leek")).isTrue();
        assertThat(leek.of("onion")).isFalse();
        assertThat(leek.of(null)).isFalse();
        assertThat(any.of("leek")).isTrue();
        assertThat(any.of(null)).isTrue();
    }
}
