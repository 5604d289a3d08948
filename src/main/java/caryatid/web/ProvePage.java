package caryatid.web;

import caryatid.clinic.KnownPlate;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateProof;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.remark.Unit;
import caryatid.usecase.RememberedPlates;
import caryatid.usecase.prove.GuidedProof;
import caryatid.usecase.stand.TypedNumber;
import caryatid.web.page.Frame;
import caryatid.web.page.GuideMarkup;
import caryatid.web.page.Markup;
import caryatid.web.page.Reply;
import caryatid.web.page.Request;
import caryatid.web.page.UploadMarkup;
import caryatid.wording.ProofText;
import caryatid.wording.Wording;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/** Leads through the proof of a plate that the clinic remembers, one recording at a time. */
final class ProvePage {
  static final String BASE = "/plates/prove";
  private static final int MARKS = 5;

  private final WindowState state;
  private final Uploads uploads;
  private final AtomicReference<GuidedProof> current = new AtomicReference<>();

  ProvePage(WindowState state, Uploads uploads) {
    this.state = state;
    this.uploads = uploads;
  }

  /** Answers a request; the address names the plate by its place in the list, or a step. */
  Reply answer(Request request, Wording wording) throws BadInput, StoreFailure, IOException {
    Optional<GuidedProof> proof = Optional.ofNullable(current.get());
    return switch (request.changes() ? request.part(2) + "!" : request.part(2)) {
      case "step" -> step(200, proof, List.of(), wording);
      case "file!" -> file(request, proof, wording);
      case "back!" -> {
        proof.ifPresent(GuidedProof::back);
        yield Reply.seeOther(BASE + "/step");
      }
      default -> begin(request, wording);
    };
  }

  private Reply begin(Request request, Wording wording) throws BadInput {
    Optional<KnownPlate> plate = plate(request.part(2));
    if (plate.isEmpty()) {
      return Pages.missing(wording);
    }
    if (!request.changes()) {
      return setup(200, plate.get(), request.part(2), Map.of(), List.of(), wording);
    }
    Map<String, String> typed = typed(request);
    try {
      current.set(GuidedProof.of(plate.get(), yaml(typed)));
      return Reply.seeOther(BASE + "/step");
    } catch (BadInput e) {
      List<String> said = e.problems().stream().map(p -> wording.sayWithin(p)).toList();
      return setup(422, plate.get(), request.part(2), typed, said, wording);
    }
  }

  private Optional<KnownPlate> plate(String number) throws BadInput {
    List<KnownPlate> known = RememberedPlates.all(state.records());
    return number.matches("\\d{1,4}") && Integer.parseInt(number) < known.size()
        ? Optional.of(known.get(Integer.parseInt(number)))
        : Optional.empty();
  }

  private static Map<String, String> typed(Request request) {
    Map<String, String> typed = new HashMap<>();
    for (String name : request.fields().keySet()) {
      request.field(name).ifPresent(text -> typed.put(name, TypedNumber.plain(text)));
    }
    return typed;
  }

  /** The file that the command line reads; the recordings are called by their steps. */
  private String yaml(Map<String, String> typed) {
    StringBuilder text = new StringBuilder("plate-proof: 1\n");
    text.append("at: ").append(state.records().now().withNano(0)).append('\n');
    line(text, "by", typed.get("by"));
    line(text, "place-mm", typed.get("place"));
    text.append("weights:\n");
    for (int i = 1; i <= MARKS; i++) {
      if (typed.containsKey("right-" + i) || typed.containsKey("anterior-" + i)) {
        text.append("  - recording: weight ").append(i).append('\n');
        line(text, "    right-mm", typed.get("right-" + i));
        line(text, "    anterior-mm", typed.get("anterior-" + i));
        line(text, "    kg", typed.get("kg"));
      }
    }
    text.append("person:\n  standing: standing\n  leaning-forward: forward\n");
    text.append("  one-foot: one foot\n");
    line(text, "  foot", typed.get("foot"));
    line(text, "  body-mass-kg", typed.get("body"));
    return text.toString();
  }

  /** A key with what was typed, or nothing; what is no plain number or word is quoted. */
  static void line(StringBuilder text, String key, String value) {
    if (value != null) {
      boolean plain = value.matches("-?\\d{1,9}(\\.\\d{1,9})?|left|right");
      String written = plain ? value : "'" + value.replace("'", "''") + "'";
      text.append(key).append(": ").append(written).append('\n');
    }
  }

