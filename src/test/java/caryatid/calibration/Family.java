package caryatid.calibration;

import caryatid.samples.Noise;
import caryatid.samples.Sway;

/** A kind of simulated people: a person drawn from it sways in a way of their own. */
interface Family {

  /** What it is called in the tables. */
  String title();

  /** A person's sway fore and aft, and sideways. */
  Swaying draw(Noise noise);

  /**
   * How one person sways.
   *
   * @param fore fore and aft
   * @param side sideways
   */
  record Swaying(Sway fore, Sway side) {}

  /** One of the families by its title and what it draws in one direction for a size in mm. */
  static Family of(String title, Drawn one) {
    return new Family() {
      @Override
      public String title() {
        return title;
      }

      @Override
      public Swaying draw(Noise noise) {
        Size size = Size.draw(noise);
        return new Swaying(one.draw(size.foreMm(), noise), one.draw(size.sideMm(), noise));
      }
    };
  }

  /** Draws a sway of a long-run standard deviation, mm. */
  interface Drawn {
    Sway draw(double sdMm, Noise noise);
  }

  /**
   * How much a person sways, long-run standard deviations, mm: log-normal, set so that standard
   * deviations over 60 s have about the percentiles of 1,930 real stands (Santos and Duarte 2016).
   */
  record Size(double foreMm, double sideMm) {
    static Size draw(Noise noise) {
      double both = 0.48 * noise.normal();
      return new Size(
          7.4 * StrictMath.exp(both), 5.2 * StrictMath.exp(1.1 * both + 0.28 * noise.normal()));
    }
  }
}
