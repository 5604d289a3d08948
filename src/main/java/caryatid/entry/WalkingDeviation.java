package caryatid.entry;

import caryatid.remark.Coded;
import caryatid.sheet.AmputationLevel;
import java.util.Arrays;
import java.util.List;

/**
 * Deviations of walking that are looked for, in the terms of textbooks, each in its plane and
 * phase. What each usually points to is worded under its name, with its source; it says where to
 * look and is never a verdict. ISO 29783-2:2015 has its own list, which was not at hand.
 */
public enum WalkingDeviation implements Coded {
  FOOT_SLAP(
      "WalkingDeviation.FOOT_SLAP",
      GaitPlane.SAGITTAL,
      GaitPhase.EARLY_STANCE,
      Reference.TEXTBOOKS,
      false),
  FOOT_ROTATION(
      "WalkingDeviation.FOOT_ROTATION",
      GaitPlane.TRANSVERSE,
      GaitPhase.EARLY_STANCE,
      Reference.BERGER,
      false),
  EXCESSIVE_KNEE_FLEXION(
      "WalkingDeviation.EXCESSIVE_KNEE_FLEXION",
      GaitPlane.SAGITTAL,
      GaitPhase.EARLY_STANCE,
      Reference.STIFFNESS_STUDY,
      false),
  KNEE_KEPT_EXTENDED(
      "WalkingDeviation.KNEE_KEPT_EXTENDED",
      GaitPlane.SAGITTAL,
      GaitPhase.EARLY_STANCE,
      Reference.NONE,
      false),
  KNEE_BUCKLING(
      "WalkingDeviation.KNEE_BUCKLING",
      GaitPlane.SAGITTAL,
      GaitPhase.EARLY_STANCE,
      Reference.TEXTBOOKS,
      true),
  OWN_KNEE_UNSTABLE(
      "WalkingDeviation.OWN_KNEE_UNSTABLE",
      GaitPlane.SAGITTAL,
      GaitPhase.EARLY_STANCE,
      Reference.NONE,
      false),
  LATERAL_THRUST(
      "WalkingDeviation.LATERAL_THRUST",
      GaitPlane.FRONTAL,
      GaitPhase.MID_STANCE,
      Reference.NONE,
      false),
  MEDIAL_THRUST(
      "WalkingDeviation.MEDIAL_THRUST",
      GaitPlane.FRONTAL,
      GaitPhase.MID_STANCE,
      Reference.NONE,
      false),
  LATERAL_TRUNK_BENDING(
      "WalkingDeviation.LATERAL_TRUNK_BENDING",
      GaitPlane.FRONTAL,
      GaitPhase.MID_STANCE,
      Reference.TEXTBOOKS,
      false),
  DROP_OFF(
      "WalkingDeviation.DROP_OFF",
      GaitPlane.SAGITTAL,
      GaitPhase.LATE_STANCE,
      Reference.TEXTBOOKS,
      false),
  KNEE_PUSHED_BACK(
      "WalkingDeviation.KNEE_PUSHED_BACK",
      GaitPlane.SAGITTAL,
      GaitPhase.LATE_STANCE,
      Reference.STIFFNESS_STUDY,
      false),
  LUMBAR_LORDOSIS(
      "WalkingDeviation.LUMBAR_LORDOSIS",
      GaitPlane.SAGITTAL,
      GaitPhase.LATE_STANCE,
      Reference.TEXTBOOKS,
      true),
  WHIP("WalkingDeviation.WHIP", GaitPlane.TRANSVERSE, GaitPhase.SWING, Reference.NONE, true),
  HEEL_RISE(
      "WalkingDeviation.HEEL_RISE", GaitPlane.SAGITTAL, GaitPhase.SWING, Reference.NONE, true),
  TERMINAL_IMPACT(
      "WalkingDeviation.TERMINAL_IMPACT",
      GaitPlane.SAGITTAL,
      GaitPhase.SWING,
      Reference.NONE,
      true),
  PISTONING(
      "WalkingDeviation.PISTONING", GaitPlane.SAGITTAL, GaitPhase.SWING, Reference.NONE, false),
  CIRCUMDUCTION(
      "WalkingDeviation.CIRCUMDUCTION", GaitPlane.FRONTAL, GaitPhase.SWING, Reference.NONE, false),
  VAULTING("WalkingDeviation.VAULTING", GaitPlane.SAGITTAL, GaitPhase.SWING, Reference.NONE, false),
  WIDE_BASE(
      "WalkingDeviation.WIDE_BASE",
      GaitPlane.FRONTAL,
      GaitPhase.WHOLE_STRIDE,
      Reference.TEXTBOOKS,
      false),
  UNEVEN_STEPS(
      "WalkingDeviation.UNEVEN_STEPS",
      GaitPlane.SAGITTAL,
      GaitPhase.WHOLE_STRIDE,
      Reference.NONE,
      false);

  /** Where what a deviation points to is written. */
  public enum Reference implements Coded {
    /** Common practice. */
    NONE("Source.NONE"),
    /** Berger, Analysis of amputee gait, 1992; through another text that cites it. */
    BERGER("Source.BERGER"),
    /** Murphy 2013; Spires, Kelly and Davis 2013; through another text that cites them. */
    TEXTBOOKS("Source.TEXTBOOKS"),
    /** Adamczyk, Roland and Hahn 2017; the abstract. */
    STIFFNESS_STUDY("Source.STIFFNESS_STUDY");

    private final String code;

    Reference(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  private final String code;
  private final GaitPlane plane;
  private final GaitPhase phase;
  private final Reference source;
  private final boolean ofProstheticKnee;

  WalkingDeviation(
      String code, GaitPlane plane, GaitPhase phase, Reference source, boolean ofProstheticKnee) {
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
  public GaitPhase phase() {
    return phase;
  }

  /** Where what it points to is written. */
  public Reference source() {
    return source;
  }

  /** The deviations looked for at a level. */
  public static List<WalkingDeviation> of(AmputationLevel level) {
    return Arrays.stream(values())
        .filter(d -> level.prostheticKnee() ? d != OWN_KNEE_UNSTABLE : !d.ofProstheticKnee)
        .toList();
  }
}
