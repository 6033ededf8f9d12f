package bothy.reading;

import bothy.garden.Event;
import bothy.garden.Units;
import bothy.reading.said.NumberSaid;
import bothy.reading.said.Passage;
import java.util.Comparator;
import java.util.List;

/** A figure without a unit that puts a weight right: "no, 2.5 on the beans" of 3 kg, "800" of 750 g. */
record BareWeight(double figure, Units units) {
    private static final double POUND = 0.45359237;
    private static final List<Double> METRIC = List.of(1.0, 0.001);
    private static final List<Double> POUNDS = List.of(POUND, POUND / 16);

    /** The count taken for the right one, else a broken number beside no unit; {@code null} where there is neither. */
    static BareWeight in(Passage passage, NumberSaid count) {
        Double figure = count != null
                ? Double.valueOf(count.value())
                : passage.numbers().stream()
                        .filter(number -> !number.whole()
                                && passage.quantities().stream().noneMatch(quantity -> quantity.covers(number.start())))
                        .map(NumberSaid::value)
                        .findFirst()
                        .orElse(null);
        return figure == null
                ? null
                : new BareWeight(figure, passage.situation().grower().units());
    }

    /** The event with the figure in that unit of the grower's in which it comes nearest to what was told. */
    Event instead(Event event) {
        if (!"kg".equals(event.unit()) || event.amount() == null || event.amount() <= 0 || figure <= 0) {
            return event;
        }
        double amount = (units == Units.US ? POUNDS : METRIC)
                .stream()
                        .map(unit -> figure * unit)
                        .min(Comparator.comparingDouble(one -> Math.abs(Math.log(one / event.amount()))))
                        .orElseThrow();
        return event.withAmount(amount, event.unit());
    }
}
