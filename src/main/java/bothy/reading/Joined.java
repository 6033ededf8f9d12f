package bothy.reading;

import bothy.garden.Heard;
import java.util.ArrayList;
import java.util.List;

/** Two things heard in one message: "yes, and I fed them too". */
final class Joined {
    private Joined() {}

    static Heard of(Heard one, Heard other) {
        return new Heard(
                both(one.statements(), other.statements()),
                both(one.inquiries(), other.inquiries()),
                both(one.signs(), other.signs()),
                both(one.settings(), other.settings()),
                both(one.amendments(), other.amendments()),
                both(one.plans(), other.plans()),
                one.doubt() != null ? one.doubt() : other.doubt(),
                both(one.strange(), other.strange()),
                other.statements().isEmpty() ? one.kind() : other.kind(),
                one.corrects() || other.corrects());
    }

    private static <T> List<T> both(List<T> one, List<T> other) {
        List<T> both = new ArrayList<>(one);
        both.addAll(other);
        return both.stream().distinct().toList();
    }
}
