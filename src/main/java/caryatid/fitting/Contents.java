package caryatid.fitting;

import caryatid.entry.Content;
import caryatid.entry.Entry;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What entries of one kind say. */
public final class Contents {
  private Contents() {}

  /** What an entry says, if it is of a kind. */
  public static <C extends Content> Optional<C> of(Entry entry, Class<C> kind) {
    return Optional.of(entry.content()).filter(kind::isInstance).map(kind::cast);
  }

  /** What the entries of a kind say, in their order. */
  public static <C extends Content> Stream<C> all(List<Entry> entries, Class<C> kind) {
    return entries.stream().flatMap(e -> of(e, kind).stream());
  }
}
