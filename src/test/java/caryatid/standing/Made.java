package caryatid.standing;

import caryatid.geometry.Side;
import caryatid.recording.model.Horizontal;
import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Provenance;
import caryatid.recording.model.Recording;
import caryatid.recording.model.Samples;
import caryatid.recording.model.UsableMask;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Recordings made in memory for tests. Numbers are invented unless a test says otherwise. */
public final class Made {
  private final double rateHz;
  private final int samples;
  private final List<PlateTrack> plates = new ArrayList<>();

  private Made(double rateHz, int samples) {
    this.rateHz = rateHz;
    this.samples = samples;
  }

  /** A recording without a plate yet. */
  public static Made at(double rateHz, double seconds) {
    return new Made(rateHz, (int) Math.round(rateHz * seconds));
  }

  /** Adds a plate with force; unloaded samples are those without force. */
  public Made plate(
      String name,
      IntToDoubleFunction right,
      IntToDoubleFunction anterior,
      IntToDoubleFunction up) {
    BitSet loaded = new BitSet(samples);
    IntStream.range(0, samples).filter(i -> up.applyAsDouble(i) > 0).forEach(loaded::set);
    plates.add(
        new PlateTrack(
            name,
            Optional.of(series(right)),
            series(anterior),
            Optional.of(series(up)),
            Optional.empty(),
            new UsableMask(loaded, samples)));
    return this;
  }

  /** Adds a plate that recorded the centre of pressure alone. */
  public Made copAlone(String name, double[] right, double[] anterior) {
    plates.add(
        new PlateTrack(
            name,
            Optional.of(Samples.of(right)),
            Samples.of(anterior),
            Optional.empty(),
            Optional.empty(),
            UsableMask.all(samples)));
    return this;
  }

  /** Gives the last plate a constant horizontal force. */
  public Made pushed(double rightN, double anteriorN) {
    return pushed(i -> rightN, i -> anteriorN);
  }

  /** The last plate with horizontal forces, N. */
  Made pushed(IntToDoubleFunction rightN, IntToDoubleFunction anteriorN) {
    PlateTrack last = plates.remove(plates.size() - 1);
    Horizontal push = new Horizontal(series(rightN), series(anteriorN));
    plates.add(
        new PlateTrack(
            last.plate(),
            last.copRightMm(),
            last.copAnteriorMm(),
            last.upN(),
            Optional.of(push),
            last.usable()));
    return this;
  }

  /** Takes from every plate what it measured sideways. */
  public Made foreAndAft() {
    plates.replaceAll(
        plate ->
            new PlateTrack(
                plate.plate(),
                Optional.empty(),
                plate.copAnteriorMm(),
                plate.upN(),
                Optional.empty(),
                plate.usable()));
    return this;
  }

  /** The recording. */
  public Recording recording() {
    Provenance made = new Provenance("made.csv", 0, "0".repeat(128));
    return new Recording(made, series(i -> i / rateHz), rateHz, plates, List.of());
  }

  /** One foot's plate under the right, prosthetic foot. */
  public static StandAnalysis.Conditions rightFoot() {
    return conditions(new Stance.ProstheticFootOnPlate(Optional.empty()), Side.RIGHT);
  }

  /** Conditions with an exact plate and an unknown body mass. */
  public static StandAnalysis.Conditions conditions(Stance stance, Side... prosthetic) {
    return new StandAnalysis.Conditions(
        stance,
        List.of(prosthetic),
        OptionalDouble.empty(),
        new PlateAccuracy(0, 0, 0, Math.toRadians(0.7)),
        Optional.empty());
  }

  /** A first-order autoregressive series of unit variance, started in its stationary state. */
  public static double[] autoregressive(Random random, int n, double coefficient) {
    double[] values = new double[n];
    double fresh = Math.sqrt(1 - coefficient * coefficient);
    values[0] = random.nextGaussian();
    for (int i = 1; i < n; i++) {
      values[i] = coefficient * values[i - 1] + fresh * random.nextGaussian();
    }
    return values;
  }

  private Samples series(IntToDoubleFunction of) {
    return Samples.of(IntStream.range(0, samples).mapToDouble(of).toArray());
  }
}
