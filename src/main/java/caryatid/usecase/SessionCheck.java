package caryatid.usecase;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.clinic.Clinic;
import caryatid.clinic.ClinicFile;
import caryatid.clinic.SessionAnswer;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.Provenance;
import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.Question;
import caryatid.remark.StoreFailure;
import caryatid.sheet.TrialSheet;
import caryatid.sheet.TrialSheetReader;
import caryatid.usecase.Check.Checked;
import java.nio.file.Files;
import java.util.List;
import java.util.Set;

/**
 * A check that asks nothing twice in a session: what was answered for a wearer on the same plate
 * and day goes into the sheet that is kept.
 */
public final class SessionCheck {
  private final Records records;
  private final CheckOf check;

  /**
   * @param records beside which the clinic remembers
   * @param check what is done, for example {@link KeepStand#check}
   */
  public SessionCheck(Records records, CheckOf check) {
    this.records = records;
    this.check = check;
  }

  /** A check of inputs. */
  public interface CheckOf {
    Checked of(Inputs inputs) throws BadInput, StoreFailure;
  }

  /**
   * What was found, and the inputs it was found in.
   *
   * @param inputs those that were given, with what was answered before
   * @param checked what was found
   * @param before the answers that were given before
   * @param notRemembered why the clinic could not remember the answers, if so
   */
  public record Answered(
      Inputs inputs, Checked checked, List<String> before, List<Problem> notRemembered) {
    public Answered {
      before = List.copyOf(before);
      notRemembered = List.copyOf(notRemembered);
    }
  }

  /**
   * Checks, and remembers the answers of the sheet that hold for the session.
   *
   * @throws BadInput if an input cannot be used, or a question is open that was not answered in
   *     this session
   * @throws StoreFailure if the check itself meets one
   */
  public Answered run(Inputs given) throws BadInput, StoreFailure {
    List<String> before;
    try {
      return answered(given, check.of(given), List.of());
    } catch (BadInput e) {
      before = known(e, given);
      if (before.isEmpty()) {
        throw e;
      }
    }
    Inputs inputs = given.answered(before);
    return answered(inputs, check.of(inputs), before);
  }

  private List<String> known(BadInput asked, Inputs inputs) throws BadInput {
    if (asked.questions().stream().noneMatch(question -> question.topic().holdsForSession())) {
      return List.of();
    }
    Set<String> answers =
        new ClinicFile(records.folder()).read().answers(session(sheet(inputs), inputs));
    return asked.questions().stream()
        .filter(question -> question.topic().holdsForSession())
        .map(Question::answer)
        .filter(answers::contains)
        .toList();
  }

  private Answered answered(Inputs inputs, Checked checked, List<String> before) throws BadInput {
    try {
      remember(inputs, checked);
      return new Answered(inputs, checked, before, List.of());
    } catch (StoreFailure e) {
      return new Answered(inputs, checked, before, e.problems());
    }
  }

  /** A check alone makes no folder of records. */
  private void remember(Inputs inputs, Checked checked) throws BadInput, StoreFailure {
    TrialSheet sheet = checked.result().state().trial();
    String session = session(sheet, inputs);
    List<SessionAnswer> answers =
        checked.asked().stream()
            .filter(question -> question.topic().holdsForSession())
            .map(
                question -> new SessionAnswer(sheet.at().toLocalDate(), session, question.answer()))
            .toList();
    if (!answers.isEmpty() && Files.isDirectory(records.folder())) {
      ClinicFile file = new ClinicFile(records.folder());
      Clinic clinic = file.read();
      Clinic more = clinic.with(answers);
      if (!more.equals(clinic)) {
        file.write(more);
      }
    }
  }

  private static TrialSheet sheet(Inputs inputs) throws BadInput {
    return TrialSheetReader.read(inputs.sheet(), new EarlierSheetFinder(inputs.beside()));
  }

  private static String session(TrialSheet sheet, Inputs inputs) throws BadInput {
    String plate =
        inputs.description().isPresent() ? Provenance.of(inputs.description().get()).sha512() : "";
    String all = String.join("\n", sheet.wearer(), sheet.at().toLocalDate().toString(), plate);
    return Provenance.of(NamedBytes.of("session", all.getBytes(UTF_8))).sha512();
  }
}
