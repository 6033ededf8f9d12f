package bothy.conversation;

import bothy.garden.Finding;
import bothy.garden.Given;
import bothy.garden.Heard;
import bothy.garden.Inquiry;
import bothy.garden.Kind;
import bothy.garden.Logged;
import bothy.garden.Message;
import bothy.garden.Question;
import bothy.garden.Reply;
import bothy.garden.SignSeen;
import bothy.replying.Answer;
import bothy.replying.Replier;
import bothy.replying.Turn;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.TextStyle;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The few plain commands, and answers that come from the conversation itself rather than from the rules. */
final class Commands {
    /** Whoever asks of something else names it, which takes more words than these. */
    private static final int FEW_WORDS = 6;

    private static final Set<String> OF_ADVICE =
            Set.of("you", "u", "your", "advice", "advise", "reason", "reasoning", "explain", "based", "source", "rule");

    private final Replier replier;
    private final List<String> why;
    private final Message message;
    private final Turn turn;

    Commands(Replier replier, List<String> why, Message message, Turn turn) {
        this.replier = replier;
        this.why = why;
        this.message = message;
        this.turn = turn;
    }

    static boolean isCommand(String text) {
        return text.strip().matches("/[A-Za-z_]{1,32}(@\\w+)?(\\s.*)?");
    }

    private static String command(String text) {
        return text.strip().split("[\\s@]", 2)[0].toLowerCase(Locale.ROOT);
    }

    /** "/week cucumbers": the same said in a sentence; empty for a command by itself. */
    static Optional<String> sentence(String text) {
        String[] words = text.strip().split("\\s+", 2);
        return isCommand(text) && command(text).equals("/week") && words.length > 1
                ? Optional.of("what needs doing this week for the " + words[1])
                : Optional.empty();
    }

    /** What a command says, as far as it says the same as a sentence would. */
    static Heard heard(String text, List<Logged> last) {
        return switch (command(text)) {
            case "/week" -> asking(Question.TO_DO);
            case "/plot" -> asking(Question.STATUS);
            case "/why" -> asking(Question.WHY);
            case "/undo" -> Heard.takingBack(last);
            case "/mydata" -> OwnData.handOut();
            case "/delete" -> OwnData.remove();
            default -> Heard.nothing(Kind.CHAT);
        };
    }

    private static Heard asking(Question question) {
        return new Heard(
                List.of(),
                List.of(Inquiry.of(question, null, List.of())),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                null,
                List.of(),
                Kind.QUESTION,
                false);
    }

    Optional<Answer> answer() {
        if (isCommand(message.text())) {
            Optional<Answer> known =
                    switch (command(message.text())) {
                        case "/start" -> said(replier.talk("start"));
                        case "/help" -> said(replier.talk("help"));
                        case "/settings" -> said(settings());
                        case "/week", "/plot", "/why", "/undo", "/mydata", "/delete" -> Optional.empty();
                        default -> said(replier.talk("unknown-command"));
                    };
            if (known.isPresent()) {
                return known;
            }
        }
        // "Nothing up, what is wrong?" asks about the sign, not about the last advice.
        if (turn.heard().signs().isEmpty() && asksWhy(null) && !tellsOfATrouble()) {
            return ofTheAdvice()
                    ? said(why.isEmpty() ? replier.talk("why-nothing") : String.join("\n\n", why))
                    : turn.written().isEmpty() ? said(replier.talk("why-not-written")) : Optional.empty();
        }
        boolean sign = turn.written().stream().anyMatch(line -> line.entry() instanceof SignSeen);
        if (turn.heard().signs().isEmpty() && !sign && asksWhy(Inquiry.UNWRITTEN)) {
            return said(replier.talk("why-not-written"));
        }
        if (message.photo() && message.text().isBlank()) {
            return said(replier.talk("photo"));
        }
        return Optional.empty();
    }

    private boolean tellsOfATrouble() {
        return turn.written().stream()
                .map(Logged::entry)
                .anyMatch(entry -> entry instanceof SignSeen || entry instanceof Finding);
    }

    /** "Why?", "why do you say that": asked of what was advised, not of something told in the same breath. */
    private boolean ofTheAdvice() {
        List<String> words = List.of(message.text().toLowerCase(Locale.ROOT).split("[^\\p{L}]+"));
        return isCommand(message.text())
                || message.pressed() != null
                || words.size() <= FEW_WORDS
                || words.stream().anyMatch(OF_ADVICE::contains);
    }

    private boolean asksWhy(String topic) {
        return turn.heard().inquiries().stream()
                .anyMatch(inquiry -> inquiry.question() == Question.WHY && Objects.equals(inquiry.topic(), topic));
    }

    private static Optional<Answer> said(String text) {
        return Optional.of(new Answer(new Reply(text, List.of()), List.<Given>of(), null, null));
    }

    private String settings() {
        var grower = turn.garden().grower();
        Wishes wishes = Wishes.of(turn.garden());
        Map<String, String> words = new HashMap<>();
        words.put("zone", grower.zone().getId());
        words.put(
                "units",
                grower.units() == bothy.garden.Units.US ? "°F, inches and pounds" : "°C, centimetres and kilograms");
        String noDate = grower.frostFree() ? "none, frost hardly ever comes" : "not told";
        words.put("spring", grower.lastSpringFrost() == null ? noDate : frost(grower.lastSpringFrost()));
        words.put("autumn", grower.firstAutumnFrost() == null ? noDate : frost(grower.firstAutumnFrost()));
        words.put("place", place(grower.latitude(), grower.longitude()));
        words.put("soil", grower.soil() == null ? "not told" : grower.soil());
        words.put("list", wishes.listDay().getDisplayName(TextStyle.FULL, Locale.UK) + ", " + wishes.listTime());
        words.put("quiet", wishes.quietFrom() + "–" + wishes.quietTo());
        words.put(
                "reminders",
                switch (wishes.mode()) {
                    case ALL -> "what is due";
                    case WEEKLY -> "only the weekly list";
                    case NONE -> "none";
                });
        if (wishes.awayOn(turn.today())) {
            words.put("away", replier.day(wishes.awayUntil(), turn));
        }
        LocalDateTime now = message.at().atZone(grower.zone()).toLocalDateTime();
        String asked = wishes.reminders().stream()
                .filter(one -> one.nextDue(now, wishes.quietTo()).isPresent())
                .map(one -> asked(one, one.nextDue(now, wishes.quietTo()).get().toLocalDate()))
                .collect(Collectors.joining("; "));
        if (!asked.isEmpty()) {
            words.put("asked", asked);
        }
        return replier.talk("settings", words);
    }

    private String asked(Reminder one, LocalDate next) {
        return replier.day(next, turn) + (one.of() == null ? "" : " “" + one.of() + "”");
    }

    private static String place(Double latitude, Double longitude) {
        if (latitude == null) {
            return "not told";
        }
        return longitude == null ? "latitude " + latitude : latitude + ", " + longitude;
    }

    private static String frost(java.time.MonthDay day) {
        return day.getDayOfMonth() + " " + day.getMonth().getDisplayName(TextStyle.FULL, Locale.UK);
    }
}
