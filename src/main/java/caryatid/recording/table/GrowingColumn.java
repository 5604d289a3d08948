package caryatid.recording.table;

import java.util.Arrays;
import java.util.BitSet;

/**
 * A column that grows row by row while its table is read. Kept in pieces, so that growing needs no
 * second copy.
 */
final class GrowingColumn {
  private static final int PIECE = 1 << 15;

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

  /**
   * The column as it is at the end of the table. This one lets go of each piece once it is copied.
   */
  NumberColumn grown() {
    double[] all = new double[size()];
    for (int i = 0; i < pieces.length; i++) {
      int start = i * PIECE;
      System.arraycopy(pieces[i], 0, all, start, Math.min(PIECE, all.length - start));
      pieces[i] = new double[0];
    }
    return new NumberColumn(all, holes);
  }
}
