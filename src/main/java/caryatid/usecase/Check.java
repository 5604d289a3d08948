package caryatid.usecase;

import caryatid.alignment.AlignmentState;
import caryatid.alignment.EarlierStates;
import caryatid.alignment.Result;
import caryatid.alignment.Stand;
import caryatid.alignment.StateAnalysis;
import caryatid.alignment.StateQuestions;
import caryatid.fitting.Addition;
import caryatid.fitting.SheetWords;
import caryatid.recording.importer.ExportDate;
import caryatid.recording.importer.Importer;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.Provenance;
import caryatid.recording.model.Recording;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.Question;
import caryatid.sheet.TrialSheet;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Checks the stands of one alignment state: named bytes in, one result out, nothing else touched.
 */
public final class Check {
  private Check() {}

  /**
   * A result and what it was found in, for drawing and keeping.
   *
   * @param result what was found
   * @param recordings the recordings, in the order of the inputs
   * @param earlierSheets the sheets that the trial sheet is based on, newest first
   * @param asked what can hardly be, whether the sheet says that it is meant or not
   */
  public record Checked(
      Result result,
      List<Recording> recordings,
      List<NamedBytes> earlierSheets,
      List<Question> asked) {
    public Checked {
      recordings = List.copyOf(recordings);
      earlierSheets = List.copyOf(earlierSheets);
      asked = List.copyOf(asked);
    }

    /** The same, asking this instead. */
    Checked asking(List<Question> other) {
      return new Checked(result, recordings, earlierSheets, other);
    }

    /**
     * The same, if nothing is open.
     *
     * @throws BadInput with the questions that the sheet does not answer
     */
    Checked answered(Place sheet) throws BadInput {
      List<Question> open = StateQuestions.unanswered(asked, result.state().trial());
      if (!open.isEmpty()) {
        throw BadInput.asked(sheet, open);
      }
      return this;
    }
  }

  /**
   * Checks the load line of one alignment state against its targets.
   *
   * @param now the time now
   * @throws BadInput if an input cannot be used, the sheet is of a time to come, or a question is
   *     open
   */
  public static Checked run(Inputs inputs, OffsetDateTime now) throws BadInput {
    Checked checked = withOpenQuestions(inputs);
    TrialSheet trial = checked.result().state().trial();
    Place sheet = Place.of(inputs.sheet().name());
    if (trial.at().minus(Addition.TOLERANCE).isAfter(now)) {
      throw new BadInput(
          Problem.at(
              sheet,
              CheckProblem.AT_AHEAD,
              Argument.text(trial.at().toString()),
              Argument.text(now.truncatedTo(ChronoUnit.SECONDS).toString())));
    }
    List<Question> asked = new ArrayList<>(checked.asked());
    asked.addAll(SheetWords.questions(trial, names(inputs)));
    return checked.asking(asked).answered(sheet);
  }

  private static List<String> names(Inputs inputs) {
    return Stream.concat(inputs.recordings().stream(), Stream.of(inputs.sheet()))
        .map(file -> Provenance.fileName(file.name()))
        .toList();
  }

  /**
   * The same with its questions open: for what was found before they were asked, and for whoever
   * knows more.
   *
   * @throws BadInput if an input cannot be used
   */
  public static Checked withOpenQuestions(Inputs inputs) throws BadInput {
    EarlierSheetFinder beside = new EarlierSheetFinder(inputs.beside());
    TrialContext context = TrialContext.read(inputs, beside);
    List<Recording> recordings = new ArrayList<>();
    List<Stand> stands = new ArrayList<>();
    for (NamedBytes file : inputs.recordings()) {
      Recording recording = Importer.read(file, context.plate());
      recordings.add(recording);
      if (stands.isEmpty()) {
        context = named(file.name(), recording, context::readIn);
      }
      stands.add(named(file.name(), recording, context::stand));
    }
    DuplicateInputCheck.check(inputs, recordings, beside.used());
    Optional<EarlierStates> earlier = EarlierInput.read(inputs, context.trial());
    AlignmentState state =
        StateAnalysis.of(
            stands, context.doubts(), earlier.map(EarlierStates::states).orElse(List.of()));
    List<Question> asked = new ArrayList<>(StateQuestions.of(state, context.platesApartMm()));
    asked.addAll(days(inputs, context.trial()));
    return new Checked(
        new Result(Result.METHOD, Program.NAME, state, earlier), recordings, beside.used(), asked);
  }

  private static List<Question> days(Inputs inputs, TrialSheet trial) throws BadInput {
    List<Question> days = new ArrayList<>();
    for (NamedBytes file : inputs.recordings()) {
      String name = Provenance.fileName(file.name());
      StateQuestions.day(trial, name, ExportDate.of(file)).ifPresent(days::add);
    }
    return days;
  }

  /** What is found in a recording. */
  private interface InRecording<T> {
    T in(Recording recording) throws BadInput;
  }

  /**
   * A recording knows its file without the folders before it; a problem names it as it was given.
   */
  private static <T> T named(String given, Recording recording, InRecording<T> found)
      throws BadInput {
    try {
      return found.in(recording);
    } catch (BadInput e) {
      String bare = recording.provenance().name();
      throw new BadInput(
          e.problems().stream().map(p -> p.place().file().equals(bare) ? p.in(given) : p).toList());
    }
  }
}
