package bothy.conversation;

import bothy.garden.Doubt;
import bothy.garden.Doubt.Choice;
import bothy.garden.Garden;
import bothy.garden.Grower;
import bothy.garden.Heard;
import bothy.garden.Kind;
import bothy.garden.Reply;
import bothy.garden.SettingChange;
import bothy.replying.Answer;
import java.util.List;
import java.util.Map;

/** Asks once for the time zone, when a place was shared and no zone was told. */
final class ZoneAsked {
    private static final int MOST_ZONES = 3;
    private final Knowledge knowledge;

    ZoneAsked(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /** The same answer, with the question after it where that is due. */
    Answer after(Answer answer, Heard heard, Garden garden) {
        boolean placeTold =
                heard.settings().stream().anyMatch(change -> change.setting().equals("latitude"));
        boolean zoneTold = garden.standing().stream()
                .anyMatch(line -> line.entry() instanceof SettingChange change
                        && change.setting().equals("zone"));
        if (!placeTold || zoneTold || answer.asked() != null || garden.grower().latitude() == null) {
            return answer;
        }
        Grower grower = garden.grower();
        List<String> near = grower.longitude() == null
                ? List.of()
                : knowledge.reading().zonesNear(grower.latitude(), grower.longitude(), MOST_ZONES);
        List<Choice> choices = near.stream().map(ZoneAsked::choice).toList();
        String question = knowledge.replier().talk(choices.isEmpty() ? "which-zone-written" : "which-zone");
        Doubt doubt = new Doubt(Doubt.About.ADVICE, Map.of("question", question, "advice", ""), choices, null);
        Reply reply = new Reply(
                answer.reply().text() + "\n\n" + question,
                choices.stream().map(Choice::label).toList());
        return new Answer(reply, answer.spoken(), doubt, answer.nextLook());
    }

    private static Choice choice(String zone) {
        List<SettingChange> settings = List.of(new SettingChange("zone", zone));
        Heard then = new Heard(
                List.of(), List.of(), List.of(), settings, List.of(), List.of(), null, List.of(), Kind.SETTING, false);
        return new Choice(zone, zone, then);
    }
}
