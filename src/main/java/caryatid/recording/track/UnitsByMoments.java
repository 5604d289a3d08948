package caryatid.recording.track;

import caryatid.geometry.Axis;
import caryatid.recording.model.Channel;
import caryatid.recording.model.Channel.Quantity;
import caryatid.recording.model.ForceUnit;
import caryatid.recording.model.ImportFact;
import caryatid.recording.model.LengthUnit;
import caryatid.recording.model.MomentUnit;
import caryatid.recording.model.UnderstoodFact.Basis;
import caryatid.recording.table.NumberColumn;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.PlateColumns;
import caryatid.recording.table.StageMessages;
import caryatid.remark.Argument;
import java.util.List;
import java.util.Optional;

/**
 * What forces and moments tell of an unknown unit of the centre of pressure: it moves as moment
 * over vertical force does, whatever the axes' directions, so that their ratio shows which unit
 * goes with which unit of moment. That is evidence for the user and not an answer.
 */
public final class UnitsByMoments {
  private final ParsedTable table;
  private final Axis vertical;
  private final String file;

  /**
   * @param vertical the export's axis that seems vertical
   */
  public UnitsByMoments(ParsedTable table, Axis vertical, String file) {
    this.table = table;
    this.vertical = vertical;
    this.file = file;
  }

  /** Each pair of units that the numbers allow, where the unit is unknown. */
  public StageMessages pairs(PlateColumns plate, PlateUnits units) {
    StageMessages messages = StageMessages.none(file);
    Optional<Double> ratio = units.unstated(Quantity.COP) ? ratio(plate) : Optional.empty();
    if (ratio.isEmpty()) {
      return messages;
    }
    ForceUnit force = units.force().orElse(ForceUnit.N);
    for (MomentUnit moment : units.moment().map(List::of).orElse(List.of(MomentUnit.values()))) {
      for (LengthUnit length : LengthUnit.values()) {
        double expected = moment.newtonMm() / (force.newton() * length.mm());
        if (Math.abs(ratio.get() / expected - 1) <= TrackLimits.MOMENTS_AGREE) {
          messages =
              messages.withFact(
                  ImportFact.UNITS_TOGETHER,
                  Basis.CONCLUDED,
                  Argument.text(plate.name()),
                  Argument.term(force),
                  Argument.term(moment),
                  Argument.term(length));
        }
      }
    }
    return messages;
  }

  /**
   * How far the centre moves where moment over force moves by one, along the axis it moves most.
   */
  private Optional<Double> ratio(PlateColumns plate) {
    Axis one = VerticalAxis.horizontal(vertical).get(0);
    Axis other = VerticalAxis.horizontal(vertical).get(1);
    Optional<Fit> along = fit(plate, one, other);
    Optional<Fit> across = fit(plate, other, one);
    return along.isPresent() && across.isPresent() && across.get().spread() > along.get().spread()
        ? across.get().ratio()
        : along.flatMap(Fit::ratio);
  }

  private Optional<Fit> fit(PlateColumns plate, Axis copAxis, Axis momentAxis) {
    Channel[] needed = {
      Channel.of(Quantity.COP, copAxis),
      Channel.of(Quantity.MOMENT, momentAxis),
      Channel.of(Quantity.FORCE, vertical)
    };
    if (!List.of(needed).stream().allMatch(plate::has)) {
      return Optional.empty();
    }
    NumberColumn cop = column(plate, needed[0]);
    NumberColumn moment = column(plate, needed[1]);
    NumberColumn force = column(plate, needed[2]);
    Fit fit = new Fit();
    for (int row = 0; row < table.rows(); row++) {
      boolean hole = cop.isHole(row) || moment.isHole(row) || force.isHole(row);
      if (!hole && Math.abs(force.at(row)) >= TrackLimits.LEAST_N) {
        fit.add(moment.at(row) / force.at(row), cop.at(row));
      }
    }
    return Optional.of(fit);
  }

  private NumberColumn column(PlateColumns plate, Channel channel) {
    return table.column(plate.column(channel).orElseThrow());
  }

  /** A line through points, from sums that are kept small by the first point. */
  private static final class Fit {
    private int count;
    private double x0;
    private double y0;
    private double x;
    private double y;
    private double xx;
    private double yy;
    private double xy;

    void add(double atX, double atY) {
      x0 = count == 0 ? atX : x0;
      y0 = count == 0 ? atY : y0;
      double dx = atX - x0;
      double dy = atY - y0;
      count++;
      x += dx;
      y += dy;
      xx += dx * dx;
      yy += dy * dy;
      xy += dx * dy;
    }

    /** Variance of y, times the number of points. */
    double spread() {
      return yy - y * y / count;
    }

    /** Size of the slope, where the line explains the points. */
    Optional<Double> ratio() {
      double together = xy - x * y / count;
      double spreadX = xx - x * x / count;
      boolean explains = together * together >= TrackLimits.MOMENTS_EXPLAIN * spreadX * spread();
      return spreadX > 0 && explains ? Optional.of(Math.abs(together / spreadX)) : Optional.empty();
    }
  }
}
