/**
 * The parts that a message is made of, each with its stretch of words: numbers, quantities, days, places, crops, doings, and the
 * passage that holds them all. Plain records, found by the grammars and read by everything after them.
 */
package bothy.reading.said;
