package caryatid.usecase;

import caryatid.entry.EntryKind;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.Place;
import caryatid.report.pages.Paper;
import caryatid.usecase.file.FileAccess;
import caryatid.usecase.file.LocalFiles;
import caryatid.usecase.file.Output;
import caryatid.wording.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Writes a sample stand in every form, a record with it, and the record's report and package. */
final class Everything {
  private static final Path SAMPLES = Path.of("sample-recordings/m4");
  private static final String CODE = "M4-left";

  private final FileAccess files = new LocalFiles();
  private final Path folder;
  private final Wording wording;

  private Everything(Path folder, Locale language) {
    this.folder = folder;
    this.wording = Wording.in(language);
  }

  /** All of it in a folder that is empty yet: every file's bytes by its path, but locks. */
  static Map<String, byte[]> in(Path folder, Locale language) throws Exception {
    Everything everything = new Everything(folder, language);
    everything.stand();
    everything.record();
    return bytes(folder);
  }

  private Inputs inputs() throws Exception {
    return new Inputs(
        List.of(sample("shoe.txt")),
        sample("shoe.yaml"),
        Optional.of(sample("plates.yaml")),
        name -> files.find(SAMPLES.resolve(name)));
  }

  private NamedBytes sample(String name) throws Exception {
    return files.read(SAMPLES.resolve(name));
  }

  private void stand() throws Exception {
    Inputs inputs = inputs();
    StandReport.Order order =
        new StandReport.Order(
            folder, "shoe.txt", List.of(StandReport.FileFormat.values()), Paper.A4, false);
    StandReport.write(
        order, inputs, Check.withOpenQuestions(inputs), wording, files, new ArrayList<Path>()::add);
  }

  private void record() throws Exception {
    Clock clock = Clock.fixed(Instant.parse("2026-12-01T08:00:00Z"), ZoneOffset.UTC);
    Records records = Records.in(folder.resolve("records"), clock);
    StartRecord.run(
        records,
        CODE,
        new EntryDraft(
            EntryKind.OPENING,
            Assignments.read(
                Optional.empty(),
                List.of("wearer=M4", "side=left", "level=transfemoral"),
                Place.of("command line")),
            SuggestedRows.none(wording),
            List.of(),
            "AB",
            Optional.empty(),
            Optional.empty(),
            false));
    KeepStand keep = KeepStand.in(records, CODE, Optional.of("AB"), true);
    Inputs inputs = inputs();
    keep.keep(inputs, keep.check(inputs), wording, Paper.A4);
    Output report = new Output(folder.resolve("record.pdf"), false);
    RecordReport.write(records, CODE, wording, Paper.A4, report, files);
    PackRecord.run(records, CODE, folder.resolve("packed.zip"), wording, files);
  }

  /** A lock tells the time of the machine. */
  private static boolean lasts(Path file) {
    return Files.isRegularFile(file) && !file.toString().endsWith(".lock");
  }

  private static Map<String, byte[]> bytes(Path folder) throws IOException {
    Map<String, byte[]> bytes = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Everything::lasts).toList()) {
        bytes.put(folder.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
    return bytes;
  }
}
