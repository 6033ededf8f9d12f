/**
 * The grower's diary: an append-only log that is the one truth, the store that keeps it, and the replay that derives a garden
 * from it for any day.
 */
package bothy.diary;
