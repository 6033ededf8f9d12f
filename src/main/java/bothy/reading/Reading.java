package bothy.reading;

import bothy.almanac.Words;
import bothy.garden.Finding;
import bothy.garden.Heard;
import bothy.garden.Inquiry;
import bothy.garden.Kind;
import bothy.garden.Plan;
import bothy.garden.Situation;
import bothy.garden.Statement;
import bothy.reading.grammar.Clause;
import bothy.reading.grammar.Clauses;
import bothy.reading.grammar.CropSaid;
import bothy.reading.grammar.Grammar;
import bothy.reading.grammar.Moods;
import bothy.reading.grammar.Passage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Reads what growers write. Built once from the words files, then only read: many threads may share it. Any text gives an answer;
 * none fails.
 */
public final class Reading {
    private final Grammar grammar;
    private final Clauses clauses;
    private final Statements statements;
    private final Asking asking;
    private final Questions questions;
    private final Inquiries inquiries;
    private final CloserLook closerLook;

    /** @throws bothy.almanac.RulesBroken when a words file is missing or a phrase in one cannot be read */
    public Reading(Words words) {
        Moods moods = new Moods(words);
        Particulars particulars = new Particulars(words);
        Set<String> known = new HashSet<>(moods.vocabulary());
        known.addAll(particulars.vocabulary());
        questions = new Questions(words);
        known.addAll(questions.vocabulary());
        inquiries = new Inquiries(questions);
        closerLook = new CloserLook(words);
        known.addAll(closerLook.vocabulary());
        grammar = new Grammar(words, known);
        clauses = new Clauses(moods);
        statements = new Statements(particulars, grammar.cropNames());
        asking = new Asking(grammar.cropNames());
    }

    /**
     * What a message says.
     *
     * @param text the message, any text
     * @param situation the day, the grower, the plantings and what was talked about last
     */
    public Heard read(String text, Situation situation) {
        Passage passage = grammar.passage(text, situation);
        List<Clause> said = new ArrayList<>();
        List<Inquiry> asked = new ArrayList<>();
        for (int[] sentence : passage.sentences()) {
            int begins = questions.begins(passage, sentence);
            if (begins >= 0) {
                asked.add(inquiries.of(passage, sentence, begins));
            }
            said.addAll(clauses.in(passage, sentence[0], begins < 0 ? sentence[1] : begins));
        }
        List<Told> told = statements.told(passage, said);
        List<Plan> plans = statements.plans(passage, said);
        List<Statement> lines = told.stream().map(Told::statement).toList();
        return new Heard(
                lines,
                asked,
                List.of(),
                List.of(),
                List.of(),
                plans,
                asking.about(told),
                List.of(),
                kind(lines, asked),
                false);
    }

    /**
     * What a message tells of a closer look at a trouble, whether it was asked for or not; of no planting, since that is for the one who
     * knows the open cases to say.
     */
    public List<Finding> findings(String text, Situation situation) {
        return closerLook.in(grammar.passage(text, situation));
    }

    /** The crops that a message names, the likeliest meaning of each. */
    public List<String> crops(String text, Situation situation) {
        return grammar.passage(text, situation).crops().stream()
                .filter(crop -> !crop.thing())
                .map(CropSaid::crop)
                .distinct()
                .toList();
    }

    private static Kind kind(List<Statement> lines, List<Inquiry> asked) {
        if (!lines.isEmpty() && !asked.isEmpty()) {
            return Kind.MIXED;
        }
        return !asked.isEmpty() ? Kind.QUESTION : lines.isEmpty() ? Kind.CHAT : Kind.EVENT;
    }
}
