package caryatid.fitting;

import caryatid.entry.Entry;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.Opening;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.sheet.AmputationLevel;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A record as it stands: what is whole, and what is not. */
public final class FittingRecord {
  private final ObjectFiles files;
  private final ObjectFiles.Vouched head;
  private final List<Entry> entries;
  private final List<Problem> damage;
  private final List<Unread> unread;
  private final int added;

  /**
   * @param added how many versions there are, also where the inventory that can be read is an
   *     earlier one
   */
  FittingRecord(
      ObjectFiles files,
      ObjectFiles.Vouched head,
      List<Entry> entries,
      List<Problem> damage,
      List<Unread> unread,
      int added) {
    this.files = files;
    this.head = head;
    this.entries = List.copyOf(entries);
    this.damage = List.copyOf(damage);
    this.unread = List.copyOf(unread);
    this.added = Math.max(added, head.inventory().head());
  }

  /** The record's code. */
  public RecordCode code() {
    return files.code();
  }

  /**
   * SHA-512 of the record's inventory, lower-case hexadecimal: one number that vouches for every
   * byte of every entry up to now.
   */
  public String headDigest() {
    return head.sum();
  }

  /** How many entries the head digest vouches for, whole or not. */
  public int size() {
    return head.inventory().head();
  }

  /** How many entries were ever added, as far as can be seen, whole or not. */
  int added() {
    return added;
  }

  /** The kind of an entry by its folder's name; empty where the inventory does not list it. */
  Optional<EntryKind> kindOf(int number) {
    String lead = String.format(Locale.ROOT, "%04d-", number);
    return head.inventory().files().keySet().stream()
        .filter(path -> path.startsWith(lead))
        .map(path -> path.substring(lead.length(), path.indexOf('/')))
        .flatMap(key -> EntryKind.of(key).stream())
        .findFirst();
  }

  /** The entries that are whole, in the order they were added. */
  public List<Entry> entries() {
    return entries;
  }

  /** What is not whole; empty for a record in good order. Kept files are checked when opened. */
  public List<Problem> damage() {
    return damage;
  }

  /** The entries that cannot be read although they are whole; nothing is added to such a record. */
  public List<Unread> unread() {
    return unread;
  }

  /** What is not whole, and what cannot be read. */
  public List<Problem> notShown() {
    return Stream.concat(damage.stream(), unread.stream().flatMap(u -> u.problems().stream()))
        .toList();
  }

  /**
   * The entry of a number.
   *
   * @throws BadInput if there is none, or it is not whole
   */
  public Entry entry(int number) throws BadInput {
    Optional<Entry> entry = entries.stream().filter(e -> e.number() == number).findFirst();
    return entry.orElseThrow(
        () ->
            new BadInput(
                Problem.at(
                    Place.of(code().text()), Keeping.NO_SUCH_ENTRY, Argument.count(number))));
  }

  /** The entry that takes an entry's place, where it was corrected. */
  public Optional<Entry> correctionOf(Entry entry) {
    return entries.stream()
        .filter(e -> e.corrects().filter(c -> c.number() == entry.number()).isPresent())
        .findFirst();
  }

  /** What the opening says; empty where it is hurt or the record erased. */
  Optional<Opening> opening() {
    return valid().stream().flatMap(e -> Contents.of(e, Opening.class).stream()).findFirst();
  }

  /** The level of amputation that the opening says; empty where it is hurt or erased. */
  public Optional<AmputationLevel> level() {
    return opening().map(Opening::level);
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
  List<Entry> validUpTo(int number) {
    return entries.stream()
        .filter(e -> e.number() <= number)
        .filter(e -> correctionOf(e).filter(c -> c.number() <= number).isEmpty())
        .sorted(
            Comparator.comparing((Entry e) -> timeOf(e).toInstant())
                .thenComparingInt(Entry::number))
        .toList();
  }

  /** Whether the record was erased and only says so. */
  public boolean isErased() {
    return entries.stream().anyMatch(e -> e.kind() == EntryKind.ERASURE);
  }

  /** The SHA-512 sum of a kept file, as the inventory lists it; empty where it does not. */
  Optional<String> digest(Entry entry, KeptFile file) {
    return Optional.ofNullable(head.inventory().files().get(entry.folder() + "/" + file.name()));
  }

  /**
   * The bytes of a kept file, as they were added.
   *
   * @throws BadInput if they cannot be read, or are no longer what was added
   */
  public byte[] bytes(Entry entry, KeptFile file) throws BadInput {
    String path = entry.folder() + "/" + file.name();
    Optional<String> digest = digest(entry, file);
    if (digest.isEmpty()) {
      throw new BadInput(Problem.at(Place.of(code().text() + "/" + path), Damage.MISSING));
    }
    String content = head.inventory().contents().getOrDefault(digest.get(), path);
    Place place = Place.of(code().text() + "/" + content);
    try {
      byte[] bytes = files.bytes(content);
      if (!Digests.of(Digests.SHA_512, bytes).equals(digest.get())) {
        throw new BadInput(Problem.at(place, Damage.CHANGED));
      }
      return bytes;
    } catch (IOException e) {
      throw new BadInput(Problem.at(place, Damage.UNREADABLE, Argument.text(Reason.of(e))));
    }
  }
}
