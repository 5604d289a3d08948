package caryatid.recording;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * A column of numbers that grows row by row, and which of its rows have none. Kept in pieces, so
 * that growing needs no second copy.
 */
final class Column {
  private static final int PIECE = 1 << 15;

  private final List<double[]> pieces = new ArrayList<>();
  private final BitSet holes = new BitSet();
  private double[] piece = {};
  private int within = PIECE;
  private int size;

  void add(double value) {
    if (within == PIECE) {
      piece = new double[PIECE];
      pieces.add(piece);
      within = 0;
    }
    piece[within++] = value;
    size++;
  }

  void addHole() {
    holes.set(size);
    add(0);
  }

  int size() {
    return size;
  }

  /** A row's number; 0 for a hole. */
  double at(int row) {
    return pieces.get(row / PIECE)[row % PIECE];
  }

  /** Whether every number is 0 or missing. */
  boolean allZero() {
    for (int row = 0; row < size; row++) {
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
    double[] all = new double[size];
    for (int piece = 0; piece < pieces.size(); piece++) {
      int start = piece * PIECE;
      System.arraycopy(pieces.get(piece), 0, all, start, Math.min(PIECE, size - start));
      pieces.set(piece, new double[0]);
    }
    pieces.clear();
    piece = new double[0];
    within = PIECE;
    size = 0;
    return all;
  }
}
