package caryatid.web;

import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.usecase.Records;
import caryatid.web.page.CardMarkup;
import caryatid.web.page.Frame;
import caryatid.web.page.Markup;
import caryatid.web.page.Reply;
import caryatid.web.page.Request;
import caryatid.wording.Language;
import caryatid.wording.Wording;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Finds the page of an address. */
final class Pages {
  private final WindowState state;
  private final RecordsPage list;
  private final RecordPages records;
  private final PlatesPage plates;
  private final Runnable end;
  private final Map<Language, Wording> wordings = new EnumMap<>(Language.class);

  Pages(Records records, Uploads uploads, Runnable end) {
    this.state = new WindowState(records);
    this.list = new RecordsPage(state, uploads);
    this.records = new RecordPages(state, uploads);
    this.plates = new PlatesPage(state, uploads);
    this.end = end;
    for (Language language : Language.values()) {
      wordings.put(language, Wording.in(language.locale()));
    }
  }

  /**
   * Answers a request of the owner.
   *
   * @throws BadInput if what it is about is not there or cannot be read
   * @throws StoreFailure if the records cannot be read or written now
   * @throws IOException if a file that is sent does not arrive, or cannot be kept
   */
  Reply answer(Request request) throws BadInput, StoreFailure, IOException {
    Wording wording = wording(request);
    return switch (request.part(0)) {
      case "" -> list.list(wording);
      case "new" -> request.changes() ? list.start(request, wording) : list.form(wording);
      case "r" -> records.answer(request, wording);
      case "plates" -> plates.answer(request, wording);
      case "verify" -> list.verify(wording);
      case "card" -> card(wording);
      case "take-in" -> list.takeIn(request);
      case "window.css" -> resource("text/css; charset=utf-8", "window.css");
      case "window.js" -> resource("text/javascript; charset=utf-8", "window.js");
      case "language" -> language(request);
      case "end" -> end(request, wording);
      default -> missing(wording);
    };
  }

  private Wording wording(Request request) {
    return wordings.get(
        request.language().stream()
            .flatMap(tag -> Arrays.stream(Language.values()).filter(l -> l.tag().equals(tag)))
            .findFirst()
            .orElse(Language.EN));
  }

  private static Reply card(Wording wording) {
    return Reply.page(
        200, new Frame(wording).page(wording.word("Web.card"), CardMarkup.of(wording)));
  }

  /** A page that says why a request could not be answered. */
  Reply refused(Request request, List<Problem> problems) {
    Wording wording = wording(request);
    Markup said = new Markup().open("div", "class", "fault", "role", "alert");
    problems.forEach(problem -> said.element("p", wording.say(problem)));
    said.close("div");
    said.element("p", wording.word("Web.backInBrowser"));
    return Reply.page(422, new Frame(wording).page(wording.word("Web.notDone"), said));
  }

  static Reply missing(Wording wording) {
    Markup said = new Markup().element("p", wording.word("Web.missing"));
    return Reply.page(404, new Frame(wording).page(wording.word("Web.notDone"), said));
  }

  private static Reply language(Request request) {
    String tag = request.field("language").filter(t -> t.matches("[a-z]{2}")).orElse("en");
    return Reply.seeOther(request.from())
        .with("Set-Cookie", "language=" + tag + "; Path=/; HttpOnly; SameSite=Lax");
  }

  private Reply end(Request request, Wording wording) {
    Markup said = new Markup();
    if (request.changes()) {
      end.run();
      said.element("p", wording.word("Web.ended"));
      return Reply.page(200, new Frame(wording).page(wording.word("Web.endedTitle"), said));
    }
    said.element("p", wording.word("Web.endAsk"));
    said.open("form", "method", "post", "action", "/end")
        .element("button", wording.word("Web.end"), "class", "strong")
        .close("form");
    return Reply.page(200, new Frame(wording).page(wording.word("Web.end"), said));
  }

  private static Reply resource(String type, String name) {
    try (InputStream file = Pages.class.getResourceAsStream(name)) {
      return new Reply(200, type, file.readAllBytes(), Map.of());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
