package caryatid.recording.importer;

import caryatid.recording.c3d.C3dExport;
import caryatid.recording.c3d.C3dReader;
import caryatid.recording.model.ImportFact;
import caryatid.recording.model.ImportProblem;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.PlateDescription;
import caryatid.recording.model.UnderstoodFact.Basis;
import caryatid.recording.table.Outcome;
import caryatid.recording.table.ParsedTable;
import caryatid.recording.table.StageMessages;
import caryatid.recording.time.Timed;
import caryatid.recording.time.Timeline;
import caryatid.recording.track.ColumnMapper;
import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Unit;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import java.util.zip.GZIPInputStream;

/** A C3D file's first stages, which need no text: what is in it, and its times. */
final class MotionFile {
  /** Bytes of a file at the most; an hour of two plates at 1000 Hz is a third of it. */
  static final int MOST_BYTES = 256 << 20;

  private static final int START = 512;

  private final String file;
  private final Outcome<Optional<C3dExport>> read;

  private MotionFile(String file, Outcome<Optional<C3dExport>> read) {
    this.file = file;
    this.read = read;
  }

  /** The file, if it is a C3D file by its first bytes, perhaps gz-compressed. */
  static Optional<MotionFile> of(NamedBytes export, Optional<PlateDescription> stated) {
    try {
      return recognised(export)
          ? Optional.of(new MotionFile(export.name(), content(export, stated)))
          : Optional.empty();
    } catch (IOException | BadInput e) {
      // The text's reader says why it cannot be read.
      return Optional.empty();
    }
  }

  private static boolean recognised(NamedBytes export) throws IOException {
    try (InputStream raw = export.open()) {
      byte[] start = raw.readNBytes(START);
      return C3dReader.recognises(packed(start) ? unpackedStart(export) : start);
    }
  }

  private static boolean packed(byte[] start) {
    return start.length > 2 && start[0] == 0x1f && start[1] == (byte) 0x8b;
  }

  private static byte[] unpackedStart(NamedBytes export) throws IOException {
    try (InputStream in = new GZIPInputStream(export.open())) {
      return in.readNBytes(START);
    }
  }

  private static Outcome<Optional<C3dExport>> content(
      NamedBytes export, Optional<PlateDescription> stated) throws IOException, BadInput {
    byte[] all = export.readAtMost(MOST_BYTES + 1);
    byte[] content = packed(all) ? unpacked(all) : all;
    return content.length > MOST_BYTES
        ? new Outcome<>(
            Optional.empty(),
            StageMessages.none(export.name())
                .withProblem(ImportProblem.MOTION_LONG, Argument.count(MOST_BYTES >> 20)))
        : C3dReader.read(content, export.name(), stated);
  }

  private static byte[] unpacked(byte[] packed) throws IOException {
    try (InputStream in = new GZIPInputStream(new ByteArrayInputStream(packed))) {
      return in.readNBytes(MOST_BYTES + 1);
    }
  }

  /** What is in it; empty, with a problem in its messages, where it cannot be used. */
  Optional<C3dExport> export() {
    return read.value();
  }

  Stages.Parsed parsed() {
    Optional<ParsedTable> table =
        export()
            .map(
                e ->
                    new ParsedTable(
                        e.head(),
                        new ColumnMapper(file, Optional.of(e.description())).map(e.head()),
                        e.columns(),
                        e.lines(),
                        false));
    StageMessages mapped =
        table.isPresent()
            ? read.messages().withProblems(table.get().mapping().problems())
            : read.messages();
    return new Stages.Parsed(table, table, mapped, Optional.empty());
  }

  /** Every row is a sample at the file's rate; without one it is asked for. */
  Timed timed(StageMessages earlier) {
    C3dExport export = export().orElseThrow();
    double rateHz =
        export.rateHz() > 0 ? export.rateHz() : export.description().time().rateHz().orElse(0);
    int rows = export.columns().values().iterator().next().size();
    if (!(rateHz > 0)) {
      return Timed.unsought(
          earlier.withProblem(ImportProblem.NO_RATE, Argument.count(rows), Argument.text("")));
    }
    return new Timed(
        Optional.of(Timeline.every(rateHz, rows)),
        Optional.empty(),
        earlier.withFact(
            ImportFact.DURATION,
            export.rateHz() > 0 ? Basis.STATED : Basis.DESCRIBED,
            Argument.of(rateHz, Unit.HZ),
            Argument.of((rows - 1) / rateHz, Unit.S)));
  }
}
