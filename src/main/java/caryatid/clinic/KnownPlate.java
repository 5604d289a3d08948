package caryatid.clinic;

import java.util.List;

/**
 * A plate description that the clinic remembers.
 *
 * @param columns the names of the columns of the exports that it is for, in their order; empty
 *     texts for columns without a name
 * @param name the file name it had
 * @param description its text
 */
public record KnownPlate(List<String> columns, String name, String description) {
  public KnownPlate {
    columns = List.copyOf(columns);
  }

  /** Whether the description holds a proof. */
  public boolean isProven() {
    return description.lines().anyMatch("proof:"::equals);
  }
}
