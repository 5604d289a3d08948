package caryatid.exchange;

import caryatid.entry.Entry;
import caryatid.entry.Sending;
import caryatid.fitting.Addition;
import caryatid.fitting.RecordCode;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.usecase.Records;
import caryatid.usecase.file.FileAccess;
import caryatid.usecase.file.Output;
import caryatid.wording.Wording;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Sends a record to a clinic's system: the file first, then the patient is sought, the bundle sent,
 * what is stored read back and compared, and all that noted in the record. Run again with the same
 * file, it goes on where it was interrupted: nothing is stored twice.
 */
public final class SendRecord {
  private SendRecord() {}

  /**
   * What is sent, and where.
   *
   * @param file where the bundle is kept
   * @param patient whose record it is there
   * @param to the system
   * @param token what it lets the sender in by; empty where it wants none
   * @param patience how long one answer may take
   * @param newPatient whether a patient that the system does not know is made there
   * @param by initials of who sends
   */
  public record SendingOrder(
      Path file,
      PatientIdentifier patient,
      ServerAddress to,
      Optional<AccessToken> token,
      Duration patience,
      boolean newPatient,
      String by) {}

  /**
   * What became of it.
   *
   * @param created resources that the system did not have
   * @param there resources that it had
   * @param entry the number of the entry that notes it; empty where the same was noted before
   */
  public record SendingDone(int created, int there, Optional<Integer> entry) {}

  /**
   * Sends a record.
   *
   * @throws BadInput if the record cannot be told, the file holds something else, or the system
   *     does not know the patient, or knows several
   * @throws StoreFailure if the file or the entry cannot be written, the system cannot be reached,
   *     refuses or stores something else; the file is there then
   */
  public static SendingDone run(
      Records records, String code, SendingOrder order, Wording wording, FileAccess files)
      throws BadInput, StoreFailure {
    requireInitials(order.by());
    BundleRecord.MadeBundle made = BundleRecord.made(records, code, order.patient(), wording);
    keep(order.file(), made.bytes(), files);
    FhirServer server = new FhirServer(order.to(), order.token(), order.patience());
    try {
      requirePatient(server, order);
      SentBundle.Counts counts = SentBundle.to(server, made.bytes());
      Optional<Integer> entry = note(records, RecordCode.of(code), order, made.upTo(), counts);
      return new SendingDone(counts.created(), counts.there(), entry);
    } catch (StoreFailure e) {
      List<Problem> problems = new ArrayList<>(e.problems());
      problems.add(Problem.at(Place.of(order.file().toString()), ExchangeProblem.KEPT_TO_GO_ON));
      throw new StoreFailure(problems);
    }
  }

  private static void requireInitials(String by) throws BadInput {
    if (!Entry.isInitials(by)) {
      throw new BadInput(Problem.at(Place.of("--by"), ExchangeProblem.BAD_SENDER));
    }
  }

  /** A file of an interrupted sending is taken as it is, if the record still says the same. */
  private static void keep(Path file, byte[] bundle, FileAccess files)
      throws BadInput, StoreFailure {
    Optional<NamedBytes> there = files.find(file);
    if (there.isEmpty()) {
      files.write(new Output(file, false), bundle);
    } else if (!Arrays.equals(there.get().readAll(), bundle)) {
      throw new BadInput(Problem.at(Place.of(file.toString()), ExchangeProblem.OTHER_FILE));
    }
  }

  /** A slip in the number must not make a patient who does not exist. */
  private static void requirePatient(FhirServer server, SendingOrder order)
      throws BadInput, StoreFailure {
    PatientIdentifier patient = order.patient();
    int known =
        server.search("Patient", BundledResource.query(patient.system(), patient.value())).size();
    if (known > 1) {
      throw new BadInput(
          Problem.at(order.to().place(), ExchangeProblem.SEVERAL_PATIENTS, Argument.count(known)));
    }
    if (known == 0 && !order.newPatient()) {
      throw new BadInput(Problem.at(order.to().place(), ExchangeProblem.NO_PATIENT));
    }
  }

  private static Optional<Integer> note(
      Records records, RecordCode code, SendingOrder order, int upTo, SentBundle.Counts counts)
      throws BadInput, StoreFailure {
    String to = order.to().base().toString();
    boolean noted =
        Entry.contents(records.store().read(code).entries(), Sending.class)
            .anyMatch(earlier -> earlier.to().equals(to) && earlier.upTo() == upTo);
    if (noted && counts.created() == 0) {
      return Optional.empty();
    }
    Addition addition =
        new Addition(
            records.now(),
            order.by(),
            Optional.empty(),
            new Sending(to, upTo, counts.created()),
            List.of());
    return Optional.of(records.store().add(code, addition).number());
  }
}
