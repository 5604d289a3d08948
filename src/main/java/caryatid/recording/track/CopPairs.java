package caryatid.recording.track;

import caryatid.geometry.Axes;
import caryatid.geometry.Direction;
import caryatid.recording.model.Channel;
import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.model.MomentUnit;
import caryatid.recording.model.PlateLayout;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.SampleSeries;
import java.util.Optional;

/** The exported centre of pressure and the one from forces and moments, sample by sample. */
final class CopPairs {
  private static final PlateLayout.TrueOrigin IN_THE_SURFACE = new PlateLayout.TrueOrigin(0, 0, 0);

  /**
   * What the loaded samples say along one direction.
   *
   * @param apartMm computed less exported, on average, mm
   * @param apartMm2 its mean square, mm2
   * @param exportedMm2 variance of the exported one, mm2
   * @param computedMm2 variance of the computed one, mm2
   */
  record Along(double apartMm, double apartMm2, double exportedMm2, double computedMm2) {}

  private final PlateColumns plate;
  private final PlateUnits units;
  private final Axes axes;
  private final RawPlate raw;
  private final LoadedSamples load;

  CopPairs(PlateColumns plate, PlateUnits units, Axes axes, RawPlate raw, LoadedSamples load) {
    this.plate = plate;
    this.units = units;
    this.axes = axes;
    this.raw = raw;
    this.load = load;
  }

  /** Whether both can be had. Moments that are all zero were taken about the centre itself. */
  boolean exist() {
    Optional<SampleSeries> one = raw.at(Channel.of(Quantity.MOMENT, axes.right().axis()));
    Optional<SampleSeries> other = raw.at(Channel.of(Quantity.MOMENT, axes.anterior().axis()));
    return one.isPresent()
        && other.isPresent()
        && axes.rightHanded()
        && load.known()
        && !(one.get().allZero() && other.get().allZero());
  }

  /**
   * Compares along a direction.
   *
   * @param unit the moments' unit, where the file and the description leave it open; such moments
   *     came unscaled
   */
  Along along(Direction along, MomentUnit unit) {
    TrueOriginCop cop = new TrueOriginCop(axes, plate.layout().trueOrigin().orElse(IN_THE_SURFACE));
    double scale = units.moment().isPresent() ? 1 : unit.newtonMm();
    SampleSeries moment = raw.at(Channel.of(Quantity.MOMENT, cop.momentAxis(along))).orElseThrow();
    SampleSeries vertical = raw.at(Channel.of(Quantity.FORCE, axes.up().axis())).orElseThrow();
    SampleSeries exported = raw.at(Channel.of(Quantity.COP, along.axis())).orElseThrow();
    Optional<SampleSeries> force = raw.at(Channel.of(Quantity.FORCE, along.axis()));
    TrueOriginCop.CopFormula line = cop.along(along);
    Sums sums = new Sums();
    boolean whole = raw.holes().isEmpty();
    for (int i = 0; i < moment.size(); i++) {
      if (load.loaded(i) && (whole || !raw.holes().get(i))) {
        double alongN = force.isPresent() ? force.get().at(i) : 0;
        sums.add(
            along.sign() * exported.at(i), line.at(moment.at(i) * scale, alongN, vertical.at(i)));
      }
    }
    return sums.along();
  }

  private static final class Sums {
    private int count;
    private double exported;
    private double computed;
    private double exported2;
    private double computed2;
    private double apart2;

    void add(double exportedMm, double computedMm) {
      count++;
      exported += exportedMm;
      computed += computedMm;
      exported2 += exportedMm * exportedMm;
      computed2 += computedMm * computedMm;
      apart2 += (computedMm - exportedMm) * (computedMm - exportedMm);
    }

    Along along() {
      double n = Math.max(count, 1);
      return new Along(
          (computed - exported) / n,
          apart2 / n,
          exported2 / n - exported / n * (exported / n),
          computed2 / n - computed / n * (computed / n));
    }
  }
}
