package bothy.conversation;

import bothy.garden.Doubt;
import bothy.garden.Earth;
import bothy.garden.Heard;
import bothy.garden.Kind;
import bothy.garden.SettingChange;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A shared location is a setting: the place of the plot. */
final class Locations {
    private Locations() {}

    /** Kept to two decimals, about a kilometre: enough for weather and frost, not for finding the door. */
    static Heard heard(double latitude, double longitude) {
        if (!(Earth.hasLatitude(latitude) && Earth.hasLongitude(longitude))) {
            String found = String.format(Locale.ROOT, "%s, %s", latitude, longitude);
            return Heard.nothing(Kind.SETTING)
                    .withDoubt(new Doubt(Doubt.About.WHICH_PLACE, Map.of("found", found), List.of(), null));
        }
        List<SettingChange> settings = List.of(
                new SettingChange("latitude", String.format(Locale.ROOT, "%.2f", latitude)),
                new SettingChange("longitude", String.format(Locale.ROOT, "%.2f", longitude)));
        return new Heard(
                List.of(), List.of(), List.of(), settings, List.of(), List.of(), null, List.of(), Kind.SETTING, false);
    }
}
