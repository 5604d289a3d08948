package caryatid.cli;

import caryatid.report.pages.Paper;
import caryatid.usecase.StandReport;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The options for a report: file, formats and paper. */
final class ReportOptions {
  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      defaultValue = ".",
      description = "Where the report goes; this folder if left out.")
  private Path folder;

  @Option(
      names = "--forms",
      split = ",",
      paramLabel = "FORM",
      defaultValue = "PDF",
      description =
          "What to write, one or several of pdf, html, csv, json, svg, png; pdf if left"
              + " out. Svg and png are the drawings alone.")
  private Set<StandReport.FileFormat> forms = EnumSet.of(StandReport.FileFormat.PDF);

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      defaultValue = "A4",
      description = "A4 or Letter.")
  private Paper paper;

  @Option(names = "--replace", description = "Replace a report that already exists.")
  private boolean replace;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  /**
   * What is to be written.
   *
   * @param recording the first recording, which names the report
   * @throws ParameterException if a file is named where a folder is meant
   */
  StandReport.Order order(Path recording) {
    if (folder.toString().toLowerCase(Locale.ROOT).endsWith(".pdf") && !Files.isDirectory(folder)) {
      throw new ParameterException(
          command.commandLine(), "--out is a folder here; found the file name " + folder);
    }
    return new StandReport.Order(
        folder, recording.getFileName().toString(), List.copyOf(forms), paper, replace);
  }

  Paper paper() {
    return paper;
  }
}
