/**
 * Takes a message apart: finds the numbers, quantities, crops, places and doings in its tokens and cuts its sentences into clauses
 * with their mood. What they mean together is for the room above.
 */
package bothy.reading.grammar;
