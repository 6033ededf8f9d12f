package bothy.advice.facts;

import bothy.garden.Stage;
import java.time.LocalDate;

/** The stage at which a planting stands today. Inferred by rules. */
public record AtStage(String planting, Stage stage, LocalDate since) {}
