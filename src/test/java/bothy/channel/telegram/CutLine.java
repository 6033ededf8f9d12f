package bothy.channel.telegram;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

/** A line to a server on loopback that is reset now and then, in the middle of what goes over it, in either direction. */
final class CutLine implements AutoCloseable {
    private final ServerSocket entrance;
    private final URI server;
    private final Random random;
    private final double chance;
    private final ExecutorService threads = Executors.newCachedThreadPool();
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();
    private final AtomicInteger cuts = new AtomicInteger();

    /** @param chance that a piece of up to 4 kB is cut off */
    CutLine(URI server, Random random, double chance) {
        this.server = server;
        this.random = random;
        this.chance = chance;
        try {
            entrance = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        threads.execute(this::accept);
    }

    URI address() {
        return URI.create("http://localhost:" + entrance.getLocalPort());
    }

    int cuts() {
        return cuts.get();
    }

    private void accept() {
        while (!entrance.isClosed()) {
            try {
                Socket caller = entrance.accept();
                Socket called = new Socket("localhost", server.getPort());
                called.setTcpNoDelay(true);
                caller.setTcpNoDelay(true);
                open.add(caller);
                open.add(called);
                threads.execute(() -> pass(caller, called));
                threads.execute(() -> pass(called, caller));
            } catch (IOException e) {
                // the end
            }
        }
    }

    private void pass(Socket from, Socket to) {
        byte[] piece = new byte[4096];
        try (from;
                to) {
            InputStream in = from.getInputStream();
            OutputStream out = to.getOutputStream();
            for (int length = in.read(piece); length >= 0; length = in.read(piece)) {
                if (cut()) {
                    out.write(piece, 0, length / 2);
                    out.flush();
                    from.setSoLinger(true, 0);
                    to.setSoLinger(true, 0);
                    return;
                }
                out.write(piece, 0, length);
                out.flush();
            }
        } catch (IOException e) {
            // cut from the other side
        } finally {
            open.remove(from);
            open.remove(to);
        }
    }

    private synchronized boolean cut() {
        boolean now = random.nextDouble() < chance;
        if (now) {
            cuts.incrementAndGet();
        }
        return now;
    }

    @Override
    public void close() throws IOException {
        entrance.close();
        for (Socket socket : open) {
            socket.close();
        }
        threads.shutdownNow();
    }
}
