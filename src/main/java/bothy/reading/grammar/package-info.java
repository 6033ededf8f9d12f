/**
 * The parts that a message is made of: numbers, quantities, days, crops, places and the doings told of them, each with the
 * tokens that it stands on. What they mean together is for the room above.
 */
package bothy.reading.grammar;
