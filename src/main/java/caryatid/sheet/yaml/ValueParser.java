package caryatid.sheet.yaml;

import java.util.Optional;

/** How a single value must be written, and what it then means. */
@FunctionalInterface
public interface ValueParser<T> {

  /** The value; empty after a problem was noted with {@link YamlScalar#refuse}. */
  Optional<T> read(YamlScalar written);

  /** The value together with where it stands. */
  default ValueParser<LocatedValue<T>> located() {
    return written -> read(written).map(value -> new LocatedValue<>(value, written.place()));
  }
}
