package caryatid.entry;

import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * One entry of a fitting record.
 *
 * @param number its place in the record, from 1; also the number of the version that added it
 * @param at when, with the offset from UTC; of a correction, when it was corrected
 * @param by initials of who added it
 * @param corrects the entry it takes the place of
 * @param content what it says
 * @param files what is kept with it; names differ also without regard to case
 */
public record Entry(
    int number,
    OffsetDateTime at,
    String by,
    Optional<Correction> corrects,
    EntryContent content,
    List<KeptFile> files) {
  /** The name of the file that holds an entry. */
  public static final String FILE = "entry.json";

  /**
   * That an entry takes the place of an earlier one; the earlier one stays in the record.
   *
   * @param number the earlier entry
   * @param why what was wrong with it
   * @param asOf when what it says was so, where that is another time than the earlier entry's
   */
  public record Correction(int number, String why, Optional<OffsetDateTime> asOf) {}

  /**
   * @throws IllegalArgumentException if the number is not positive, the correction is not of an
   *     earlier entry, the initials are none or a file's name stands twice
   */
  public Entry {
    files = List.copyOf(files);
    if (number < 1 || corrects.filter(c -> c.number() < 1 || c.number() >= number).isPresent()) {
      throw new IllegalArgumentException("entry " + number + " corrects " + corrects);
    }
    if (!isInitials(by)) {
      throw new IllegalArgumentException("initials: " + by);
    }
    Set<String> names = new HashSet<>();
    if (!files.stream().allMatch(f -> names.add(f.name().toLowerCase(Locale.ROOT)))) {
      throw new IllegalArgumentException("a file's name stands twice: " + files);
    }
  }

  /** Whether a text is somebody's initials or short code: one to ten letters and digits. */
  public static boolean isInitials(String text) {
    return text.matches("[\\p{L}\\p{N}]{1,10}");
  }

  /** The recordings that are kept with it. */
  public List<KeptFile> recordings() {
    return files.stream().filter(f -> f.is() == KeptFile.Role.RECORDING).toList();
  }

  /** What it is about. */
  public EntryKind kind() {
    return content.kind();
  }

  /** Its content, if it is of a kind: that of a stand for {@code StandSummary.class}. */
  public <C extends EntryContent> Optional<C> content(Class<C> kind) {
    return Optional.of(content).filter(kind::isInstance).map(kind::cast);
  }

  /** The contents of those entries that are of a kind, in the order of the entries. */
  public static <C extends EntryContent> Stream<C> contents(List<Entry> entries, Class<C> kind) {
    return entries.stream().flatMap(entry -> entry.content(kind).stream());
  }

  /** What the last of those entries that is of a kind says. */
  public static <C extends EntryContent> Optional<C> latest(List<Entry> entries, Class<C> kind) {
    return contents(entries, kind).reduce((earlier, later) -> later);
  }

  /** The last of those entries that some holds for. */
  public static Optional<Entry> latest(List<Entry> entries, Predicate<Entry> some) {
    return entries.stream().filter(some).reduce((earlier, later) -> later);
  }

  /** The name of the entry's folder, for example {@code 0007-stand}. */
  public String folder() {
    return String.format(Locale.ROOT, "%04d-%s", number, kind().key());
  }

  /** Whether it is a stand with typed numbers, for which no result of a recording is kept. */
  public boolean isTyped() {
    return kind() == EntryKind.STAND && file(KeptFile.Role.RESULT).isEmpty();
  }

  /** The file of a role, the first where there are several. */
  public Optional<KeptFile> file(KeptFile.Role is) {
    return files.stream().filter(f -> f.is() == is).findFirst();
  }
}
