package caryatid.web;

import caryatid.usecase.Records;
import caryatid.web.safe.Guard;
import caryatid.web.safe.WindowLock;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;

/** A window that is open: it answers until it is closed, from its page or by its program's end. */
public final class Window implements AutoCloseable {
  /** Connections that wait to be taken. */
  private static final int BACKLOG = 200;

  static {
    // Read once, when the server's classes load. Without the first, each answer waits 40 ms.
    System.setProperty("sun.net.httpserver.nodelay", "true");
    System.setProperty("sun.net.httpserver.maxReqTime", "20");
    System.setProperty("sun.net.httpserver.maxRspTime", "60");
    System.setProperty("sun.net.httpserver.maxIdleConnections", "50");
    System.setProperty("sun.net.httpserver.maxReqHeaders", "60");
    System.setProperty("jdk.httpserver.maxConnections", "400");
  }

  private final HttpServer server;
  private final RequestThreads threads;
  private final WindowLock lock;
  private final Uploads uploads;
  private final Guard guard;
  private final Path startFile;
  private final CountDownLatch end = new CountDownLatch(1);

  /**
   * What a window is opened with.
   *
   * @param records the records
   * @param port 0 for any that is free
   * @param home where the start file lies
   * @param clock what time it is
   * @param unforeseen keeps a failure that nobody foresaw, and gives the sentence to be shown
   */
  public record Setting(
      Records records, int port, Path home, Clock clock, Function<Throwable, String> unforeseen) {}

  private Window(Setting setting, HttpServer server, WindowLock lock) throws IOException {
    this.server = server;
    this.lock = lock;
    this.guard = new Guard(server.getAddress().getPort());
    this.threads = new RequestThreads();
    server.setExecutor(threads.executor());
    this.uploads = new Uploads(setting.home());
    Pages pages = new Pages(setting.records(), uploads, this::end);
    server.createContext("/", new RequestHandler(guard, pages, setting));
    server.start();
    this.startFile = lock.writeStartFile(guard);
  }

  /**
   * Opens a window on this computer's own address.
   *
   * @return empty where another program has a window on these records; its start file lies where
   *     {@link WindowLock#startFile} says
   * @throws IOException if the port is taken, or the start file cannot be written
   */
  public static Optional<Window> open(Setting setting) throws IOException {
    Optional<WindowLock> lock = WindowLock.of(setting.home(), setting.records().folder());
    if (lock.isEmpty()) {
      return Optional.empty();
    }
    try {
      removeLeft(setting.home());
      InetSocketAddress address =
          new InetSocketAddress(
              InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), setting.port());
      return Optional.of(new Window(setting, HttpServer.create(address, BACKLOG), lock.get()));
    } catch (IOException e) {
      lock.get().close();
      throw e;
    }
  }

  /** The start file of whoever has the window on these records. */
  public static Path startFile(Path home, Path records) {
    return WindowLock.startFile(home, records);
  }

  /**
   * Removes the files that killed windows left behind.
   *
   * @throws IOException if one cannot be removed
   */
  public static void removeLeft(Path home) throws IOException {
    Uploads.removeLeft(home);
  }

  /** Its address; without the start file nobody is let in there. */
  public String address() {
    return guard.origin() + "/";
  }

  /** The file that lets its owner in. */
  public Path startFile() {
    return startFile;
  }

  private void end() {
    end.countDown();
  }

  /** Waits until the window is ended from its page. */
  public void awaitEnd() throws InterruptedException {
    end.await();
  }

  @Override
  public void close() throws IOException {
    boolean fromItsPage = end.getCount() == 0;
    end();
    lock.close();
    if (fromItsPage) {
      // A second, for what the page that says so still asks for. The server waits for all of it.
      server.stop(1);
    }
    threads.close();
    server.stop(0);
    uploads.close();
  }
}
