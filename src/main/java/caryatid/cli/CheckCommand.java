package caryatid.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.recording.NamedBytes;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.report.Paper;
import caryatid.report.ResultJson;
import caryatid.standing.Stretch;
import caryatid.wording.ResultText;
import caryatid.wording.Wording;
import caryatid.workflow.Check;
import caryatid.workflow.Inputs;
import caryatid.workflow.ReportPage;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * The main job: where the load line runs, against what is recommended, and the page for the record.
 */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Checks the load line of a standing trial and writes the report.")
final class CheckCommand implements Callable<Integer> {
  @Parameters(
      arity = "1..*",
      paramLabel = "RECORDING",
      description = "The plate's export; several stands of one alignment one after the other.")
  private List<Path> recordings = new ArrayList<>();

  @Option(
      names = "--trial",
      required = true,
      paramLabel = "SHEET",
      description = "The trial sheet (YAML).")
  private Path sheet;

  @Option(
      names = "--plate",
      paramLabel = "DESCRIPTION",
      description = "The plate description (YAML).")
  private Path description;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      defaultValue = ".",
      description = "Where the report goes; this folder if left out.")
  private Path folder;

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      defaultValue = "A4",
      description = "A4 or Letter.")
  private Paper paper;

  @Option(names = "--replace", description = "Replace a report that is there already.")
  private boolean replace;

  @Option(
      names = "--json",
      description = "Print the whole result for programs, and write no report.")
  private boolean json;

  @Option(
      names = "--from",
      paramLabel = "S",
      description = "Use the recording from this second on.")
  private double fromS = Double.NEGATIVE_INFINITY;

  @Option(names = "--to", paramLabel = "S", description = "Use the recording up to this second.")
  private double toS = Double.POSITIVE_INFINITY;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws BadInput {
    Inputs inputs = inputs();
    if (json) {
      out().println(new String(ResultJson.write(Check.run(inputs).result()), UTF_8));
      return 0;
    }
    ReportFile report = new ReportFile(folder.resolve(reportName()), replace);
    report.check();
    Check.Checked checked = Check.run(inputs);
    Wording wording = Wording.in(Locale.ENGLISH);
    report.write(ReportPage.pdf(inputs, checked, wording, paper));
    ResultText.lines(checked.result(), wording).forEach(out()::println);
    out().println(wording.fill("cli.report", Argument.text(report.path().toString())));
    return 0;
  }

  private PrintWriter out() {
    return spec.commandLine().getOut();
  }

  private Inputs inputs() throws BadInput {
    List<NamedBytes> files = new ArrayList<>();
    for (Path recording : recordings) {
      files.add(FileBytes.of(recording));
    }
    Optional<NamedBytes> plate =
        description == null ? Optional.empty() : Optional.of(FileBytes.of(description));
    return new Inputs(files, FileBytes.of(sheet), plate, this::beside, byHand());
  }

  private Optional<NamedBytes> beside(String name) {
    Path path = sheet.resolveSibling(name);
    return Files.isRegularFile(path) ? Optional.of(new FileBytes(path)) : Optional.empty();
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

  private String reportName() {
    String name = recordings.get(0).getFileName().toString();
    int dot = name.lastIndexOf('.');
    return (dot > 0 ? name.substring(0, dot) : name) + "-report.pdf";
  }
}
