package caryatid.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.stand.WarmUp;
import caryatid.web.page.Reply;
import caryatid.web.page.Request;
import caryatid.web.safe.Guard;
import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Semaphore;

/** Lets requests in, one by one, and sends what they are answered with; never a stack. */
final class RequestHandler implements HttpHandler {
  /** Files that are taken at once, as they stream to the disk. */
  private static final int MOST_FILES = 8;

  /** Pages that are made at once; more would only slow each other down. */
  private static final int MOST_PAGES = 4;

  /** A file is sent in parts of this size, bytes. */
  private static final int CHUNK = 8192;

  private final Guard guard;
  private final Pages pages;
  private final Window.Setting setting;
  private final DonePages done = new DonePages();
  private final Semaphore files = new Semaphore(MOST_FILES);
  private final Semaphore work = new Semaphore(MOST_PAGES);

  RequestHandler(Guard guard, Pages pages, Window.Setting setting) {
    this.guard = guard;
    this.pages = pages;
    this.setting = setting;
  }

  @Override
  public void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      Reply reply = answer(exchange);
      send(exchange, reply);
      if (reply.type().startsWith("text/html")) {
        // Behind the first page, never before it.
        WarmUp.begin();
      }
    } catch (IOException | RuntimeException e) {
      // Whoever asked is gone, or sent too slowly.
      exchange.close();
    }
  }

  private Reply answer(HttpExchange exchange) {
    try {
      Optional<Integer> refusal = guard.refusal(exchange);
      if (refusal.isPresent()) {
        return Plain.refused(refusal.get());
      }
      if (exchange.getRequestURI().getRawPath().equals("/open")) {
        return letIn(exchange);
      }
      return guard.isOwner(exchange) ? owners(exchange) : Plain.refused(403);
    } catch (RuntimeException | Error e) {
      return Plain.failed(setting.unforeseen().apply(e));
    }
  }

  /** With the key of the start file; the address that shows it is left at once. */
  private Reply letIn(HttpExchange exchange) {
    Map<String, List<String>> query =
        FormFields.read(Optional.ofNullable(exchange.getRequestURI().getRawQuery()).orElse(""));
    boolean shown = guard.isKey(query.getOrDefault("key", List.of()).stream().findFirst());
    return shown ? Reply.seeOther("/").with("Set-Cookie", guard.cookie()) : Plain.refused(403);
  }

  private Reply owners(HttpExchange exchange) {
    try {
      RequestBody body = RequestBody.of(exchange);
      if (body.isTooLarge()) {
        return Plain.refused(413);
      }
      return body.isFile() ? file(exchange, body) : page(body.fields(exchange));
    } catch (RequestBody.Refused e) {
      return Plain.refused(e.status());
    } catch (IOException e) {
      return Plain.refused(408);
    }
  }

  private Reply file(HttpExchange exchange, RequestBody body) throws IOException {
    if (!files.tryAcquire()) {
      return Plain.refused(503);
    }
    try {
      return now(body.file(exchange));
    } finally {
      files.release();
    }
  }

  /** The request is read before a page may be made, so that who sends slowly blocks none. */
  private Reply page(Request request) throws IOException {
    work.acquireUninterruptibly();
    try {
      return made(request);
    } finally {
      work.release();
    }
  }

  /** A file is sent by the script, which reads the answer itself; a form by the browser. */
  private Reply made(Request request) throws IOException {
    Optional<Reply> before = done.of(request);
    return before.isPresent() ? before.get() : done.after(request, now(request));
  }

  private Reply now(Request request) throws IOException {
    try {
      Reply reply = pages.answer(request);
      if (request.changes() && request.part(2).equals("erase")) {
        done.forget();
      }
      return reply;
    } catch (BadInput e) {
      return pages.refused(request, e.problems());
    } catch (StoreFailure e) {
      return pages.refused(request, e.problems());
    }
  }

  private static void send(HttpExchange exchange, Reply reply) throws IOException {
    Headers headers = exchange.getResponseHeaders();
    Guard.protect(headers);
    headers.set("Content-Type", reply.type());
    reply.headers().forEach(headers::set);
    if (reply.status() >= 400) {
      headers.set("Connection", "close");
    }
    boolean head = exchange.getRequestMethod().equals("HEAD");
    if (reply.file().isPresent()) {
      sendFile(exchange, reply, head);
      return;
    }
    boolean bare = head || reply.bytes().length == 0;
    exchange.sendResponseHeaders(reply.status(), bare ? -1 : reply.bytes().length);
    if (!bare) {
      exchange.getResponseBody().write(reply.bytes());
    }
  }

  /**
   * A file goes away once it was sent or whoever asked is gone, and before its last bytes are sent:
   * who has all of it finds nothing of it left here.
   */
  private static void sendFile(HttpExchange exchange, Reply reply, boolean head)
      throws IOException {
    Path made = reply.file().orElseThrow();
    byte[] last = new byte[0];
    try {
      exchange.sendResponseHeaders(reply.status(), head ? -1 : Files.size(made));
      if (!head) {
        last = sendAllButLast(made, exchange.getResponseBody());
      }
    } finally {
      Files.deleteIfExists(made);
    }
    if (!head) {
      exchange.getResponseBody().write(last);
    }
  }

  private static byte[] sendAllButLast(Path made, OutputStream body) throws IOException {
    try (InputStream file = Files.newInputStream(made)) {
      byte[] last = file.readNBytes(CHUNK);
      for (byte[] next = file.readNBytes(CHUNK); next.length > 0; next = file.readNBytes(CHUNK)) {
        body.write(last);
        last = next;
      }
      return last;
    }
  }

  /** Pages for whoever has not shown that the window is theirs: they tell nothing. */
  private static final class Plain {
    private Plain() {}

    static Reply refused(int status) {
      return text(status, "Refused (" + status + ").\n");
    }

    static Reply failed(String sentence) {
      return text(500, sentence + "\n");
    }

    private static Reply text(int status, String words) {
      return new Reply(status, "text/plain; charset=utf-8", words.getBytes(UTF_8), Map.of());
    }
  }
}
