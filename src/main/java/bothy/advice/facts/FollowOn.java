package bothy.advice.facts;

import bothy.garden.SowWindow;
import java.util.List;

/**
 * What of other families can follow a crop in its bed, those first that have most time.
 *
 * @param planting the crop that comes out, {@code null} when none was told
 * @param sowNow what is sown in place now and still ripens
 * @param setNow what is set now for next year
 */
public record FollowOn(String planting, List<SowWindow> sowNow, List<SowWindow> setNow) {}
