package caryatid.report.pages;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.GroupedRemark;
import caryatid.alignment.StateRemark;
import caryatid.loadline.UnjudgedTarget;
import caryatid.remark.Argument;
import caryatid.remark.Topic;
import caryatid.remark.Weight;
import caryatid.report.pages.Block.Bullet;
import caryatid.wording.LandmarkWords;
import caryatid.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Remarks on a state and its stands, in the order of their weight. */
final class RemarkList {
  /** Remarks that the report's tables already state for each finding. */
  private static final Set<Topic> IN_TABLES =
      Set.of(
          StateRemark.TOLERANCE_TOO_NARROW,
          StateRemark.TOLERANCE_UNDECIDABLE,
          StateRemark.SMALLEST_DIFFERENCE);

  private static final int MOST_BESIDE_NOTES = 4;

  private final AlignmentState state;
  private final Wording wording;
  private final LandmarkWords names;

  RemarkList(AlignmentState state, Wording wording) {
    this.state = state;
    this.wording = wording;
    this.names = new LandmarkWords(wording, state.trial());
  }

  /**
   * Whether notes stand on page one: many findings leave it more room than page two, which has two
   * lines for each.
   */
  static boolean onPageOne(AlignmentState state) {
    return state.findings().size() > MOST_BESIDE_NOTES;
  }

  /** The remarks of some weights, the weightiest first. */
  List<Bullet> of(Weight... weights) {
    List<Bullet> points = new ArrayList<>();
    for (Weight weight : weights) {
      String lead = wording.lead(weight);
      GroupedRemark.of(state).stream()
          .filter(said -> said.remark().topic().weight() == weight)
          .filter(said -> !IN_TABLES.contains(said.remark().topic()))
          .forEach(said -> points.add(new Bullet(lead, names.say(said))));
      if (weight == Weight.IMPORTANT) {
        state.withheld().forEach(withheld -> points.add(new Bullet(lead, reason(withheld))));
      }
    }
    return points;
  }

  private String reason(UnjudgedTarget withheld) {
    return wording.fill(
        "Remarks.WITHHELD",
        Argument.text(names.name(withheld.target().landmark(), withheld.target().side())),
        Argument.term(withheld.target().plane()),
        Argument.text(names.say(withheld.reason())));
  }
}
