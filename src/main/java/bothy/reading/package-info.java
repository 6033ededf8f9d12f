/**
 * Turns a message into what was said: statements for the diary, questions, signs of trouble, settings, corrections and plans.
 * Reading is a pure function of the text and the {@link bothy.garden.Situation}; it keeps nothing, asks no clock and never fails
 * on any text. Where it is not sure it says so and words nothing as done.
 */
package bothy.reading;
