package caryatid.timing;

import caryatid.geometry.Side;
import caryatid.recording.model.PlateAccuracy;
import caryatid.recording.model.PlateTrack;
import caryatid.recording.model.Provenance;
import caryatid.recording.model.Recording;
import caryatid.recording.model.Samples;
import caryatid.recording.model.UsableMask;
import caryatid.remark.BadInput;
import caryatid.standing.Stance;
import caryatid.standing.StandAnalysis;
import caryatid.standing.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long the analysis of a stand takes once the recording is read: {@code mvn -Dfast
 * -Dtiming=StandTiming verify}. Two plates, so three lines; 60 s at 1000 Hz are 60,000 samples a
 * plate.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class StandTiming {
  private static final double RATE_HZ = 1000;

  /** Length of the recording, s. */
  @Param({"15", "60", "240"})
  public int seconds;

  private Recording recording;
  private StandAnalysis.Conditions conditions;

  /** Makes two feet that sway. */
  @Setup
  public void makeRecording() {
    int n = (int) (seconds * RATE_HZ);
    Random random = new Random(1);
    List<PlateTrack> plates = new ArrayList<>();
    for (String name : List.of("left", "right")) {
      plates.add(
          new PlateTrack(
              name,
              Optional.of(sway(random, n, name.equals("left") ? -100 : 100, 1.5)),
              sway(random, n, 40, 4),
              Optional.of(sway(random, n, 400, 2)),
              Optional.empty(),
              UsableMask.all(n)));
    }
    Samples times = Samples.of(IntStream.range(0, n).mapToDouble(i -> i / RATE_HZ).toArray());
    Provenance made = new Provenance("made", 0, "0".repeat(128));
    recording = new Recording(made, times, RATE_HZ, plates, List.of());
    conditions =
        new StandAnalysis.Conditions(
            new Stance.PlatePerFoot("left", "right"),
            List.of(Side.LEFT),
            OptionalDouble.of(82),
            PlateAccuracy.ASSUMED,
            Optional.empty());
  }

  /** First-order sway with a relaxation time of a second. */
  private static Samples sway(Random random, int n, double mean, double sd) {
    double[] values = new double[n];
    double at = random.nextGaussian();
    for (int i = 0; i < n; i++) {
      values[i] = mean + sd * at;
      at += -at / RATE_HZ + Math.sqrt(2 / RATE_HZ) * random.nextGaussian();
    }
    return Samples.of(values);
  }

  /** From the recording in memory to what it says about the stand. */
  @Benchmark
  public Standing analyse() throws BadInput {
    return StandAnalysis.analyse(recording, conditions);
  }
}
