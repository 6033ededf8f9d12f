/** The chat in a terminal: a line editor for a person, plain lines for a pipe. */
package bothy.channel.terminal;
