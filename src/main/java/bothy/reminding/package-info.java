/** Wakes gardens: looks, once a day and not at night, whether a grower should hear something unasked. */
package bothy.reminding;
