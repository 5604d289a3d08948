package caryatid.entry;

import caryatid.remark.Coded;
import caryatid.sheet.AmputationLevel;
import java.util.Arrays;
import java.util.List;

/**
 * Deviations of walking that are looked for, in the terms of textbooks, each in its plane and
 * phase. What each usually points to is worded under its name, with the source beside it; it is
 * where to look, never a verdict. ISO 29783-2:2015 has its own list, which was not at hand.
 */
public enum WalkingDeviation implements Coded {
  FOOT_SLAP(
      "WalkingDeviation.FOOT_SLAP",
      GaitPlane.SAGITTAL,
      Phase.EARLY_STANCE,
      Source.TEXTBOOKS,
      false),
  FOOT_ROTATION(
      "WalkingDeviation.FOOT_ROTATION",
      GaitPlane.TRANSVERSE,
      Phase.EARLY_STANCE,
      Source.BERGER,
      false),
  EXCESSIVE_KNEE_FLEXION(
      "WalkingDeviation.EXCESSIVE_KNEE_FLEXION",
      GaitPlane.SAGITTAL,
      Phase.EARLY_STANCE,
      Source.STIFFNESS_STUDY,
      false),
  KNEE_KEPT_EXTENDED(
      "WalkingDeviation.KNEE_KEPT_EXTENDED",
      GaitPlane.SAGITTAL,
      Phase.EARLY_STANCE,
      Source.NONE,
      false),
  KNEE_BUCKLING(
      "WalkingDeviation.KNEE_BUCKLING",
      GaitPlane.SAGITTAL,
      Phase.EARLY_STANCE,
      Source.TEXTBOOKS,
      true),
  LATERAL_THRUST(
      "WalkingDeviation.LATERAL_THRUST", GaitPlane.FRONTAL, Phase.MID_STANCE, Source.NONE, false),
  MEDIAL_THRUST(
      "WalkingDeviation.MEDIAL_THRUST", GaitPlane.FRONTAL, Phase.MID_STANCE, Source.NONE, false),
  LATERAL_TRUNK_BENDING(
      "WalkingDeviation.LATERAL_TRUNK_BENDING",
      GaitPlane.FRONTAL,
      Phase.MID_STANCE,
      Source.TEXTBOOKS,
      false),
  DROP_OFF(
      "WalkingDeviation.DROP_OFF", GaitPlane.SAGITTAL, Phase.LATE_STANCE, Source.TEXTBOOKS, false),
  KNEE_PUSHED_BACK(
      "WalkingDeviation.KNEE_PUSHED_BACK",
      GaitPlane.SAGITTAL,
      Phase.LATE_STANCE,
      Source.STIFFNESS_STUDY,
      false),
  LUMBAR_LORDOSIS(
      "WalkingDeviation.LUMBAR_LORDOSIS",
      GaitPlane.SAGITTAL,
      Phase.LATE_STANCE,
      Source.TEXTBOOKS,
      true),
  WHIP("WalkingDeviation.WHIP", GaitPlane.TRANSVERSE, Phase.SWING, Source.NONE, true),
  HEEL_RISE("WalkingDeviation.HEEL_RISE", GaitPlane.SAGITTAL, Phase.SWING, Source.NONE, true),
  TERMINAL_IMPACT(
      "WalkingDeviation.TERMINAL_IMPACT", GaitPlane.SAGITTAL, Phase.SWING, Source.NONE, true),
  CIRCUMDUCTION(
      "WalkingDeviation.CIRCUMDUCTION", GaitPlane.FRONTAL, Phase.SWING, Source.NONE, false),
  VAULTING("WalkingDeviation.VAULTING", GaitPlane.SAGITTAL, Phase.SWING, Source.NONE, false),
  WIDE_BASE(
      "WalkingDeviation.WIDE_BASE", GaitPlane.FRONTAL, Phase.WHOLE_STRIDE, Source.TEXTBOOKS, false),
  UNEVEN_STEPS(
      "WalkingDeviation.UNEVEN_STEPS", GaitPlane.SAGITTAL, Phase.WHOLE_STRIDE, Source.NONE, false);

  /** Where what a deviation points to is written. */
  public enum Source implements Coded {
    /** Common practice. */
    NONE("Source.NONE"),
    /** Berger, Analysis of amputee gait, 1992; through another text that cites it. */
    BERGER("Source.BERGER"),
    /** Murphy 2013; Spires, Kelly and Davis 2013; through another text that cites them. */
    TEXTBOOKS("Source.TEXTBOOKS"),
    /** Adamczyk, Roland and Hahn 2017; the abstract. */
    STIFFNESS_STUDY("Source.STIFFNESS_STUDY");

    private final String code;

    Source(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  private final String code;
  private final GaitPlane plane;
  private final Phase phase;
  private final Source source;
  private final boolean ofProstheticKnee;

  WalkingDeviation(
      String code, GaitPlane plane, Phase phase, Source source, boolean ofProstheticKnee) {
    this.code = code;
    this.plane = plane;
    this.phase = phase;
    this.source = source;
    this.ofProstheticKnee = ofProstheticKnee;
  }

  @Override
  public String code() {
    return code;
  }

  /** The plane in which it is seen. */
  public GaitPlane plane() {
    return plane;
  }

  /** The phase of the stride in which it is seen. */
  public Phase phase() {
    return phase;
  }

  /** Where what it points to is written. */
  public Source source() {
    return source;
  }

  /** The deviations looked for at a level. */
  public static List<WalkingDeviation> of(AmputationLevel level) {
    return Arrays.stream(values())
        .filter(d -> level.prostheticKnee() || !d.ofProstheticKnee)
        .toList();
  }
}
