package caryatid.cli;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.report.Csv;
import caryatid.report.Paper;
import caryatid.report.Pictures;
import caryatid.report.Report;
import caryatid.report.ResultJson;
import caryatid.usecase.Check.Checked;
import caryatid.usecase.Inputs;
import caryatid.usecase.ReportPage;
import caryatid.wording.Wording;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import picocli.CommandLine.Option;

/** Where a report goes, in which forms, on which paper. */
final class ReportOptions {
  /** Forms in which a report can be written; the constants are the files' endings. */
  enum Form {
    PDF,
    HTML,
    CSV,
    JSON,
    SVG,
    PNG
  }

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
  private Set<Form> forms = EnumSet.of(Form.PDF);

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      defaultValue = "A4",
      description = "A4 or Letter.")
  private Paper paper;

  @Option(names = "--replace", description = "Replace a report that is there already.")
  private boolean replace;

  /**
   * Refuses early what could not be written later.
   *
   * @param recording the first recording, which names the report
   * @throws BadInput if a file is there already, or the folder is none
   */
  void check(Path recording) throws BadInput {
    for (Form form : forms) {
      file(recording, "", form).check();
    }
  }

  /** Writes each form, and says where it is. */
  void write(Path recording, Inputs inputs, Checked checked, Wording wording, PrintWriter out)
      throws BadInput {
    for (Form form : forms) {
      for (Map.Entry<String, byte[]> made : made(form, inputs, checked, wording).entrySet()) {
        ReportFile file = file(recording, made.getKey(), form);
        file.write(made.getValue());
        out.println(wording.fill("cli.report", Argument.text(file.path().toString())));
      }
    }
  }

  /** The report as a PDF, whatever forms are written. */
  byte[] pdf(Inputs inputs, Checked checked, Wording wording) throws BadInput {
    return ReportPage.pdf(inputs, checked, wording, paper);
  }

  /** The files of a form: their bytes by what is added to the report's name. */
  private Map<String, byte[]> made(Form form, Inputs inputs, Checked checked, Wording wording)
      throws BadInput {
    return switch (form) {
      case PDF -> Map.of("", pdf(inputs, checked, wording));
      case HTML -> Map.of("", Report.html(checked.result(), checked.recordings(), wording));
      case CSV -> Map.of("", Csv.of(checked.result()));
      case JSON -> Map.of("", ResultJson.write(checked.result()));
      case SVG -> Pictures.svg(checked.result(), wording);
      case PNG -> Pictures.png(checked.result(), wording);
    };
  }

  private ReportFile file(Path recording, String part, Form form) {
    String name = recording.getFileName().toString();
    int dot = name.lastIndexOf('.');
    String stem = (dot > 0 ? name.substring(0, dot) : name) + "-report";
    String whole = part.isEmpty() ? stem : stem + "-" + part;
    String ending = form.name().toLowerCase(Locale.ROOT);
    return new ReportFile(folder.resolve(whole + "." + ending), replace);
  }
}
