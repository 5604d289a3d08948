package caryatid.samples;

/**
 * Random numbers that follow from a seed alone: SplitMix64 (Steele, Lea and Flood 2014, Fast
 * splittable pseudorandom number generators, OOPSLA; constants from memory) and the polar method
 * (Marsaglia and Bray 1964, SIAM Review 6:260-264; from memory).
 */
public final class Noise {
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;
  private long state;
  private double spare;
  private boolean hasSpare;

  public Noise(long seed) {
    state = seed;
  }

  /** Another sequence, independent of what this one still draws. */
  public Noise split() {
    return new Noise(mix(next() ^ GOLDEN));
  }

  /** Evenly distributed, from 0 to below 1. */
  public double even() {
    return (next() >>> 11) * 0x1p-53;
  }

  /** Evenly distributed between two limits. */
  public double between(double low, double high) {
    return low + (high - low) * even();
  }

  /** Standard normal. */
  public double normal() {
    if (hasSpare) {
      hasSpare = false;
      return spare;
    }
    double u;
    double v;
    double r;
    do {
      u = between(-1, 1);
      v = between(-1, 1);
      r = u * u + v * v;
    } while (r >= 1 || r == 0);
    double factor = StrictMath.sqrt(-2 * StrictMath.log(r) / r);
    spare = v * factor;
    hasSpare = true;
    return u * factor;
  }

  /** 64 random bits. */
  long next() {
    state += GOLDEN;
    return mix(state);
  }

  private static long mix(long value) {
    long z = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
