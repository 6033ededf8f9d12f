package bothy.almanac.troubles;

import bothy.almanac.RulesFolder;
import java.util.Set;
import java.util.function.Supplier;

/**
 * The tables of troubles and their words, read when the first trouble is told: most messages tell none, and a grower waits for the
 * start. Safe to share; each half is read once.
 */
public final class TroubleBook {
    private final Supplier<Troubles> tables;
    private final Supplier<TroubleWording> words;

    private TroubleBook(Supplier<Troubles> tables, Supplier<TroubleWording> words) {
        this.tables = new Once<>(tables);
        this.words = new Once<>(words);
    }

    /** The book of a folder, read at need; what cannot be used in it is told then. */
    public static TroubleBook at(RulesFolder folder) {
        return new TroubleBook(() -> Troubles.in(folder), () -> TroubleWording.in(folder));
    }

    /** A book of no troubles. */
    public static TroubleBook none() {
        return new TroubleBook(Troubles::none, TroubleWording::none);
    }

    /**
     * The same, read now, so that a slip in a folder that someone edits stops the start.
     *
     * @throws bothy.almanac.RulesBroken with file and line
     */
    public TroubleBook read() {
        tables();
        words();
        return this;
    }

    /** The tables. */
    public Troubles tables() {
        return tables.get();
    }

    /** The words. */
    public TroubleWording words() {
        return words.get();
    }

    /** Ids of the questions that have words to be asked with. */
    public Set<String> askable() {
        return words().askable();
    }

    /** Gets something once, when it is first wanted, for all threads. */
    private static final class Once<T> implements Supplier<T> {
        private final Supplier<T> source;
        private volatile T value;

        private Once(Supplier<T> source) {
            this.source = source;
        }

        @Override
        public T get() {
            T known = value;
            if (known == null) {
                synchronized (this) {
                    known = value;
                    if (known == null) {
                        known = source.get();
                        value = known;
                    }
                }
            }
            return known;
        }
    }
}
