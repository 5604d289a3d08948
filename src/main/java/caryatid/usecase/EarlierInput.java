package caryatid.usecase;

import caryatid.alignment.EarlierState;
import caryatid.alignment.EarlierStates;
import caryatid.alignment.Result;
import caryatid.format.EarlierStatesJson;
import caryatid.format.ResultJson;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.Provenance;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import caryatid.report.pdf.ReportReader;
import caryatid.sheet.TrialSheet;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The states before that a check is given, as one named input. */
public final class EarlierInput {

  private EarlierInput() {}

  /**
   * The input that an earlier report, or the result of one, makes.
   *
   * @param file a report (PDF) or a result (JSON) of this program
   * @throws BadInput if it is neither
   */
  public static NamedBytes of(NamedBytes file) throws BadInput {
    byte[] bytes = file.readAll();
    byte[] result = isPdf(bytes) ? inside(file.name(), bytes) : bytes;
    Result read;
    try {
      read = ResultJson.read(result);
    } catch (BadInput e) {
      throw new BadInput(e.problems().stream().map(problem -> problem.in(file.name())).toList());
    }
    String sha512 = Provenance.of(NamedBytes.of(file.name(), result)).sha512();
    return input(List.of(EarlierState.of(read.state(), sha512)));
  }

  private static byte[] inside(String name, byte[] pdf) throws BadInput {
    return new ReportInputs(ReportReader.read(name, pdf)).result();
  }

  private static boolean isPdf(byte[] bytes) {
    return bytes.length > 4 && new String(bytes, 0, 4, StandardCharsets.US_ASCII).equals("%PDF");
  }

  /** The input that states make. */
  static NamedBytes input(List<EarlierState> states) {
    return NamedBytes.of(EarlierStatesJson.FILE_NAME, EarlierStatesJson.write(states));
  }

  /**
   * What a check is given of earlier states.
   *
   * @throws BadInput if the input cannot be read, or a state is of another wearer or leg, or not
   *     before the sheet
   */
  static Optional<EarlierStates> read(Inputs inputs, TrialSheet trial) throws BadInput {
    if (inputs.earlier().isEmpty()) {
      return Optional.empty();
    }
    EarlierStates earlier = EarlierStatesJson.read(inputs.earlier().get());
    for (EarlierState state : earlier.states()) {
      require(state, trial, Place.of(inputs.earlier().get().name()));
    }
    return Optional.of(earlier);
  }

  private static void require(EarlierState state, TrialSheet trial, Place place) throws BadInput {
    if (!state.wearer().equals(trial.wearer())) {
      throw new BadInput(
          Problem.at(
              place,
              CheckProblem.EARLIER_OTHER_WEARER,
              Argument.text(state.wearer()),
              Argument.text(trial.wearer())));
    }
    if (!state.at().isBefore(trial.at())) {
      throw new BadInput(
          Problem.at(
              place,
              CheckProblem.EARLIER_NOT_BEFORE,
              Argument.text(state.at().toString()),
              Argument.text(trial.at().toString())));
    }
    if (trial.side().sides().stream().noneMatch(state::tellsOf)) {
      throw new BadInput(
          Problem.at(place, CheckProblem.EARLIER_OTHER_LEG, Argument.term(trial.side())));
    }
  }
}
