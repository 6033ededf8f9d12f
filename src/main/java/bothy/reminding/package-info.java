/** Wakes gardens: takes those from the store whose next look is due and lets the conversation say what is to be said unasked. */
package bothy.reminding;
