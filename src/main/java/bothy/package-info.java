/** The program: wires the rooms, reads the clock, the zone and the environment, and holds the command verbs. */
package bothy;
