package caryatid.wording;

import caryatid.alignment.OffsetChange;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import caryatid.uncertainty.Estimate;
import caryatid.views.RecordView;
import caryatid.views.StateChange;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** How offsets changed from one state to another, and whether that is real, as lines. */
public final class ChangeText {
  private final LandmarkWords landmarks;
  private final OffsetWords offsets;
  private final Wording wording;

  private ChangeText(LandmarkWords landmarks, Wording wording) {
    this.landmarks = landmarks;
    this.offsets = new OffsetWords(wording);
    this.wording = wording;
  }

  /**
   * A head, and two or three lines for each offset; nothing where there is none.
   *
   * @param prostheticKnee whether the knee belongs to a prosthesis
   * @param intendedMm the size of the change that was intended, mm; where it is empty, how many
   *     stands would show what was measured is said of changes that are not shown
   */
  public static List<String> lines(
      List<OffsetChange> changes,
      boolean prostheticKnee,
      OptionalDouble intendedMm,
      Wording wording) {
    if (changes.isEmpty()) {
      return List.of();
    }
    ChangeText text = new ChangeText(new LandmarkWords(wording, prostheticKnee), wording);
    List<String> lines = new ArrayList<>();
    lines.add(wording.word("Change.head"));
    changes.forEach(change -> lines.addAll(text.lines(change, intendedMm)));
    return List.copyOf(lines);
  }

  /**
   * A head, one for each pair of states, and two or three lines for each offset; nothing where
   * there is no pair.
   *
   * @param view the record's
   */
  public static List<String> history(List<StateChange> pairs, RecordView view, Wording wording) {
    List<String> lines = new ArrayList<>();
    if (!pairs.isEmpty()) {
      lines.add("");
      lines.add(wording.word("Change.history"));
    }
    for (StateChange pair : pairs) {
      lines.add("  " + pair.before() + " -> " + pair.after());
      for (OffsetChange change : pair.offsets()) {
        LandmarkWords names = LandmarkWords.of(view, change.at().side(), wording);
        new ChangeText(names, wording)
            .lines(change, OptionalDouble.empty())
            .forEach(line -> lines.add("    " + line));
      }
    }
    return List.copyOf(lines);
  }

  private List<String> lines(OffsetChange change, OptionalDouble intendedMm) {
    List<String> lines = new ArrayList<>();
    lines.add(changed(change));
    lines.add("  " + judged(change));
    stands(change, intendedMm).forEach(line -> lines.add("  " + line));
    return lines;
  }

  /**
   * How a changed state differs from the first setting before and after it, or why that is not
   * said.
   *
   * @param back number of the entry after which the first setting was back
   * @param sameSetting whether it truly was
   */
  public static List<String> back(
      int back,
      boolean sameSetting,
      List<OffsetChange> changes,
      boolean prostheticKnee,
      Wording wording) {
    Argument number = Argument.text(Integer.toString(back));
    if (!sameSetting || changes.isEmpty()) {
      return List.of(wording.fill(sameSetting ? "Change.noBack" : "Change.otherSetting", number));
    }
    ChangeText text = new ChangeText(new LandmarkWords(wording, prostheticKnee), wording);
    List<String> lines = new ArrayList<>();
    lines.add(wording.fill("Change.backHead", number));
    for (OffsetChange change : changes) {
      lines.add(text.changed(change));
      lines.add("  " + text.judged(change));
    }
    return List.copyOf(lines);
  }

  private String changed(OffsetChange change) {
    return wording.fill(
        "Change.changed",
        Argument.term(change.at().plane()),
        Argument.text(landmarks.name(change.at().landmark())),
        Argument.term(change.at().side()),
        Argument.term(change.of()),
        Argument.text(offsets.distance(change.at().plane(), change.beforeMm())),
        Argument.text(offsets.distance(change.at().plane(), change.afterMm())),
        mm(Math.abs(change.stayed().value())));
  }

  private String judged(OffsetChange change) {
    boolean real = OffsetChange.isReal(change.anew());
    boolean ifStayed = OffsetChange.isReal(change.stayed());
    return wording.fill(
        real ? "Change.REAL" : ifStayed ? "Change.IF_STAYED" : "Change.CHANCE",
        mm(change.stayed().expanded(Estimate.COVERAGE)),
        mm(change.anew().expanded(Estimate.COVERAGE)));
  }

  private List<String> stands(OffsetChange change, OptionalDouble intendedMm) {
    double size = intendedMm.orElse(Math.abs(change.stayed().value()));
    boolean shown = intendedMm.isEmpty() && OffsetChange.isReal(change.stayed());
    if (shown || size < 1) {
      return List.of();
    }
    return List.of(
        change.standsToShow(size).stream()
            .mapToObj(stands -> wording.fill("Change.STANDS", mm(size), Argument.count(stands)))
            .findFirst()
            .orElseGet(() -> wording.fill("Change.TOO_MANY", mm(size))));
  }

  private static Argument mm(double value) {
    return Argument.of(value, Unit.MM);
  }
}
