package caryatid.recording.table;

import caryatid.recording.model.ExportLayout;
import caryatid.recording.model.ImportFact;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.UnderstoodFact.Basis;
import caryatid.remark.Argument;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.zip.ZipException;

/** Reads an export's bytes into tables. */
public final class ExportText {
  private final NamedBytes export;
  private final ExportLayout layout;
  private final Function<HeaderBlock, ColumnMapping> planner;

  /**
   * @param planner what a table's columns are taken for
   */
  public ExportText(
      NamedBytes export, ExportLayout layout, Function<HeaderBlock, ColumnMapping> planner) {
    this.export = export;
    this.layout = layout;
    this.planner = planner;
  }

  public Outcome<List<ParsedTable>> read() {
    Outcome<Optional<Charset>> stated = charset();
    Outcome<List<ParsedTable>> parsed = new Outcome<>(List.of(), stated.messages());
    try (ExportInput intake = ExportInput.open(export, stated.value())) {
      parsed = read(intake, stated.messages());
      if (parsed.messages().clean()) {
        intake.finish();
      }
      return parsed;
    } catch (IOException e) {
      return new Outcome<>(List.of(), parsed.messages().and(failed(e, export.name())));
    }
  }

  /**
   * Reads UTF-8 text, tabs between its cells, a point before its decimals.
   *
   * @param layout what is described of it; of encoding, delimiter and decimal mark nothing is used
   * @param file the name that problems state
   */
  public static Outcome<List<ParsedTable>> tabbed(
      InputStream text,
      ExportLayout layout,
      Function<HeaderBlock, ColumnMapping> planner,
      String file) {
    LineReader lines = new LineReader(text, StandardCharsets.UTF_8, (byte) '\n');
    ExportLayout tabbed = layout.as(Delimiter.TAB.character(), DecimalMark.POINT.character());
    return new TableReader(lines, tabbed, planner, StageMessages.none(file)).read();
  }

  /** The described encoding; empty, with a problem, if it is unknown. */
  private Outcome<Optional<Charset>> charset() {
    StageMessages nothing = StageMessages.none(export.name());
    try {
      return new Outcome<>(layout.encoding().map(Charset::forName), nothing);
    } catch (IllegalArgumentException e) {
      Argument name = Argument.text(layout.encoding().orElse(""));
      return new Outcome<>(
          Optional.empty(), nothing.withProblem(ImportProblem.UNKNOWN_ENCODING, name));
    }
  }

  private Outcome<List<ParsedTable>> read(ExportInput intake, StageMessages earlier) {
    Optional<ImportProblem> foreign = intake.foreign();
    if (foreign.isPresent() || intake.binary()) {
      return new Outcome<>(List.of(), earlier.withProblem(foreign.orElse(ImportProblem.BINARY)));
    }
    StageMessages opened = opened(intake, earlier);
    LineReader lines = new LineReader(intake.text(), intake.charset(), intake.lineEnd());
    return new TableReader(lines, layout, planner, opened).read();
  }

  private StageMessages opened(ExportInput intake, StageMessages earlier) {
    StageMessages messages =
        intake.packed() ? earlier.withFact(ImportFact.PACKED, Basis.CONCLUDED) : earlier;
    return messages.withFact(
        ImportFact.ENCODING,
        layout.encoding().isPresent() && earlier.clean() ? Basis.DESCRIBED : Basis.CONCLUDED,
        Argument.text(intake.found().charset().name()),
        Argument.term(intake.found().sign()));
  }

  /** Why a file could not be read to its end. */
  static StageMessages failed(IOException failure, String file) {
    StageMessages nothing = StageMessages.none(file);
    if (failure instanceof LineReader.TooLong) {
      return nothing.withProblem(ImportProblem.LINE_TOO_LONG, Argument.count(LineReader.LONGEST));
    }
    if (failure instanceof EOFException || failure instanceof ZipException) {
      return nothing.withProblem(ImportProblem.PACKED_DAMAGED);
    }
    return nothing.withProblem(ImportProblem.UNREADABLE, Argument.why(failure));
  }
}
