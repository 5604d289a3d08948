package caryatid.standing;

import caryatid.geometry.Side;
import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.Recording;
import caryatid.recording.model.Sampled;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Remark;
import caryatid.remark.Unit;
import caryatid.uncertainty.Estimate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds what one recording says about one stand. */
public final class StandAnalysis {
  private StandAnalysis() {}

  /**
   * What is known about how the recording was made.
   *
   * @param stance which foot stood on which plate
   * @param prosthetic the prosthetic sides
   * @param bodyMassKg body mass, kg, where it is known
   * @param accuracy how far the plate can be trusted
   * @param byHand the stretch to use, where the user set it
   */
  public record Conditions(
      Stance stance,
      List<Side> prosthetic,
      OptionalDouble bodyMassKg,
      PlateAccuracy accuracy,
      Optional<Stretch> byHand) {
    public Conditions {
      prosthetic = List.copyOf(prosthetic);
    }
  }

  /**
   * Analyses a recording by the usual limits.
   *
   * @throws BadInput if it is not quiet standing, or a named plate is not in it
   */
  public static Standing analyse(Recording recording, Conditions conditions) throws BadInput {
    return analyse(recording, conditions, Limits.USUAL);
  }

  /**
   * Analyses a recording. Every line is taken over the same stretch.
   *
   * @throws BadInput if it is not quiet standing by the limits, a channel seems dead, the
   *     prosthesis is hardly loaded, or a named plate is not in it
   */
  public static Standing analyse(Recording recording, Conditions conditions, Limits limits)
      throws BadInput {
    StanceSignals signals =
        StanceSignals.of(recording, conditions.stance(), conditions.prosthetic());
    MarkedFeet.refuse(recording, conditions.stance(), conditions.prosthetic());
    QuietStretch stretch =
        new StretchSelector(recording, signals, limits).settle(conditions.byHand());
    List<LoadSignals> quiet = quiet(recording, signals, stretch, limits);
    List<MeanLoad> loads = new MeanLoads(conditions.accuracy()).of(quiet);
    List<Sway> sway =
        quiet.stream().flatMap(t -> SwayMeasures.of(t, recording.rateHz()).stream()).toList();
    Map<Side, Estimate> share = LoadShare.of(quiet, loads, conditions);
    refuseSwappedFeet(loads, recording.provenance().name());
    LoadShare.refuseMoreThanWhole(share, recording.provenance().name());
    LoadShare.refuseUnloaded(share, conditions, limits, recording.provenance().name());
    List<PercentileRank> placements =
        ReferencePercentiles.place(sway, stretch.durationS(), recording.rateHz());
    Standing silent =
        new Standing(stretch, recording.rateHz(), loads, sway, placements, share, List.of());
    List<Remark> remarks = StandRemarks.of(silent, quiet, conditions, limits);
    return new Standing(stretch, recording.rateHz(), loads, sway, placements, share, remarks);
  }

  /**
   * Seeks a quiet stand on one plate, and measures nothing in it. What this refuses, {@link
   * #analyse} refuses for the same reason; what this finds, it refuses only by the body mass.
   *
   * @return where it is
   * @throws BadInput if it is not quiet standing by the usual limits, or a channel seems dead
   */
  public static QuietStretch seek(Sampled recording, Stance stance) throws BadInput {
    StanceSignals signals = StanceSignals.of(recording, stance, List.of(Side.LEFT));
    QuietStretch stretch =
        new StretchSelector(recording, signals, Limits.USUAL).settle(Optional.empty());
    quiet(recording, signals, stretch, Limits.USUAL);
    return stretch;
  }

  /** The signals over a stretch, none of them impossible. */
  private static List<LoadSignals> quiet(
      Sampled recording, StanceSignals signals, QuietStretch stretch, Limits limits)
      throws BadInput {
    List<LoadSignals> quiet = signals.cut(stretch.fromIndex(), stretch.toIndex());
    DeadChannels.refuse(quiet, recording, limits);
    Squats.refuse(quiet, stretch, recording, limits);
    return quiet;
  }

  /** Assumes that the left foot is on the left. */
  private static void refuseSwappedFeet(List<MeanLoad> loads, String file) throws BadInput {
    double leftMm = rightward(loads, LoadLineOwner.LEFT_FOOT, Double.NEGATIVE_INFINITY);
    double rightMm = rightward(loads, LoadLineOwner.RIGHT_FOOT, Double.POSITIVE_INFINITY);
    if (leftMm > rightMm) {
      throw new BadInput(
          Problem.at(
              Place.of(file), StandProblem.FEET_SWAPPED, Argument.of(leftMm - rightMm, Unit.MM)));
    }
  }

  private static double rightward(List<MeanLoad> loads, LoadLineOwner of, double otherwise) {
    return loads.stream()
        .filter(load -> load.of() == of)
        .flatMap(load -> load.copRightMm().stream())
        .mapToDouble(Estimate::value)
        .findFirst()
        .orElse(otherwise);
  }
}
