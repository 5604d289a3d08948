package caryatid.exchange;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse.BodySubscriber;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.Flow;

/** The body of an answer, up to so many bytes: a system that never ends is let go. */
final class LimitedBody implements BodySubscriber<byte[]> {
  private final int most;
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final CompletableFuture<byte[]> whole = new CompletableFuture<>();
  private Flow.Subscription subscription;

  LimitedBody(int most) {
    this.most = most;
  }

  @Override
  public CompletionStage<byte[]> getBody() {
    return whole;
  }

  @Override
  public void onSubscribe(Flow.Subscription opened) {
    subscription = opened;
    opened.request(Long.MAX_VALUE);
  }

  @Override
  public void onNext(List<ByteBuffer> parts) {
    for (ByteBuffer part : parts) {
      if (bytes.size() + (long) part.remaining() > most) {
        subscription.cancel();
        whole.completeExceptionally(new IOException("more than " + most + " bytes"));
        return;
      }
      byte[] copy = new byte[part.remaining()];
      part.get(copy);
      bytes.writeBytes(copy);
    }
  }

  @Override
  public void onError(Throwable failure) {
    whole.completeExceptionally(failure);
  }

  @Override
  public void onComplete() {
    whole.complete(bytes.toByteArray());
  }
}
