package bothy.channel.telegram;

import bothy.garden.Outgoing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.telegram.telegrambots.meta.api.objects.replykeyboard.InlineKeyboardMarkup;
import org.telegram.telegrambots.meta.api.objects.replykeyboard.buttons.InlineKeyboardButton;
import org.telegram.telegrambots.meta.api.objects.replykeyboard.buttons.InlineKeyboardRow;

/**
 * Buttons under a reply. A button carries the number of its reply and its own place ("812.0"), never its label: that is looked up again
 * when it is tapped, so a label may be longer than the 64 bytes a button can carry, and a button of an older question is told apart.
 */
final class Keyboard {
    /** Labels that together are no longer than this stand side by side. */
    private static final int SIDE_BY_SIDE = 24;

    private static final Pattern DATA = Pattern.compile("(\\d{1,18})\\.(\\d{1,3})");

    private Keyboard() {}

    static InlineKeyboardMarkup of(long number, List<String> labels) {
        List<InlineKeyboardButton> buttons = new ArrayList<>();
        for (String label : labels) {
            buttons.add(InlineKeyboardButton.builder()
                    .text(label)
                    .callbackData(number + "." + buttons.size())
                    .build());
        }
        return new InlineKeyboardMarkup(rows(buttons, String.join("", labels).length()));
    }

    private static List<InlineKeyboardRow> rows(List<InlineKeyboardButton> buttons, int letters) {
        return letters <= SIDE_BY_SIDE
                ? List.of(new InlineKeyboardRow(buttons))
                : buttons.stream().map(button -> new InlineKeyboardRow(button)).toList();
    }

    /**
     * The label of a tapped button.
     *
     * @param newest the newest reply with buttons in the chat
     * @return empty when the button belongs to an older reply, or to none
     */
    static Optional<String> label(String data, Optional<Outgoing> newest) {
        Matcher matcher = DATA.matcher(data);
        if (newest.isEmpty()
                || !matcher.matches()
                || Long.parseLong(matcher.group(1)) != newest.get().number()) {
            return Optional.empty();
        }
        List<String> labels = newest.get().reply().buttons();
        int place = Integer.parseInt(matcher.group(2));
        return place < labels.size() ? Optional.of(labels.get(place)) : Optional.empty();
    }
}
