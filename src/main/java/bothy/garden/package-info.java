/**
 * The plain records that pass between rooms: what a grower said, what the diary holds, what the rules advise and what is
 * answered. Nothing here computes, stores, reads a clock or imports another room. A component is {@code null} where the
 * grower did not tell it; lists are never {@code null}. Quantities are SI: °C, mm, L, m, m², kg; dates are ISO.
 */
package bothy.garden;
