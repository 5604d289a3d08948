package caryatid.web;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * The threads that answer. The server reads a request on the thread that answers it, so whoever
 * sends slowly has a thread until the server's time for a request is over: there are more of them
 * than connections that are let in, and those that are not used end. What may do much at once is
 * limited in {@link RequestHandler}.
 */
final class RequestThreads {
  private static final int KEPT = 4;
  private static final int MOST = 450;
  private static final int IDLE_S = 15;
  private static final int LAST_S = 1;
  private static final long STACK_BYTES = 1 << 20;

  private final ThreadPoolExecutor pool;

  RequestThreads() {
    AtomicInteger number = new AtomicInteger();
    pool =
        new ThreadPoolExecutor(
            KEPT,
            MOST,
            IDLE_S,
            TimeUnit.SECONDS,
            new SynchronousQueue<>(),
            task -> {
              Thread thread =
                  new Thread(null, task, "window-" + number.incrementAndGet(), STACK_BYTES);
              thread.setDaemon(true);
              return thread;
            },
            // The server closes what nobody answers once its time is over.
            new ThreadPoolExecutor.DiscardPolicy());
  }

  ExecutorService executor() {
    return pool;
  }

  /** Begins nothing more, and ends at the latest in a second what was begun. */
  void close() {
    pool.shutdown();
    try {
      pool.awaitTermination(LAST_S, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    pool.shutdownNow();
  }
}
