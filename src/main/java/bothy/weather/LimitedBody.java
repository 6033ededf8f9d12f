package bothy.weather;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodySubscriber;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.Flow;
import java.util.zip.GZIPInputStream;

/** Takes in a body up to a size and gives up on a longer one, so that a broken server cannot fill the memory. */
final class LimitedBody implements BodySubscriber<byte[]> {
    static final int MOST_BYTES = 4 << 20;

    private final CompletableFuture<byte[]> whole = new CompletableFuture<>();
    private final ByteArrayOutputStream taken = new ByteArrayOutputStream();
    private Flow.Subscription subscription;

    @Override
    public CompletionStage<byte[]> getBody() {
        return whole;
    }

    @Override
    public void onSubscribe(Flow.Subscription subscription) {
        this.subscription = subscription;
        subscription.request(Long.MAX_VALUE);
    }

    @Override
    public void onNext(List<ByteBuffer> parts) {
        for (ByteBuffer part : parts) {
            byte[] bytes = new byte[part.remaining()];
            part.get(bytes);
            taken.writeBytes(bytes);
        }
        if (taken.size() > MOST_BYTES) {
            subscription.cancel();
            whole.completeExceptionally(tooLong());
        }
    }

    @Override
    public void onError(Throwable error) {
        whole.completeExceptionally(error);
    }

    @Override
    public void onComplete() {
        whole.complete(taken.toByteArray());
    }

    /** The body as sent, unpacked when the server says that it is packed. */
    static byte[] unpacked(HttpResponse<byte[]> response) throws IOException {
        boolean packed = response.headers()
                .firstValue("Content-Encoding")
                .filter("gzip"::equalsIgnoreCase)
                .isPresent();
        if (!packed) {
            return response.body();
        }
        try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(response.body()))) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw tooLong();
            }
            return bytes;
        }
    }

    private static IOException tooLong() {
        return new IOException("the answer is longer than " + MOST_BYTES + " bytes");
    }
}
