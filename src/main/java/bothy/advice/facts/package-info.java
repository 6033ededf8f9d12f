/**
 * The facts that rules match, besides the plain records of the garden and the crop sheets: what happened, what was just told,
 * asked or meant, what is to be expected when, and where things stand. All are computed before the rules run.
 */
package bothy.advice.facts;
