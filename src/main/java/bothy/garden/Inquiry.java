package bothy.garden;

import java.time.LocalDate;
import java.util.List;

/**
 * One thing asked.
 *
 * @param question what is asked
 * @param crop the crop it is about, {@code null} for the whole plot or when not told
 * @param plantings ids of the plantings it is about; empty when the crop is not growing yet or for the whole plot
 * @param topic for {@link Question#HOW_TO}: the step ("sowing", "pricking-out", "potting-on", "hardening-off", "planting-out",
 *     "thinning", "supporting", "pollinating", "watering", "feeding", "protecting", "harvesting", "curing", "storing",
 *     "filling-cells", "saving-seed"); for {@link Question#HOW_MANY_FIT}: what is counted ("seeds", "cells", "yield", "compost",
 *     "household" for plants that feed people,
 *     "round-bed" for plants in one of the length told across, "corner-bed" in a right triangle of both lengths, {@code null} in another); for {@link Question#SAFE}: what ("eating", "spraying", "frost"); for
 *     {@link Question#STILL_TIME}: "whether-too-late" where it is asked so; for {@link Question#WHY}: the doing whose reason is asked
 *     ("reason-thinning"), {@link #UNWRITTEN} for another, {@code null} for the last advice; else the matter asked of, of a word of the
 *     craft "meaning-" and the word, {@code null} for none
 * @param on the day asked about, {@code null} when none
 * @param count a number told in the question (seeds, plants), {@code null} when none
 * @param length length of the bed told, m, {@code null} when none
 * @param width width of the bed told, m, {@code null} when none
 * @param amount another quantity told (can of 10 L), SI, {@code null} when none
 * @param unit its unit: one of SI; "m apart" of the grower's own spacing; "g/m²" of a solid feed; "years" of seed's age; "cells" of each tray told, 0 for a tray without; {@link #CELSIUS} of a coming night;
 *     {@link #LITRES_AN_HOUR} of the drippers at a plant; "%" of seed that comes up
 * @param label strength that a feed's label says, {@code null} when none was told
 * @param eaten what is to be eaten, {@code null} when it is not asked whether something can be eaten
 * @param during the days of the diary that are asked for ("last month", "on 25 July"), {@code null} when none were told
 * @param cues ids of the cues of ripeness that the message tells ("tops-fallen")
 */
public record Inquiry(
        Question question,
        String crop,
        List<String> plantings,
        String topic,
        LocalDate on,
        Integer count,
        Double length,
        Double width,
        Double amount,
        String unit,
        FeedLabel label,
        Eaten eaten,
        Period during,
        List<String> cues) {
    /** The topic of a missed watering that nothing was asked about. */
    public static final String WATERING_MISSED_TOLD = "watering-missed-told";

    /** The unit of a coming night's warmth. */
    public static final String CELSIUS = "°C";

    /** The unit of what drippers give. */
    public static final String LITRES_AN_HOUR = "L/h";

    /** What is asked for a reason that stands nowhere in the rules. */
    public static final String UNWRITTEN = "unwritten";

    public Inquiry {
        plantings = List.copyOf(plantings);
        cues = cues == null ? List.of() : List.copyOf(cues);
    }

    /** A question in which no label was told. */
    public Inquiry(
            Question question,
            String crop,
            List<String> plantings,
            String topic,
            LocalDate on,
            Integer count,
            Double length,
            Double width,
            Double amount,
            String unit) {
        this(question, crop, plantings, topic, on, count, length, width, amount, unit, null, null, null, List.of());
    }

    public static Inquiry of(Question question, String crop, List<String> plantings) {
        return new Inquiry(question, crop, plantings, null, null, null, null, null, null, null);
    }

    /** Whether it was told and not asked: "forgot to water for four days" is no question, and wants advice all the same. */
    public boolean onlyTold() {
        return WATERING_MISSED_TOLD.equals(topic);
    }

    public Inquiry withTopic(String topic) {
        return new Inquiry(
                question, crop, plantings, topic, on, count, length, width, amount, unit, label, eaten, during, cues);
    }

    /** The same question about a day. */
    public Inquiry on(LocalDate day) {
        return new Inquiry(
                question, crop, plantings, topic, day, count, length, width, amount, unit, label, eaten, during, cues);
    }

    /** Another question with the same figures. */
    public Inquiry asking(Question question) {
        return new Inquiry(
                question, crop, plantings, topic, on, count, length, width, amount, unit, label, eaten, during, cues);
    }

    /** The same question about these plantings only. */
    public Inquiry about(List<String> plantings) {
        return new Inquiry(
                question, crop, plantings, topic, on, count, length, width, amount, unit, label, eaten, during, cues);
    }

    /** The same question about this crop. */
    public Inquiry ofCrop(String crop) {
        return new Inquiry(
                question, crop, plantings, topic, on, count, length, width, amount, unit, label, eaten, during, cues);
    }

    /** The same question with a number of things and another quantity told. */
    public Inquiry with(Integer count, Double length, Double amount, String unit) {
        return new Inquiry(
                question, crop, plantings, topic, on, count, length, width, amount, unit, label, eaten, during, cues);
    }

    /** The same question of a bed with these sides, m. */
    public Inquiry sized(Double length, Double width) {
        return new Inquiry(
                question, crop, plantings, topic, on, count, length, width, amount, unit, label, eaten, during, cues);
    }

    /** The same question with a can and a label told. */
    public Inquiry withFeed(FeedLabel label, Double canLitres) {
        return new Inquiry(
                question, crop, plantings, topic, on, count, length, width, canLitres, "L", label, eaten, during, cues);
    }

    /** The same question, asked of eating. */
    public Inquiry ofEating(Eaten eaten) {
        return new Inquiry(
                question, crop, plantings, topic, on, count, length, width, amount, unit, label, eaten, during, cues);
    }

    /** The same question about these days of the diary. */
    public Inquiry during(Period days) {
        return new Inquiry(
                question, crop, plantings, topic, on, count, length, width, amount, unit, label, eaten, days, cues);
    }

    /** The same question with what was told of the signs that it is ready. */
    public Inquiry telling(List<String> told) {
        return new Inquiry(
                question, crop, plantings, topic, on, count, length, width, amount, unit, label, eaten, during, told);
    }
}
