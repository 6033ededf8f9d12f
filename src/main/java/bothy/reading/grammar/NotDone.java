package bothy.reading.grammar;

import bothy.reading.text.Conjugation.Form;
import bothy.reading.text.Phrase;
import bothy.reading.text.Token;
import java.util.List;
import java.util.Set;

/** Words of a doing that name a thing: "the harvest", "under netting", "hardening off schedule". */
final class NotDone {
    /** So many words lie between a doing and the other one that it is set against. */
    private static final int CHOICE_REACH = 5;

    /** "Hardening off schedule", "sowing dates": what is wanted, not done. */
    private static final Set<String> PLANS =
            Set.of("schedule", "timetable", "dates", "calendar", "guide", "instructions", "advice", "tips", "chart");

    private static final Set<String> GIVERS = Set.of(
            "lad",
            "mate",
            "friend",
            "neighbour",
            "neighbor",
            "man",
            "bloke",
            "guy",
            "fella",
            "fellow",
            "woman",
            "lady",
            "old",
            "market",
            "stall",
            "shop",
            "mother",
            "mum",
            "mom",
            "dad",
            "sister",
            "brother",
            "cousin",
            "colleague");

    private static final Set<String> ODDS =
            Set.of("chance", "risk", "threat", "danger", "fear", "talk", "warning", "hint");
    /** What tells of a frost that it is still to come, or only asked of. */
    private static final Set<String> TO_COME = Set.of(
            "tonight",
            "tonite",
            "tomorrow",
            "forecast",
            "due",
            "coming",
            "expected",
            "say",
            "says",
            "saying",
            "app",
            "predicted",
            "warning",
            "?");

    private static final int WORDS_OUT = 7;

    private NotDone() {}

    /** Whether words in the form of a verb name only a thing. */
    static boolean only(List<Token> tokens, Phrase.Place found, Form form) {
        boolean plan = found.end() < tokens.size()
                && PLANS.contains(tokens.get(found.end()).word());
        return plan
                || form == null && climbs(tokens, found)
                || form == null && (had(tokens, found) || takenOut(tokens, found))
                || form == null && (bareIn(tokens, found) || where(tokens, found) || people(tokens, found))
                || form == null && (feared(tokens, found) || anotherTook(tokens, found))
                || form == Form.PLAIN && NamesOfThings.noun(tokens, found)
                || form == Form.ING && NamesOfThings.cover(tokens, found)
                || form == Form.PAST && (caught(tokens, found) || given(tokens, found))
                || chosen(tokens, found)
                || wentOut(tokens, found)
                || suffered(tokens, found)
                || ofOnions(tokens, found)
                || (form == Form.ING || form == null) && helps(tokens, found);
    }

    /** "10 runner beans up the wigwam": where they climb. */
    private static boolean climbs(List<Token> tokens, Phrase.Place found) {
        int last = found.words().length() - 1;
        return tokens.get(last).is("up")
                && Set.of("the", "a", "my", "our", "their", "against").contains(word(tokens, last + 1))
                && Set.of(
                                "wigwam", "wigwams", "fence", "canes", "cane", "poles", "pole", "trellis", "netting",
                                "string", "strings", "wall", "arch", "frame", "teepee", "tepee", "obelisk", "sticks")
                        .contains(word(tokens, last + 2));
    }

    /** "Is it safe from frost." tells of none; "White over. Frost!" does. */
    private static boolean feared(List<Token> tokens, Phrase.Place found) {
        int at = found.start();
        boolean heads = at == 0 || tokens.get(at - 1).endsSentence();
        boolean closes = at + 1 >= tokens.size()
                || tokens.get(at + 1).is("!")
                || tokens.get(at + 1).is(".");
        boolean toCome = tokens.stream().anyMatch(token -> TO_COME.contains(token.word()));
        boolean odds = found.words().stream()
                .filter(word -> tokens.get(word).is("frost"))
                .anyMatch(word -> word > 1
                        && tokens.get(word - 1).is("of")
                        && ODDS.contains(tokens.get(word - 2).word()));
        return odds || tokens.get(at).is("frost") && found.length() == 1 && (!(heads && closes) || toCome);
    }

