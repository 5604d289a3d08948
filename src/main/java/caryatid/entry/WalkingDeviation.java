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
  FOOT_SLAP("WalkingDeviation.FOOT_SLAP", "sagittal", "early stance", Source.TEXTBOOKS, false),
  FOOT_ROTATION(
      "WalkingDeviation.FOOT_ROTATION", "transverse", "early stance", Source.BERGER, false),
  EXCESSIVE_KNEE_FLEXION(
      "WalkingDeviation.EXCESSIVE_KNEE_FLEXION",
      "sagittal",
      "early stance",
      Source.STIFFNESS_STUDY,
      false),
  KNEE_KEPT_EXTENDED(
      "WalkingDeviation.KNEE_KEPT_EXTENDED", "sagittal", "early stance", Source.NONE, false),
  KNEE_BUCKLING(
      "WalkingDeviation.KNEE_BUCKLING", "sagittal", "early stance", Source.TEXTBOOKS, true),
  LATERAL_THRUST("WalkingDeviation.LATERAL_THRUST", "frontal", "mid-stance", Source.NONE, false),
  MEDIAL_THRUST("WalkingDeviation.MEDIAL_THRUST", "frontal", "mid-stance", Source.NONE, false),
  LATERAL_TRUNK_BENDING(
      "WalkingDeviation.LATERAL_TRUNK_BENDING", "frontal", "mid-stance", Source.TEXTBOOKS, false),
  DROP_OFF("WalkingDeviation.DROP_OFF", "sagittal", "late stance", Source.TEXTBOOKS, false),
  KNEE_PUSHED_BACK(
      "WalkingDeviation.KNEE_PUSHED_BACK",
      "sagittal",
      "late stance",
      Source.STIFFNESS_STUDY,
      false),
  LUMBAR_LORDOSIS(
      "WalkingDeviation.LUMBAR_LORDOSIS", "sagittal", "late stance", Source.TEXTBOOKS, true),
  WHIP("WalkingDeviation.WHIP", "transverse", "swing", Source.NONE, true),
  HEEL_RISE("WalkingDeviation.HEEL_RISE", "sagittal", "swing", Source.NONE, true),
  TERMINAL_IMPACT("WalkingDeviation.TERMINAL_IMPACT", "sagittal", "swing", Source.NONE, true),
  CIRCUMDUCTION("WalkingDeviation.CIRCUMDUCTION", "frontal", "swing", Source.NONE, false),
  VAULTING("WalkingDeviation.VAULTING", "sagittal", "swing", Source.NONE, false),
  WIDE_BASE("WalkingDeviation.WIDE_BASE", "frontal", "whole stride", Source.TEXTBOOKS, false),
  UNEVEN_STEPS("WalkingDeviation.UNEVEN_STEPS", "sagittal", "whole stride", Source.NONE, false);

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
  private final String plane;
  private final String phase;
  private final Source source;
  private final boolean ofProstheticKnee;

  WalkingDeviation(
      String code, String plane, String phase, Source source, boolean ofProstheticKnee) {
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

  /** The plane, in the words of the form. */
  public String plane() {
    return plane;
  }

  /** The phase of the stride in which it is seen, in the words of the form. */
  public String phase() {
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
