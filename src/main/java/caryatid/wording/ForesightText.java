package caryatid.wording;

import caryatid.alignment.Foresight;
import caryatid.loadline.Target;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What a next state will be able to tell about tolerances, as lines. */
public final class ForesightText {
  private static final double TWICE_AS_WELL = 0.5;

  private ForesightText() {}

  /**
   * A head, and a line for each tolerance; nothing where there is none.
   *
   * @param prostheticKnee whether the knee belongs to a prosthesis
   */
  public static List<String> lines(List<Foresight> ahead, boolean prostheticKnee, Wording wording) {
    if (ahead.isEmpty()) {
      return List.of();
    }
    LandmarkWords landmarks = new LandmarkWords(wording, prostheticKnee);
    List<String> lines = new ArrayList<>();
    lines.add(wording.word("Ahead.head"));
    for (Foresight each : ahead) {
      Target target = each.target();
      lines.add(
          wording.fill(
              "Ahead.each",
              Argument.term(target.plane()),
              Argument.text(landmarks.name(target.landmark())),
              Argument.term(target.side()),
              Argument.of((target.highestMm() - target.lowestMm()) / 2, Unit.MM),
              Argument.text(within(each.decidesWithinMm(1), wording)),
              Argument.text(within(each.decidesWithinMm(3), wording)),
              Argument.text(within(each.decidesWithinMm(5), wording)),
              Argument.text(within(each.decidesWithinMm(3, TWICE_AS_WELL), wording))));
    }
    return List.copyOf(lines);
  }

  private static String within(OptionalDouble mm, Wording wording) {
    return mm.isPresent()
        ? wording.fill("Ahead.within", Argument.of(mm.getAsDouble(), Unit.MM))
        : wording.word("Ahead.never");
  }
}
