package bothy.replying;

import bothy.garden.Doubt;
import bothy.garden.Given;
import bothy.garden.Reply;
import java.util.List;

/**
 * A reply with what it is made of.
 *
 * @param reply what goes out
 * @param spoken the advice that it gives, in order
 * @param asked the question with which it ends, {@code null} for none
 */
public record Answer(Reply reply, List<Given> spoken, Doubt asked) {}
