/**
 * From letters to words: a message is cut into words, numbers and marks that remember where they stood, misspelled words of the
 * trade are set right where only one word is near, and phrases of the words files are found in them.
 */
package bothy.reading.text;
