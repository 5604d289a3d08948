package caryatid.blackbox;

import caryatid.samples.GermanPlates;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A fitting's files in a folder, in which slips can be made, and a record that they go into.
 *
 * @param folder where they lie
 * @param kind which fitting
 */
record Fitting(Path folder, Kind kind) {
  /** Whose fitting. */
  enum Kind {
    /** Sample: one plate, transtibial, right. */
    K7("k7/barefoot-1.csv", "k7/barefoot.yaml", "k7/plate.yaml", "transtibial", "right"),
    /** Sample: two plates, transfemoral, left. */
    M4("m4/barefoot.txt", "m4/barefoot.yaml", "m4/plates.yaml", "transfemoral", "left"),
    /** Generated: two plates, German names, y to the rear; transfemoral, right. */
    R3("", "", "", "transfemoral", "right");

    private final String recording;
    private final String sheet;
    private final String plates;
    private final String level;
    private final String side;

    Kind(String recording, String sheet, String plates, String level, String side) {
      this.recording = recording;
      this.sheet = sheet;
      this.plates = plates;
      this.level = level;
      this.side = side;
    }
  }

  private static final Path SAMPLES = Path.of("sample-recordings");
  private static final Path GERMAN = Path.of("src/test/resources/caryatid/blackbox/german");

  static Fitting of(Path folder, Kind kind) {
    try {
      Files.createDirectories(folder);
      Fitting fitting = new Fitting(folder, kind);
      if (kind == Kind.R3) {
        Files.write(folder.resolve("stand.csv"), GermanPlates.export(false, 1, 3));
        Files.copy(GERMAN.resolve("stand.yaml"), folder.resolve("sheet.yaml"));
        Files.copy(GERMAN.resolve("plates.yaml"), folder.resolve("plates.yaml"));
      } else {
        Files.copy(SAMPLES.resolve(kind.recording), folder.resolve("stand.csv"));
        Files.copy(SAMPLES.resolve(kind.sheet), folder.resolve("sheet.yaml"));
        Files.copy(SAMPLES.resolve(kind.plates), folder.resolve("plates.yaml"));
      }
      return fitting;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  boolean is(Kind other) {
    return kind == other;
  }

  String read(String name) {
    try {
      return Files.readString(folder.resolve(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Fitting write(String name, String text) {
    try {
      Files.writeString(folder.resolve(name), text);
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Another recording of the same fitting. */
  Fitting recordAgain() {
    try {
      Path stand = folder.resolve("stand.csv");
      if (kind == Kind.R3) {
        Files.write(stand, GermanPlates.export(false, 1, 4));
      } else {
        Files.write(stand, Files.readAllBytes(SAMPLES.resolve("k7/barefoot-2.csv")));
      }
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Writes the sheet with everything that matches replaced. */
  Fitting sheet(String pattern, String by) {
    return replace("sheet.yaml", pattern, by);
  }

  Fitting replace(String name, String pattern, String by) {
    String text = read(name);
    String changed = text.replaceAll("(?m)" + pattern, by);
    if (changed.equals(text)) {
      throw new IllegalArgumentException(name + " has no " + pattern);
    }
    return write(name, changed);
  }

  /** The sheet with a line more. */
  Fitting line(String line) {
    return write("sheet.yaml", read("sheet.yaml") + line + "\n");
  }

  /** The sheet without its frontal marks. */
  Fitting sagittalOnly() {
    if (kind == Kind.K7 || kind == Kind.M4) {
      sheet("^    rightward-.*\n", "");
    } else {
      sheet(", rightward-mm: [-\\d]+, rightward-from: Fuge", "");
    }
    String mark = kind == Kind.K7 ? "outer patellar border" : "foot reference point";
    sheet("^  - (\\{)?name: " + mark + ".*\n(    .*\n)*", "");
    sheet("^  - plane: frontal\n(    .*\n)*|^  - \\{plane: frontal.*\n", "");
    return this;
  }

  Run check(String... more) {
    List<String> all =
        new ArrayList<>(
            List.of(
                "check",
                file("stand.csv"),
                "--trial",
                file("sheet.yaml"),
                "--plate",
                file("plates.yaml"),
                "--out",
                file("out"),
                "--replace"));
    all.addAll(List.of(more));
    return tidy(Run.caryatid(all.toArray(String[]::new)));
  }

  /** Starts the record of the fitting with the components that its sheet names. */
  Fitting start() {
    record(
        "start", "wearer=" + kind, "side=" + kind.side, "level=" + kind.level, "body-mass-kg=80");
    return this;
  }

  Run keep(String... more) {
    List<String> all =
        new ArrayList<>(List.of("--record", "R-1", "--records", file("records"), "--by", "AB"));
    all.addAll(List.of(more));
    return check(all.toArray(String[]::new));
  }

  Run add(String kindOfEntry, String... values) {
    List<String> all = new ArrayList<>(List.of(kindOfEntry));
    all.addAll(List.of(values));
    return record("add", all.toArray(String[]::new));
  }

  Run record(String command, String... values) {
    List<String> all =
        new ArrayList<>(List.of("record", command, "--records", file("records"), "R-1"));
    all.addAll(List.of(values));
    if (command.equals("start") || command.equals("add")) {
      all.addAll(List.of("--by", "AB", "--at", "2026-03-01T09:00+01:00"));
    }
    return tidy(Run.caryatid(all.toArray(String[]::new)));
  }

  String file(String name) {
    return folder.resolve(name).toString();
  }

  private Run tidy(Run run) {
    return new Run(run.code(), tidy(run.out()), tidy(run.err()));
  }

  private String tidy(String text) {
    return text.replace(folder + "/", "").replace('\u00a0', ' ');
  }
}
