package caryatid.advice;

import caryatid.loadline.LandmarkInPlane;
import caryatid.loadline.Offset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * How one wearer answers changes: the offsets at the newest setting, of which nothing is known
 * before they are measured, and what one unit of each kind of change does to each of them, of which
 * geometry is expected first. Offsets are linear in the settings.
 *
 * <p>Where the states fit each other worse than their uncertainties allow, all of it is widened by
 * the root of chi squared over its degrees of freedom (Birge 1932, Phys Rev 40:207-227; from
 * memory), so that what contradicts is not averaged away.
 */
final class WearerModel {
  private final List<LandmarkInPlane> offsets;
  private final List<ChangeKind> kinds;
  private final LinearGaussian learnt;
  private final double widened;

  private WearerModel(
      List<LandmarkInPlane> offsets, List<ChangeKind> kinds, LinearGaussian learnt, int free) {
    this.offsets = offsets;
    this.kinds = kinds;
    this.learnt = learnt;
    this.widened = free > 0 ? Math.max(1, learnt.misfit() / free) : 1;
  }

  /**
   * The model after some states.
   *
   * @param offsets each measured in at least one state
   * @param kinds all kinds that were or may be changed
   * @param states what was measured
   * @param now the state whose setting counts as the present one
   * @param plateCounts whether offsets are the true ones, or those that this plate shows
   */
  static WearerModel of(
      List<LandmarkInPlane> offsets,
      List<ChangeKind> kinds,
      List<MeasuredState> states,
      MeasuredState now,
      Kinematics geometry,
      boolean plateCounts) {
    int m = offsets.size();
    int parameters = m * (1 + kinds.size());
    RealVector before = new ArrayRealVector(parameters);
    RealMatrix precision = new Array2DRowRealMatrix(parameters, parameters);
    for (int i = 0; i < kinds.size(); i++) {
      Expectation expected = Expectation.of(kinds.get(i), offsets, geometry);
      RealMatrix inverse =
          new CholeskyDecomposition(expected.covariance()).getSolver().getInverse();
      before.setSubVector(m * (1 + i), new ArrayRealVector(expected.mm()));
      precision.setSubMatrix(inverse.getData(), m * (1 + i), m * (1 + i));
    }
    List<StateErrors.MeasuredOffset> rows = rows(offsets, states);
    RealMatrix design = new Array2DRowRealMatrix(rows.size(), parameters);
    RealVector measured = new ArrayRealVector(rows.size());
    for (int r = 0; r < rows.size(); r++) {
      StateErrors.MeasuredOffset row = rows.get(r);
      measured.setEntry(r, row.mm().value());
      design.setEntry(r, row.offset(), 1);
      for (int i = 0; i < kinds.size(); i++) {
        ChangeKind kind = kinds.get(i);
        double by = row.state().setting(kind, now) - now.setting(kind, row.state());
        design.setEntry(r, m * (1 + i) + row.offset(), by);
      }
    }
    RealMatrix errors = StateErrors.covariance(rows, plateCounts);
    return new WearerModel(
        offsets,
        kinds,
        LinearGaussian.of(before, precision, design, errors, measured),
        rows.size() - m);
  }

  static List<StateErrors.MeasuredOffset> rows(
      List<LandmarkInPlane> offsets, List<MeasuredState> states) {
    List<StateErrors.MeasuredOffset> rows = new ArrayList<>();
    for (MeasuredState state : states) {
      for (int j = 0; j < offsets.size(); j++) {
        int offset = j;
        state
            .offset(offsets.get(j))
            .map(Offset::mm)
            .ifPresent(mm -> rows.add(new StateErrors.MeasuredOffset(state, offset, mm)));
      }
    }
    return rows;
  }

  List<ChangeKind> kinds() {
    return kinds;
  }

  /** The expected offsets after changes from the present setting. */
  Prediction after(Map<ChangeKind, Double> changes) {
    int m = offsets.size();
    RealMatrix row = new Array2DRowRealMatrix(m, learnt.mean().getDimension());
    for (int j = 0; j < m; j++) {
      row.setEntry(j, j, 1);
      for (int i = 0; i < kinds.size(); i++) {
        row.setEntry(j, m * (1 + i) + j, changes.getOrDefault(kinds.get(i), 0.0));
      }
    }
    return new Prediction(
        row.operate(learnt.mean()),
        row.multiply(learnt.covariance()).multiply(row.transpose()).scalarMultiply(widened));
  }

  /** What one unit of a kind does to an offset, mm, by what was learnt. */
  Response response(ChangeKind kind, int offset) {
    int at = at(kind, offset);
    return new Response(
        learnt.mean().getEntry(at), Math.sqrt(widened * learnt.covariance().getEntry(at, at)));
  }

  /**
   * How one offset answers one unit of a change.
   *
   * @param mm expected, mm for each unit
   * @param sdMm its standard deviation
   */
  record Response(double mm, double sdMm) {}

  /** Mean of a parameter: 0 for the offset now, 1 and up for the kinds in their order. */
  double mean(int which, int offset) {
    return learnt.mean().getEntry(which * offsets.size() + offset);
  }

  /** Covariance of two parameters of one offset. */
  double covariance(int which, int other, int offset) {
    int m = offsets.size();
    return widened * learnt.covariance().getEntry(which * m + offset, other * m + offset);
  }

  private int at(ChangeKind kind, int offset) {
    return offsets.size() * (1 + kinds.indexOf(kind)) + offset;
  }
}
