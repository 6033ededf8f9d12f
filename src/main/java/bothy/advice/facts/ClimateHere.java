package bothy.advice.facts;

import bothy.garden.Climate;

/**
 * What the winters and summers of the grower's place are like.
 *
 * @param told whether it rests on what the grower told of frost or climate (false: guessed from the place)
 */
public record ClimateHere(Climate climate, boolean told) implements Assumable {}
