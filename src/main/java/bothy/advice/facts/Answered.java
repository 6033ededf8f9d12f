package bothy.advice.facts;

/**
 * The answer to a question about a case: told by the grower, or known from the diary or the weather by a rule.
 *
 * @param of id of the case
 * @param about id of the question
 */
public record Answered(String of, String about, String answer) {}
