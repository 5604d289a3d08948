package caryatid.usecase.batch;

import static java.nio.charset.StandardCharsets.UTF_8;

import caryatid.remark.Argument;
import caryatid.remark.BadInput;
import caryatid.remark.Place;
import caryatid.remark.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The states in a folder and those below it, by the names of their files. The exports of the sheet
 * {@code shoe.yaml} are {@code shoe.csv}, and {@code shoe-1.csv}, {@code shoe-2.csv} or {@code
 * shoe-a.csv}, {@code shoea.csv}, unless there is a sheet of exactly that name; the plate
 * description is the only one beside it. What belongs to nothing is told.
 */
final class BatchFolder {
  private static final Pattern SHEET = key("trial-sheet");
  private static final Pattern PLATE = key("plate-description");
  private static final Set<String> YAML = Set.of("yaml", "yml");
  private static final Set<String> EXPORTS =
      Set.of("csv", "txt", "tsv", "tab", "asc", "dat", "xlsx");

  /** What a stand adds to the name of its state's sheet. */
  private static final String STAND = "([-_ ][0-9]{1,3}|[-_ ]?[a-z])?";

  /** Keys on top of a file are looked for in so many bytes. */
  private static final int START = 1 << 16;

  private final Path root;
  private final Optional<Path> out;
  private final String prefix;
  private final Optional<Path> plate;
  private final List<BatchState> found = new ArrayList<>();

  private BatchFolder(Path root, Optional<Path> out, String prefix, Optional<Path> plate) {
    this.root = root;
    this.out = out;
    this.prefix = prefix;
    this.plate = plate;
  }

  /** A key at the top, as YAML lets it be written. */
  private static Pattern key(String key) {
    return Pattern.compile("(?m)^\\uFEFF?[ \\t{]*[\"']?" + key + "[\"']?[ \\t]*:");
  }

  /**
   * The states in a folder, in the order of their names. Links inside it are not followed.
   *
   * @param out a folder that is left out, because what is made goes there
   * @param prefix what their names begin with
   * @param plate the plate description of all of them; if empty, the one beside each sheet
   * @throws BadInput if the folder cannot be read
   */
  static List<BatchState> states(
      Path named, Optional<Path> out, String prefix, Optional<Path> plate) throws BadInput {
    try {
      Optional<Path> apart = out.isPresent() ? Optional.of(real(out.get())) : out;
      BatchFolder folder = new BatchFolder(named.toRealPath(), apart, prefix, plate);
      folder.walk();
      return folder.found;
    } catch (IOException | UncheckedIOException e) {
      throw new BadInput(
          Problem.at(Place.of(named.toString()), BatchProblem.NO_FOLDER, Argument.why(e)));
    }
  }

  /** A folder that need not be there yet. */
  private static Path real(Path folder) throws IOException {
    return Files.exists(folder) ? folder.toRealPath() : folder.toAbsolutePath().normalize();
  }

  private void walk() throws IOException {
    try (Stream<Path> files = Files.walk(root)) {
      Map<Path, List<Path>> byFolder =
          files
              .filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
              .filter(file -> out.isEmpty() || !file.startsWith(out.get()))
              .sorted()
              .collect(Collectors.groupingBy(Path::getParent, TreeMap::new, Collectors.toList()));
      for (List<Path> together : byFolder.values()) {
        together(together);
      }
    }
  }

  /** The files of one folder. */
  private void together(List<Path> files) throws IOException {
    List<Path> sheets = new ArrayList<>();
    List<Path> plates = new ArrayList<>();
    List<Path> exports = new ArrayList<>();
    for (Path file : files) {
      if (EXPORTS.contains(ending(file))) {
        exports.add(file);
      } else if (YAML.contains(ending(file))) {
        String start = start(file);
        if (SHEET.matcher(start).find()) {
          sheets.add(file);
        } else if (PLATE.matcher(start).find()) {
          plates.add(file);
        }
      }
    }
    Set<Path> left = new TreeSet<>(exports);
    Set<String> stems =
        files.stream()
            .filter(file -> YAML.contains(ending(file)))
            .map(BatchFolder::stem)
            .collect(Collectors.toSet());
    for (Path sheet : sheets) {
      List<Path> own = exports.stream().filter(e -> belongs(e, sheet, stems)).toList();
      own.forEach(left::remove);
      found.add(state(sheet, own, plates));
    }
    left.forEach(export -> found.add(lost(export)));
  }

  private static boolean belongs(Path export, Path sheet, Set<String> stems) {
    String stem = stem(export);
    return stem.equals(stem(sheet))
        || !stems.contains(stem) && stem.matches(Pattern.quote(stem(sheet)) + STAND);
  }

  private BatchState state(Path sheet, List<Path> exports, List<Path> plates) {
    List<Problem> problems = new ArrayList<>();
    Place at = Place.of(sheet.toString());
    if (exports.isEmpty()) {
      problems.add(
          Problem.at(at, BatchProblem.NO_RECORDING, Argument.text(stem(sheet) + "-1.csv")));
    }
    if (plate.isEmpty() && plates.size() > 1) {
      String names =
          plates.stream().map(p -> p.getFileName().toString()).collect(Collectors.joining(", "));
      problems.add(Problem.at(at, BatchProblem.SEVERAL_PLATES, Argument.text(names)));
    }
    Optional<Path> own = plate.or(() -> plates.stream().findFirst());
    return new BatchState(name(sheet), exports, sheet, own, problems);
  }

  private BatchState lost(Path export) {
    Problem problem = Problem.at(Place.of(export.toString()), BatchProblem.NO_SHEET);
    return new BatchState(
        prefix + slashes(export), List.of(export), export, Optional.empty(), List.of(problem));
  }

  private String name(Path sheet) {
    String path = slashes(sheet);
    return prefix + path.substring(0, path.length() - ending(sheet).length() - 1);
  }

  private String slashes(Path file) {
    return root.relativize(file).toString().replace('\\', '/');
  }

  private static String start(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new String(in.readNBytes(START), UTF_8);
    }
  }

  private static String ending(Path file) {
    String name = file.getFileName().toString();
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }

  private static String stem(Path file) {
    String name = file.getFileName().toString();
    return name.substring(0, Math.max(0, name.lastIndexOf('.')));
  }
}
