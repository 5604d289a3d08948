package caryatid.cli;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.standing.Stretch;
import caryatid.usecase.EarlierInput;
import caryatid.usecase.Inputs;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** The options that name the files of a standing trial. */
final class TrialOptions {
  @Parameters(
      arity = "1..*",
      paramLabel = "RECORDING",
      description =
          "The plate's export; several stands of one alignment one after the other. Or a report"
              + " (PDF) of this program, to compute it again.")
  private List<Path> recordings = new ArrayList<>();

  @Option(names = "--trial", paramLabel = "SHEET", description = "The trial sheet (YAML).")
  private Path sheet;

  @Option(
      names = "--plate",
      paramLabel = "DESCRIPTION",
      description = "The plate description (YAML).")
  private Path description;

  @Option(
      names = "--before",
      paramLabel = "REPORT",
      description =
          "An earlier report (PDF) or result (JSON) of the same leg: its offsets are marked in the"
              + " drawings. With --record, the record's last stand in the same footwear if left"
              + " out.")
  private Path before;

  @Option(
      names = "--from",
      paramLabel = "S",
      description = "Use the recording from this second on, from its first sample.")
  private double fromS = Double.NEGATIVE_INFINITY;

  @Option(
      names = "--to",
      paramLabel = "S",
      description = "Use the recording up to this second, from its first sample.")
  private double toS = Double.POSITIVE_INFINITY;

  @Spec(Target.MIXEE)
  private CommandSpec spec;

  /** The first file, which names the report. */
  Path first() {
    return recordings.get(0);
  }

  /** Whether nothing but one PDF is given: a report to be computed again. */
  boolean isReport() {
    boolean pdf = recordings.size() == 1 && first().toString().endsWith(".pdf");
    return pdf && sheet == null && description == null && before == null;
  }

  /**
   * The inputs of a check.
   *
   * @throws BadInput if a file is not there
   * @throws ParameterException if the trial sheet is missing or the stretch ends before it begins
   */
  Inputs inputs() throws BadInput {
    if (sheet == null) {
      throw new ParameterException(spec.commandLine(), "Missing required option: '--trial=SHEET'");
    }
    List<NamedBytes> files = new ArrayList<>();
    for (Path recording : recordings) {
      files.add(CaryatidCommand.FILES.read(recording));
    }
    Optional<NamedBytes> plate =
        description == null
            ? Optional.empty()
            : Optional.of(CaryatidCommand.FILES.read(description));
    return new Inputs(files, CaryatidCommand.FILES.read(sheet), plate, this::beside, byHand())
        .withEarlier(earlier());
  }

  private Optional<NamedBytes> earlier() throws BadInput {
    return before == null
        ? Optional.empty()
        : Optional.of(EarlierInput.of(CaryatidCommand.FILES.read(before)));
  }

  private Optional<NamedBytes> beside(String name) {
    try {
      return CaryatidCommand.FILES.find(sheet.resolveSibling(name));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private Optional<Stretch> byHand() {
    if (Double.isInfinite(fromS) && Double.isInfinite(toS)) {
      return Optional.empty();
    }
    if (!(toS > fromS)) {
      throw new ParameterException(spec.commandLine(), "--from must be before --to");
    }
    return Optional.of(new Stretch(fromS, toS));
  }
}
