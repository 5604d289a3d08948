package caryatid.recording.model;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** How exports write units: {@code N m}, {@code N.mm}, {@code [µs]}. */
public final class UnitNames {
  private UnitNames() {}

  /**
   * A unit's name without what exports vary: case, blanks, dots, hyphens, the two signs for micro.
   */
  static String plain(String text) {
    return text.strip()
        .toLowerCase(Locale.ROOT)
        .replace('\u03bc', 'u')
        .replace('\u00b5', 'u')
        .replaceAll("[\\s.·*⋅_-]", "");
  }

  /** The constant that has the given name among its names, which are separated by blanks. */
  static <E> Optional<E> find(E[] units, Function<E, String> names, String text) {
    String plain = plain(text);
    return Arrays.stream(units).filter(unit -> among(names.apply(unit), plain)).findFirst();
  }

  /** Whether a word is in a list of words separated by blanks. */
  public static boolean among(String words, String word) {
    return !word.isEmpty() && (" " + words + " ").contains(" " + word + " ");
  }

  /** Whether two texts are written for one unit. */
  public static boolean same(String one, String other) {
    return plain(one).equals(plain(other))
        || both(ForceUnit.named(one), ForceUnit.named(other))
        || both(MomentUnit.named(one), MomentUnit.named(other))
        || both(LengthUnit.named(one), LengthUnit.named(other))
        || both(TimeUnit.named(one), TimeUnit.named(other));
  }

  private static <U> boolean both(Optional<U> one, Optional<U> other) {
    return one.isPresent() && one.equals(other);
  }

  /** Whether a text is a unit this package knows, of whatever kind. */
  public static boolean known(String text) {
    return ForceUnit.named(text).isPresent()
        || MomentUnit.named(text).isPresent()
        || LengthUnit.named(text).isPresent()
        || TimeUnit.named(text).isPresent()
        || RawUnit.named(text).isPresent();
  }
}
