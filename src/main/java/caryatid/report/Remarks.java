package caryatid.report;

import caryatid.alignment.AlignmentState;
import caryatid.loadline.Withheld;
import caryatid.remark.Argument;
import caryatid.remark.Remark;
import caryatid.remark.Weight;
import caryatid.report.Block.Point;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

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
      all().stream()
          .filter(remark -> remark.topic().weight() == weight)
          .forEach(remark -> points.add(new Point(lead, wording.say(remark))));
      if (weight == Weight.IMPORTANT) {
        state.withheld().forEach(withheld -> points.add(new Point(lead, reason(withheld))));
      }
    }
    return points;
  }

  private Set<Remark> all() {
    Set<Remark> all = new LinkedHashSet<>(state.remarks());
    state
        .stands()
        .forEach(
            stand -> Stream.of(stand.remarks(), stand.standing().remarks()).forEach(all::addAll));
    return all;
  }

  private String reason(Withheld withheld) {
    return wording.fill(
        "Remarks.WITHHELD",
        Argument.text(withheld.target().landmark()),
        Argument.term(withheld.target().plane()),
        Argument.text(wording.say(withheld.reason())));
  }
}
