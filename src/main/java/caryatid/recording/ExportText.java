package caryatid.recording;

import caryatid.recording.Understood.Basis;
import caryatid.remark.Argument;
import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.Charset;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipException;

/** Reads an export's bytes into tables. */
final class ExportText {
  private final NamedBytes export;
  private final ExportForm form;
  private final Planner planner;
  private final Notebook notes;

  ExportText(NamedBytes export, ExportForm form, Planner planner, Notebook notes) {
    this.export = export;
    this.form = form;
    this.planner = planner;
    this.notes = notes;
  }

  /** The tables, one below the other; none, with a problem noted, where there is none to read. */
  List<Table> read() {
    try (Intake intake = Intake.open(export, charset())) {
      return read(intake);
    } catch (Lines.TooLong e) {
      notes.problem(Reading.LINE_TOO_LONG, Argument.count(Lines.LONGEST));
    } catch (EOFException | ZipException e) {
      notes.problem(Reading.PACKED_DAMAGED);
    } catch (IOException e) {
      notes.problem(Reading.UNREADABLE, Argument.text(String.valueOf(e.getMessage())));
    }
    return List.of();
  }

  /** The described encoding; none, with a problem noted, where nobody knows it. */
  private Optional<Charset> charset() {
    try {
      return form.encoding().map(Charset::forName);
    } catch (IllegalArgumentException e) {
      notes.problem(Reading.UNKNOWN_ENCODING, Argument.text(form.encoding().orElse("")));
      return Optional.empty();
    }
  }

  private List<Table> read(Intake intake) throws IOException {
    note(intake);
    if (intake.binary()) {
      notes.problem(Reading.BINARY);
      return List.of();
    }
    Lines lines = new Lines(intake.text(), intake.charset(), intake.lineEnd());
    List<Table> tables = new TableReader(lines, form, planner::plan, notes).read();
    if (lines.number() == 0) {
      notes.problem(Reading.EMPTY);
    } else if (tables.isEmpty() && notes.clean()) {
      notes.problem(Reading.NO_TABLE, Argument.count(lines.number()));
    }
    if (notes.clean()) {
      intake.finish();
    }
    return tables;
  }

  private void note(Intake intake) {
    if (intake.packed()) {
      notes.understood(Aspect.PACKED, Basis.CONCLUDED);
    }
    notes.understood(
        Aspect.ENCODING,
        form.encoding().isPresent() && notes.clean() ? Basis.DESCRIBED : Basis.CONCLUDED,
        Argument.text(intake.found().charset().name()),
        Argument.term(intake.found().sign()));
  }
}
