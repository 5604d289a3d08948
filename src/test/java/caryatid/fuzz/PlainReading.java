package caryatid.fuzz;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads a sample's rows in the sample's own form alone, and leaves out what is no row of it. */
enum PlainReading {
  /** Time, vertical force, centre of pressure. */
  PRESSURE(",", 4) {
    @Override
    double[] load(double[] row) {
      return new double[] {row[1], row[2], row[3]};
    }
  },
  /** Time, forces, moments about a true origin at (0.5, -1, -40) mm. */
  FORCES(";", 7) {
    @Override
    double[] load(double[] row) {
      double up = row[3];
      double right = 0.5 + (40 * row[1] - row[5]) / up;
      double anterior = -1 + (40 * row[2] + row[4]) / up;
      return new double[] {up, right, anterior};
    }
  };

  private final String delimiter;
  private final int cells;

  PlainReading(String delimiter, int cells) {
    this.delimiter = delimiter;
    this.cells = cells;
  }

  /** Vertical force, then the centre of pressure to the right and anterior, mm. */
  abstract double[] load(double[] row);

  /** The force-weighted mean centre of pressure in a part, s from the first row; mm. */
  Optional<double[]> centre(Path file, double fromS, double toS) throws IOException {
    List<double[]> rows =
        Files.readString(file, StandardCharsets.ISO_8859_1)
            .lines()
            .map(this::row)
            .flatMap(Optional::stream)
            .toList();
    double[] sums = new double[3];
    for (double[] row : rows) {
      double time = row[0] - rows.get(0)[0];
      if (time > fromS - 1e-6 && time < toS + 1e-6) {
        double[] load = load(row);
        sums[0] += load[0];
        sums[1] += load[0] * load[1];
        sums[2] += load[0] * load[2];
      }
    }
    return sums[0] > 0
        ? Optional.of(new double[] {sums[1] / sums[0], sums[2] / sums[0]})
        : Optional.empty();
  }

  private Optional<double[]> row(String line) {
    String[] written = line.split(delimiter, -1);
    try {
      return written.length == cells
          ? Optional.of(
              Arrays.stream(written)
                  .mapToDouble(cell -> Double.parseDouble(cell.replace(',', '.')))
                  .toArray())
          : Optional.empty();
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }
}
