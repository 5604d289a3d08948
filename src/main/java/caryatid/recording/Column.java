package caryatid.recording;

import java.util.Arrays;
import java.util.BitSet;

/**
 * A column of numbers that grows row by row, and which of its rows have none. Kept in pieces, so
 * that growing needs no second copy.
 */
final class Column {
  private static final int BITS = 15;
  private static final int PIECE = 1 << BITS;

  private final BitSet holes = new BitSet();
  private double[][] pieces = {};
  private double[] piece = {};
  private int within = PIECE;
  private int full;

  void add(double value) {
    room()[within] = value;
    placed();
  }

  /** Where the next number goes, at {@link #place()}; it counts once it is {@link #placed()}. */
  double[] room() {
    if (within == PIECE) {
      grow();
    }
    return piece;
  }

  int place() {
    return within;
  }

  void placed() {
    within++;
  }

  private void grow() {
    full += piece.length;
    piece = new double[PIECE];
    pieces = Arrays.copyOf(pieces, pieces.length + 1);
    pieces[pieces.length - 1] = piece;
    within = 0;
  }

  void addHole() {
    holes.set(size());
    add(0);
  }

  int size() {
    return pieces.length == 0 ? 0 : full + within;
  }

  /** A row's number; 0 for a hole. */
  double at(int row) {
    return pieces[row >>> BITS][row & (PIECE - 1)];
  }

  /** The sum over rows, a hole counting 0. */
  double sum(int from, int to) {
    double sum = 0;
    for (int row = from; row < to; ) {
      double[] part = pieces[row >>> BITS];
      int end = Math.min(PIECE, (row & (PIECE - 1)) + to - row);
      for (int i = row & (PIECE - 1); i < end; i++, row++) {
        sum += part[i];
      }
    }
    return sum;
  }

  /** Whether every number is 0 or missing. */
  boolean allZero() {
    for (int row = 0; row < size(); row++) {
      if (at(row) != 0) {
        return false;
      }
    }
    return true;
  }

  /** Rows without a number; they hold 0. */
  BitSet holes() {
    return holes;
  }

  /** The numbers in one array; the column is empty afterwards. */
  double[] take() {
    double[] all = new double[size()];
    for (int i = 0; i < pieces.length; i++) {
      int start = i * PIECE;
      System.arraycopy(pieces[i], 0, all, start, Math.min(PIECE, all.length - start));
      pieces[i] = null;
    }
    pieces = new double[0][];
    piece = new double[0];
    within = PIECE;
    full = 0;
    return all;
  }
}
