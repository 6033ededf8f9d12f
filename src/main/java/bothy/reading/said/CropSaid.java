package bothy.reading.said;

import java.util.List;

/**
 * A crop named in a message.
 *
 * @param crops the crops that the name can mean, the likeliest first; never empty
 * @param certain whether the first is meant when the grower grows none of them
 * @param variety the variety or kind named, {@code null} when none
 * @param plural whether more than one plant is meant
 * @param thing whether it only names a thing ("tomato feed", "carrot fly")
 */
public record CropSaid(
        int start, int end, List<String> crops, boolean certain, String variety, boolean plural, boolean thing)
        implements Span {
    public CropSaid {
        crops = List.copyOf(crops);
    }

    public String crop() {
        return crops.get(0);
    }

    /** Whether the name can mean a crop; {@code null} is none. */
    public boolean canMean(String crop) {
        return crop != null && crops.contains(crop);
    }

    public boolean single() {
        return crops.size() == 1;
    }

    public CropSaid spanning(int newStart, int newEnd) {
        return new CropSaid(newStart, newEnd, crops, certain, variety, plural, thing);
    }

    public CropSaid called(String newVariety) {
        return new CropSaid(start, end, crops, certain, newVariety, plural, thing);
    }

    /** The same as a mere thing. */
    public CropSaid asThing() {
        return new CropSaid(start, end, crops, certain, variety, plural, true);
    }
}
