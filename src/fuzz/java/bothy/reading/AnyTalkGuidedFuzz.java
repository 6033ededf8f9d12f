package bothy.reading;

import com.code_intelligence.jazzer.junit.FuzzTest;
import com.code_intelligence.jazzer.mutation.annotation.NotNull;
import com.code_intelligence.jazzer.mutation.annotation.WithUtf8Length;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever a grower of a few plantings says, line by line, is read without a failure. The fuzzer looks at what the reading runs through and
 * goes on from the texts that led it somewhere new. Run by {@code mvn verify -Pfuzz-guided}.
 */
class AnyTalkGuidedFuzz {
    private static final int MOST_LINES = 4;
    /** Of so many messages one is enough to begin with. */
    private static final int EACH = 10;

    static Stream<Arguments> toldBefore() {
        var told = new Corpus("tuned.yaml", Grown.READING).messages();
        return IntStream.range(0, told.size())
                .filter(number -> number % EACH == 0)
                .mapToObj(number -> Arguments.of(told.get(number).say()));
    }

    @MethodSource("toldBefore")
    @FuzzTest(maxDuration = "20m")
    void whatever_is_told_is_read(@NotNull @WithUtf8Length(max = 400) String told) {
        Grown grower = Grown.usual();
        told.lines().limit(MOST_LINES).forEach(grower::says);
    }
}
