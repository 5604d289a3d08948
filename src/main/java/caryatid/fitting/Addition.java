package caryatid.fitting;

import caryatid.entry.Entry;
import caryatid.entry.EntryContent;
import caryatid.entry.EntryKind;
import caryatid.entry.KeptFile;
import caryatid.entry.form.Answers;
import caryatid.entry.form.ContentToAnswers;
import caryatid.entry.form.EntryForms;
import caryatid.entry.form.FormFault;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * An entry that is to be added to a record, with its files.
 *
 * @param at when, with the offset from UTC
 * @param by initials of who adds it
 * @param corrects the entry it replaces
 * @param content what it says
 * @param files what is kept with it
 */
public record Addition(
    OffsetDateTime at,
    String by,
    Optional<Entry.Correction> corrects,
    EntryContent content,
    List<Attached> files) {

  /** Clocks of plates and computers differ, and so do their ideas of summer time. */
  public static final Duration TOLERANCE = Duration.ofDays(1);

  /** No plate measured a standing person's centre of pressure before. */
  private static final int FIRST_YEAR = 1950;

  /**
   * A file to be kept.
   *
   * @param is what it is
   * @param bytes its bytes and the name it had
   */
  public record Attached(KeptFile.Role is, NamedBytes bytes) {

    /** Its name without the folders it lay in, which have no place in a record. */
    public String name() {
      String path = bytes.name();
      return path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
    }
  }

  public Addition {
    files = List.copyOf(files);
  }

  /** What it is about. */
  public EntryKind kind() {
    return content.kind();
  }

  /** What it says, as answers to the form of its kind. */
  Answers answers() {
    return ContentToAnswers.answers(content);
  }

  /**
   * The same addition, if its initials are some, its time can be and it says or keeps something.
   *
   * @param now the time now
   * @throws BadInput if not
   */
  public Addition checked(OffsetDateTime now) throws BadInput {
    Place place = Place.of(kind().key());
    checkTime(place, at, now);
    if (corrects.flatMap(Entry.Correction::asOf).isPresent()) {
      checkTime(place, corrects.flatMap(Entry.Correction::asOf).get(), now);
    }
    if (!Entry.isInitials(by)) {
      throw new BadInput(Problem.at(place, FormFault.BAD_INITIALS, Argument.text(by)));
    }
    if (answers().values().isEmpty() && files.isEmpty()) {
      Argument keys = Argument.text(String.join(", ", EntryForms.of(kind()).keys()));
      throw new BadInput(Problem.at(place, FormFault.NOTHING_SAID, keys));
    }
    return this;
  }

  /**
   * The same addition, if nothing in it might identify the wearer.
   *
   * @throws BadInput with each field that does
   */
  public Addition anonymous() throws BadInput {
    IdentityCheck.require(this);
    return this;
  }

  private static void checkTime(Place place, OffsetDateTime time, OffsetDateTime now)
      throws BadInput {
    if (time.isAfter(now.plus(TOLERANCE))) {
      throw new BadInput(
          Problem.at(
              place,
              FormFault.TIME_AHEAD,
              Argument.text(time.toString()),
              Argument.text(now.truncatedTo(ChronoUnit.SECONDS).toString())));
    }
    if (time.getYear() < FIRST_YEAR) {
      Argument found = Argument.text(time.toString());
      throw new BadInput(Problem.at(place, FormFault.TIME_LONG_AGO, found));
    }
  }
}
