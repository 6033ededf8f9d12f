package bothy.channel.telegram;

/**
 * Who the bot is.
 *
 * @param id the service's number of it
 * @param name its user name without the @
 */
record Me(long id, String name) {}
