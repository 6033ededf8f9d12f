package bothy.channel.telegram;

import java.util.List;
import java.util.concurrent.AbstractExecutorService;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;

/**
 * Does each piece of work in the thread that brings it. Who asks the service for something waits for the answer anyway; handing the request
 * to another thread and the answer back would wake up two.
 */
final class OnTheSpot extends AbstractExecutorService {
    private volatile boolean over;

    @Override
    public void execute(Runnable work) {
        if (over) {
            throw new RejectedExecutionException("There are no more requests.");
        }
        work.run();
    }

    @Override
    public void shutdown() {
        over = true;
    }

    @Override
    public List<Runnable> shutdownNow() {
        over = true;
        return List.of();
    }

    @Override
    public boolean isShutdown() {
        return over;
    }

    @Override
    public boolean isTerminated() {
        return over;
    }

    @Override
    public boolean awaitTermination(long timeout, TimeUnit unit) {
        return over;
    }
}
