package bothy.advice.facts;

/**
 * Something that speaks for a cause or against it. Inferred by rules; the rule's name is the sentence for it.
 *
 * @param of id of the case
 * @param by what speaks, in a word or two, so that two rules never speak as one
 * @param weight log-odds (natural logarithm), above 0 for the cause, below 0 against it
 */
public record Evidence(String of, String cause, String by, double weight) {}
