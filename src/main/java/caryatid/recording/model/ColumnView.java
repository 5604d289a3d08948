package caryatid.recording.model;

import caryatid.remark.Coded;
import java.util.List;
import java.util.Optional;

/**
 * A column of an export as it is listed for the author of a plate description.
 *
 * @param number its place in a row, from 1
 * @param name as it stands in the file; empty where it has none
 * @param first its first cells, as they are written
 * @param byName what its name says
 * @param channel the channel that its name states
 * @param byNumbers what its numbers look like
 * @param low the 10th percentile of its numbers that are not near zero
 * @param high their 90th percentile
 */
public record ColumnView(
    int number,
    String name,
    List<String> first,
    ByName byName,
    Optional<Channel> channel,
    ByNumbers byNumbers,
    double low,
    double high) {
  /** What a name says. */
  public enum ByName implements Coded {
    TIME("ByName.TIME"),
    NUMBER("ByName.NUMBER"),
    CHANNEL("ByName.CHANNEL"),
    DERIVED("ByName.DERIVED"),
    NOTHING("ByName.NOTHING");

    private final String code;

    ByName(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  /** What numbers look like. */
  public enum ByNumbers implements Coded {
    /** No numbers at all. */
    TEXT("ByNumbers.TEXT"),
    CONSTANT("ByNumbers.CONSTANT"),
    RISING("ByNumbers.RISING"),
    /** As a person's weight in newtons. */
    WEIGHT_N("ByNumbers.WEIGHT_N"),
    /** As a person's weight in kilograms, or something else. */
    WEIGHT_KG("ByNumbers.WEIGHT_KG"),
    UNKNOWN("ByNumbers.UNKNOWN");

    private final String code;

    ByNumbers(String code) {
      this.code = code;
    }

    @Override
    public String code() {
      return code;
    }
  }

  public ColumnView {
    first = List.copyOf(first);
  }
}
