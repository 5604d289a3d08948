package caryatid.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.clinic.KnownPlate;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.usecase.CheckProblem;
import caryatid.usecase.RememberedPlates;
import caryatid.usecase.inspect.PlateDraft;
import caryatid.usecase.inspect.PlateMeasures;
import caryatid.usecase.prove.MeasuredHands;
import caryatid.usecase.stand.TypedNumber;
import caryatid.web.page.Frame;
import caryatid.web.page.GuideMarkup;
import caryatid.web.page.JobStep;
import caryatid.web.page.Markup;
import caryatid.web.page.PlateMarkup;
import caryatid.web.page.Reply;
import caryatid.web.page.Request;
import caryatid.web.page.UploadMarkup;
import caryatid.wording.Wording;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/** What the clinic knows of its plates, and how it learns of another one from an export. */
final class PlatesPage {
  private static final String BASE = "/plates";

  private final WindowState state;
  private final Uploads uploads;
  private final ProvePage prove;
  private final RepeatsPage hand;
  private final RepeatsPage turn;
  private final Map<String, String> answered = new ConcurrentHashMap<>();

  PlatesPage(WindowState state, Uploads uploads) {
    this.state = state;
    this.uploads = uploads;
    this.prove = new ProvePage(state, uploads);
    this.hand = new RepeatsPage(state, true);
    this.turn = new RepeatsPage(state, false);
  }

  /** Answers a request about plates. */
  Reply answer(Request request, Wording wording) throws BadInput, StoreFailure, IOException {
    return switch (request.part(1)) {
      case "" -> list(wording);
      case "prove" -> prove.answer(request, wording);
      case "hand" -> hand.answer(request, wording);
      case "turn" -> turn.answer(request, wording);
      default -> ofExport(request, wording);
    };
  }

  private Reply ofExport(Request request, Wording wording)
      throws BadInput, StoreFailure, IOException {
    if (request.part(1).equals("file") && request.changes()) {
      return Reply.seeOther(address(uploads.take(request, "export")));
    }
    if (request.part(1).equals("forget") && request.changes()) {
      return forget(request);
    }
    Optional<Uploads.Upload> upload = uploads.find(request.part(1));
    return upload.isPresent() ? about(upload.get(), request, wording) : Pages.missing(wording);
  }

  private static String address(Uploads.Upload upload) {
    return BASE + "/" + upload.handle();
  }

  private Reply list(Wording wording) throws BadInput {
    Markup content = new Markup();
    content.add(
        new UploadMarkup(wording)
            .form(BASE + "/file", wording.word("Web.plateDrop"), new Markup()));
    List<KnownPlate> known = RememberedPlates.all(state.records());
    content.element("h2", wording.word("Web.platesKnown"));
    if (known.isEmpty()) {
      content.element("p", wording.word("Web.platesNone"));
    }
    content.open("ul", "class", "facts");
    for (int i = 0; i < known.size(); i++) {
      known(content, known.get(i), i, wording);
    }
    content.close("ul");
    hands(content, wording);
    return page(200, wording, content);
  }

  private static void known(Markup content, KnownPlate plate, int number, Wording wording) {
    content.open("li").text(line(plate));
    content.open("form", "method", "post", "action", BASE + "/forget", "class", "actions");
    content.open("input", "type", "hidden", "name", "columns", "value", columns(plate));
    String asked = wording.fill("Web.plateForgetAsk", Argument.text(plate.name()));
    content.element(
        "button",
        wording.word("Web.plateForget"),
        "data-ask",
        asked,
        "aria-describedby",
        "plate-" + number);
    content.element("span", plate.name(), "class", "hidden", "id", "plate-" + number);
    content.element(
        "a",
        wording.word("Web.prove"),
        "class",
        "button",
        "href",
        ProvePage.BASE + "/" + number,
        "aria-describedby",
        "plate-" + number);
    content.close("form");
    content.element(
        "p",
        wording.word(plate.isProven() ? "Web.plateProven" : "Web.plateUnproven"),
        "class",
        "note");
    content.close("li");
  }

  /** What the clinic measured of its own hands, and the ways to measure it. */
  private void hands(Markup content, Wording wording) throws BadInput {
    content.element("h2", wording.word("Web.hands"));
    GuideMarkup guide = new GuideMarkup(wording);
    guide.lines(MeasuredHands.lines(MeasuredHands.all(state.records()), wording));
    guide.link("/plates/hand", wording.word("Web.handTitle"));
    guide.link("/plates/turn", wording.word("Web.turnTitle"));
    content.add(guide.markup());
  }

  private static String columns(KnownPlate plate) {
    return String.join("\t", plate.columns());
  }

  private Reply forget(Request request) throws BadInput, StoreFailure {
    String columns = request.field("columns").orElse("");
    for (KnownPlate plate : RememberedPlates.all(state.records())) {
      if (columns(plate).strip().equals(columns.strip())) {
        RememberedPlates.forget(state.records(), plate.columns());
      }
    }
    return Reply.seeOther(BASE);
  }

  private static String line(KnownPlate plate) {
    return plate.name() + ": " + String.join(", ", plate.columns());
  }

  private static Reply page(int status, Wording wording, Markup content) {
    return Reply.page(status, new Frame(wording).page(wording.word("Web.plates"), content));
  }

