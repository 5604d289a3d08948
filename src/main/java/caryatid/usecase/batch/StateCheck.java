package caryatid.usecase.batch;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.alignment.Result;
import caryatid.alignment.Stand;
import caryatid.format.ResultJson;
import caryatid.format.ResultReading;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.Provenance;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.report.FindingRow;
import caryatid.usecase.Check;
import caryatid.usecase.Inputs;
import caryatid.usecase.Program;
import caryatid.usecase.StandReport;
import caryatid.usecase.StandReport.FileFormat;
import caryatid.usecase.file.FileAccess;
import caryatid.usecase.file.FileProblem;
import caryatid.usecase.file.Output;
import caryatid.wording.ResultSentences;
import caryatid.wording.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Checks one state of a batch and keeps its result, or takes over the one that is kept. */
final class StateCheck {
  /** A sheet that others stand behind: its result says nothing of their bytes. */
  private static final Pattern BASED_ON = Pattern.compile("based-on[\"']?[ \\t]*:");

  private final Batch.BatchOrder order;
  private final FileAccess files;
  private final Wording wording;
  private final OffsetDateTime now;

  StateCheck(Batch.BatchOrder order, FileAccess files, Wording wording, OffsetDateTime now) {
    this.order = order;
    this.files = files;
    this.wording = wording;
    this.now = now;
  }

  BatchOutcome of(BatchState state) throws StoreFailure {
    BatchOutcome outcome = outcome(state);
    if (outcome.isRefused()) {
      removeOld(state);
    }
    return outcome;
  }

  /** A result or report of other bytes than those of today says nothing of them. */
  private void removeOld(BatchState state) throws StoreFailure {
    for (Path file : List.of(result(state), StandReport.file(report(state), FileFormat.PDF))) {
      try {
        Files.deleteIfExists(file);
      } catch (IOException e) {
        throw new StoreFailure(
            Problem.at(Place.of(file.toString()), FileProblem.CANNOT_WRITE, Argument.why(e)));
      }
    }
  }

  private BatchOutcome outcome(BatchState state) throws StoreFailure {
    try {
      Inputs inputs = state.inputs(files);
      Optional<Result> kept = kept(state, inputs);
      Result result = kept.isPresent() ? kept.get() : checked(state, inputs);
      return new BatchOutcome(
          state.name(),
          ResultSentences.unsafe(result, wording),
          FindingRow.of(state.name(), result),
          List.of(),
          kept.isPresent());
    } catch (BadInput | RuntimeException e) {
      return new BatchOutcome(state.name(), List.of(), List.of(), Batch.refusal(state, e), false);
    }
  }

  /** The result is written last: where it is, all of the state is. */
  private Result checked(BatchState state, Inputs inputs) throws BadInput, StoreFailure {
    Check.Checked checked = Check.run(inputs, now);
    removeOld(state);
    if (order.reports()) {
      StandReport.write(report(state), inputs, checked, wording, files, path -> {});
    }
    files.write(new Output(result(state), true), ResultJson.write(checked.result()));
    return checked.result();
  }

  private StandReport.Order report(BatchState state) {
    return new StandReport.Order(
        order.folder().resolve(Batch.REPORTS),
        state.name() + ".csv",
        List.of(FileFormat.PDF),
        order.paper(),
        true);
  }

  private Path result(BatchState state) {
    return order.folder().resolve(Batch.RESULTS).resolve(state.name() + ".json");
  }

  /** The result of an earlier run of this program with the same bytes. */
  private Optional<Result> kept(BatchState state, Inputs inputs) throws BadInput {
    Optional<NamedBytes> file = files.find(result(state));
    if (file.isEmpty()
        || order.reports()
            && files.find(StandReport.file(report(state), FileFormat.PDF)).isEmpty()) {
      return Optional.empty();
    }
    return ResultJson.open(file.get().readAll()) instanceof ResultReading.Read read
            && Batch.isOfThisProgram(read.result(), Program.NAME)
            && isOf(read.result(), inputs)
        ? Optional.of(read.result())
        : Optional.empty();
  }

  private static boolean isOf(Result result, Inputs inputs) throws BadInput {
    List<Stand> stands = result.state().stands();
    if (stands.size() != inputs.recordings().size()
        || BASED_ON.matcher(new String(inputs.sheet().readAll(), UTF_8)).find()) {
      return false;
    }
    Provenance sheet = Provenance.of(inputs.sheet());
    Optional<Provenance> plate = Optional.empty();
    if (inputs.description().isPresent()) {
      plate = Optional.of(Provenance.of(inputs.description().get()));
    }
    for (int i = 0; i < stands.size(); i++) {
      Stand stand = stands.get(i);
      if (!stand.recording().equals(Provenance.of(inputs.recordings().get(i)))
          || !stand.sheet().equals(sheet)
          || !stand.description().equals(plate)) {
        return false;
      }
    }
    return true;
  }
}
