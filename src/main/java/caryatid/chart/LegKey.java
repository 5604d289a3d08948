package caryatid.chart;

import caryatid.chart.Style.Pen;
import caryatid.remark.Argument;
import caryatid.wording.Wording;
import java.util.List;
import java.util.OptionalInt;

/** What the symbols in the drawing of a leg mean. */
record LegKey(Leg leg, Scale scale, Wording wording) {

  /** How many entries there may be. */
  static int entries(Leg leg) {
    return 6 + (leg.beforeMm().isPresent() ? 1 : 0) + (hasSeveralStands(leg) ? 1 : 0);
  }

  private static boolean hasSeveralStands(Leg leg) {
    return leg.line().filter(line -> line.standsMm().size() > 1).isPresent();
  }

  List<Mark> marks(Key key, OptionalInt closeUp) {
    leg.line().ifPresent(line -> key.loadLine(wording.word("Key.LINE." + line.of().name())));
    if (leg.levels().stream().anyMatch(level -> level.finding().isPresent())) {
      key.target(wording.word("Key.TARGET"));
    }
    key.landmark(wording.word("Key.LANDMARK"));
    leg.line()
        .filter(line -> line.leanPerUp().isPresent())
        .ifPresent(line -> key.line(Pen.MEASURED_FORCE, wording.word("Key.MEASURED_FORCE")));
    double bar = Ruler.barMm(scale);
    key.scaleBar(bar / scale.oneTo(), Sentences.scale(scale, bar, wording));
    if (hasSeveralStands(leg)) {
      key.upright(Pen.LANDMARK, wording.word("Key.STANDS"));
    }
    if (leg.beforeMm().isPresent()) {
      key.line(Pen.EARLIER_LINE, wording.word("Key.BEFORE"));
    }
    closeUp.ifPresent(oneTo -> key.curve(wording.fill("Key.CLOSE_UP", Argument.count(oneTo))));
    return key.marks();
  }
}
