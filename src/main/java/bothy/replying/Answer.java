package bothy.replying;

import bothy.garden.Doubt;
import bothy.garden.Given;
import bothy.garden.Reply;
import java.time.LocalDate;
import java.util.List;

/**
 * A reply with what it is made of.
 *
 * @param reply what goes out
 * @param spoken the advice that it gives, in order
 * @param asked the question with which it ends, {@code null} for none
 * @param nextLook when to look again, as the reply says it; {@code null} when it names no day
 */
public record Answer(Reply reply, List<Given> spoken, Doubt asked, LocalDate nextLook) {}
