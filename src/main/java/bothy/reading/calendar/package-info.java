/**
 * Finds the days that a message tells, by weekday, by month or counted from today, and works out which day of the calendar each
 * means.
 */
package bothy.reading.calendar;
