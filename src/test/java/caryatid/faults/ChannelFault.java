package caryatid.faults;

import java.util.Arrays;

/** What may befall one column of an export; the part that fails is one second of the stand. */
enum ChannelFault {
  ZERO {
    @Override
    double[] in(double[] values, double rateHz) {
      return new double[values.length];
    }
  },
  CONSTANT {
    @Override
    double[] in(double[] values, double rateHz) {
      double[] constant = new double[values.length];
      Arrays.fill(constant, values[values.length / 2]);
      return constant;
    }
  },
  FROZEN_FOR_A_SECOND {
    @Override
    double[] in(double[] values, double rateHz) {
      double[] frozen = values.clone();
      int from = (int) (FROM_S * rateHz);
      Arrays.fill(frozen, from, from + (int) rateHz, values[from - 1]);
      return frozen;
    }
  },
  MISSING_FOR_A_SECOND {
    @Override
    double[] in(double[] values, double rateHz) {
      double[] missing = values.clone();
      int from = (int) (FROM_S * rateHz);
      Arrays.fill(missing, from, from + (int) rateHz, Double.NaN);
      return missing;
    }
  },
  TEN_TIMES {
    @Override
    double[] in(double[] values, double rateHz) {
      return Arrays.stream(values).map(value -> 10 * value).toArray();
    }
  },
  A_TENTH {
    @Override
    double[] in(double[] values, double rateHz) {
      return Arrays.stream(values).map(value -> value / 10).toArray();
    }
  };

  static final double FROM_S = 9;

  /** The column with the fault; a cell is emptied where the number is not one. */
  abstract double[] in(double[] values, double rateHz);
}
