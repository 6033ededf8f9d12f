package bothy.replying;

import bothy.almanac.Wording;
import bothy.garden.SettingChange;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Settings told, in words; those that belong together in one: "weekly list on Sundays at 18:00". */
final class SettingsSaid {
    private final Wording wording;
    private final Vocabulary vocabulary;

    SettingsSaid(Wording wording, Vocabulary vocabulary) {
        this.wording = wording;
        this.vocabulary = vocabulary;
    }

    List<String> words(List<SettingChange> changes) {
        List<List<SettingChange>> together = new ArrayList<>();
        for (SettingChange change : changes) {
            boolean more = !together.isEmpty()
                    && belongs(change, together.get(together.size() - 1).get(0).setting());
            if (!more) {
                together.add(new ArrayList<>());
            }
            together.get(together.size() - 1).add(change);
        }
        return together.stream().map(this::sentence).toList();
    }

    private static boolean belongs(SettingChange change, String first) {
        return switch (change.setting()) {
            case "listTime" -> first.equals("listDay");
            case "remindAt", "remindEvery", "remindOf" -> first.equals("remindOn");
            default -> false;
        };
    }

    private String sentence(List<SettingChange> told) {
        SettingChange first = told.get(0);
        Map<String, String> phrases = wording.phrases();
        String label = "setting-" + first.setting();
        String of = phrases.getOrDefault(label + "-" + first.value(), phrases.get(label));
        if (of == null) {
            return first.setting() + " " + first.value();
        }
        Map<String, String> words = new HashMap<>();
        told.forEach(each -> words.put(each.setting(), written(each.setting(), each.value())));
        return new Sentence(of)
                .fill(name -> Optional.ofNullable(words.get(name)))
                .orElse(of);
    }

    private String written(String setting, String value) {
        Map<String, String> phrases = wording.phrases();
        if (value.isEmpty()) {
            return null;
        }
        if (value.matches("\\d{4}-\\d\\d-\\d\\d")) {
            LocalDate day = LocalDate.parse(value);
            return setting.equals("remindOn")
                    ? vocabulary.quantities().onDay(day)
                    : vocabulary.quantities().nearDay(day);
        }
        return switch (setting) {
            // Any leap year will do: a frost date has none.
            case "lastSpringFrost", "firstAutumnFrost" ->
                value.matches("\\d\\d-\\d\\d")
                        ? vocabulary
                                .quantities()
                                .write(
                                        "lastSpring",
                                        MonthDay.parse("--" + value).atYear(2000))
                        : value;
            case "listDay" -> value.substring(0, 1).toUpperCase(Locale.ROOT) + value.substring(1) + "s";
            case "quiet" -> value.replace("-", " and ");
            case "remindEvery" ->
                Optional.ofNullable(phrases.get("every-" + value))
                        .orElse(phrases.get("every-days").replace("{days}", value));
            default -> phrases.getOrDefault(value, value);
        };
    }
}
