package caryatid.fitting;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.RecordOpening;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.sheet.AmputationLevel;
import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A fitting record as a value: the entries that can be read, and problems of those that cannot.
 *
 * @param code the record's code
 * @param headDigest SHA-512 of the record's inventory, lower-case hexadecimal: it changes if any
 *     byte of any entry changes
 * @param size how many entries the head digest vouches for, whether or not they can be read
 * @param added how many entries were ever added, as far as can be seen, whether or not they can be
 *     read
 * @param digests SHA-512 of each file, lower-case hexadecimal, by its path in the record: the
 *     folder of its entry, a slash, its name
 * @param entries the undamaged entries, in the order they were added
 * @param damage what is damaged; empty for a record in good order. Kept files are checked only when
 *     they are opened
 * @param unread the undamaged entries that this version of the program cannot read; nothing is
 *     added to such a record
 */
public record FittingRecord(
    RecordCode code,
    String headDigest,
    int size,
    int added,
    Map<String, String> digests,
    List<Entry> entries,
    List<Problem> damage,
    List<UnreadableEntry> unread) {

  public FittingRecord {
    digests = Collections.unmodifiableMap(new TreeMap<>(digests));
    entries = List.copyOf(entries);
    damage = List.copyOf(damage);
    unread = List.copyOf(unread);
  }

  /** The kind of an entry by its folder's name; empty if no file of it is listed. */
  public Optional<EntryKind> kindOf(int number) {
    String lead = String.format(Locale.ROOT, "%04d-", number);
    return digests.keySet().stream()
        .filter(path -> path.startsWith(lead))
        .map(path -> path.substring(lead.length(), path.indexOf('/')))
        .flatMap(key -> EntryKind.of(key).stream())
        .findFirst();
  }

  /** What is damaged, and what cannot be read. */
  public List<Problem> notShown() {
    return Stream.concat(damage.stream(), unread.stream().flatMap(u -> u.problems().stream()))
        .toList();
  }

  /**
   * The entry of a number.
   *
   * @throws BadInput if there is none, or it is damaged
   */
  public Entry entry(int number) throws BadInput {
    Optional<Entry> entry = entries.stream().filter(e -> e.number() == number).findFirst();
    return entry.orElseThrow(
        () ->
            new BadInput(
                Problem.at(
                    Place.of(code.text()), RecordProblem.NO_SUCH_ENTRY, Argument.count(number))));
  }

  /** The entry that takes an entry's place, where it was corrected. */
  public Optional<Entry> correctionOf(Entry entry) {
    return entries.stream()
        .filter(e -> e.corrects().filter(c -> c.number() == entry.number()).isPresent())
        .findFirst();
  }

  /** The stands that were not corrected, by their number. */
  public List<Entry> stands() {
    return entries.stream()
        .filter(e -> e.kind() == EntryKind.STAND && correctionOf(e).isEmpty())
        .toList();
  }

  /** The opening; empty if it is damaged or the record was erased. */
  public Optional<RecordOpening> opening() {
    return valid().stream().flatMap(e -> e.content(RecordOpening.class).stream()).findFirst();
  }

  /** The levels of amputation in the opening; none if that is damaged or the record was erased. */
  public List<AmputationLevel> levels() {
    return opening().map(RecordOpening::levels).orElse(List.of());
  }

  /**
   * When what an entry says was so: its own time; of a correction the time that it states, else
   * that of the entry it corrects.
   */
  public OffsetDateTime timeOf(Entry entry) {
    if (entry.corrects().isEmpty()) {
      return entry.at();
    }
    Entry.Correction correction = entry.corrects().get();
    return correction
        .asOf()
        .orElseGet(
            () ->
                entries.stream()
                    .filter(e -> e.number() == correction.number())
                    .findFirst()
                    .map(this::timeOf)
                    .orElse(entry.at()));
  }

  /**
   * The entries that no other takes the place of, in the order of their times, those of one time in
   * the order they were added: the last one of a kind is the latest, whenever it was added.
   */
  public List<Entry> valid() {
    return validUpTo(size());
  }

  /** The same as it was after an entry was added. */
  public List<Entry> validUpTo(int number) {
    return entries.stream()
        .filter(e -> e.number() <= number)
        .filter(e -> correctionOf(e).filter(c -> c.number() <= number).isEmpty())
        .sorted(
            Comparator.comparing((Entry e) -> timeOf(e).toInstant())
                .thenComparingInt(Entry::number))
        .toList();
  }

  /** The latest valid entry of a kind. */
  public Optional<Entry> latest(EntryKind kind) {
    return Entry.latest(valid(), entry -> entry.kind() == kind);
  }

  /** Whether the record was erased and only says so. */
  public boolean isErased() {
    return entries.stream().anyMatch(e -> e.kind() == EntryKind.ERASURE);
  }

  /** The SHA-512 of a kept file, lower-case hexadecimal; empty if it is not listed. */
  public Optional<String> digest(Entry entry, KeptFile file) {
    return Optional.ofNullable(digests.get(entry.folder() + "/" + file.name()));
  }
}
