package bothy;

import bothy.almanac.RulesBroken;
import bothy.diary.StoreFailure;
import org.slf4j.LoggerFactory;

/** Says in a sentence what went wrong; the details go to the log. */
final class Complaints {
    private Complaints() {}

    static String sentence(Throwable thrown) {
        if (thrown instanceof StoreFailure || thrown instanceof MisUse) {
            return thrown.getMessage();
        }
        if (thrown instanceof RulesBroken broken) {
            return "The rules folder cannot be used:\n" + broken.getMessage()
                    + "\nMend these lines, or leave --rules out to use the rules that come with the program.";
        }
        LoggerFactory.getLogger(Complaints.class).error("Unexpected failure", thrown);
        return "Something went wrong that should not have: " + thrown
                + ". Nothing told before is lost. The details stand above.";
    }

    /** The program was called with something that cannot be. */
    static final class MisUse extends RuntimeException {
        private static final long serialVersionUID = 1;

        MisUse(String message) {
            super(message);
        }
    }
}
