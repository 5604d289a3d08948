package caryatid.usecase;

import caryatid.alignment.Result;
import caryatid.format.ResultJson;
import caryatid.remark.BadInput;
import caryatid.remark.StoreFailure;
import caryatid.report.Csv;
import caryatid.report.Pictures;
import caryatid.report.Report;
import caryatid.report.pages.Paper;
import caryatid.usecase.Check.Checked;
import caryatid.usecase.file.FileAccess;
import caryatid.usecase.file.Output;
import caryatid.wording.Wording;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** The report of a check, in one form or several. */
public final class StandReport {
  private StandReport() {}

  /** Forms in which a report can be written. */
  public enum FileFormat {
    PDF(".pdf"),
    HTML(".html"),
    CSV(".csv"),
    JSON(".json"),
    SVG(".svg"),
    PNG(".png");

    private final String ending;

    FileFormat(String ending) {
      this.ending = ending;
    }
  }

  /**
   * What is to be written, and where.
   *
   * @param folder where the report goes
   * @param recording name of the first recording, which names the report
   * @param forms in the order in which they are written
   * @param paper of the PDF
   * @param replace whether a report that is there may be replaced
   */
  public record Order(
      Path folder, String recording, List<FileFormat> forms, Paper paper, boolean replace) {
    public Order {
      forms = List.copyOf(forms);
    }

    private Output output(String part, FileFormat form) {
      int dot = recording.lastIndexOf('.');
      String stem = (dot > 0 ? recording.substring(0, dot) : recording) + "-report";
      String name = part.isEmpty() ? stem : stem + "-" + part;
      return new Output(folder.resolve(name + form.ending), replace);
    }
  }

  /**
   * Refuses early what could not be written later.
   *
   * @throws BadInput if a file is there already, or the folder is none
   */
  public static void requireFree(Order order, FileAccess files) throws BadInput {
    for (FileFormat form : order.forms()) {
      files.requireFree(order.output("", form));
    }
  }

  /** The file that a form is written to; for drawings there are others. */
  public static Path file(Order order, FileFormat form) {
    return order.output("", form).path();
  }

  /**
   * Writes the report, file by file.
   *
   * @param written is given each file that was written, at once
   * @throws BadInput if an input can no longer be read, or a file is there already
   * @throws StoreFailure if a file cannot be written; those before it are there
   */
  public static void write(
      Order order,
      Inputs inputs,
      Checked checked,
      Wording wording,
      FileAccess files,
      Consumer<Path> written)
      throws BadInput, StoreFailure {
    for (FileFormat form : order.forms()) {
      Map<String, byte[]> made = made(form, inputs, checked, wording, order.paper());
      for (Map.Entry<String, byte[]> file : made.entrySet()) {
        Output output = order.output(file.getKey(), form);
        files.write(output, file.getValue());
        written.accept(output.path());
      }
    }
  }

  /** The files of a form: their bytes by what is added to the report's name. */
  private static Map<String, byte[]> made(
      FileFormat form, Inputs inputs, Checked checked, Wording wording, Paper paper)
      throws BadInput {
    return switch (form) {
      case PDF -> Map.of("", CheckPdf.pdf(inputs, checked, wording, paper));
      case HTML -> Map.of("", Report.html(checked.result(), checked.recordings(), wording));
      case CSV -> Map.of("", Csv.of(checked.result()));
      case JSON -> Map.of("", json(checked.result()));
      case SVG -> Pictures.svg(checked.result(), wording);
      case PNG -> Pictures.png(checked.result(), wording);
    };
  }

  /** The result for programs: JSON in UTF-8. */
  public static byte[] json(Result result) {
    return ResultJson.write(result);
  }
}
