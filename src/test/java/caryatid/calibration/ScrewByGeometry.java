package caryatid.calibration;

import java.util.List;
import java.util.Optional;

/**
 * What the advice is compared with: one screw at a time by geometry alone. It takes the amount of
 * the one screw after which, by geometry, the measured offsets lie nearest to what is recommended:
 * the smallest sum of squares of their distances over their tolerances. Where all measured offsets
 * are within, or no amount helps, the wearer stands again.
 */
final class ScrewByGeometry implements Strategy {
  @Override
  public Step next(List<Visit> visits) {
    Visit now = visits.get(visits.size() - 1);
    double[] mm = new double[AlignedWearer.WHERE.size()];
    double beyond = 0;
    for (int offset = 0; offset < mm.length; offset++) {
      mm[offset] = now.measuredMm(offset);
      beyond += AlignedWearer.beyondMm(offset, mm[offset]);
    }
    return beyond == 0 ? Step.AGAIN : new Step(best(now.settings(), mm), List.of());
  }

  private static Optional<Turn> best(double[] settings, double[] mm) {
    Optional<Turn> best = Optional.empty();
    double least = apart(mm, Screw.ANKLE, 0);
    for (Screw screw : Screw.values()) {
      int most = (int) StrictMath.round(2 * screw.travel() / screw.step());
      for (int i = -most; i <= most; i++) {
        double by = i * screw.step();
        boolean goes = StrictMath.abs(settings[screw.ordinal()] + by) <= screw.travel() + 1e-9;
        double apart = apart(mm, screw, by);
        if (goes && apart < least - 1e-12) {
          least = apart;
          best = Optional.of(new Turn(screw, by));
        }
      }
    }
    return best;
  }

  private static double apart(double[] mm, Screw screw, double by) {
    double sum = 0;
    for (int offset = 0; offset < mm.length; offset++) {
      var target = AlignedWearer.WHERE.get(offset);
      double apart = mm[offset] + by * screw.slope(offset) - target.recommendedMm();
      sum += apart * apart / (target.aboveMm() * target.aboveMm());
    }
    return sum;
  }
}
