/** Figures that are printed and never fail a build. */
package bothy.bench;
