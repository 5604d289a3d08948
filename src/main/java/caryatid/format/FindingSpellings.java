package caryatid.format;

import caryatid.alignment.PrecisionHint;
import caryatid.loadline.LimitedQuantity;
import caryatid.loadline.LoadLineMethod;
import caryatid.loadline.MomentEffect;
import caryatid.loadline.Target;
import caryatid.loadline.Verdict;
import caryatid.remark.Unit;
import caryatid.standing.LoadLineOwner;
import caryatid.standing.PercentileRank;
import caryatid.standing.UnusedPart;
import caryatid.uncertainty.Cause;

/** How measures and findings are spelled in files. */
final class FindingSpellings {
  static final Spellings<Cause> CAUSE =
      Spellings.of(
          Cause.values(),
          each ->
              switch (each) {
                case SWAY -> "sway";
                case PLATE_ACCURACY -> "plate-accuracy";
                case MARKING -> "marking";
                case REGISTRATION -> "registration";
                case LANDMARK_MOVEMENT -> "landmark-movement";
                case YAW -> "yaw";
                case LEVEL -> "level";
                case REPEATABILITY -> "repeatability";
                case BODY_MASS -> "body-mass";
              });

  static final Spellings<Unit> UNIT =
      Spellings.of(
          Unit.values(),
          each ->
              switch (each) {
                case MM -> "mm";
                case MM2 -> "mm2";
                case MM_PER_S -> "mm-per-s";
                case N -> "n";
                case NM -> "nm";
                case NM_PER_KG -> "nm-per-kg";
                case S -> "s";
                case HZ -> "hz";
                case DEG -> "deg";
                case KG -> "kg";
                case PERCENT -> "percent";
                case COUNT -> "count";
                case PLAIN -> "plain";
              });

  static final Spellings<LoadLineMethod> LINE =
      Spellings.of(
          LoadLineMethod.values(),
          each ->
              switch (each) {
                case VERTICAL -> "vertical";
                case MEASURED_FORCE -> "measured-force";
              });

  static final Spellings<LoadLineOwner> LINE_OF =
      Spellings.of(
          LoadLineOwner.values(),
          each ->
              switch (each) {
                case LEFT_FOOT -> "left-foot";
                case RIGHT_FOOT -> "right-foot";
                case WHOLE_BODY -> "whole-body";
              });

  static final Spellings<MomentEffect> EFFECT =
      Spellings.of(
          MomentEffect.values(),
          each ->
              switch (each) {
                case BENDS_THE_KNEE -> "bends-the-knee";
                case STRAIGHTENS_THE_KNEE -> "straightens-the-knee";
                case HOLDS_KNEE_AGAINST_EXTENSION_STOP -> "holds-knee-against-extension-stop";
                case DORSIFLEXES_THE_ANKLE -> "dorsiflexes-the-ankle";
                case PLANTARFLEXES_THE_ANKLE -> "plantarflexes-the-ankle";
                case VALGUS -> "valgus";
                case VARUS -> "varus";
                case EVERTS_THE_FOOT -> "everts-the-foot";
                case INVERTS_THE_FOOT -> "inverts-the-foot";
                case TOO_SMALL_TO_TELL -> "too-small-to-tell";
              });

  static final Spellings<Target.MeantFor> MEANT_FOR =
      Spellings.of(
          Target.MeantFor.values(),
          each ->
              switch (each) {
                case FOOT -> "foot";
                case WHOLE_BODY -> "whole-body";
              });

  static final Spellings<Verdict> VERDICT =
      Spellings.of(
          Verdict.values(),
          each ->
              switch (each) {
                case WITHIN -> "within";
                case INSIDE_TOO_CLOSE -> "inside-too-close";
                case OUTSIDE_TOO_CLOSE -> "outside-too-close";
                case OUTSIDE -> "outside";
              });

  static final Spellings<UnusedPart.Reason> LEFT_OUT =
      Spellings.of(
          UnusedPart.Reason.values(),
          each ->
              switch (each) {
                case UNLOADED -> "unloaded";
                case SETTLING -> "settling";
                case STEP_OR_SHIFT -> "step-or-shift";
                case DRIFT -> "drift";
                case GAP -> "gap";
                case SHORTER_STRETCH -> "shorter-stretch";
                case BY_HAND -> "by-hand";
              });

  static final Spellings<PercentileRank.Measure> MEASURE =
      Spellings.of(
          PercentileRank.Measure.values(),
          each ->
              switch (each) {
                case SD_ANTERIOR -> "sd-anterior";
                case SD_RIGHT -> "sd-right";
                case RANGE_ANTERIOR -> "range-anterior";
                case MEAN_SPEED -> "mean-speed";
              });

  static final Spellings<PrecisionHint.Remedy> REMEDY =
      Spellings.of(
          PrecisionHint.Remedy.values(),
          each ->
              switch (each) {
                case REPEAT -> "repeat";
                case STAND_LONGER -> "stand-longer";
                case MARK_BETTER -> "mark-better";
                case ALIGN_FEET -> "align-feet";
                case LEVEL_PLATE -> "level-plate";
                case CALIBRATE_PLATE -> "calibrate-plate";
                case READ_LANDMARK_AGAIN -> "read-landmark-again";
              });

  static final Spellings<LimitedQuantity> LIMITED =
      Spellings.of(LimitedQuantity.values(), LimitedQuantity::key);

  private FindingSpellings() {}
}
