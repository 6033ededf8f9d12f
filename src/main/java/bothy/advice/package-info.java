/**
 * One run of the rules over one grower's facts on one day. In goes a {@link bothy.advice.Day}, out come the advice facts with their
 * reasons. The only room that sees Drools.
 */
package bothy.advice;
