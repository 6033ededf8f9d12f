/**
 * The facts that were reckoned with the formulas before the rules run: chances, windows, water, numbers and risks. A component that
 * rests on something assumed makes {@code told} false, so that an advice built on it is less sure.
 */
package bothy.advice.reckoned;
