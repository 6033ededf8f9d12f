/**
 * The way of one message: reading, diary, advice, reply, all in one transaction of the store.
 */
package bothy.conversation;
