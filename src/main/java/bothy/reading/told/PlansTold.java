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

/** Doings that one message tells as meant or to come. */
final class PlansTold {
    /** A day without a year that lies further ahead is more likely one that is over, days. */
    private static final int SOON = 90;

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
                || passage.word(verb - 2).equals("helped")
                || Set.of("was", "were", "been", "started", "finished", "spent", "began", "did")
                        .contains(passage.word(verb - 1));
        boolean either = day.past().isBefore(today)
                && day.future().isAfter(today)
                && !began
                && day.future().isBefore(today.plusDays(SOON));
        return day.past().isAfter(today) || either;
    }
}
