package caryatid.report;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Said;
import caryatid.loadline.Withheld;
import caryatid.remark.Argument;
import caryatid.remark.Weight;
import caryatid.report.Block.Point;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** All remarks on a state and its stands, in the order of their weight. */
final class Remarks {
  private final AlignmentState state;
  private final Wording wording;

  Remarks(AlignmentState state, Wording wording) {
    this.state = state;
    this.wording = wording;
  }

  /** The remarks of some weights, the weightiest first. */
  List<Point> of(Weight... weights) {
    List<Point> points = new ArrayList<>();
    for (Weight weight : weights) {
      String lead = wording.word(weight);
      Said.of(state).stream()
          .filter(said -> said.remark().topic().weight() == weight)
          .forEach(said -> points.add(new Point(lead, wording.say(said))));
      if (weight == Weight.IMPORTANT) {
        state.withheld().forEach(withheld -> points.add(new Point(lead, reason(withheld))));
      }
    }
    return points;
  }

  private String reason(Withheld withheld) {
    return wording.fill(
        "Remarks.WITHHELD",
        Argument.text(withheld.target().landmark()),
        Argument.term(withheld.target().plane()),
        Argument.text(wording.say(withheld.reason())));
  }
}
