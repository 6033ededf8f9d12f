package bothy;

import bothy.almanac.Problem;
import bothy.almanac.RulesBroken;
import bothy.almanac.RulesFolder;
import bothy.conversation.Knowledge;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The knowledge made of a rules folder that may change while the service runs. A changed folder is checked and made ready in the
 * background; with a fault the last good set stays and whoever runs the service is told once. Exchanges under way end on the set that
 * they began with.
 */
final class LiveRules implements Supplier<Knowledge>, AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(LiveRules.class);
    private static final Duration LOOK = Duration.ofSeconds(5);
    /** No exchange takes as long; after it nobody uses a set that was replaced. */
    private static final Duration LET_GO = Duration.ofMinutes(5);

    private final Path folder;
    private final Function<RulesFolder, Knowledge> making;
    private final Consumer<String> telling;
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread background = new Thread(work, "rules");
        background.setDaemon(true);
        return background;
    });
    private volatile Knowledge knowledge;
    private String tried;
    private String seen;

    /**
     * @param knowledge made of the folder as it was found first
     * @param making makes the knowledge of a changed folder
     * @param telling tells whoever runs the service a sentence
     */
    LiveRules(Path folder, Knowledge knowledge, Function<RulesFolder, Knowledge> making, Consumer<String> telling) {
        this.folder = folder;
        this.knowledge = knowledge;
        this.making = making;
        this.telling = telling;
        this.tried = fingerprint();
        this.seen = tried;
    }

    @Override
    public Knowledge get() {
        return knowledge;
    }

    LiveRules start() {
        thread.scheduleWithFixedDelay(this::look, LOOK.toMillis(), LOOK.toMillis(), TimeUnit.MILLISECONDS);
        return this;
    }

    /** Takes up a change once it is the same at two looks, so that it is not read while it is being copied. */
    synchronized void look() {
        try {
            String now = fingerprint();
            boolean settled = now.equals(seen);
            seen = now;
            if (settled && !now.equals(tried)) {
                tried = now;
                takeUp();
            }
        } catch (RuntimeException | Error e) {
            LOG.error("The rules folder could not be looked at: {}", e.toString(), e);
        }
    }

    private String fingerprint() {
        try {
            return RulesFolder.at(folder).fingerprint();
        } catch (RulesBroken unreadable) {
            return String.valueOf(unreadable.getMessage());
        }
    }

    private void takeUp() {
        try {
            RulesFolder changed = RulesFolder.at(folder);
            List<Problem> problems = CheckVerb.problems(changed);
            if (!problems.isEmpty()) {
                throw new RulesBroken(problems);
            }
            replace(making.apply(changed));
            telling.accept("The rules in " + folder + " have changed and are used from now on.");
        } catch (RulesBroken broken) {
            telling.accept("The rules in " + folder
                    + " have changed and cannot be used; Bothy goes on with those of before:\n" + broken.getMessage());
        }
    }

    private void replace(Knowledge next) {
        Knowledge before = knowledge;
        knowledge = next;
        thread.schedule(() -> before.advisor().close(), LET_GO.toMillis(), TimeUnit.MILLISECONDS);
    }

    @Override
    public void close() {
        thread.shutdownNow();
    }
}
