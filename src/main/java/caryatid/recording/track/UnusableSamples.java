package caryatid.recording.track;

import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.SampleSeries;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.BitSet;

/**
 * Which samples of a plate cannot be used, and why: no number, no load, or a centre of pressure
 * where no plate is.
 */
final class UnusableSamples {
  private final RawPlate raw;
  private final LoadedSamples load;
  private final String plate;
  private final boolean edgesKnown;
  private final StageMessages nothing;

  UnusableSamples(RawPlate raw, LoadedSamples load, PlateLayout layout, String file) {
    this.edgesKnown = layout.size().isPresent();
    this.raw = raw;
    this.load = load;
    this.plate = layout.name();
    this.nothing = StageMessages.none(file);
  }

  /** The samples; each kind is remarked with its count. */
  Outcome<BitSet> find(CopSeries centre, double rateHz) {
    BitSet missing = (BitSet) raw.holes().clone();
    missing.andNot(load.unloaded());
    BitSet unusable = (BitSet) load.unloaded().clone();
    unusable.or(raw.holes());
    StageMessages messages = remarked(RecordingRemark.MISSING, missing);
    if (!load.known()) {
      BitSet empty = UnloadedPattern.of(centre, rateHz);
      empty.andNot(missing);
      unusable.or(empty);
      return new Outcome<>(
          unusable, messages.and(remarked(RecordingRemark.UNLOADED_PATTERN, empty)));
    }
    messages = messages.and(remarked(RecordingRemark.UNLOADED, load.unloaded()));
    Outcome<BitSet> heavy = heavy(unusable);
    unusable.or(heavy.value());
    messages = messages.and(heavy.messages());
    Outcome<BitSet> far = far(centre, unusable);
    unusable.or(far.value());
    return new Outcome<>(unusable, messages.and(far.messages()));
  }

  private StageMessages remarked(RecordingRemark remark, BitSet samples) {
    return remarked(remark, samples, plate, nothing.file());
  }

  /** Says how many samples of a plate were left out; nothing where there are none. */
  static StageMessages remarked(RecordingRemark remark, BitSet samples, String plate, String file) {
    StageMessages nothing = StageMessages.none(file);
    return samples.isEmpty()
        ? nothing
        : nothing.withRemark(
            remark,
            Argument.text(plate),
            Argument.count(samples.cardinality()),
            Argument.of(TrackLimits.LEAST_N, Unit.N));
  }

  /** Single samples of more than any person's weight; many of them are refused elsewhere. */
  private Outcome<BitSet> heavy(BitSet unusable) {
    BitSet heavy = load.heavy();
    heavy.andNot(unusable);
    return heavy.isEmpty() || heavy.cardinality() > TrackLimits.MOST_FAR * raw.size()
        ? new Outcome<>(new BitSet(), nothing)
        : new Outcome<>(
            heavy,
            nothing.withRemark(
                RecordingRemark.HEAVY_SAMPLES,
                Argument.text(plate),
                Argument.count(heavy.cardinality()),
                Argument.of(TrackLimits.HEAVIEST_N / ForceUnit.STANDARD_GRAVITY, Unit.KG)));
  }

  private Outcome<BitSet> far(CopSeries centre, BitSet unusable) {
    BitSet far = new BitSet();
    SampleSeries anterior = centre.anterior();
    SampleSeries right = centre.right().orElse(anterior);
    for (int i = 0; i < anterior.size(); i++) {
      if (UnloadedPattern.far(right.at(i), anterior.at(i)) && !unusable.get(i)) {
        far.set(i);
      }
    }
    int used = anterior.size() - unusable.cardinality();
    if (far.cardinality() <= TrackLimits.MOST_FAR * used) {
      return new Outcome<>(far, remarked(RecordingRemark.FAR_OFF, far));
    }
    // Where the edges are known, they tell more of so many.
    return new Outcome<>(
        new BitSet(),
        edgesKnown
            ? nothing
            : nothing.withProblem(
                ImportProblem.FAR_OFF,
                Argument.text(plate),
                Argument.count(far.cardinality()),
                Argument.count(used)));
  }

  /**
   * How an empty plate shows in a recording that has no vertical force: a centre of pressure far
   * from any plate, one that jumps about, or one that stands still as no person does.
   */
  private static final class UnloadedPattern {
    private UnloadedPattern() {}

    /**
     * The samples that look like an empty plate. A direction that was not measured does not move;
     * zero in the other one alone is as likely as any number.
     */
    static BitSet of(CopSeries centre, double rateHz) {
      SampleSeries anterior = centre.anterior();
      SampleSeries right = centre.right().orElseGet(() -> SampleSeries.of(anterior.size(), i -> 0));
      boolean both = centre.right().isPresent();
      BitSet empty = new BitSet(right.size());
      int longest = (int) Math.max(10, Math.ceil(TrackLimits.STILL_S * rateHz));
      int still = 0;
      for (int i = 0; i < right.size(); i++) {
        boolean same =
            i > 0 && right.at(i) == right.at(i - 1) && anterior.at(i) == anterior.at(i - 1);
        still = same ? still + 1 : 1;
        if (still == longest) {
          empty.set(i - longest + 1, i + 1);
        }
        boolean nowhere = both && right.at(i) == 0 && anterior.at(i) == 0;
        if (nowhere
            || still > longest
            || far(right.at(i), anterior.at(i))
            || jumps(right, anterior, i)) {
          empty.set(i);
        }
      }
      return empty;
    }

    /** Whether a centre of pressure lies where no plate is, mm. */
    static boolean far(double right, double anterior) {
      return Math.abs(right) > TrackLimits.FAR_MM || Math.abs(anterior) > TrackLimits.FAR_MM;
    }

    private static boolean jumps(SampleSeries right, SampleSeries anterior, int i) {
      return (i == 0 || step(right, anterior, i) > TrackLimits.JUMP_MM)
          && (i == right.size() - 1 || step(right, anterior, i + 1) > TrackLimits.JUMP_MM)
          && right.size() > 1;
    }

    private static double step(SampleSeries right, SampleSeries anterior, int i) {
      return Math.hypot(right.at(i) - right.at(i - 1), anterior.at(i) - anterior.at(i - 1));
    }
  }
}
