package bothy.channel.telegram;

import bothy.garden.Message;

/** Who answers the messages. Called by several threads, for one chat by one at a time and in the order of the messages. */
public interface Handler {

    /**
     * Handles a message in one transaction: its diary lines, the mark that it was handled, and the reply put into the outbox for this
     * channel and chat. A message that was handled before is let pass; it is set aside when it is seen again.
     *
     * @param channel {@link TelegramChannel#NAME}
     * @param chat the address for the reply
     * @throws RuntimeException when it could not be handled; then it is handed over again after a while
     */
    void handle(Message message, String channel, String chat);

    /**
     * Gives up on a message that {@link #handle} failed on several times: marks it as handled and tells the grower that it could not be
     * taken in.
     *
     * @param why what the last try failed on
     * @throws RuntimeException when the message is not to be given up yet; then it is handed to {@link #handle} again after a while
     */
    void apologise(Message message, String channel, String chat, RuntimeException why);
}
