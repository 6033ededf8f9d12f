/**
 * Talks to growers over Telegram by long polling. Updates go into the store's inbox before the service is told that they arrived; a
 * desk hands them to the conversation, in order for each chat; a sender empties the outbox at the pace that the service allows. The
 * only room that sees Telegram types; begin with {@link bothy.channel.telegram.TelegramChannel}.
 */
package bothy.channel.telegram;
