package bothy.advice.facts;

import bothy.garden.Stage;
import java.time.LocalDate;

/** A stage that a planting has come to. Inferred by rules. */
public record Reached(String planting, Stage stage, LocalDate on) {

    /** The stage's place in the order of stages. */
    public int order() {
        return stage.ordinal();
    }
}
