package caryatid.standing;

/**
 * A trace summed up block by block, so that the mean over any run of whole blocks costs nothing
 * more. Where nothing was measured sideways, fore and aft stands for both.
 */
final class Blocks {
  private final int[] edges;
  private final double[] load;
  private final double[] loadRight;
  private final double[] loadAnterior;

  /**
   * @param signals the trace
   * @param edges first sample of each block, and one past the last of the last
   */
  Blocks(LoadSignals signals, int[] edges) {
    this.edges = edges;
    this.load = new double[edges.length];
    this.loadRight = new double[edges.length];
    this.loadAnterior = new double[edges.length];
    for (int b = 0; b + 1 < edges.length; b++) {
      add(signals, b);
    }
  }

  private void add(LoadSignals signals, int b) {
    double[] rightMm = signals.hasSideways() ? signals.rightMm : signals.anteriorMm;
    double sum = 0;
    double right = 0;
    double anterior = 0;
    for (int i = edges[b]; i < edges[b + 1]; i++) {
      sum += signals.upN[i];
      right += signals.upN[i] * rightMm[i];
      anterior += signals.upN[i] * signals.anteriorMm[i];
    }
    load[b + 1] = load[b] + sum;
    loadRight[b + 1] = loadRight[b] + right;
    loadAnterior[b + 1] = loadAnterior[b] + anterior;
  }

  /** Mean vertical force over blocks {@code from} up to, not including, {@code to}. */
  double force(int from, int to) {
    return (load[to] - load[from]) / (edges[to] - edges[from]);
  }

  /**
   * How far the mean centre of pressure lies apart between two runs of blocks, in the direction in
   * which it is further, mm.
   */
  double apartMm(int fromA, int toA, int fromB, int toB) {
    double right = right(fromB, toB) - right(fromA, toA);
    double anterior = anterior(fromB, toB) - anterior(fromA, toA);
    return Math.max(Math.abs(right), Math.abs(anterior));
  }

  private double right(int from, int to) {
    return (loadRight[to] - loadRight[from]) / (load[to] - load[from]);
  }

  private double anterior(int from, int to) {
    return (loadAnterior[to] - loadAnterior[from]) / (load[to] - load[from]);
  }

  /**
   * First sample of each of equally long blocks of a recording, and its length at the end. The same
   * blocks are found when time runs backwards, but for the middle of an even number of them.
   *
   * @param samples how many samples there are, at least 1
   * @param count how many blocks, at least 1
   */
  static int[] edges(int samples, int count) {
    int[] edges = new int[count + 1];
    for (int b = 0; b <= count / 2; b++) {
      int before = (int) ((long) samples * b / count);
      edges[b] = before;
      edges[count - b] = samples - before;
    }
    return edges;
  }
}
