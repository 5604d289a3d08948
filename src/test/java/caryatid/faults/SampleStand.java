package caryatid.faults;

import caryatid.alignment.AlignmentState;
import caryatid.recording.model.NamedBytes;
import caryatid.remark.BadInput;
import caryatid.usecase.Check;
import caryatid.usecase.Inputs;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A sample recording with the sheet and the description it belongs to. */
record SampleStand(String recording, String sheet, String description) {
  private static final Path SAMPLES = Path.of("sample-recordings");
  private static final String PLATE = "k7/plate.yaml";

  /** Every sample recording. */
  static final List<SampleStand> ALL =
      List.of(
          new SampleStand("k7/barefoot-1.csv", "k7/barefoot.yaml", PLATE),
          new SampleStand("k7/barefoot-2.csv", "k7/barefoot.yaml", PLATE),
          new SampleStand("k7/barefoot-3.csv", "k7/barefoot.yaml", PLATE),
          new SampleStand("k7/shoe.csv", "k7/shoe.yaml", "k7/plate-pressure.yaml"),
          new SampleStand("m4/barefoot.txt", "m4/barefoot.yaml", "m4/plates.yaml"),
          new SampleStand("m4/shoe.txt", "m4/shoe.yaml", "m4/plates.yaml"),
          new SampleStand("story/stand-1.csv", "story/stand-1.yaml", PLATE),
          new SampleStand("story/stand-2a.csv", "story/stand-2.yaml", PLATE),
          new SampleStand("story/stand-2b.csv", "story/stand-2.yaml", PLATE),
          new SampleStand("story/stand-2c.csv", "story/stand-2.yaml", PLATE),
          new SampleStand("story/stand-3.csv", "story/stand-3.yaml", PLATE),
          new SampleStand("story/walking-shoe.csv", "story/walking-shoe.yaml", PLATE),
          new SampleStand("story/sports-shoe.csv", "story/sports-shoe.yaml", PLATE));

  SampleExport export() throws IOException {
    return SampleExport.read(SAMPLES.resolve(recording));
  }

  /** The state that this stand alone shows, measured by an export. */
  AlignmentState checked(NamedBytes export) throws BadInput {
    return checked(export, Optional.empty());
  }

  /** The same with a change of the description's text. */
  AlignmentState checked(NamedBytes export, Optional<String> plate) throws BadInput {
    Path folder = SAMPLES.resolve(sheet).getParent();
    Inputs inputs =
        new Inputs(
            List.of(export),
            named(SAMPLES.resolve(sheet)),
            Optional.of(
                plate
                    .map(
                        text ->
                            NamedBytes.of(
                                "plate.yaml",
                                text.getBytes(java.nio.charset.StandardCharsets.UTF_8)))
                    .orElseGet(() -> named(SAMPLES.resolve(description)))),
            name -> Optional.of(named(folder.resolve(name))));
    return Check.run(inputs, OffsetDateTime.MAX).result().state();
  }

  /** The description's text. */
  String plate() throws IOException {
    return Files.readString(SAMPLES.resolve(description));
  }

  private static NamedBytes named(Path file) {
    try {
      return NamedBytes.of(file.getFileName().toString(), Files.readAllBytes(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Every fault of every column. */
  Stream<FaultyColumn> faults() throws IOException {
    return export().columns().stream()
        .flatMap(
            column -> Stream.of(ChannelFault.values()).map(f -> new FaultyColumn(this, column, f)));
  }
}
