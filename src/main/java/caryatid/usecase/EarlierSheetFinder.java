package caryatid.usecase;

import caryatid.recording.model.NamedBytes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Finds earlier sheets and remembers which were used. */
final class EarlierSheetFinder implements Function<String, Optional<NamedBytes>> {
  private final Function<String, Optional<NamedBytes>> finder;
  private final List<NamedBytes> used = new ArrayList<>();

  EarlierSheetFinder(Function<String, Optional<NamedBytes>> finder) {
    this.finder = finder;
  }

  @Override
  public Optional<NamedBytes> apply(String name) {
    Optional<NamedBytes> found = finder.apply(name);
    found.ifPresent(used::add);
    return found;
  }

  List<NamedBytes> used() {
    return List.copyOf(used);
  }
}
