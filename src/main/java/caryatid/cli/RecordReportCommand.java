package caryatid.cli;

import caryatid.remark.BadInput;
import caryatid.remark.Problem;
import caryatid.remark.StoreFailure;
import caryatid.report.pages.Paper;
import caryatid.usecase.RecordReport;
import caryatid.usecase.Records;
import caryatid.usecase.file.Output;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the report of a record. */
@Command(
    name = "report",
    mixinStandardHelpOptions = true,
    description =
        "Writes the report of a whole record as one PDF: where it stands, offsets, timeline, who.")
final class RecordReportCommand extends OneRecordCommand {
  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "The PDF file to write, or a folder that is there, for CODE-record.pdf.")
  private Path file;

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      defaultValue = "A4",
      description = "A4 or Letter.")
  private Paper paper;

  @Option(names = "--replace", description = "Replace a report that already exists.")
  private boolean replace;

  @Override
  int run(Records records) throws BadInput, StoreFailure {
    Path pdf = Files.isDirectory(file) ? file.resolve(code() + "-record.pdf") : file;
    List<Problem> damage =
        RecordReport.write(
            records, code(), wording(), paper, new Output(pdf, replace), CaryatidCommand.FILES);
    say("cli.report", pdf);
    return sound(damage);
  }
}
