/**
 * What the rules folder holds besides the rules: crop sheets with their figures and sources, the words that growers use, and
 * the wording of replies. All of it is read from YAML and checked, so that a mistake is reported with file, line and what to do.
 */
package bothy.almanac;