    /** "Before the heat we got twelve tomatoes out": it was not the heat that got them. */
    private static boolean anotherTook(List<Token> tokens, Phrase.Place found) {
        return found.words().stream()
                .skip(1)
                .anyMatch(at -> Set.of("got", "had", "took", "killed", "finished", "ate", "eaten")
                                .contains(tokens.get(at).word())
                        && Set.of("i", "we").contains(tokens.get(at - 1).word())
                        && !found.words().get(at - 1));
    }

    /** "Leeks in!" tells that they are planted; "what a mess to get the leeks in" does not. */
    private static boolean bareIn(List<Token> tokens, Phrase.Place found) {
        boolean bare =
                found.length() == 1 && tokens.get(found.words().nextSetBit(0)).is("in");
        int before = found.start() - 1;
        before -= before >= 0
                        && Set.of("the", "my", "our")
                                .contains(tokens.get(before).word())
                ? 1
                : 0;
        before -= before >= 0 && tokens.get(before).is("all") ? 1 : 0;
        return bare
                && before >= 0
                && !tokens.get(before).endsSentence()
                && !Set.of(":", "so", "finally", "then")
                        .contains(tokens.get(before).word());
    }

    /** "Are getting chopped off at soil level": not by the grower. */
    private static boolean suffered(List<Token> tokens, Phrase.Place found) {
        String first = word(tokens, found.start());
        boolean passive = Set.of("getting", "gettin").contains(first)
                && word(tokens, found.start() + 1).matches("\\w+(ed|en|own)|cut|bit");
        return passive || Set.of("getting", "gettin", "being").contains(word(tokens, found.start() - 1));
    }

    /** "While we're in Spain": people are there. */
    private static boolean people(List<Token> tokens, Phrase.Place found) {
        String who = word(tokens, found.start() - 1);
        return Set.of("we", "i", "you", "he", "she").contains(who)
                && Set.of("are", "is", "am", "was", "were", "in").contains(word(tokens, found.start()))
                && word(tokens, found.words().length() - 1).equals("in");
    }

    /** "Along the netting yesterday": what stands there, not what was done. */
    private static boolean where(List<Token> tokens, Phrase.Place found) {
        return Set.of("the", "my", "our").contains(word(tokens, found.start()))
                && Set.of("along", "behind", "under", "beneath", "beside", "near", "against", "inside", "outside", "by")
                        .contains(word(tokens, found.start() - 1));
    }

    /** "Had 12 peppers in, now there are 9": what stood there before. */
    private static boolean had(List<Token> tokens, Phrase.Place found) {
        return found.start() > 0
                && tokens.get(found.start() - 1).is("had")
                && tokens.get(found.start()).sort() == Token.Sort.NUMBER
                && tokens.get(found.words().length() - 1).is("in");
    }

    /** "Ripped 8 tomato plants out": what stands before the number tells what was done. */
    private static boolean takenOut(List<Token> tokens, Phrase.Place found) {
        int at = found.start() - 1;
        while (Set.of("all", "my", "the", "our", "about", "of", "another").contains(word(tokens, at))) {
            at--;
        }
        return found.words().stream().anyMatch(out -> tokens.get(out).is("out"))
                && Set.of(
                                "ripped", "rip", "pulled", "pull", "took", "take", "dug", "dig", "yanked", "tore",
                                "had", "hoicked")
                        .contains(word(tokens, at));
    }

    /** "Got absolutely soaked cycling home" waters nothing. */
    private static boolean caught(List<Token> tokens, Phrase.Place found) {
        int at = found.start();
        int got = word(tokens, at - 1).endsWith("ly") ? at - 2 : at - 1;
        return Set.of("soaked", "drenched").contains(word(tokens, at))
                && Set.of("got", "get", "getting").contains(word(tokens, got))
                && Set.of("", "i", "we", "and", ",").contains(word(tokens, got - 1));
    }

