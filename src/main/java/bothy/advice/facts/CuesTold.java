package bothy.advice.facts;

import java.util.List;

/**
 * What the message at hand tells of the cues on the crop's sheet.
 *
 * @param metCues those that it tells
 * @param openCues those that it leaves open
 */
public record CuesTold(String planting, List<String> metCues, List<String> openCues) {}
