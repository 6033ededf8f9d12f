/**
 * Looks into troubles: gathers the cases out of the diary, hands their suspects to the rules, and weighs what the rules, the tables of
 * troubles and the grower's answers say for and against each cause.
 */
package bothy.advice.clinic;