  private Reply about(Uploads.Upload upload, Request request, Wording wording)
      throws BadInput, StoreFailure {
    return switch (request.changes() ? request.part(2) + "!" : request.part(2)) {
      case "" -> show(200, upload, wording, List.of());
      case "plate.yaml" ->
          Reply.download(
              "plate.yaml",
              "application/octet-stream",
              draft(upload, wording).text().getBytes(UTF_8));
      case "!" -> next(upload, draft(upload, wording).answered(answers(request)), wording);
      case "text!" -> next(upload, request.field("plate-text").orElse(""), wording);
      case "keep!" -> keep(upload, request, wording);
      default -> Pages.missing(wording);
    };
  }

  private static List<String> answers(Request request) {
    return IntStream.rangeClosed(1, request.fields().size())
        .mapToObj(number -> request.field("answer-" + number).orElse(""))
        .toList();
  }

  private Reply show(int status, Uploads.Upload upload, Wording wording, List<String> faults)
      throws BadInput {
    return show(status, upload, wording, new ShownAgain(faults, Map.of(), Map.of()));
  }

  /** What the page is shown again with. */
  private record ShownAgain(
      List<String> faults, Map<String, String> typed, Map<String, PlateMeasures.Fault> wrong) {}

  private Reply show(int status, Uploads.Upload upload, Wording wording, ShownAgain shown)
      throws BadInput {
    Markup content = new Markup();
    RememberedPlates.of(state.records(), upload.bytes())
        .ifPresent(
            plate ->
                content.element(
                    "p",
                    wording.fill("Web.plateKnownAs", Argument.text(plate.name())),
                    "class",
                    "kept-now"));
    content.element("p", upload.name(), "class", "note");
    PlateMarkup page = new PlateMarkup(wording, address(upload));
    content.add(page.page(draft(upload, wording), shown.faults(), shown.typed(), shown.wrong()));
    return page(status, wording, content);
  }

  private PlateDraft draft(Uploads.Upload upload, Wording wording) throws BadInput {
    return PlateDraft.of(
        upload.bytes(), Optional.ofNullable(answered.get(upload.handle())), wording);
  }

  /** What the text says now is understood, or it stays as it was. */
  private Reply next(Uploads.Upload upload, String text, Wording wording) throws BadInput {
    try {
      PlateDraft.of(upload.bytes(), Optional.of(text), wording);
    } catch (BadInput e) {
      return show(422, upload, wording, said(e, wording));
    }
    answered.put(upload.handle(), text);
    return Reply.seeOther(address(upload));
  }

  private static List<String> said(BadInput refused, Wording wording) {
    return refused.problems().stream().map((Problem problem) -> said(problem, wording)).toList();
  }

  private static String said(Problem problem, Wording wording) {
    return problem.topic() == CheckProblem.ANOTHER_PLATE
        ? wording.fill(
            "Web.plateAnother",
            problem.arguments().get(0),
            Argument.text(wording.word("Web.plateReplace")))
        : wording.say(problem);
  }

  private Reply keep(Uploads.Upload upload, Request request, Wording wording)
      throws BadInput, StoreFailure {
    Map<String, String> typed = typed(request);
    if (typed.keySet().stream().anyMatch(name -> name.startsWith("line["))) {
      PlateDraft.WithMeasures measured = draft(upload, wording).with(new PlateMeasures(typed));
      if (!measured.faults().isEmpty()) {
        List<String> said = List.of(wording.word("Web.notKept"));
        return show(422, upload, wording, new ShownAgain(said, typed, measured.faults()));
      }
      answered.put(upload.handle(), measured.text());
    }
    try {
      NamedBytes finished = draft(upload, wording).finished(request.field("plate-name").orElse(""));
      int columns =
          RememberedPlates.remember(
              state.records(),
              upload.bytes(),
              finished,
              request.field("plate-replace").isPresent());
      Markup said = new Markup();
      said.element(
          "p", wording.fill("Web.plateKept", Argument.count(columns)), "class", "kept-now");
      said.open("p", "class", "actions");
      toStand(said, wording);
      said.element("a", wording.word("Web.plates"), "class", "button", "href", BASE);
      said.text(" ").element("a", wording.word("Web.records"), "class", "button", "href", "/");
      said.close("p");
      return page(200, wording, said);
    } catch (BadInput e) {
      return show(422, upload, wording, new ShownAgain(said(e, wording), typed, Map.of()));
    }
  }

  /** Back to the stand for which the plate was described. */
  private void toStand(Markup said, Wording wording) {
    state
        .standing()
        .ifPresent(
            code ->
                said.element(
                    "a",
                    wording.fill("Web.toStand", Argument.text(code)),
                    "class",
                    "button strong",
                    "href",
                    state.base(code) + "/" + JobStep.STATIC.path()));
  }

  /** Edges, lines and the name; numbers with a decimal point. */
  private static Map<String, String> typed(Request request) {
    Map<String, String> typed = new LinkedHashMap<>();
    for (String name : request.fields().keySet()) {
      boolean words = name.endsWith("name");
      request
          .field(name)
          .ifPresent(text -> typed.put(name, words ? text : TypedNumber.plain(text)));
    }
    return typed;
  }
}
