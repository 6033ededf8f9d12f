/**
 * From clauses to statements: for each crop of a clause what was done, how many, how much, where, when and to which plantings; and
 * the question back when one of these cannot be told.
 */
package bothy.reading.told;
