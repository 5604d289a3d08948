package caryatid.cli;

import caryatid.recording.model.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.standing.NamedStretch;
import caryatid.standing.Stretch;
import caryatid.usecase.EarlierInput;
import caryatid.usecase.Inputs;
import caryatid.wording.Wording;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** The options that name the files of a standing trial. */
final class TrialOptions {
  /** A recording, and seconds from and to, of which one may be left out. */
  private static final Pattern STRETCH =
      Pattern.compile("(?<recording>.+)=(?<from>\\d*(?:\\.\\d+)?)-(?<to>\\d*(?:\\.\\d+)?)");

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
      description = "Use the one recording from this second on, from its first sample.")
  private double fromS = Double.NEGATIVE_INFINITY;

  @Option(
      names = "--to",
      paramLabel = "S",
      description = "Use the one recording up to this second, from its first sample.")
  private double toS = Double.POSITIVE_INFINITY;

  @Option(
      names = "--stretch",
      paramLabel = "RECORDING=FROM-TO",
      description =
          "Use these seconds of one of several recordings, such as stand-2.csv=3.5-18; once for"
              + " each.")
  private List<String> stretches = new ArrayList<>();

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
   * @throws ParameterException if the trial sheet is missing, or a stretch ends before it begins,
   *     is that of no recording, or may be that of several
   */
  Inputs inputs(Wording wording) throws BadInput {
    if (sheet == null) {
      throw misuse("Missing required option: '--trial=SHEET'");
    }
    List<NamedBytes> files = new ArrayList<>();
    for (Path recording : recordings) {
      files.add(CaryatidCommand.FILES.read(recording));
    }
    Optional<NamedBytes> plate =
        description == null
            ? Optional.empty()
            : Optional.of(CaryatidCommand.FILES.read(description));
    return new Inputs(files, CaryatidCommand.FILES.read(sheet), plate, this::beside)
        .withByHand(byHand(wording))
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

  private List<NamedStretch> byHand(Wording wording) {
    List<NamedStretch> set = new ArrayList<>();
    if (Double.isFinite(fromS) || Double.isFinite(toS)) {
      if (recordings.size() > 1) {
        throw misuse(wording.fill("cli.stretchOfWhich", Argument.text(bare(recordings.get(1)))));
      }
      set.add(new NamedStretch(bare(first()), stretch(fromS, toS)));
    }
    for (String typed : stretches) {
      NamedStretch one = named(typed, wording);
      if (NamedStretch.of(one.recording(), set).isPresent()) {
        throw misuse(wording.fill("cli.stretchTwice", Argument.text(one.recording())));
      }
      set.add(one);
    }
    return set;
  }

  private NamedStretch named(String typed, Wording wording) {
    Matcher matcher = STRETCH.matcher(typed);
    if (!matcher.matches() || matcher.group("from").isEmpty() && matcher.group("to").isEmpty()) {
      throw misuse(wording.fill("cli.badStretch", Argument.text(typed)));
    }
    String recording = recording(matcher.group("recording"), wording);
    return new NamedStretch(
        recording,
        stretch(
            seconds(matcher.group("from"), Double.NEGATIVE_INFINITY),
            seconds(matcher.group("to"), Double.POSITIVE_INFINITY)));
  }

  private static double seconds(String typed, double open) {
    return typed.isEmpty() ? open : Double.parseDouble(typed);
  }

  /** The bare name of the recording that is given under a name, with its folders or without. */
  private String recording(String name, Wording wording) {
    return recordings.stream()
        .filter(path -> path.toString().equals(name) || bare(path).equals(name))
        .map(TrialOptions::bare)
        .findFirst()
        .orElseThrow(
            () ->
                misuse(
                    wording.fill(
                        "cli.stretchWithoutRecording",
                        Argument.text(name),
                        Argument.text(
                            recordings.stream()
                                .map(TrialOptions::bare)
                                .collect(Collectors.joining(", "))))));
  }

  private static String bare(Path recording) {
    return String.valueOf(recording.getFileName());
  }

  private Stretch stretch(double from, double to) {
    if (!(to > from)) {
      throw misuse("--from must be before --to");
    }
    return new Stretch(from, to);
  }

  private ParameterException misuse(String said) {
    return new ParameterException(spec.commandLine(), said);
  }
}
