package caryatid.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.clinic.MeasuredDoubt;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.usecase.prove.MeasuredHands;
import caryatid.usecase.stand.TypedNumber;
import caryatid.web.page.Frame;
import caryatid.web.page.GuideMarkup;
import caryatid.web.page.Reply;
import caryatid.web.page.Request;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Leads through measurements that are repeated: the same landmark marked several times, or the feet
 * placed several times. What was typed before is not shown, so that it sways nobody.
 */
final class RepeatsPage {
  private static final int TIMES = 5;
  private static final String NUMBER = "-?\\d{1,5}(\\.\\d{1,3})?";

  private final WindowState state;
  private final boolean hand;

  /**
   * @param hand whether a hand is measured; otherwise the turn of the feet
   */
  RepeatsPage(WindowState state, boolean hand) {
    this.state = state;
    this.hand = hand;
  }

  private String base() {
    return hand ? "/plates/hand" : "/plates/turn";
  }

  private String either(String ofHand, String ofTurn) {
    return hand ? ofHand : ofTurn;
  }

  Reply answer(Request request, Wording wording) throws BadInput, StoreFailure {
    Map<String, String> typed = new HashMap<>();
    for (String name : request.fields().keySet()) {
      request.field(name).ifPresent(text -> typed.put(name, TypedNumber.plain(text)));
    }
    if (!request.changes()) {
      return begin(200, typed, List.of(), wording);
    }
    String about = hand ? "landmark" : "between";
    boolean complete =
        typed.containsKey("by")
            && typed.containsKey(about)
            && (hand || typed.get(about).matches("\\d{2,4}(\\.\\d{1,3})?"));
    if (!complete) {
      return begin(
          422, typed, List.of(wording.word(either("Web.handMissing", "Web.turnMissing"))), wording);
    }
    return next(typed, wording);
  }

  private Reply begin(int status, Map<String, String> typed, List<String> faults, Wording wording) {
    GuideMarkup guide = new GuideMarkup(wording).faults(faults);
    guide
        .next(wording.word(either("Web.handBegin", "Web.turnBegin")))
        .form(base())
        .words("by", "Web.by", typed);
    if (hand) {
      guide.words("landmark", "Web.handLandmark", typed);
    } else {
      guide.number("between", "Web.turnBetween", "mm", typed);
    }
    guide.send("Web.proveGo");
    return page(status, guide, wording);
  }

  private Reply page(int status, GuideMarkup guide, Wording wording) {
    return Reply.page(
        status,
        new Frame(wording)
            .page(wording.word(either("Web.handTitle", "Web.turnTitle")), guide.markup()));
  }

  private Reply next(Map<String, String> typed, Wording wording) throws BadInput, StoreFailure {
    List<String> done = new ArrayList<>();
    if (typed.containsKey("done")) {
      done.addAll(List.of(typed.get("done").split(";")));
    }
    List<String> fields = hand ? List.of("mm") : List.of("left", "right");
    boolean first = typed.keySet().stream().noneMatch(name -> name.equals("step"));
    boolean numbers =
        fields.stream().allMatch(name -> typed.getOrDefault(name, "").matches(NUMBER));
    if (!first && numbers) {
      done.add(String.join(" ", fields.stream().map(typed::get).toList()));
    }
    if (done.size() >= TIMES) {
      return finish(typed, done, wording);
    }
    List<String> faults = first || numbers ? List.of() : List.of(wording.word("Web.repeatNumber"));
    return step(typed, done, faults, wording);
  }

  private Reply step(
      Map<String, String> typed, List<String> done, List<String> faults, Wording wording) {
    GuideMarkup guide = new GuideMarkup(wording).faults(faults);
    Argument about = Argument.text(typed.getOrDefault("landmark", ""));
    String next =
        done.isEmpty()
            ? either("Web.handFirst", "Web.turnFirst")
            : either("Web.handAgain", "Web.turnAgain");
    guide.next(wording.fill(next, about));
    guide.note(
        wording.fill("Web.proveCount", Argument.count(done.size() + 1L), Argument.count(TIMES)));
    guide.form(base()).hidden("step", Integer.toString(done.size()));
    guide.hidden("by", typed.get("by")).hidden("done", String.join(";", done));
    Map<String, String> empty = Map.of();
    if (hand) {
      guide.hidden("landmark", typed.get("landmark")).number("mm", "Web.handMm", "mm", empty);
    } else {
      guide.hidden("between", typed.get("between"));
      guide.number("left", "Web.turnLeft", "mm", empty);
      guide.number("right", "Web.turnRight", "mm", empty);
    }
    guide.send("Web.repeatNext");
    return page(faults.isEmpty() ? 200 : 422, guide, wording);
  }

  private Reply finish(Map<String, String> typed, List<String> done, Wording wording)
      throws BadInput, StoreFailure {
    NamedBytes file = NamedBytes.of("repeats.yaml", yaml(typed, done).getBytes(UTF_8));
    GuideMarkup guide = new GuideMarkup(wording);
    try {
      MeasuredDoubt kept =
          hand
              ? MeasuredHands.rememberHand(state.records(), file)
              : MeasuredHands.rememberTurn(state.records(), file);
      guide.next(wording.word("Web.repeatDone"));
      guide.lines(MeasuredHands.lines(List.of(kept), wording));
    } catch (BadInput e) {
      guide.faults(e.problems().stream().map(p -> wording.sayWithin(p)).toList());
    }
    guide.link("/plates", wording.word("Web.plates"));
    return page(200, guide, wording);
  }

  private String yaml(Map<String, String> typed, List<String> done) {
    StringBuilder text = new StringBuilder();
    text.append(hand ? "hand-repeatability: 1\n" : "feet-turn: 1\n");
    text.append("at: ").append(state.records().now().withNano(0)).append('\n');
    ProvePage.line(text, "by", typed.get("by"));
    if (hand) {
      text.append("landmarks:\n");
      ProvePage.line(text, "  - name", typed.get("landmark"));
      text.append("    mm: [").append(String.join(", ", done)).append("]\n");
      return text.toString();
    }
    ProvePage.line(text, "between-heels-mm", typed.get("between"));
    text.append("placements:\n");
    for (String placement : done) {
      String[] heels = placement.split(" ");
      text.append("  - {left-mm: ").append(heels[0]);
      text.append(", right-mm: ").append(heels[1]).append("}\n");
    }
    return text.toString();
  }
}
