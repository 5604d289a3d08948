package caryatid.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.web.page.Reply;
import caryatid.web.page.Request;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The pages that answer a form, each at an address of its own: reloading one, or going back to it,
 * sends the form no second time. The last few are kept; an older address shows its page as it is
 * now.
 */
final class DonePages {
  private static final String DONE = "done";
  private static final int KEPT = 12;
  private static final byte[] PAGE = "<!DOCTYPE".getBytes(UTF_8);

  private static final int TOKEN_BYTES = 8;

  private final Map<String, Reply> kept = new LinkedHashMap<>();
  private final SecureRandom random = new SecureRandom();

  /** The page that is asked for by such an address; empty if it is another one, or too old. */
  synchronized Optional<Reply> of(Request request) {
    return request.changes()
        ? Optional.empty()
        : request.field(DONE).flatMap(token -> Optional.ofNullable(kept.get(token)));
  }

  /** Sends who has sent a form to the page that answers it. */
  Reply after(Request request, Reply reply) {
    if (!request.changes() || !isPage(reply) || request.part(0).equals("end")) {
      return reply;
    }
    byte[] bytes = new byte[TOKEN_BYTES];
    random.nextBytes(bytes);
    String token = HexFormat.of().formatHex(bytes);
    keep(token, reply);
    return Reply.seeOther("/" + String.join("/", request.path()) + "?" + DONE + "=" + token);
  }

  private synchronized void keep(String token, Reply reply) {
    kept.put(token, reply);
    Iterator<String> oldest = kept.keySet().iterator();
    while (kept.size() > KEPT) {
      oldest.next();
      oldest.remove();
    }
  }

  /** A record was erased: nothing of it stays. */
  synchronized void forget() {
    kept.clear();
  }

  private static boolean isPage(Reply reply) {
    byte[] bytes = reply.bytes();
    return bytes.length >= PAGE.length
        && Arrays.equals(bytes, 0, PAGE.length, PAGE, 0, PAGE.length);
  }
}
