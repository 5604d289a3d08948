package caryatid.recording.track;

import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.model.RecordingRemark;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.SampleSeries;
import caryatid.recording.table.StageFindings;
import caryatid.remark.Argument;
import caryatid.remark.Unit;
import java.util.BitSet;

/**
 * Which samples of a plate cannot be used, and why: no number, no load, or a centre of pressure
 * where no plate is.
 */
final class UnusableSamples {
  /** A larger share far from any plate is no accident (common practice, no source). */
  private static final double MOST_FAR = 0.05;

  private final RawPlate raw;
  private final LoadedSamples load;
  private final String plate;
  private final boolean edgesKnown;
  private final StageFindings nothing;

  UnusableSamples(RawPlate raw, LoadedSamples load, PlateLayout layout, String file) {
    this.edgesKnown = layout.size().isPresent();
    this.raw = raw;
    this.load = load;
    this.plate = layout.name();
    this.nothing = StageFindings.none(file);
  }

  /** The samples; each kind is remarked with its count. */
  Outcome<BitSet> find(SampleSeries right, SampleSeries anterior, double rateHz) {
    BitSet missing = (BitSet) raw.holes().clone();
    missing.andNot(load.unloaded());
    BitSet unusable = (BitSet) load.unloaded().clone();
    unusable.or(raw.holes());
    StageFindings findings = remarked(RecordingRemark.MISSING, missing);
    if (!load.known()) {
      BitSet empty = UnloadedPattern.of(right, anterior, rateHz);
      empty.andNot(missing);
      unusable.or(empty);
      return new Outcome<>(
          unusable, findings.and(remarked(RecordingRemark.UNLOADED_PATTERN, empty)));
    }
    findings = findings.and(remarked(RecordingRemark.UNLOADED, load.unloaded()));
    Outcome<BitSet> heavy = heavy(unusable);
    unusable.or(heavy.value());
    findings = findings.and(heavy.findings());
    Outcome<BitSet> far = far(right, anterior, unusable);
    unusable.or(far.value());
    return new Outcome<>(unusable, findings.and(far.findings()));
  }

  private StageFindings remarked(RecordingRemark remark, BitSet samples) {
    return remarked(remark, samples, plate, nothing.file());
  }

  /** Says how many samples of a plate were left out; nothing where there are none. */
  static StageFindings remarked(RecordingRemark remark, BitSet samples, String plate, String file) {
    StageFindings nothing = StageFindings.none(file);
    return samples.isEmpty()
        ? nothing
        : nothing.withRemark(
            remark,
            Argument.text(plate),
            Argument.count(samples.cardinality()),
            Argument.of(LoadedSamples.LEAST_N, Unit.N));
  }

  /** Single samples of more than any person's weight; many of them are refused elsewhere. */
  private Outcome<BitSet> heavy(BitSet unusable) {
    BitSet heavy = load.heavy();
    heavy.andNot(unusable);
    return heavy.isEmpty() || heavy.cardinality() > MOST_FAR * raw.size()
        ? new Outcome<>(new BitSet(), nothing)
        : new Outcome<>(
            heavy,
            nothing.withRemark(
                RecordingRemark.HEAVY_SAMPLES,
                Argument.text(plate),
                Argument.count(heavy.cardinality()),
                Argument.of(LoadedSamples.HEAVIEST_N / ForceUnit.STANDARD_GRAVITY, Unit.KG)));
  }

  private Outcome<BitSet> far(SampleSeries right, SampleSeries anterior, BitSet unusable) {
    BitSet far = new BitSet();
    for (int i = 0; i < right.size(); i++) {
      if (UnloadedPattern.far(right.at(i), anterior.at(i)) && !unusable.get(i)) {
        far.set(i);
      }
    }
    int used = right.size() - unusable.cardinality();
    if (far.cardinality() <= MOST_FAR * used) {
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
}
