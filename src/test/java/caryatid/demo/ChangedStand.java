package caryatid.demo;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.Stand;
import caryatid.alignment.StateOffset;
import caryatid.geometry.Side;
import caryatid.loadline.Finding;
import caryatid.loadline.Landmark;
import caryatid.loadline.Offset;
import caryatid.recording.model.Provenance;
import caryatid.sheet.AnkleAxis;
import caryatid.sheet.TrialSheet;
import caryatid.standing.Stance;
import caryatid.standing.Standing;
import caryatid.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A stand, or a state, in which one thing differs from another one's. */
public final class ChangedStand {
  private ChangedStand() {}

  /** A state whose findings' offsets are larger by so much, one after the other. */
  public static AlignmentState moved(AlignmentState state, double... byMm) {
    List<Finding> findings = new ArrayList<>();
    List<StateOffset> offsets = new ArrayList<>();
    for (int i = 0; i < byMm.length; i++) {
      Finding was = state.findings().get(i);
      Offset old = was.offset();
      Estimate mm = new Estimate(old.mm().value() + byMm[i], old.mm().contributions());
      Offset moved = new Offset(old.at(), old.of(), old.kind(), mm);
      findings.add(
          new Finding(
              moved, was.target(), was.probabilityWithin(), was.undecidable(), was.verdict()));
      offsets.add(new StateOffset(moved, 1, Optional.empty()));
    }
    return new AlignmentState(state.stands(), offsets, findings, List.of(), List.of());
  }

  /** One whose feet stood otherwise. */
  public static Stand stance(Stand stand, Stance stance) {
    return trial(stand, sheet(stand.trial(), stance, stand.trial().ankleAxis()));
  }

  /** One whose sheet says something else about the ankle's axis. */
  public static Stand ankleAxis(Stand stand, Optional<AnkleAxis> axis) {
    return trial(stand, sheet(stand.trial(), stand.trial().stance(), axis));
  }

  /** One that knows other shares of the load. */
  public static Stand share(Stand stand, Map<Side, Estimate> share) {
    Standing was = stand.standing();
    return new Stand(
        stand.recording(),
        stand.sheet(),
        stand.description(),
        stand.trial(),
        stand.landmarks(),
        new Standing(
            was.stretch(),
            was.rateHz(),
            was.loads(),
            was.sway(),
            was.placements(),
            share,
            was.remarks()),
        stand.offsets(),
        stand.moments(),
        stand.remarks());
  }

  /** One in which other points are marked. */
  public static Stand landmarks(Stand stand, List<Landmark> landmarks) {
    return new Stand(
        stand.recording(),
        stand.sheet(),
        stand.description(),
        stand.trial(),
        landmarks,
        stand.standing(),
        stand.offsets(),
        stand.moments(),
        stand.remarks());
  }

  /** One that comes from other files. */
  public static Stand files(
      Stand stand, Provenance recording, Provenance sheet, Optional<Provenance> description) {
    return new Stand(
        recording,
        sheet,
        description,
        stand.trial(),
        stand.landmarks(),
        stand.standing(),
        stand.offsets(),
        stand.moments(),
        stand.remarks());
  }

  private static Stand trial(Stand stand, TrialSheet trial) {
    return new Stand(
        stand.recording(),
        stand.sheet(),
        stand.description(),
        trial,
        stand.landmarks(),
        stand.standing(),
        stand.offsets(),
        stand.moments(),
        stand.remarks());
  }

  private static TrialSheet sheet(TrialSheet was, Stance stance, Optional<AnkleAxis> axis) {
    return new TrialSheet(
        was.wearer(),
        was.at(),
        was.side(),
        was.level(),
        was.bodyMassKg(),
        stance,
        was.otherFoot(),
        was.hands(),
        was.knee(),
        axis,
        was.footwear(),
        was.stanceWidthMm(),
        was.toeOutRad(),
        was.minutesWalked(),
        was.components(),
        was.landmarks(),
        was.targets(),
        was.stretches(),
        was.doubts(),
        was.rule(),
        was.limits(),
        was.asMeant(),
        was.notes());
  }
}
