/**
 * Puts advice into words for a phone: the answer in the first line, then the reason, then the next check date; a few buttons where
 * something is asked. All words come from the wording file.
 */
package bothy.replying;
