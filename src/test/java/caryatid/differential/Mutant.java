package caryatid.differential;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A sample's export, changed by chance; the same number gives the same bytes.
 *
 * @param number from 0
 * @param trial the sample
 * @param spoilt what was done to its export
 * @param bytes the export
 */
record Mutant(int number, Trial trial, List<Spoiling> spoilt, byte[] bytes) {
  /** A sample to be changed, thinned so that many can be tried. */
  private record Source(Trial trial, Export export) {}

  private static final List<Source> SOURCES =
      List.of(
          source(0, 1, 4, ";"),
          source(2, 2, 20, ","),
          source(3, 6, 4, "\t"),
          source(4, 6, 4, "\t"),
          source(5, 1, 4, ";"),
          source(10, 1, 4, ";"));

  private static Source source(int sample, int headLines, int every, String delimiter) {
    Trial trial = Trial.SAMPLE.get(sample);
    try {
      Export export = Export.read(trial.recordings().get(0), headLines, every, delimiter);
      return new Source(trial, export);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The mutant of a number: one change in half of them, two or three in the others. */
  static Mutant of(int number) {
    Random random = new Random(0x9E3779B97F4A7C15L * (number + 1));
    Source source = SOURCES.get(random.nextInt(SOURCES.size()));
    Export export = source.export().copy();
    // A key above the table that gives the rate is that of all rows.
    export.head().replaceAll(line -> line.replace("Rate\t100 Hz", "Rate\t25 Hz"));
    List<Spoiling> spoilt = new ArrayList<>();
    int changes = random.nextBoolean() ? 1 : 2 + random.nextInt(2);
    for (int i = 0; i < changes; i++) {
      Spoiling one = Spoiling.ALL.get(random.nextInt(Spoiling.ALL.size()));
      one.spoil(export, random);
      spoilt.add(one);
    }
    return new Mutant(number, source.trial(), List.copyOf(spoilt), export.bytes());
  }

  /**
   * The mutant as a case.
   *
   * @param file where its export is written
   * @param out the folder for what is made of it
   */
  Case check(Path file, String kind, String forms, Path out) throws IOException {
    Files.write(file, bytes);
    String language = List.of("en", "de", "fr", "es").get(number % 4);
    String name = number + " of " + trial.name() + " " + spoilt;
    return Case.of(kind, name, Cases.report(trial.with(file), language, forms, out));
  }
}
