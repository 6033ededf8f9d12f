package bothy.garden;

/**
 * A file that goes along with a reply.
 *
 * @param name its name, with an ending ("diary.csv")
 * @param mediaType its media type ("text/csv")
 * @param content its text
 */
public record Document(String name, String mediaType, String content) {}
