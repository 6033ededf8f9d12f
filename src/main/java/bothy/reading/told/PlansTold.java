package bothy.reading.told;

import bothy.garden.Plan;
import bothy.garden.What;
import bothy.reading.said.Clause;
import bothy.reading.said.CropSaid;
import bothy.reading.said.DaySaid;
import bothy.reading.said.Mood;
import bothy.reading.said.Passage;
import bothy.reading.text.Conjugation.Form;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Doings that one message tells as meant or to come. */
final class PlansTold {
    /** A day without a year that lies further ahead is more likely one that is over, days. */
    private static final int SOON = 90;

    /** "Could at long last sow". */
    private static final int COULD_REACH = 4;

    private final WhatMeant whatMeant;

    PlansTold(WhatMeant whatMeant) {
        this.whatMeant = whatMeant;
    }

    /** A plan for each crop of a clause, in order. */
    List<Plan> in(Passage passage, List<Clause> clauses) {
        List<Plan> plans = new ArrayList<>();
        for (Clause clause : clauses) {
            boolean toCome = clause.mood() == Mood.DONE && toCome(passage, clause);
            if ((clause.mood() == Mood.MEANT || toCome) && !clause.action().state()) {
                plans.addAll(of(passage, clause));
            }
        }
        return plans;
    }

    private List<Plan> of(Passage passage, Clause clause) {
        DaySaid day = WhenTold.said(passage, clause);
        LocalDate on = day == null ? null : day.future();
        List<Plan> plans = new ArrayList<>();
        for (CropSaid crop : clause.crops()) {
            What what = whatMeant.of(passage, clause, crop);
            List<String> ids = PlantingsMeant.ids(PlantingsMeant.of(crop, passage, clause, true));
            plans.add(new Plan(what, crop.crop(), what == What.SOWN ? List.of() : ids, on));
        }
        if (plans.isEmpty()) {
            plans.add(new Plan(whatMeant.of(passage, clause, null), null, List.of(), on));
        }
        return plans;
    }

    /** "Sowing peas on Saturday week" is a plan. */
    static boolean toCome(Passage passage, Clause clause) {
        DaySaid day = WhenTold.said(passage, clause);
        boolean ing = clause.action().form() == Form.ING || clause.action().form() == Form.PLAIN;
        if (day == null || !day.known() || !ing) {
            return false;
        }
        LocalDate today = passage.situation().today();
        int verb = clause.action().words().nextSetBit(0);
        boolean over = Cropless.names(passage, clause, Set.of("completed", "done", "finished", "complete"));
        if (over && !day.past().isAfter(today)) {
            return false;
        }
        boolean since = Cropless.names(passage, clause, Set.of("since"));
        boolean began = since
                || managed(passage, verb)
                || passage.word(verb - 2).equals("helped")
                || Set.of("was", "were", "been", "started", "finished", "spent", "began", "did")
                        .contains(passage.word(verb - 1));
        boolean either = day.past().isBefore(today)
                && day.future().isAfter(today)
                && !began
                && day.future().isBefore(today.plusDays(SOON));
        return day.past().isAfter(today) || either;
    }

    /** "Managed to sow", "was finally able to sow", "got round to sowing", "could at last sow": on the day that is over. */
    private static boolean managed(Passage passage, int verb) {
        String before = passage.word(verb - 1);
        String further = passage.word(verb - 2);
        boolean to = before.equals("to")
                && (Set.of("managed", "remembered", "decided", "had", "began", "started")
                                .contains(further)
                        || further.equals("able") && !passage.word(verb - 3).equals("be")
                        || further.equals("got") && passage.word(verb - 3).equals("finally")
                        || Set.of("round", "around", "down").contains(further)
                                && passage.word(verb - 3).equals("got"));
        boolean last = before.equals("last") && Set.of("at", "long").contains(further);
        return to
                || (last || before.equals("finally"))
                        && IntStream.range(Math.max(0, verb - COULD_REACH), verb)
                                .anyMatch(at -> passage.word(at).equals("could"));
    }
}
