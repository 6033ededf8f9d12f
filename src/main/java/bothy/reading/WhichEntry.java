package bothy.reading;

import bothy.garden.Doubt;
import bothy.garden.Event;
import bothy.garden.Heard;
import bothy.garden.Logged;
import bothy.reading.grammar.CropNames;
import java.util.List;
import java.util.Map;

/** Asks which of the entries that may be meant is to be put right. */
record WhichEntry(CropNames cropNames) {

    Heard of(List<Logged> lines, Changes changes) {
        List<Doubt.Choice> choices = lines.stream()
                .map(line -> new Doubt.Choice(
                        label(line), String.valueOf(line.number()), Corrections.amended(List.of(line), changes)))
                .toList();
        return Heard.correcting(List.of()).withDoubt(new Doubt(Doubt.About.WHICH_ENTRY, Map.of(), choices, null));
    }

    private String label(Logged line) {
        if (line.entry() instanceof Event event) {
            String count = event.count() == null ? "" : event.count() + " ";
            String crop = event.crop() == null ? "" : " " + count + cropNames.called(event.crop());
            return event.what().word().replace('-', ' ') + crop;
        }
        return "the entry before";
    }
}
