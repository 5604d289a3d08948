package caryatid.recording.model;

import java.util.BitSet;

/**
 * Which samples of a plate can be used: loaded, with a value in every channel. The other samples
 * hold zeros in the series and mean nothing.
 */
public final class UsableMask {
  private final BitSet bits;
  private final int size;
  private final boolean all;

  /** A copy of the bits, for a number of samples. */
  public UsableMask(BitSet bits, int size) {
    this.bits = bits.get(0, size);
    this.size = size;
    this.all = this.bits.cardinality() == size;
  }

  /** All samples usable. */
  public static UsableMask all(int size) {
    BitSet bits = new BitSet(size);
    bits.set(0, size);
    return new UsableMask(bits, size);
  }

  /** All samples but some. */
  public static UsableMask without(BitSet left, int size) {
    BitSet bits = new BitSet(size);
    bits.set(0, size);
    bits.andNot(left);
    return new UsableMask(bits, size);
  }

  /** Whether a sample can be used. */
  public boolean at(int index) {
    return all ? index < size : bits.get(index);
  }

  /** Whether all samples {@code from} up to, not including, {@code to} can be used. */
  public boolean throughout(int from, int to) {
    return bits.nextClearBit(from) >= to;
  }

  /** How many can be used. */
  public int count() {
    return bits.cardinality();
  }

  /** How many samples there are. */
  public int size() {
    return size;
  }

  /** Samples that both can use. */
  public UsableMask and(UsableMask other) {
    BitSet both = (BitSet) bits.clone();
    both.and(other.bits);
    return new UsableMask(both, size);
  }
}
