package caryatid.timing;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.recording.importer.Importer;
import caryatid.recording.model.NamedBytes;
import caryatid.recording.model.Recording;
import caryatid.remark.BadInput;
import caryatid.report.Pictures;
import caryatid.report.Report;
import caryatid.report.pages.Paper;
import caryatid.report.pdf.Attachments;
import caryatid.report.pdf.Attachments.AttachedFile;
import caryatid.report.pdf.Attachments.AttachmentRole;
import caryatid.sheet.DescriptionReader;
import caryatid.usecase.Check;
import caryatid.usecase.Check.Checked;
import caryatid.usecase.Inputs;
import caryatid.wording.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long each part of a check takes once the program is warm: {@code mvn -Dfast
 * -Dtiming=CheckTiming verify}. An invented wearer on one plate, 32 s at 1000 Hz, with the sheet
 * and description of the samples.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class CheckTiming {
  private static final Path SHEET = Path.of("sample-recordings/k7/barefoot.yaml");
  private static final String PLATE =
      """
      plate-description: 1
      name: invented
      export: {delimiter: comma, decimal-mark: point}
      time: {column: Time, unit: s}
      axes: {right: +x, anterior: +y, up: +z}
      force-is: on the person
      plates:
        - name: plate 1
          columns: {force-z: Fz, cop-x: CoPx, cop-y: CoPy}
          units: {force: N, cop: m}
          edges-mm: {left: -200, right: 200, rear: -300, front: 300}
          export-origin-mm: {right: 0, anterior: 0}
      measuring-lines:
        - {name: rear edge, forward-from-mm: -300, registration-mm: 1}
        - {name: midline, rightward-from-mm: 0, registration-mm: 1}
      """;

  private static final int ROWS = 32_000;

  private NamedBytes export;
  private NamedBytes description;
  private Inputs inputs;
  private Checked checked;
  private Wording wording;

  /** Writes the recording, and checks it once. */
  @Setup
  public void check() throws IOException, BadInput {
    export = NamedBytes.of("invented.csv", recording().getBytes(UTF_8));
    description = NamedBytes.of("plate.yaml", PLATE.getBytes(UTF_8));
    NamedBytes sheet = NamedBytes.of("stand.yaml", Files.readAllBytes(SHEET));
    inputs = new Inputs(List.of(export), sheet, Optional.of(description), n -> Optional.empty());
    checked = Check.withOpenQuestions(inputs);
    wording = Wording.in(Locale.ENGLISH);
  }

  private static String recording() {
    Random noise = new Random(1);
    StringBuilder text = new StringBuilder("Time,Fz,CoPx,CoPy\n");
    for (int i = 0; i < ROWS; i++) {
      double s = i / 1000.0;
      text.append(
          String.format(
              Locale.ROOT,
              "%.3f,%.2f,%.5f,%.5f%n",
              s,
              420 + 3 * Math.sin(s) + noise.nextGaussian(),
              0.003 * Math.sin(0.9 * s) + 0.0002 * noise.nextGaussian(),
              0.005 * Math.sin(0.6 * s) + 0.0002 * noise.nextGaussian()));
    }
    return text.toString();
  }

  /** From the file's bytes to loads on the plate in the program's axes. */
  @Benchmark
  public Recording read() throws BadInput {
    return Importer.read(export, Optional.of(DescriptionReader.read(description)));
  }

  /** From the files' bytes to the result. */
  @Benchmark
  public Checked result() throws BadInput {
    return Check.withOpenQuestions(inputs);
  }

  /** Both strips of page one, as pictures. */
  @Benchmark
  public List<String> strips() {
    return Pictures.strips(checked.result(), wording);
  }

  /** The stand over time, as pictures. */
  @Benchmark
  public List<String> overTime() {
    return Pictures.overTime(checked.result(), checked.recordings(), 0, wording);
  }

  /** The report as a PDF with the recording attached. */
  @Benchmark
  public byte[] pdf() {
    Attachments attached =
        new Attachments(
            List.of(new AttachedFile(AttachmentRole.RECORDING, export.name(), bytes(export))));
    return Report.pdf(checked.result(), checked.recordings(), attached, wording, Paper.A4);
  }

  private static byte[] bytes(NamedBytes file) {
    try {
      return file.readAll();
    } catch (BadInput e) {
      throw new IllegalStateException(e);
    }
  }
}
