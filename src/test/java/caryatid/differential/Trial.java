package caryatid.differential;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * A stand that can be checked.
 *
 * @param recordings the exports, one or several
 * @param sheet the trial sheet
 * @param plate the plate description
 */
record Trial(List<Path> recordings, Path sheet, Path plate) {
  private static final Path SAMPLES = Path.of("sample-recordings");

  /** All sample stands. */
  static final List<Trial> SAMPLE =
      List.of(
          sample("k7/barefoot.yaml", "k7/plate.yaml", "k7/barefoot-1.csv"),
          sample(
              "k7/barefoot.yaml",
              "k7/plate.yaml",
              "k7/barefoot-1.csv",
              "k7/barefoot-2.csv",
              "k7/barefoot-3.csv"),
          sample("k7/shoe.yaml", "k7/plate-pressure.yaml", "k7/shoe.csv"),
          sample("m4/barefoot.yaml", "m4/plates.yaml", "m4/barefoot.txt"),
          sample("m4/shoe.yaml", "m4/plates.yaml", "m4/shoe.txt"),
          sample("story/stand-1.yaml", "k7/plate.yaml", "story/stand-1.csv"),
          sample(
              "story/stand-2.yaml",
              "k7/plate.yaml",
              "story/stand-2a.csv",
              "story/stand-2b.csv",
              "story/stand-2c.csv"),
          sample("story/stand-3.yaml", "k7/plate.yaml", "story/stand-3.csv"),
          sample(
              "story/stand-4.yaml",
              "k7/plate.yaml",
              "k7/barefoot-1.csv",
              "k7/barefoot-2.csv",
              "k7/barefoot-3.csv"),
          sample("story/walking-shoe-unset.yaml", "k7/plate-pressure.yaml", "k7/shoe.csv"),
          sample("story/walking-shoe.yaml", "k7/plate.yaml", "story/walking-shoe.csv"),
          sample("story/sports-shoe.yaml", "k7/plate.yaml", "story/sports-shoe.csv"));

  Trial {
    recordings = List.copyOf(recordings);
  }

  private static Trial sample(String sheet, String plate, String... recordings) {
    return new Trial(
        Arrays.stream(recordings).map(SAMPLES::resolve).toList(),
        SAMPLES.resolve(sheet),
        SAMPLES.resolve(plate));
  }

  /** The same sheet and plate with another export. */
  Trial with(Path export) {
    return new Trial(List.of(export), sheet, plate);
  }

  /** The command that checks it; further arguments follow. */
  String[] check(String... more) {
    List<String> words = new ArrayList<>(List.of("check"));
    recordings.forEach(recording -> words.add(recording.toString()));
    words.addAll(List.of("--trial", sheet.toString(), "--plate", plate.toString()));
    words.addAll(List.of(more));
    return words.toArray(String[]::new);
  }

  String name() {
    Stream<String> names = recordings.stream().map(r -> r.getFileName().toString());
    return sheet.getFileName() + " with " + String.join(", ", names.toList());
  }
}
