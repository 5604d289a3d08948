package caryatid.sheet.yaml;

import java.util.Optional;

/** How a single value must be written, and what it then means. */
@FunctionalInterface
public interface Form<T> {

  /** The value; empty after a problem was noted with {@link Written#refuse}. */
  Optional<T> read(Written written);

  /** The value together with where it stands. */
  default Form<Located<T>> located() {
    return written -> read(written).map(value -> new Located<>(value, written.place()));
  }
}
