package bothy.advice.facts;

/**
 * A cause that can be behind a case.
 *
 * @param of id of the case
 * @param planting id of the planting, {@code null} when not known
 * @param crop name of the crop, {@code null} when not told
 */
public record Suspect(String of, String planting, String crop, String cause) {}