    /** "Went out this morning and four lettuces were cut off": it was the grower who went. */
    private static boolean wentOut(List<Token> tokens, Phrase.Place found) {
        boolean went = word(tokens, found.start()).equals("went")
                && word(tokens, found.start() + 1).equals("out")
                && Set.of("", "i", "we", "just").contains(word(tokens, found.start() - 1));
        for (int at = found.start() + 2; went && at < Math.min(tokens.size(), found.start() + WORDS_OUT); at++) {
            if (Set.of("and", "to", "with", "but", "there", "found", "saw").contains(word(tokens, at))) {
                return true;
            }
        }
        return false;
    }

    /** "50 set of onion" bears no fruit. */
    private static boolean ofOnions(List<Token> tokens, Phrase.Place found) {
        return found.length() == 1
                && tokens.get(found.start()).is("set")
                && found.end() < tokens.size()
                && tokens.get(found.end()).is("of");
    }

    /** "Watering makes no difference" tells of no one day. */
    private static boolean helps(List<Token> tokens, Phrase.Place found) {
        return found.end() < tokens.size()
                && Set.of("makes", "make", "made", "works", "worked", "helps", "help", "helped", "seems", "does", "did")
                        .contains(tokens.get(found.end()).word());
    }

    static String word(List<Token> tokens, int at) {
        return at < 0 || at >= tokens.size() || tokens.get(at).endsSentence()
                ? ""
                : tokens.get(at).word();
    }

    /** "Got some comfrey off a lad at the allotments" picks nothing. */
    private static boolean given(List<Token> tokens, Phrase.Place found) {
        int last = found.words().length() - 1;
        return tokens.get(found.start()).is("got")
                && (tokens.get(last).is("off") || tokens.get(last).is("from"))
                && last + 2 < tokens.size()
                && Set.of("a", "my", "our", "some", "the", "an")
                        .contains(tokens.get(last + 1).word())
                && GIVERS.contains(tokens.get(last + 2).word());
    }

    /** "Limp and hanging, then they pick up": a verb does not reach over a comma for its little word, but over a list of crops. */
    static boolean acrossComma(List<Token> tokens, Phrase.Place found, Phrase.Slots slots) {
        boolean crop = false;
        boolean comma = false;
        for (int at = found.start(); at < found.end(); at++) {
            crop |= slots.end("crop", at) > 0;
            comma |= !found.words().get(at)
                    && tokens.get(at).mark()
                    && tokens.get(at).is(",");
        }
        return comma && !crop;
    }

    /** "Please note: 12 leeks transplanted" opens an entry, not a note. */
    static boolean asked(List<Token> tokens, int at) {
        boolean ofADiary =
                Set.of("make", "log", "jot", "write").contains(tokens.get(at).word())
                        || at + 1 < tokens.size()
                                && Set.of("down", "for", "that")
                                        .contains(tokens.get(at + 1).word());
        return at > 0
                && !ofADiary // "Please make a note that", "please note for next year that".
                && Set.of("please", "kindly", "pls").contains(tokens.get(at - 1).word());
    }

    /** "How do I pick them? Cut it or just twist it off": the one or the other, with a verb that has one form for both. */
    private static boolean chosen(List<Token> tokens, Phrase.Place found) {
        int at = found.start();
        boolean bare = at > 0
                && tokens.get(at - 1).mark()
                && Set.of("cut", "put", "set").contains(tokens.get(at).word());
        int before = at > 0 && tokens.get(at - 1).is("just") ? at - 2 : at - 1;
        boolean other = before > 0
                && tokens.get(before).is("or")
                && List.of("twist", "pull", "snap", "cut", "pick")
                        .contains(tokens.get(at).word());
        return other
                || bare
                        && tokens.subList(at + 1, Math.min(tokens.size(), at + CHOICE_REACH)).stream()
                                .takeWhile(token -> !token.mark())
                                .anyMatch(token -> token.is("or"));
    }

    /** "Seed list for next year" notes nothing. */
    static boolean ofAList(List<Token> tokens, int at) {
        return at > 0
                && Set.of("list", "lists", "order", "orders", "seeds", "seed", "catalogue", "plan", "plans")
                        .contains(tokens.get(at - 1).word());
    }
}
