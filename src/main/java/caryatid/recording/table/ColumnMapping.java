package caryatid.recording.table;

import caryatid.remark.Problem;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalInt;

/**
 * What a table's columns mean.
 *
 * @param time the column of times, by its place in a row
 * @param index the column that counts the samples, where there is none of times
 * @param plates the plates whose centre of pressure can be found
 * @param problems what the description asks for and the table does not hold
 */
public record ColumnMapping(
    OptionalInt time, OptionalInt index, List<PlateColumns> plates, List<Problem> problems) {
  public ColumnMapping {
    plates = List.copyOf(plates);
    problems = List.copyOf(problems);
  }

  /** The columns to be read; none where the table holds no plate. */
  public BitSet wanted() {
    BitSet wanted = new BitSet();
    plates.stream().flatMap(PlateColumns::wanted).forEach(wanted::set);
    if (!plates.isEmpty()) {
      time.ifPresent(wanted::set);
      index.ifPresent(wanted::set);
    }
    return wanted;
  }
}
