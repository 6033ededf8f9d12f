package bothy.channel.telegram;

import bothy.garden.Incoming;
import bothy.garden.Outgoing;
import bothy.garden.Post;
import bothy.garden.Sent;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Hands everything through; a test overrides what is to fail. */
class Through implements Post {
    private final Post post;

    Through(Post post) {
        this.post = post;
    }

    @Override
    public int receive(List<Incoming> incoming) {
        return post.receive(incoming);
    }

    @Override
    public List<Incoming> unhandled(String channel, int atMost) {
        return post.unhandled(channel, atMost);
    }

    @Override
    public void setAside(String channel, String id, Instant at) {
        post.setAside(channel, id, at);
    }

    @Override
    public List<Outgoing> toSend(String channel, Instant now, int atMost) {
        return post.toSend(channel, now, atMost);
    }

    @Override
    public Optional<Outgoing> lastWithButtons(String channel, String chat) {
        return post.lastWithButtons(channel, chat);
    }

    @Override
    public void sent(List<Sent> replies) {
        post.sent(replies);
    }

    @Override
    public void putOff(long number, Instant now, Instant until, String why) {
        post.putOff(number, now, until, why);
    }

    @Override
    public void moved(String channel, String from, String to) {
        post.moved(channel, from, to);
    }

    @Override
    public void giveUp(long number, String why) {
        post.giveUp(number, why);
    }
}