  private static Reply setup(
      int status,
      KnownPlate plate,
      String number,
      Map<String, String> typed,
      List<String> faults,
      Wording wording) {
    GuideMarkup guide = new GuideMarkup(wording).faults(faults);
    guide.next(wording.word("Web.proveBegin")).note(plate.name());
    guide.form(BASE + "/" + number).words("by", "Web.by", typed);
    guide.number("kg", "Web.proveKg", "kg", typed);
    guide.number("place", "Web.provePlace", "mm", typed);
    for (int i = 1; i <= MARKS; i++) {
      Argument mark = Argument.count(i);
      guide.numberLabelled("right-" + i, wording.fill("Web.proveRight", mark), "mm", typed);
      guide.numberLabelled("anterior-" + i, wording.fill("Web.proveAnterior", mark), "mm", typed);
    }
    guide.number("body", "Web.proveBody", "kg", typed);
    guide.choice("foot", "Web.proveFoot", typed, "left", "Side.LEFT", "right", "Side.RIGHT");
    guide.send("Web.proveGo").note(wording.word("Web.proveSafe"));
    return page(status, guide.markup(), wording);
  }

  private static Reply page(int status, Markup content, Wording wording) {
    return Reply.page(status, new Frame(wording).page(wording.word("Web.prove"), content));
  }

  private Reply file(Request request, Optional<GuidedProof> proof, Wording wording)
      throws IOException, BadInput, StoreFailure {
    if (proof.isEmpty()) {
      return Pages.missing(wording);
    }
    Uploads.Upload upload = uploads.take(request, "export");
    try {
      NamedBytes bytes = upload.bytes();
      proof.get().take(bytes);
      return Reply.seeOther(BASE + "/step");
    } catch (BadInput e) {
      return step(422, proof, e.problems().stream().map(wording::say).toList(), wording);
    } finally {
      uploads.remove(upload);
    }
  }

  private Reply step(int status, Optional<GuidedProof> proof, List<String> faults, Wording wording)
      throws StoreFailure {
    if (proof.isEmpty()) {
      return Reply.seeOther("/plates");
    }
    GuidedProof now = proof.get();
    GuideMarkup guide = new GuideMarkup(wording).faults(faults);
    if (now.step() == GuidedProof.ProofStep.DONE) {
      done(guide, now, wording);
    } else {
      guide.next(sentence(now, wording));
      guide.note(
          wording.fill(
              "Web.proveCount", Argument.count(now.taken() + 1L), Argument.count(now.needed())));
      guide
          .markup()
          .add(
              new UploadMarkup(wording)
                  .form(BASE + "/file", wording.word("Web.proveDrop"), new Markup()));
    }
    now.lastShown().ifPresent(shown -> guide.note(at("Web.proveShown", shown, wording)));
    if (now.taken() > 0) {
      guide.form(BASE + "/back").otherwise("Web.proveBack");
    }
    return page(status, guide.markup(), wording);
  }

  private static String at(String key, double[] place, Wording wording) {
    return wording.fill(key, Argument.of(place[0], Unit.MM), Argument.of(place[1], Unit.MM));
  }

  private static String sentence(GuidedProof proof, Wording wording) {
    return switch (proof.step()) {
      case WEIGHT -> at("Web.proveWeight", proof.place().orElseThrow(), wording);
      case STANDING -> wording.word("Web.proveStanding");
      case FORWARD -> wording.word("Web.proveForward");
      case ONE_FOOT -> wording.word(proof.leftFoot() ? "Web.proveLeftFoot" : "Web.proveRightFoot");
      case DONE -> wording.word("Web.proveDone");
    };
  }

  private void done(GuideMarkup guide, GuidedProof proof, Wording wording) throws StoreFailure {
    try {
      PlateProof found = proof.keep(state.records());
      guide.next(wording.word("Web.proveDone")).lines(ProofText.lines(found, wording));
    } catch (BadInput e) {
      guide.faults(e.problems().stream().map(p -> wording.sayWithin(p)).toList());
      guide.next(wording.word("Web.proveFailed"));
    }
    guide.link("/plates", wording.word("Web.plates"));
  }
}
