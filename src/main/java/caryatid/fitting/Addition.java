package caryatid.fitting;

import caryatid.recording.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * What is to be added to a record.
 *
 * @param kind what it is about
 * @param at when, with the offset from UTC
 * @param by initials of who adds it
 * @param corrects the entry it takes the place of
 * @param content what it says; fits the kind's form
 * @param files what is kept with it
 */
public record Addition(
    EntryKind kind,
    OffsetDateTime at,
    String by,
    Optional<Entry.Correction> corrects,
    Answers content,
    List<Attached> files) {

  /**
   * A file to be kept.
   *
   * @param is what it is
   * @param bytes its bytes and the name it had
   */
  public record Attached(KeptFile.Role is, NamedBytes bytes) {}

  public Addition {
    files = List.copyOf(files);
  }

  /**
   * The same addition, if its initials are some and it says or keeps something.
   *
   * @throws BadInput if not
   */
  public Addition checked() throws BadInput {
    Place place = Place.of(kind.key());
    if (!Entry.isInitials(by)) {
      throw new BadInput(Problem.at(place, FormFault.BAD_INITIALS, Argument.text(by)));
    }
    if (content.values().isEmpty() && files.isEmpty()) {
      Argument keys = Argument.text(String.join(", ", kind.form().keys()));
      throw new BadInput(Problem.at(place, FormFault.NOTHING_SAID, keys));
    }
    return this;
  }
}
