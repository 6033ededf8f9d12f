package bothy;

import bothy.channel.telegram.Handler;
import bothy.diary.Store;
import bothy.garden.Message;
import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.Timer;
import io.micrometer.core.instrument.binder.jvm.JvmGcMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.system.ProcessorMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.function.ToLongFunction;

/** Counts and times what the service does, for whoever runs it. No message text and no grower's name goes in. */
final class Watch {
    /** The store is not asked for its queues more often than this. */
    private static final Duration FRESH = Duration.ofSeconds(5);

    private final PrometheusMeterRegistry registry = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    private final Store store;
    private final InstantSource clock;
    private final Timer handled;
    private final Counter failed;
    private final Counter givenUp;
    private final Counter spoken;
    private Store.Waiting waiting;
    private Instant asked = Instant.MIN;

    Watch(Store store, InstantSource clock) {
        this.store = store;
        this.clock = clock;
        handled = Timer.builder("bothy.message")
                .description("Time to take in a message and write its reply, durable")
                .publishPercentileHistogram()
                .minimumExpectedValue(Duration.ofMillis(1))
                .maximumExpectedValue(Duration.ofSeconds(10))
                .register(registry);
        failed = counter("bothy.message.failures", "Messages whose handling failed and is tried again");
        givenUp = counter("bothy.message.given.up", "Messages that could not be taken in");
        spoken = counter("bothy.unasked", "Messages written unasked");
        queue("bothy.inbox.waiting", "Messages received and not handled", Store.Waiting::letters);
        queue("bothy.outbox.waiting", "Replies not sent yet", Store.Waiting::replies);
        queue("bothy.looks.due", "Gardens whose look is due", Store.Waiting::looks);
        queue("bothy.growers", "Growers with a diary", Store.Waiting::growers);
        new JvmMemoryMetrics().bindTo(registry);
        new ProcessorMetrics().bindTo(registry);
        JvmGcMetrics collections = new JvmGcMetrics();
        collections.bindTo(registry);
    }

    private Counter counter(String name, String what) {
        return Counter.builder(name).description(what).register(registry);
    }

    private void queue(String name, String what, ToLongFunction<Store.Waiting> size) {
        Gauge.builder(name, () -> size(size)).description(what).register(registry);
    }

    private double size(ToLongFunction<Store.Waiting> size) {
        try {
            return size.applyAsLong(waiting());
        } catch (RuntimeException unreachable) {
            return Double.NaN;
        }
    }

    /** How much waits; a few seconds old at most. Throws when the store cannot be asked. */
    synchronized Store.Waiting waiting() {
        Instant now = clock.instant();
        if (waiting == null || Duration.between(asked, now).abs().compareTo(FRESH) > 0) {
            waiting = store.waiting(now);
            asked = now;
        }
        return waiting;
    }

    void spokenUnasked() {
        spoken.increment();
    }

    String metrics() {
        return registry.scrape();
    }

    /** The same handler, counted and timed. */
    Handler watched(Handler handler) {
        return new Handler() {
            @Override
            public void handle(Message message, String channel, String chat) {
                Timer.Sample begun = Timer.start(registry);
                try {
                    handler.handle(message, channel, chat);
                    begun.stop(handled);
                } catch (RuntimeException failure) {
                    failed.increment();
                    throw failure;
                }
            }

            @Override
            public void apologise(Message message, String channel, String chat, RuntimeException why) {
                handler.apologise(message, channel, chat, why);
                givenUp.increment();
            }
        };
    }
}
