/**
 * What may be wrong with plants, from {@code troubles/*.yaml}, and the words for it, from {@code wording/en-troubles*.yaml}: signs with
 * their causes and how often each is behind them, and questions with what each answer tells. The clinic weighs them, replying words
 * them.
 */
package bothy.almanac.troubles;
