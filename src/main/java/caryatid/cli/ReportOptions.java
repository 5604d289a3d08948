package caryatid.cli;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.report.Csv;
import caryatid.report.Paper;
import caryatid.report.Report;
import caryatid.report.ResultJson;
import caryatid.wording.Wording;
import caryatid.workflow.Check.Checked;
import caryatid.workflow.Inputs;
import caryatid.workflow.ReportPage;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.EnumSet;
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
    JSON
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
      description = "What to write, one or several of pdf, html, csv, json; pdf if left out.")
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
   * The files to be written, refused early where they could not be written later.
   *
   * @param recording the first recording, which names the report
   * @throws BadInput if one is there already, or the folder is none
   */
  Map<Form, ReportFile> files(Path recording) throws BadInput {
    Map<Form, ReportFile> files = new EnumMap<>(Form.class);
    for (Form form : forms) {
      ReportFile file = new ReportFile(folder.resolve(name(recording, form)), replace);
      file.check();
      files.put(form, file);
    }
    return files;
  }

  /** Writes each form, and says where it is. */
  void write(
      Map<Form, ReportFile> files, Inputs inputs, Checked checked, Wording wording, PrintWriter out)
      throws BadInput {
    for (Map.Entry<Form, ReportFile> file : files.entrySet()) {
      file.getValue().write(bytes(file.getKey(), inputs, checked, wording));
      String path = file.getValue().path().toString();
      out.println(wording.fill("cli.report", Argument.text(path)));
    }
  }

  /** The report as a PDF, whatever forms are written. */
  byte[] pdf(Inputs inputs, Checked checked, Wording wording) throws BadInput {
    return bytes(Form.PDF, inputs, checked, wording);
  }

  private byte[] bytes(Form form, Inputs inputs, Checked checked, Wording wording) throws BadInput {
    return switch (form) {
      case PDF -> ReportPage.pdf(inputs, checked, wording, paper);
      case HTML -> Report.html(checked.result(), checked.recordings(), wording);
      case CSV -> Csv.of(checked.result());
      case JSON -> ResultJson.write(checked.result());
    };
  }

  private static String name(Path recording, Form form) {
    String name = recording.getFileName().toString();
    int dot = name.lastIndexOf('.');
    String stem = dot > 0 ? name.substring(0, dot) : name;
    return stem + "-report." + form.name().toLowerCase(java.util.Locale.ROOT);
  }
}
